/**
 * Several pieces of one cloth in one treatment, summed before the order is rounded. Matched pieces run on to whole
 * repeats; pieces that may begin anywhere (strips, covers) follow them, so that one matched cut can be the last.
 */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import type { TakeoffLine } from '#shared/result.ts';
import type { Cut, Phases } from '../cut-cloth.ts';
import { cutToRepeat, handbookLength, planAlone } from '../cut-cloth.ts';
import type { CutGroup } from '../cut-group.ts';
import type { CutKinds } from '../lay-on-pieces.ts';
import { orderCloth } from '../order-cloth.ts';
import { upToWholeRepeat } from '../round.ts';

export interface Piece {
  readonly name: string;
  /** Full-width cuts, or runs of cloth used sideways; of all quantity. */
  readonly count: number;
  readonly cut: Cut;
  /** Null: each may begin anywhere in the repeat. */
  readonly phases: Phases | null;
  /** Where in the repeat its level cuts begin, where its pattern is placed; else wherever, all alike. */
  readonly starts?: Ticks;
  /** Across the cloth; null takes the full width. */
  readonly across: Ticks | null;
  readonly sideways: boolean;
  readonly turnable: boolean;
}

/** All pieces of one cloth in one layer. */
export interface Parcel {
  readonly cloth: Cloth;
  readonly layer: number;
  /** What it is for, when it is neither the body of the face nor of a layer. */
  readonly use?: string;
  /** The main piece first. */
  readonly pieces: readonly Piece[];
  readonly halfWidths: number | null;
  readonly fullnessMade: number | null;
  readonly grams: number;
}

export function matchedPiece(
  name: string,
  cloth: Cloth,
  rule: Practice['repeatRule'],
  of: {
    readonly plain: Ticks;
    readonly count: number;
    readonly phases?: Phases;
    readonly across?: Ticks;
    readonly starts?: Ticks | null;
  },
): Piece {
  const cut = cutToRepeat(of.plain, cloth.repeat, rule);
  const phases = of.phases ?? { level: of.count, dropped: 0 };
  const placed = of.starts === undefined || of.starts === null ? {} : { starts: of.starts };
  return { name, count: of.count, cut, phases, ...placed, across: of.across ?? null, sideways: false, turnable: false };
}

/** A piece that nobody sees matched: a strip, a cover, a facing. */
export function freePiece(name: string, plain: Ticks, count: number, across: Ticks | null = null): Piece {
  const cut = { plain, length: plain, repeats: null };
  return { name, count, cut, phases: null, across, sideways: false, turnable: true };
}

/** Cloth used sideways: the cut length lies across it, the flat width runs along it. */
export function sidewaysPiece(name: string, across: Ticks, run: Ticks, count: number): Piece {
  const cut = { plain: across, length: run, repeats: null };
  return { name, count, cut, phases: null, across, sideways: true, turnable: false };
}

export interface LaidPieces {
  /** By the chart: all cuts end to end. */
  readonly handbook: Ticks;
  readonly plan: Ticks;
  /** Length that each piece takes, all its cuts, up to where the next matched one could begin. */
  readonly taken: readonly Ticks[];
  /** What the last matched cut does not run on. */
  readonly saved: Ticks;
}

export function layPieces(cloth: Pick<Cloth, 'repeat'>, pieces: readonly Piece[]): LaidPieces {
  const taken: Ticks[] = [];
  let saved = 0;
  let handbook = 0;
  for (const piece of pieces) {
    if (!piece.phases) {
      taken.push(ticks(piece.count * piece.cut.length));
      handbook += piece.count * piece.cut.length;
      continue;
    }
    const alone = planAlone(piece.cut, piece.count, cloth.repeat, piece.phases);
    const repeat = cloth.repeat?.match === 'half-drop' ? cloth.repeat.vertical : null;
    const whole = repeat === null ? ticks(piece.count * piece.cut.length) : upToWholeRepeat(alone, repeat);
    taken.push(whole);
    saved = Math.max(saved, whole - alone);
    handbook += handbookLength(piece.cut, piece.count, cloth.repeat);
  }
  const plan = taken.reduce((sum, length) => sum + length, 0) - saved;
  return { handbook: ticks(Math.max(handbook, plan)), plan: ticks(plan), taken, saved: ticks(saved) };
}

/** One line of the take-off: `cuts` of every piece, `cutLength` that of the main one. */
export function takeLine(parcel: Parcel, practice: Practice): TakeoffLine {
  const { cloth, pieces } = parcel;
  const main = pieces[0];
  if (!main) throw new Error(`nothing is cut from ${cloth.id}`);
  const { handbook, plan } = layPieces(cloth, pieces);
  const laid = { handbook, plan };
  return {
    cloth: cloth.id,
    role: cloth.role,
    layer: parcel.layer,
    ...(parcel.use === undefined ? {} : { use: parcel.use }),
    halfWidths: main.sideways ? null : parcel.halfWidths,
    railroaded: main.sideways,
    cuts: pieces.reduce((sum, piece) => sum + piece.count, 0),
    fullnessMade: parcel.fullnessMade,
    plainCut: main.cut.plain,
    cutLength: main.cut.length,
    repeatsPerCut: main.cut.repeats,
    ...laid,
    ...orderCloth(cloth, laid, practice, kindsOf(cloth, pieces)),
    grams: parcel.grams,
  };
}

/** Level and dropped cuts of every piece, two kinds each: any of them may lie on any length that is supplied. */
function kindsOf(cloth: Pick<Cloth, 'repeat'>, pieces: readonly Piece[]): CutKinds {
  const phasesOf = ({ phases, count }: Piece): Phases => phases ?? { level: count, dropped: 0 };
  return {
    counts: pieces.map(phasesOf).flatMap(({ level, dropped }) => [level, dropped]),
    lay: (counts) => {
      const own = pieces.map((piece, index): Piece => {
        const [level, dropped] = [counts[2 * index] ?? 0, counts[2 * index + 1] ?? 0];
        return { ...piece, count: level + dropped, phases: piece.phases && { level, dropped } };
      });
      return layPieces(
        cloth,
        own.filter(({ count }) => count > 0),
      );
    },
  };
}

/** The pieces as the joint cut plan takes them. A half-drop tells level and dropped cuts apart. */
export function groupCuts(parcel: Parcel): CutGroup[] {
  const { cloth, layer } = parcel;
  return parcel.pieces.flatMap((piece): CutGroup[] => {
    const group = {
      name: piece.name,
      cloth: cloth.id,
      layer,
      count: piece.count,
      length: piece.sideways ? piece.cut.length : piece.cut.plain,
      width: piece.across,
      turnable: piece.turnable && cloth.supply?.oneWay !== true,
    };
    if (!piece.phases || !cloth.repeat) return [{ ...group, phase: 'any' }];
    if (cloth.repeat.match === 'straight') return [{ ...group, phase: piece.starts ?? null }];
    const { level, dropped } = piece.phases;
    return [
      { ...group, count: level, phase: piece.starts ?? 0 },
      { ...group, count: dropped, phase: halfFurther(piece.starts ?? 0, cloth.repeat.vertical) },
    ].filter(({ count }) => count > 0);
  });
}

/** Half a repeat further on from a place in it. */
function halfFurther(starts: number, repeat: Ticks): number {
  return (starts + repeat / 2) % repeat;
}

/** Adds pieces to the first parcel of the same cloth; else they are a parcel of their own, after all that shows. */
export function addPieces(parcels: readonly Parcel[], cloth: Cloth, pieces: readonly Piece[]): Parcel[] {
  if (pieces.length === 0) return [...parcels];
  const found = parcels.findIndex((parcel) => parcel.cloth.id === cloth.id);
  if (found >= 0)
    return parcels.map((parcel, index) =>
      index === found ? { ...parcel, pieces: [...parcel.pieces, ...pieces] } : parcel,
    );
  const own: Parcel = { cloth, layer: 0, use: pieces[0]?.name, pieces, halfWidths: null, fullnessMade: null, grams: 0 };
  const shown = parcels.filter((parcel) => parcel.layer === 0);
  return [...shown, own, ...parcels.filter((parcel) => parcel.layer > 0)];
}

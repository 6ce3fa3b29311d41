/** The strip of a bed skirt before it is cut: the sides it covers, what pleats and ends take, piece by piece. */
import { exhaustive } from '#shared/fault.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { BedSkirtTreatment, BoxPleatedBedSkirt } from '#shared/treatments/bed-skirt.ts';
import { toNearestWhole, upToWhole } from '../round.ts';

export type SideName = 'left' | 'foot' | 'right';

/** One side of the bed. */
export interface SkirtSide {
  readonly name: SideName;
  readonly finished: Ticks;
  /** Flat cloth that it takes, corners and ends apart; up to a tick. */
  readonly flat: Ticks;
  /** Box pleats on it: whole, re-spaced. 0 in other styles. */
  readonly pleats: number;
  /** Visible width of one of them and the cloth folded behind it, in ticks, unrounded. */
  readonly visible: number;
  readonly takeUp: number;
}

/** A stretch along a strip, in the order sewn: what the table marks from one end. */
export interface Stretch {
  readonly is: 'end hem' | 'side' | 'corner pleat' | 'middle pleats' | 'underlay';
  readonly length: Ticks;
}

/** A strip sewn in one: the whole skirt, or a third of it where the corners are open. */
export interface SkirtPiece {
  readonly name: string;
  readonly length: Ticks;
  readonly stretches: readonly Stretch[];
}

export interface MeasuredSkirt {
  readonly sides: readonly SkirtSide[];
  readonly perimeter: Ticks;
  readonly pieces: readonly SkirtPiece[];
  readonly cornerPleats: number;
  /** All pieces end to end. */
  readonly strip: Ticks;
  /** Cut drop before any repeat and before what washing takes. */
  readonly dropAsked: Ticks;
}

/** Seen from the foot; `foot` is the long side of a day bed that stands along a wall. */
function sidesOf(skirt: BedSkirtTreatment): readonly (readonly [SideName, Ticks])[] {
  const { width, length } = skirt.bed;
  const [side, foot] = skirt.against === 'head' ? [length, width] : [width, length];
  return [
    ['left', side],
    ['foot', foot],
    ['right', side],
  ];
}

/** Whole pleats on a side, nearest the practice's visible width. */
export function boxPleatsOn(skirt: BoxPleatedBedSkirt, finished: Ticks): number {
  return Math.max(1, toNearestWhole(finished, skirt.practice.bedSkirt.boxPleat));
}

function measureSide(skirt: BedSkirtTreatment, name: SideName, finished: Ticks): SkirtSide {
  const flat = { name, finished, pleats: 0, visible: 0, takeUp: 0 };
  switch (skirt.style) {
    case 'tailored':
      return { ...flat, flat: finished };
    case 'gathered':
      return { ...flat, flat: ticks(upToWhole(finished * skirt.fullness, 1000)) };
    case 'box-pleated': {
      const pleats = boxPleatsOn(skirt, finished);
      const visible = finished / pleats;
      return {
        ...flat,
        flat: ticks(upToWhole(finished * skirt.fullness, 1000)),
        pleats,
        visible,
        takeUp: (visible * (skirt.fullness - 1000)) / 1000,
      };
    }
    default:
      return exhaustive(skirt);
  }
}

export function measureSkirt(skirt: BedSkirtTreatment): MeasuredSkirt {
  const own = skirt.practice.bedSkirt;
  const sides = sidesOf(skirt).map(([name, finished]) => measureSide(skirt, name, finished));
  const pieces = skirt.splitCorners ? splitPieces(skirt, sides) : [wholePiece(skirt, sides)];
  return {
    sides,
    perimeter: ticks(sides.reduce((sum, side) => sum + side.finished, 0)),
    pieces,
    cornerPleats: skirt.style === 'tailored' && !skirt.splitCorners ? sides.length - 1 : 0,
    strip: ticks(pieces.reduce((sum, piece) => sum + piece.length, 0)),
    dropAsked: ticks(skirt.drop + own.hem + own.topSeam),
  };
}

function toPiece(name: string, stretches: readonly Stretch[]): SkirtPiece {
  const kept = stretches.filter((stretch) => stretch.length > 0);
  return { name, stretches: kept, length: ticks(kept.reduce((sum, stretch) => sum + stretch.length, 0)) };
}

/** Cloth in the pleats besides the corners: the table places them, on the middle of a side as a rule. */
function middleStretch(skirt: BedSkirtTreatment): Stretch[] {
  if (skirt.style !== 'tailored') return [];
  return [{ is: 'middle pleats', length: ticks(skirt.middlePleats * skirt.practice.bedSkirt.middlePleat) }];
}

function wholePiece(skirt: BedSkirtTreatment, sides: readonly SkirtSide[]): SkirtPiece {
  const { endHem, cornerPleat } = skirt.practice.bedSkirt;
  const corner: Stretch[] = skirt.style === 'tailored' ? [{ is: 'corner pleat', length: cornerPleat }] : [];
  const round = sides.flatMap((side, index): Stretch[] => [
    ...(index > 0 ? corner : []),
    { is: 'side', length: side.flat },
  ]);
  const end: Stretch = { is: 'end hem', length: endHem };
  return toPiece('skirt', [end, ...round, ...middleStretch(skirt), end]);
}

/** Three pieces with hemmed ends; a tailored one has a piece behind each open corner. */
function splitPieces(skirt: BedSkirtTreatment, sides: readonly SkirtSide[]): SkirtPiece[] {
  const { endHem, underlay } = skirt.practice.bedSkirt;
  const end: Stretch = { is: 'end hem', length: endHem };
  const pieces = sides.map((side) =>
    toPiece(side.name, [
      end,
      { is: 'side', length: side.flat },
      ...(side.name === 'foot' ? middleStretch(skirt) : []),
      end,
    ]),
  );
  if (skirt.style !== 'tailored') return pieces;
  const behind = sides
    .slice(1)
    .map((_, index) => toPiece(`underlay ${index + 1}`, [end, { is: 'underlay', length: underlay }, end]));
  return [...pieces, ...behind];
}

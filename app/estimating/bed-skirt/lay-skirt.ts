/** One cloth of a bed skirt laid out: its strips, and the deck where it is of the same cloth. */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { TakeoffLine } from '#shared/result.ts';
import type { BedSkirtTreatment } from '#shared/treatments/bed-skirt.ts';
import { areaOf } from '#shared/weight.ts';
import type { CutGroup } from '../cut-group.ts';
import { layRows, layRun, lineOfRows, lineOfRun } from '../lay-rows.ts';
import type { CutRow, LaidRows } from '../lay-rows.ts';
import { placePattern } from '../place-pattern.ts';
import { upToWhole } from '../round.ts';
import type { DeckCut } from './cut-deck.ts';
import { countStripWidths, runStrips } from './lay-strip.ts';
import type { SidewaysStrips } from './lay-strip.ts';

export interface SkirtCloth {
  readonly cloth: Cloth;
  readonly layer: number;
  /** Cut drop as it hangs, and before any repeat; null when this cloth makes the deck alone. */
  readonly drop: { readonly asked: Ticks; readonly plain: Ticks } | null;
  readonly strip: Ticks;
  readonly deck: DeckCut | null;
}

export interface LaidSkirt {
  readonly line: TakeoffLine;
  /** Upright widths of one skirt; null sideways, or for a deck alone. */
  readonly widths: number | null;
  readonly rows: LaidRows | null;
  readonly sideways: SidewaysStrips | null;
  readonly cuts: readonly CutGroup[];
}

export function laySkirt(skirt: BedSkirtTreatment, given: SkirtCloth, mass: number): LaidSkirt {
  const { quantity, practice } = skirt;
  const { cloth, layer, drop, deck, strip } = given;
  const deckRows: CutRow[] = deck
    ? [{ name: 'deck', plain: deck.length, cuts: deck.cuts * quantity, dropped: 0, matched: false }]
    : [];
  const deckGrams = deck ? areaOf(deck.long, deck.wide) * mass * quantity : 0;
  const grams = deckGrams + (drop ? areaOf(strip, drop.asked) * mass * quantity : 0);
  if (drop === null) {
    const rows = layRows(cloth, deckRows, practice);
    const line = lineOfRows(cloth, layer, rows, { halfWidths: 2 * (deck?.cuts ?? 0), grams, fullnessMade: null });
    return { line, widths: null, rows, sideways: null, cuts: deckGroups(skirt, given) };
  }
  const widths = countStripWidths(strip, cloth.usableWidth, practice.seam);
  const rows = layRows(cloth, [stripRow(skirt, cloth, drop.plain, widths), ...deckRows], practice);
  const allowed = cloth.railroad && skirt.strips !== 'upright';
  const sideways = allowed ? runStrips(cloth, strip, drop.plain, practice.seam) : null;
  const deckRun = deck ? deck.cuts * deck.length : 0;
  const fullnessMade = null;
  // Sideways has the fewer seams, so it also wins where both take the same; asked for, wherever it fits.
  const chosen = skirt.strips === 'sideways' || ((sideways?.run ?? 0) + deckRun) * quantity <= rows.plan;
  if (sideways && chosen) {
    const run = layRun(cloth, ticks(sideways.run + deckRun), quantity, practice);
    const pieces = (sideways.strips + (deck?.cuts ?? 0)) * quantity;
    const made = { across: drop.plain, run: sideways.run, pieces, grams, fullnessMade };
    const strips: CutGroup = {
      name: 'strip, sideways',
      cloth: cloth.id,
      layer,
      count: sideways.strips * quantity,
      length: sideways.run,
      width: drop.plain,
      phase: 'any',
      turnable: false,
    };
    return {
      line: lineOfRun(cloth, layer, run, made),
      widths: null,
      rows: null,
      sideways,
      cuts: [strips, ...deckGroups(skirt, given)],
    };
  }
  const line = lineOfRows(cloth, layer, rows, { halfWidths: 2 * widths, grams, fullnessMade });
  return {
    line,
    widths,
    rows,
    sideways: null,
    cuts: [...stripGroups(skirt, given, drop.plain, widths), ...deckGroups(skirt, given)],
  };
}

/** Widths alternate by half a repeat along a half-drop strip, the first one level. */
function droppedWidths(cloth: Cloth, widths: number): number {
  return cloth.repeat?.match === 'half-drop' ? upToWhole(Math.max(0, widths - 1), 2) : 0;
}

function stripRow(skirt: BedSkirtTreatment, cloth: Cloth, plain: Ticks, widths: number): CutRow {
  const { quantity } = skirt;
  return {
    name: 'skirt',
    plain,
    cuts: widths * quantity,
    dropped: droppedWidths(cloth, widths) * quantity,
    matched: true,
  };
}

function stripGroups(skirt: BedSkirtTreatment, given: SkirtCloth, plain: Ticks, widths: number): CutGroup[] {
  const { cloth, layer } = given;
  const dropped = droppedWidths(cloth, widths);
  const base = { cloth: cloth.id, layer, length: plain, width: null, turnable: false };
  const group = (name: string, count: number, phase: CutGroup['phase']): CutGroup[] =>
    count === 0 ? [] : [{ ...base, name, count: count * skirt.quantity, phase }];
  if (cloth.repeat === null) return group('skirt width', widths, 'any');
  const placed = layer === 0 ? placePattern(skirt, cloth, true) : null;
  if (cloth.repeat.match === 'straight') return group('skirt width', widths, placed?.phase ?? null);
  const { vertical } = cloth.repeat;
  const starts = placed?.phase ?? 0;
  return [
    ...group('skirt width, level', widths - dropped, starts),
    ...group('skirt width, dropped', dropped, (starts + upToWhole(vertical, 2)) % vertical),
  ];
}

/** One full-width cut for each width of the deck. */
function deckGroups(skirt: BedSkirtTreatment, given: SkirtCloth): CutGroup[] {
  const { cloth, layer, deck } = given;
  if (!deck) return [];
  const single = deck.lies === 'along' ? deck.wide : deck.long;
  return [
    {
      name: 'deck',
      cloth: cloth.id,
      layer,
      count: deck.cuts * skirt.quantity,
      length: deck.length,
      width: deck.cuts === 1 ? single : null,
      phase: 'any',
      turnable: cloth.repeat === null,
    },
  ];
}

/** What hangs from a board, a box or a short rod, and Roman shades, reckoned from what has been typed so far. */
import type { DrawnHung, DrawnPanels, DrawnRomanShade, DrawnSwags, DrawnTail, DrawnValance } from './drawn-room.ts';
import { FINIAL, INCH, take, takeCount } from './measure-given.ts';
import { reckonReturns, underCeiling } from './reckon-panels.ts';
import type {
  Hole,
  ReckonedBase,
  ReckonedRomanShade,
  ReckonedSwags,
  ReckonedTail,
  ReckonedValance,
} from './reckoned.ts';
import { nearestCount, onesToCover } from './round-shapes.ts';

/** What hangs from a board, a box or a short rod. `usualLength` by the whole drop where none is given: a sixth of it. */
export function reckonTop<Source extends Exclude<DrawnHung, DrawnPanels>>(
  source: Source,
  hole: Hole,
  finished: DrawnHung['finishedLength'],
  usualLength: number = Math.max(8 * INCH, hole.head / 6),
): ReckonedBase<Source> {
  const { where } = source.mount;
  const inside = where === 'inside';
  const rod = take(source.width, 'rodWidth', inside ? hole.width.ticks - INCH / 4 : hole.width.ticks + 8 * INCH);
  const above = take(source.mount.above, 'above', inside ? 0 : undefined);
  const tops = { wall: hole.head + above.ticks, ceiling: underCeiling(hole), inside: hole.head } as const;
  const top = Math.max(2 * INCH, tops[where]);
  const length = take(finished, 'length', Math.min(usualLength, top));
  const returns = inside ? { left: 0, right: 0 } : reckonReturns(source.returns);
  return {
    kind: source.kind,
    source,
    rod,
    above,
    top,
    length,
    hem: top - length.ticks,
    returns,
    reach: rod.ticks / 2 + (inside ? 0 : Math.max(returns.left, returns.right) * 0.25 + INCH / 2),
    over: INCH,
  };
}

const USUAL_SCALLOP = 12 * INCH;
const FLAT_IN_A_FOLD = 7.7 * INCH;

export function reckonValance(valance: DrawnValance, hole: Hole): ReckonedValance {
  const base = reckonTop(valance, hole, valance.finishedLength);
  const width = base.rod.ticks;
  const { fullness } = valance;
  const full = fullness !== null && Number.isFinite(fullness) && fullness > 0 ? fullness : 2;
  const usual = Math.max(1, width / USUAL_SCALLOP);
  const onRod = valance.hang === 'rod';
  return {
    ...base,
    kind: 'valance',
    header: onRod && valance.header !== null ? take(valance.header, 'part').ticks : 0,
    folds: nearestCount((width * full) / FLAT_IN_A_FOLD, 3, 90),
    pleats: takeCount(valance.pleats, Math.max(1, width / (20 * INCH)), 1, 60),
    scallops: takeCount(valance.scallops, usual, 1, 60),
    scallopDepth: Math.min(base.length.ticks * 0.8, take(valance.scallopDepth, 'part').ticks),
    puffs: takeCount(valance.puffs, usual, 1, 60),
    reach: base.reach + (onRod && valance.mount.where !== 'inside' ? FINIAL : 0),
  };
}

const WIDEST_SWAG = 44 * INCH;

export function reckonSwags(swags: DrawnSwags, hole: Hole): ReckonedSwags {
  const base = reckonTop(swags, hole, swags.finishedLength, 16 * INCH);
  const board = base.rod.ticks;
  const lapped = swags.style === 'overlapped';
  const usual = lapped
    ? Math.max(1, onesToCover((2 * board) / WIDEST_SWAG) - 1)
    : Math.max(1, onesToCover(board / WIDEST_SWAG));
  const count = takeCount(swags.swags, usual, 1, 30);
  // Overlapped: 2 × board / (n + 1); separate: board / n (common practice).
  const width = lapped ? (2 * board) / (count + 1) : board / count;
  const pitch = count === 1 ? 0 : (board - width) / (count - 1);
  const cascades = swags.cascades === null ? null : reckonTail(swags.cascades, base.length.ticks * 2.2);
  const jabots = swags.jabots === null ? null : reckonTail(swags.jabots, base.length.ticks * 1.1);
  const joints = Array.from({ length: count - 1 }, (_, joint) => (joint + 1) * pitch + (width - pitch) / 2);
  const many = takeCount(swags.jabots?.count, Math.max(1, count - 1), 1, 30);
  return {
    ...base,
    kind: 'swags',
    count,
    width,
    lefts: Array.from({ length: count }, (_, place) => place * pitch),
    cascades,
    jabots,
    jabotsAt: many === joints.length ? joints : Array.from({ length: many }, (_, i) => (board * (i + 1)) / (many + 1)),
  };
}

const PLEAT_FACE = 2.5 * INCH;

function reckonTail(tail: DrawnTail, usual: number): ReckonedTail {
  const longest = take(tail.longest, 'tail', usual);
  const width = take(tail.width, 'part', 10 * INCH);
  return {
    longest,
    shortest: take(tail.shortest, 'tail', longest.ticks * 0.45),
    width,
    pleats: takeCount(tail.pleats, width.ticks / PLEAT_FACE, 1, 24),
  };
}

const USUAL_ROW = 6 * INCH;

export function reckonShade(shade: DrawnRomanShade, hole: Hole): ReckonedRomanShade {
  const inside = shade.mount.where === 'inside';
  const base = reckonTop(shade, hole, shade.finishedLength, hole.head - hole.sill + (inside ? 0 : 6 * INCH));
  const length = base.length.ticks;
  const given = (shade.rows ?? []).filter(
    (row): row is NonNullable<typeof row> => row !== null && Number.isFinite(row),
  );
  const usual = nearestCount(length / USUAL_ROW - 0.5, 1, 30);
  const spacing = length / (usual + 0.5);
  const even = Array.from({ length: usual }, (_, row) => (row + 0.5) * spacing);
  const rows = (given.length > 0 ? given : even).filter((row) => row > 0 && row < length).sort((a, b) => a - b);
  const stack = shade.raisedStack === null ? length * 0.2 : take(shade.raisedStack, 'length').ticks;
  const shown = shade.drawn === 'lowered' ? length : Math.max(Math.min(length, stack), length * 0.56);
  return {
    ...base,
    kind: 'roman-shade',
    rows: rows.slice(0, 60),
    shown,
    valance: shade.valance === null ? 0 : Math.min(length * 0.6, take(shade.valance, 'part').ticks),
  };
}

/**
 * The order of one cloth of one treatment. Cloth comes in whole pieces: what is longer than one is laid piece by piece,
 * and each piece has an extra and a step of its own (common practice: two pieces in one delivery are two extra repeats).
 */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import type { SuppliedPiece, TakeoffLine } from '#shared/result.ts';
import { orderExtra, orderLength } from './cut-cloth.ts';
import { layOnPieces } from './lay-on-pieces.ts';
import type { CutKinds, LaidLength } from './lay-on-pieces.ts';
import { upToOrderStep, upToWhole } from './round.ts';

export type OrderRules = Pick<Practice, 'orderFrom' | 'orderExtra' | 'orderStep'>;

/** What of a piece may be lost before its first cut: nobody knows where in the repeat a piece starts. */
export function lostAtStart({ repeat }: Pick<Cloth, 'repeat'>): Ticks {
  return repeat === null || repeat.cutOnRepeat ? ticks(0) : repeat.vertical;
}

/** `pieces` only where it takes more than one. A cut longer than what a piece holds is joined where a piece ends. */
export function orderCloth(
  cloth: Pick<Cloth, 'repeat' | 'supply'>,
  laid: LaidLength,
  rules: OrderRules,
  kinds: CutKinds,
): Pick<TakeoffLine, 'order' | 'pieces'> {
  const base = ({ plan, handbook }: LaidLength): Ticks => (rules.orderFrom === 'plan' ? plan : handbook);
  const extra = orderExtra(cloth, rules.orderExtra);
  const order = orderLength(cloth, base(laid), extra, rules.orderStep);
  const bolt = cloth.supply?.bolt ?? null;
  if (bolt === null || order <= bolt) return { order };
  const room = bolt - lostAtStart(cloth);
  const least = cloth.supply?.leastOrder ?? 0;
  // The whole piece is enough: only the extra and the step would go beyond it.
  if (laid.plan <= room) return { order: ticks(Math.max(bolt, least)) };
  const step = cloth.supply?.orderStep ?? rules.orderStep;
  const pieces = layAll(kinds, bolt, room).map(({ cuts, laid: own }): SuppliedPiece => {
    const asked = upToOrderStep(ticks(base(own) + extra), step);
    return { cuts, base: base(own), order: ticks(Math.min(asked, bolt)) };
  });
  const total = pieces.reduce((sum, piece) => sum + piece.order, 0);
  return { order: ticks(Math.max(total, least)), ...(pieces.length > 1 ? { pieces } : {}) };
}

interface LaidPiece {
  readonly cuts: number;
  readonly laid: LaidLength;
}

function layAll(kinds: CutKinds, bolt: Ticks, room: number): readonly LaidPiece[] {
  return layOnPieces(kinds, room).flatMap((counts) => {
    const laid = kinds.lay(counts);
    const cuts = counts.reduce((sum, count) => sum + count, 0);
    return laid.plan <= bolt ? [{ cuts, laid }] : joinRun(laid.plan, bolt);
  });
}

/** A run that is longer than a piece goes on with the next one: `check-bolts.ts` has refused what may not be joined. */
function joinRun(run: Ticks, bolt: Ticks): LaidPiece[] {
  const count = upToWhole(run, bolt);
  return Array.from({ length: count }, (_, index) => {
    const length = ticks(index < count - 1 ? bolt : run - (count - 1) * bolt);
    return { cuts: 1, laid: { plan: length, handbook: length } };
  });
}

/** Cuts that are all alike. */
export function alikeCuts(count: number, lay: (count: number) => LaidLength): CutKinds {
  return { counts: [count], lay: ([own = 0]) => lay(own) };
}

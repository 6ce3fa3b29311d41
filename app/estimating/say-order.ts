/** How an order came about, in figures: its base, what is added, the step that it goes up to, the least that is sold. */
import type { Cloth } from '#shared/cloth.ts';
import { TICKS_PER_YARD } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import type { SuppliedPiece, TakeoffLine, WorkingStep } from '#shared/result.ts';
import { orderExtra } from './cut-cloth.ts';
import { lostAtStart } from './order-cloth.ts';
import { countOf, step } from './say.ts';
import type { Say } from './say.ts';

type OrderedLine = Pick<TakeoffLine, 'plan' | 'handbook' | 'order' | 'pieces'>;

export function workOrderOf(
  id: string,
  label: string,
  cloth: Cloth,
  line: OrderedLine,
  practice: Practice,
  say: Say,
): WorkingStep {
  const own = cloth.supply?.orderStep ?? null;
  const least = cloth.supply?.leastOrder ?? null;
  const upTo = own ?? practice.orderStep;
  const extra = orderExtra(cloth, practice.orderExtra);
  const bolt = cloth.supply?.bolt ?? null;
  const inOne = line.pieces === undefined && line.order === bolt;
  return step(
    id,
    label,
    [
      line.pieces ? sayPieces(line.pieces, extra, say) : sayBase(line, extra, practice, say),
      ...sayStep(upTo, line.pieces !== undefined, say),
      ...(inOne ? [`no more than a whole piece, ${say.cloth(line.order)}`] : []),
      ...(least === null ? [] : [`at least ${say.cloth(least)}`]),
    ].join(', '),
    say.cloth(line.order),
    [
      `practice: from the ${practice.orderFrom === 'plan' ? 'layout' : 'chart'}`,
      `${sayExtra(extra)}${line.pieces && extra > 0 ? ' for each piece of cloth supplied' : ''}`,
      ...(upTo === 0 ? [] : [own === null ? 'order step' : "the supplier's step"]),
      ...(line.pieces && bolt !== null ? [sayWhole(cloth, bolt, say)] : []),
    ].join(', '),
  );
}

function sayBase(line: OrderedLine, extra: Ticks, practice: Practice, say: Say): string {
  return `${say.cloth(practice.orderFrom === 'plan' ? line.plan : line.handbook)} + ${say.cloth(extra)}`;
}

function sayStep(upTo: Ticks, isEach: boolean, say: Say): string[] {
  return upTo > 0 ? [`${isEach ? 'each ' : ''}up to ${say.cloth(upTo)}`] : [];
}

/** `2 pieces of 2 cuts: 208 + 27 = 6¾ yd each`: pieces that are alike are told once. */
function sayPieces(pieces: readonly SuppliedPiece[], extra: Ticks, say: Say): string {
  const alike = new Map<string, SuppliedPiece[]>();
  for (const piece of pieces) {
    const key = `${piece.cuts} ${piece.base}`;
    alike.set(key, [...(alike.get(key) ?? []), piece]);
  }
  const added = extra === 0 ? '' : ` + ${say.length(extra)}`;
  const told = [...alike.values()].flatMap((same) => {
    const [piece] = same;
    if (piece === undefined) return [];
    const many = same.length === 1 ? '1 piece' : `${same.length} pieces`;
    const cuts = countOf(piece.cuts, 'cut');
    const each = same.length === 1 ? '' : ' each';
    return [`${many} of ${cuts}: ${say.length(piece.base)}${added} ${say.unit}, ${say.cloth(piece.order)}${each}`];
  });
  return told.join('; ');
}

function sayWhole(cloth: Cloth, bolt: Ticks, say: Say): string {
  const lost = lostAtStart(cloth);
  const start = lost === 0 ? '' : `, of which ${say.length(lost)} ${say.unit} may be lost before the first cut`;
  return `a whole piece is ${say.cloth(bolt)}${start}, and no cut goes over two`;
}

/** What is ordered besides: the amount itself tells the rule apart. */
function sayExtra(extra: Ticks): string {
  if (extra === 0) return 'nothing extra';
  return extra === TICKS_PER_YARD ? 'a yard extra' : 'one repeat extra';
}

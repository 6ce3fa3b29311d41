/**
 * The plan of each cloth over the project: every treatment laid out alone, added up. The lower bound says how short a
 * joint layout could be at the best, so that the two can be compared.
 */
import type { Cloth } from '#shared/cloth.ts';
import type { CutGroup } from '#app/estimating/cut-group.ts';
import { downToTick } from '#app/estimating/round.ts';
import { ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import type { PlanLine, TakeoffLine } from '#shared/result.ts';
import type { Tier } from '#shared/words.ts';

export interface PlannedLine {
  readonly line: TakeoffLine;
  readonly cloth: Cloth;
  readonly repeatRule: Practice['repeatRule'];
  /** The pieces that the line is made of. */
  readonly cuts: readonly CutGroup[];
}

/** One line for each cloth of a tier, in the order in which cloth first appears. */
export function addPlans(tier: Tier, lines: readonly PlannedLine[]): PlanLine[] {
  const byCloth = new Map<string, PlannedLine[]>();
  for (const each of lines) byCloth.set(each.cloth.id, [...(byCloth.get(each.cloth.id) ?? []), each]);
  return [...byCloth].map(([cloth, group]) => {
    const sum = (of: (line: TakeoffLine) => number) => ticks(group.reduce((total, each) => total + of(each.line), 0));
    const plan = sum((line) => line.plan);
    return {
      cloth,
      tier,
      plan,
      order: sum((line) => line.order),
      handbook: sum((line) => line.handbook),
      bound: ticks(Math.min(plan, boundOf(group))),
    };
  });
}

/**
 * No layout on one bolt is shorter. Straight match, cuts all alike: every cut but the last runs on to the next whole
 * repeat, so all cut lengths less the largest tail that can be saved. Otherwise only the cloth that is in the pieces
 * themselves, by their share of the width.
 */
function boundOf(group: readonly PlannedLine[]): number {
  let total = 0;
  let tail = 0;
  for (const { line, cloth, repeatRule, cuts } of group) {
    const [only] = cuts;
    const straight = cloth.repeat?.match === 'straight' && repeatRule === 'whole' && !line.railroaded;
    if (straight && cuts.length === 1 && only?.width === null) {
      total += line.cutLength * line.cuts;
      tail = Math.max(tail, line.cutLength - line.plainCut);
    } else {
      total += cuts.reduce((sum, cut) => sum + cut.count * cut.length * shareOf(cut.width, cloth), 0);
    }
  }
  return downToTick(total - tail);
}

function shareOf(width: number | null, cloth: Cloth): number {
  return width === null ? 1 : Math.min(1, width / cloth.width);
}

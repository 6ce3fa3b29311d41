/** Proportion and fit of a top treatment: advice that comes with the estimate and changes no figure. */
import type { Cloth } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';
import type { Advice } from '#shared/result.ts';
import type { BoardChoices } from '#shared/treatments/board-practice.ts';
import type { Say } from '../say.ts';
import type { LaidLayer } from './lay-widths.ts';

/** Depth against the whole drop: a fifth to a sixth looks right (common practice; both parts are settings). */
export function adviseDepth(
  what: string,
  depth: Ticks,
  dropOf: Ticks | null,
  making: Pick<BoardChoices, 'shallowestPart' | 'deepestPart'>,
  say: Say,
): Advice[] {
  if (dropOf === null || dropOf === 0) return [];
  const { shallowestPart, deepestPart } = making;
  const [least, most] = [dropOf / shallowestPart, dropOf / deepestPart];
  if (depth >= least && depth <= most) return [];
  const side = depth < least ? 'shallow' : 'deep';
  return [
    {
      rule: 'top-proportion',
      level: 'note',
      says: `A ${what} of ${say.length(depth)} is ${side} for a drop of ${say.length(dropOf)}: ${say.length(least)} to ${say.length(most)} looks right.`,
      rests: `common practice: 1/${say.number(shallowestPart)} to 1/${say.number(deepestPart)} of the whole drop`,
    },
  ];
}

/** A third or two thirds of the treatment, never half (common practice): nearer to a half than to either is told. */
export function adviseCascade(longest: Ticks, dropOf: Ticks | null, say: Say): Advice[] {
  if (dropOf === null || dropOf === 0) return [];
  const nearHalf = 12 * longest > 5 * dropOf && 12 * longest < 7 * dropOf;
  if (!nearHalf) return [];
  return [
    {
      rule: 'cascade-half',
      level: 'caution',
      says: `Cascades of ${say.length(longest)} end near the middle of a drop of ${say.length(dropOf)}: a third is ${say.length(dropOf / 3)}, two thirds ${say.length((2 * dropOf) / 3)}.`,
      rests: 'common practice: cascades a third or two thirds of the treatment, never half',
    },
  ];
}

/** Over another treatment the return has to clear it. */
export function adviseOver(
  returns: { readonly left: Ticks; readonly right: Ticks },
  over: Ticks | null,
  clearance: Ticks,
  say: Say,
): Advice[] {
  if (over === null) return [];
  const short = [returns.left, returns.right].filter((each) => each > 0 && each < over + clearance);
  if (short.length === 0) return [];
  return [
    {
      rule: 'top-return',
      level: 'caution',
      says: `A return of ${say.length(Math.min(...short))} may rub on the treatment underneath, which stands ${say.length(over)} out: ${say.length(over + clearance)} clears it.`,
      rests: 'practice: return of the treatment underneath and the clearance',
    },
  ];
}

/** Cloth that may run sideways makes a flat treatment without a seam, even where that takes more of it. */
export function adviseSideways(
  cloth: Cloth,
  { plain, widths }: Pick<LaidLayer, 'plain' | 'widths'>,
  say: Say,
): Advice[] {
  if (!cloth.railroad || widths.by !== 'seams' || widths.seamed.joins === 0 || plain > cloth.usableWidth) return [];
  return [
    {
      rule: 'sideways-seamless',
      level: 'note',
      says: `${cloth.name} may run sideways: ${say.length(widths.total)} of it makes this without a seam, but takes more cloth.`,
      rests: 'common practice: plain cloth goes sideways over a board',
    },
  ];
}

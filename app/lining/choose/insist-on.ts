/** What the rules stop and she insists on: it is made, and the advice says that it was asked for. */
import type { Advice } from '#shared/result.ts';
import { isOfStack } from '../rules/index.ts';

/**
 * The advice of one option. A stop of the make (a cord in reach) was always asked for, since no default has it; one of
 * the stack where the stack was given by hand.
 */
export function insistOn(advice: readonly Advice[], given: boolean): readonly Advice[] {
  return advice.map((each) =>
    each.level === 'stop' && (given || !isOfStack(each.rule))
      ? {
          ...each,
          says: `${each.says} It is offered because it was asked for.`,
          rests: `${each.rests}; asked for`,
          insisted: true,
        }
      : each,
  );
}

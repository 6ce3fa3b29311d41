/** The lining engine's answer for one stack at its own window: readings, ranges, words, advice and working. */
import type { Judgement } from '#shared/result.ts';
import type { JudgeInput } from './judge-input.ts';
import { reckonStack } from './reckon-stack.ts';
import { gatherFacts } from './rules/rule-facts.ts';
import { adviseStack } from './rules/index.ts';
import { sayReadings } from './say/say-readings.ts';
import { showWorking } from './say/show-working.ts';

export type { JudgeInput } from './judge-input.ts';

/**
 * Judges the face and the layers behind it, room to street. Pure: the same input gives the same judgement. Readings
 * are rounded by `roundReading`. Throws `StackFault` for optics that cannot be, a second face or none, unknown glass.
 */
export function judgeStack(input: JudgeInput): Judgement {
  const reckoned = reckonStack(input);
  return {
    readings: reckoned.readings,
    ranges: reckoned.ranges,
    words: sayReadings(reckoned),
    assumed: reckoned.assumed,
    advice: adviseStack(gatherFacts(reckoned)),
    working: showWorking(reckoned),
  };
}

/** Stacks that a client could not tell apart. */
import type { Judgement } from '#shared/result.ts';
import type { Ranked } from './ranked-stack.ts';
import { costsOf } from './weigh-needs.ts';

const READING_NAMES = ['light', 'colour', 'warmth', 'fade', 'body'] as const;

/** What a client would notice between two stacks that read alike in every word. */
const NOTICED = { warmth: 0.02, fade: 0.06, body: 0.5 } as const;

/** Of stacks that a client could not tell apart the one of least effort; `ranked` keeps its order. */
export function standFor(ranked: readonly Ranked[]): readonly Ranked[] {
  return ranked.filter((each) => !ranked.some((other) => other.effort < each.effort && readsAlike(each, other)));
}

function readsAlike(a: Ranked, b: Ranked): boolean {
  const [x, y] = [a.judgement, b.judgement];
  const against = ({ advice }: Judgement): string =>
    advice.flatMap(({ level, rule }) => (level === 'caution' || costsOf(rule) > 0 ? [rule] : [])).join();
  const words = (judgement: Judgement): string => READING_NAMES.map((name) => judgement.words[name].words).join();
  return (
    words(x) === words(y) &&
    against(x) === against(y) &&
    (['warmth', 'fade', 'body'] as const).every((name) => Math.abs(x.readings[name] - y.readings[name]) < NOTICED[name])
  );
}

/** Counts layouts weighed against the budget; no clock, so the same question always gets the same plan. */
import type { PlanWatch } from './plan-input.ts';

export interface Meter {
  /** One more layout weighed. */
  readonly count: () => void;
  /** True once the budget is spent or somebody has cancelled. */
  readonly isOver: () => boolean;
  readonly steps: () => number;
  /** Steps until it is over. */
  readonly left: () => number;
  readonly cancelled: () => boolean;
  /** A meter of a share of what is left, counting into this one. */
  readonly share: (part: number) => Meter;
  /** A meter of so many steps from now, whatever is left; counting into this one. */
  readonly allow: (steps: number) => Meter;
}

/** Progress is told, and cancelling asked after, once in so many steps. */
const TOLD_EVERY = 256;

export function makeMeter(budget: number, watch: PlanWatch): Meter {
  let steps = 0;
  let cancelled = false;
  const count = (): void => {
    steps += 1;
    if (steps % TOLD_EVERY !== 0) return;
    watch.progress?.(Math.min(1, steps / budget));
    cancelled = cancelled || (watch.cancelled?.() ?? false);
  };
  const sub = (limit: () => number): Meter => ({
    count,
    isOver: () => cancelled || steps >= limit(),
    steps: () => steps,
    left: () => Math.max(0, limit() - steps),
    cancelled: () => cancelled,
    share: (part) => {
      const end = steps + Math.max(0, limit() - steps) * part;
      return sub(() => end);
    },
    allow: (more) => {
      const end = steps + more;
      return sub(() => end);
    },
  });
  return sub(() => budget);
}

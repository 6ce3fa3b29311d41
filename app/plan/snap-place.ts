/** Where a cut that somebody puts down by hand comes to lie: the nearest place that its pattern allows. */
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { LaidBolt, LaidCut } from './cut-plan.ts';
import { nextPosition } from './repeat-circle.ts';

/**
 * The right place nearest to `asked` on the bolt, within it. `repeat` is 0 on plain cloth. Flaws and other cuts are not
 * looked at: the plan works round a fixed cut, and tells what cannot be.
 */
export function snapPlace(
  bolt: Pick<LaidBolt, 'length' | 'startPhase'>,
  cut: Pick<LaidCut, 'length' | 'phase'>,
  repeat: number,
  asked: number,
): Ticks {
  const most = bolt.length === null ? Infinity : Math.max(0, bolt.length - cut.length);
  const wanted = Math.max(0, Math.min(most, asked));
  if (cut.phase === null || bolt.startPhase === null || repeat === 0) return ticks(wanted);
  const after = nextPosition(wanted, cut.phase, bolt.startPhase, repeat);
  const before = after - repeat;
  const places = [before, after].filter((place) => place >= 0 && place <= most);
  const nearest = places.sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted))[0];
  return ticks(nearest ?? after);
}

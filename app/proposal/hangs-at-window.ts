/** Whether a treatment hangs at a window, so that light and warmth can be read of it. */
import { hangsAway } from '#shared/treatments/away.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';

export function hangsAtWindow(treatment: Pick<Treatment, 'kind'>): boolean {
  return !hangsAway(treatment.kind);
}

/** Whether a treatment hangs at a window, so that light and warmth can be read of it. */
import type { Treatment, TreatmentKind } from '#shared/treatments/treatment.ts';

const NO_WINDOW: readonly TreatmentKind[] = ['bed-skirt', 'shower-curtain'];

export function hangsAtWindow(treatment: Pick<Treatment, 'kind'>): boolean {
  return !NO_WINDOW.includes(treatment.kind);
}

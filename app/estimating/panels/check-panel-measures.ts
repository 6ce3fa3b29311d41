/** Measures of panels that contradict each other, or that nothing in a house has: mistyped, so refused by name. */
import { TICKS_PER_INCH } from '#shared/length.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { TellFault } from '../tell-fault.ts';

/** No pole or rod of a window is as thick (common practice: 3/4 to 3 in). */
const THICKEST_ROD = 8 * TICKS_PER_INCH;

export function checkPanelMeasures(panels: PanelsTreatment, fault: TellFault, say: (length: number) => string): void {
  const { finishedLength, header, rodDiameter, arch } = panels;
  if (header >= finishedLength)
    fault(
      'header',
      `${say(header)} is no less than the finished length, ${say(finishedLength)}`,
      'give what stands above the pocket, such as 2 in',
    );
  if (rodDiameter !== null && rodDiameter > THICKEST_ROD)
    fault(
      'rodDiameter',
      `${say(rodDiameter)} is thicker than any rod`,
      'give the diameter of the rod, such as 1 1/2 in',
    );
  if (arch !== null && arch >= finishedLength)
    fault(
      'arch.rise',
      `${say(arch)} is no less than the finished length, ${say(finishedLength)}, from the top of the arch to the hem`,
      'give the rise of the arch above its springing',
    );
}

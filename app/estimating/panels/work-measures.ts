/** How finished length, rod face and heading were found from what was measured; nothing where they were given. */
import { HANG_SETTINGS } from '#shared/treatments/panels.ts';
import type { Bay, Hang, PanelsTreatment } from '#shared/treatments/panels.ts';
import type { WorkingStep } from '#shared/result.ts';
import { headingLength } from './finished-width.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';

export function workMeasures(panels: PanelsTreatment, say: Say): WorkingStep[] {
  return [
    ...(panels.hang ? [workHang(panels.hang, panels, say)] : []),
    ...(panels.bay ? [workBay(panels.bay, panels, say)] : []),
    ...(panels.arch === null || panels.arch === 0 ? [] : [workArch(panels, panels.arch, say)]),
  ];
}

function workHang(hang: Hang, panels: PanelsTreatment, say: Say): WorkingStep {
  const drop = hang.headingBelow < 0 ? `+ ${say.length(0 - hang.headingBelow)}` : `− ${say.length(hang.headingBelow)}`;
  const end = {
    floor: `− ${say.length(hang.by)}`,
    break: `+ ${say.length(hang.by)}`,
    puddle: `+ ${say.length(hang.by)}`,
    'full-puddle': `+ ${say.length(hang.by)}`,
    sill: `− ${say.length(hang.sill)} − ${say.length(hang.by)}`,
    apron: `− ${say.length(hang.sill)} + ${say.length(hang.by)}`,
  }[hang.to];
  const shortest = hang.readings.length > 1 ? ' (the shortest reading)' : '';
  const reach = {
    floor: 'clear of the floor',
    break: 'bent where it meets the floor',
    puddle: 'lying on the floor',
    'full-puddle': 'lying on the floor in folds',
    sill: 'clear of the sill',
    apron: 'below the sill',
  }[hang.to];
  return step(
    'finished-length',
    'finished length',
    `${say.length(hang.fixing)}${shortest} ${drop} ${end}`,
    say.length(panels.finishedLength),
    `fixing height, the drop to the top of the heading, ${reach}${isPracticed(hang, panels) ? ' (practice)' : ''}`,
  );
}

/** What was not written for this treatment is the practice's, where the hem ends. */
function isPracticed(hang: Hang, { practice }: PanelsTreatment): boolean {
  return hang.by === practice.hang[HANG_SETTINGS[hang.to]];
}

function workBay(bay: Bay, panels: PanelsTreatment, say: Say): WorkingStep {
  const runs = bay.runs.map((run) => say.length(run)).join(' + ');
  const corners = bay.turns
    .map((turn) => `2 × ${say.length(bay.projection)} × tan(${say.number(turn / 2)}°)`)
    .join(' − ');
  return step(
    'rod-face',
    'rod face round the bay',
    `${runs} − ${corners}`,
    say.length(panels.rodWidth),
    'each run loses projection × tan(half the turn) at each corner that it touches',
  );
}

function workArch(panels: PanelsTreatment, rise: number, say: Say): WorkingStep {
  const along = headingLength(panels);
  return step(
    'heading-length',
    'heading along the arch',
    `${say.length(panels.rodWidth)} wide, rising ${say.length(rise)}: ${say.number(along / panels.rodWidth, 3)} times the width`,
    say.length(along),
    'circular arch (a half circle is 1.571 times); cuts from the longest point; a paper template decides; it does not draw',
  );
}

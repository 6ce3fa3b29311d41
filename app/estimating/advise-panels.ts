/** What panels need said beside their price, whatever cloth hangs behind: common practice. */
import type { Advice } from '#shared/result.ts';
import { liesOnFloor } from '#shared/treatments/panels.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { HangingPlace } from './estimate.ts';

const COMMON = 'common practice';

export function advisePanels(panels: PanelsTreatment, place: HangingPlace | undefined): Advice[] {
  return advisePuddle(panels, place);
}

/** Cloth on the floor: where small children are it is a caution, and so it is above heat. */
function advisePuddle({ hang }: PanelsTreatment, place: HangingPlace | undefined): Advice[] {
  if (hang === null || !liesOnFloor(hang)) return [];
  const children = place?.use === 'nursery' || place?.use === 'child';
  const heat = place?.heatSourceBelow === true;
  const here = [
    ...(children ? ["This is a child's room: a hem off the floor is safer."] : []),
    ...(heat ? ['There is heat below this window: cloth must not lie against it.'] : []),
  ];
  return [
    {
      rule: 'puddle',
      level: children || heat ? 'caution' : 'note',
      says: [
        ...here,
        'Cloth on the floor trips and tempts small children and pets, and must not lie on a floor vent or a heater; it is lifted when the floor is cleaned.',
      ].join(' '),
      rests: `${COMMON}: a puddle is not for small children, pets and floor vents`,
    },
  ];
}

/** What panels need said beside their price, whatever cloth hangs behind: common practice. */
import type { Advice } from '#shared/result.ts';
import { liesOnFloor } from '#shared/treatments/panels.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { HOOKED, RINGS_OVERLAP, RINGS_RULE } from '#shared/treatments/rods.ts';
import type { HangingPlace } from '../estimate.ts';

const COMMON = 'common practice';

export function advisePanels(panels: PanelsTreatment, place: HangingPlace | undefined): Advice[] {
  return [...advisePuddle(panels, place), ...adviseOverlap(panels), ...adviseMotor(panels)];
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

/** Where nobody said which rod it is: `check-rod.ts` warns of rings that were asked for. */
function adviseOverlap({ rod, motor, heading, overlap, mount }: PanelsTreatment): Advice[] {
  const unsaid = rod === null && motor === null && mount.where === 'wall' && HOOKED.includes(heading);
  if (!unsaid || overlap <= RINGS_OVERLAP) return [];
  return [
    {
      rule: 'overlap-on-rings',
      level: 'note',
      says: `${RINGS_RULE}: a true overlap needs a track with a master arm. Say which rod it is.`,
      rests: `${COMMON}: rings on a pole butt, 0 to 1 in`,
    },
  ];
}

/** Wiring and parts are for licensed people; what the cloth weighs is not what the motor feels round a bend. */
function adviseMotor({ motor, bay }: PanelsTreatment): Advice[] {
  if (motor === null) return [];
  const bends = bay === null ? '' : ' Its rated load falls at every bend: ask the maker for this bay.';
  return [
    {
      rule: 'motor',
      level: 'caution',
      says: `The motor takes room at the ${motor} end of the track, where the cloth cannot stack: see the working.${bends} Its wiring is for those whom the local code lets do it, and the maker's rating decides.`,
      rests: `${COMMON}: a motor takes some inches at one end; rated load falls on bends`,
    },
  ];
}

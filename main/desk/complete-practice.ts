import { readPractice } from '#shared/job-file/read-practice.ts';
import type { WirePractice } from '#shared/job-file/wire-practice.ts';
import { practiceWithUnits } from '#shared/job-file/with-units.ts';
import { lengthIn } from '#shared/length.ts';
import type { LengthUnit, Ticks } from '#shared/length.ts';
import { defaultPractice } from '#shared/practice-defaults.ts';

/**
 * The practice of a job file, which stands over the documented defaults, made to say so itself: the decorator's own
 * practice, over which a project's is laid key by key, then changes nothing in it, and the job keeps its numbers.
 */
export function completePractice(given: WirePractice, unit: LengthUnit): WirePractice {
  const base = defaultPractice(unit);
  const shown = unit === 'in' ? 'in' : 'cm';
  const say = (length: Ticks): string => `${lengthIn(length, shown, 6)} ${shown}`;
  const { puddleHem, sheer } = readPractice(given, base, unit);
  return {
    // Empty: each heading, and each length of a group, is the default's.
    fullness: {},
    headingAllowance: {},
    remnant: {},
    leastFullness: {},
    spacing: {},
    tab: {},
    pocket: {},
    hang: {},
    band: {},
    layers: {},
    motor: {},
    stackback: {},
    lining: {},
    interlining: {},
    valance: {},
    cornice: {},
    swags: {},
    romanShade: {},
    bedSkirt: {},
    showerCurtain: {},
    fullnessOver: base.fullnessOver,
    bottomHem: say(base.bottomHem),
    sideHem: say(base.sideHem),
    hemsInWidth: base.hemsInWidth,
    seam: say(base.seam),
    squaring: say(base.squaring),
    shrinkage: base.shrinkage / 1e6,
    widthRounding: base.widthRounding,
    repeatRule: base.repeatRule,
    seamMatch: base.seamMatch,
    orderFrom: base.orderFrom,
    orderExtra: base.orderExtra,
    orderStep: say(base.orderStep),
    bracketSpacing: say(base.bracketSpacing),
    pleatsPerWidth: base.pleatsPerWidth,
    pleatsClothWidth: say(base.pleatsClothWidth),
    ...practiceWithUnits(given, unit),
    // These follow other settings while they are empty, so that they are said as they came out.
    puddleHem: say(puddleHem),
    sheer: { ...given.sheer, bottomHem: say(sheer.bottomHem), sideHem: say(sheer.sideHem) },
  };
}

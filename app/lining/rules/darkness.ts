import type { JudgedShade } from '../judge-input.ts';
import type { Rule } from './rule.ts';
import { AT_GLASS, COMMON } from './rule.ts';

/** Edges let in more than this share of the light through the cloth: the fit decides (light-and-heat 1). */
const FIT_DECIDES = 0.001;

/** How dark it gets, and what keeps it from being darker. */
export const DARKNESS_RULES: readonly Rule[] = [
  {
    id: 'needle-holes-body',
    cause: 'points-of-light',
    level: 'caution',
    costs: 0.3,
    when: (f) => f.holes && f.shade !== null,
    says: ({ shade }) =>
      `This shade is stitched through its body${sayStitched(shade)}: each stitch shows as a point of daylight, and nothing mends that.`,
    rests: `${COMMON}: a coated cloth keeps the hole a needle made; rings, tapes and ribs counted from the take-off`,
  },
  {
    id: 'needle-holes',
    cause: 'points-of-light',
    level: 'caution',
    where: AT_GLASS,
    when: (f) => f.holes && f.make !== 'flat',
    says: () =>
      'Each stitch through this blackout, at hems, seams and heading, shows as a point of daylight, and nothing mends that.',
    rests: `${COMMON}: a coated cloth keeps the hole a needle made; pleats and gathers are stitched through it`,
  },
  {
    id: 'needle-holes-hems',
    cause: 'points-of-light',
    level: 'note',
    to: 'client',
    where: AT_GLASS,
    when: (f) => f.holes && f.make === 'flat',
    says: () =>
      'Machine-sewn hems of this blackout show as rows of fine daylight, and nothing mends that: they are bonded or turned by hand from the start.',
    rests: `${COMMON}: a coated cloth keeps the hole a needle made`,
  },
  {
    id: 'sew-a-sample',
    cause: 'points-of-light',
    level: 'note',
    where: AT_GLASS,
    when: (f) => (f.softBlackout || f.dimOut) && !f.holes,
    says: (f) =>
      f.softBlackout
        ? 'Soft blackout closes round the needle; a sewn sample held to the light shows how well.'
        : 'Dim-out linings differ at the needle: sew through a sample and hold it to the light.',
    rests: `${COMMON}: dark linings differ, so sew through a sample and hold it to the light`,
  },
  {
    id: 'soft-blackout-nearly-dark',
    cause: 'not-dark',
    level: 'caution',
    when: (f) => f.use === 'nursery' && f.softBlackout && !f.dark && f.draws,
    says: () =>
      'Nearly dark, not dark: by day the sun is still seen. For daytime sleep add black cloth between face and lining.',
    rests: `${COMMON}: a soft blackout stops about 95 %; the remedy is face, interlining, black cloth, lining`,
  },
  {
    id: 'nursery-not-dark',
    cause: 'not-dark',
    level: 'caution',
    when: (f) => f.use === 'nursery' && !(f.nearlyDark && f.darkening) && f.draws,
    says: (f) =>
      f.interlined
        ? 'Dim, not dark: interlining alone does not make a nursery dark for daytime sleep.'
        : 'Not dark: a nursery needs a blackout lining for daytime sleep.',
    rests: `${COMMON}: a nursery must be dark; computed light through the cloth`,
  },
  {
    id: 'interlining-is-not-darkening',
    cause: 'not-dark',
    level: 'note',
    when: (f) => f.interlined && !f.darkening && (f.use === 'bedroom' || f.use === 'media' || f.use === 'child'),
    says: () => 'Dim, not dark: interlining quietens the light but does not darken a room by itself.',
    rests: COMMON,
  },
  {
    id: 'room-not-dark',
    cause: 'not-dark',
    level: 'note',
    when: (f) => !f.nearlyDark && f.draws && (f.use === 'media' || f.use === 'child'),
    says: () => 'Daylight still comes through; a blackout lining would darken this room.',
    rests: 'computed light through the cloth',
  },
  {
    id: 'light-inside-frame',
    cause: 'edges',
    level: 'note',
    to: 'client',
    when: (f) => f.nearlyDark && f.insideFrame && f.draws,
    says: () => 'Inside the frame a line of daylight stays down each side; hung before the frame it would be covered.',
    rests: 'computed: the clearance at each side of an inside mount; common practice',
  },
  {
    id: 'fit-decides',
    cause: 'edges',
    level: 'note',
    to: 'client',
    when: (f) => f.dark && f.draws && f.r.edges.open >= FIT_DECIDES,
    says: (f) =>
      f.shade === null
        ? 'How dark the room gets is now a matter of the fit: returns to the wall, a rod well above the glass, an overlap.'
        : 'How dark the room gets is now a matter of the fit: a shade before the frame, well past the glass on every side.',
    rests: 'computed: what goes round the cloth outshines what goes through it',
  },
  {
    id: 'lighter-edges',
    cause: 'lighter-edges',
    level: 'note',
    to: 'client',
    when: (f) => (f.blackout || f.blackCloth) && f.draws,
    says: () => 'Side hems, seams and the hem below the lining stay lighter than the rest.',
    rests: `${COMMON}: behind any blackout`,
  },
  {
    id: 'still-panels',
    cause: 'still-panels',
    level: 'note',
    when: (f) => f.stationary,
    says: (f) =>
      `These panels dress the window and do not draw: about ${f.r.say.percent(1 - f.r.covered)} of the glass stays clear, and they keep out little cold.`,
    rests: 'how the panels are made',
  },
];

/** ` (48 rings, 7 ribs)`, as the take-off counts them. */
function sayStitched(shade: JudgedShade | null): string {
  if (shade === null || shade.rings === null) return '';
  const rows = shade.style === 'flat' ? 'ribs' : 'rows of tape';
  const ribs = shade.ribs === null || shade.ribs === 0 ? '' : `, ${shade.ribs} ${rows}`;
  return ` (${shade.rings} rings${ribs})`;
}

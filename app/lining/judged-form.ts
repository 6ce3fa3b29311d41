/**
 * How the readings see a treatment: where it hangs, what it asks of its cloth, how it closes and its size. Kinds other
 * than panels are given the heading that they hang like.
 */
import type { Cloth } from '#shared/cloth.ts';
import { exhaustive } from '#shared/fault.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import type { SwagsTreatment } from '#shared/treatments/swags.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { isFull } from '#shared/treatments/valance.ts';
import type { ValanceTreatment } from '#shared/treatments/valance.ts';
import type { Heading } from '#shared/words.ts';
import type { MakeKind } from './body.ts';
import { isShadeSheet } from './light-and-heat/count-stitches.ts';
import type { JudgedTreatment } from './judge-input.ts';

/** What the take-off found: sizes of some kinds are reckoned from readings of the frame, rings are counted. */
export interface Taken {
  readonly finished: { readonly width: Ticks; readonly length: Ticks };
  readonly sheet?: object | null;
}

const NO_RETURNS = { left: ticks(0), right: ticks(0) };

export function judgedForm(
  treatment: Treatment,
  taken: Taken,
  clothOf: (id: string) => Cloth | null = () => null,
): JudgedTreatment {
  const { width, length } = taken.finished;
  const formed = (make: MakeKind, heading: Heading): Omit<JudgedTreatment, 'mount' | 'returns'> => ({
    kind: treatment.kind,
    heading,
    make,
    arrangement: 'single',
    rodWidth: width,
    finishedLength: length,
    overlap: ticks(0),
  });
  switch (treatment.kind) {
    case 'panels':
      return treatment;
    case 'valance': {
      const { make, heading } = formOfValance(treatment);
      const { mount, returns } = treatment;
      // The board or rod end to end; its returns are no part of what is before the window.
      return {
        ...formed(make, heading),
        mount,
        returns,
        rodWidth: treatment.width,
        onBoard: treatment.hang.by === 'board',
      };
    }
    case 'cornice': {
      const { mount, returns } = treatment;
      return { ...formed('flat', 'flat'), mount, returns, rodWidth: treatment.width, onBoard: true };
    }
    case 'swags': {
      const { mount, returns } = treatment;
      const formedSwags = { ...formed('swagged', 'pencil-pleat'), mount, returns, rodWidth: treatment.width };
      return {
        ...formedSwags,
        finishedLength: treatment.finishedLength,
        onBoard: true,
        ...tailsOf(treatment, clothOf),
      };
    }
    case 'roman-shade': {
      const { mount, returns } = treatment;
      const make = treatment.style === 'flat' ? 'flat' : 'folded';
      return { ...formed(make, 'flat'), mount, returns, onBoard: true, shade: shadeOf(treatment, taken.sheet ?? null) };
    }
    case 'bed-skirt': {
      const makes = { tailored: 'flat', gathered: 'gathered', 'box-pleated': 'pleated' } as const;
      const headings = { tailored: 'flat', gathered: 'pencil-pleat', 'box-pleated': 'box-pleat' } as const;
      const form = formed(makes[treatment.style], headings[treatment.style]);
      return { ...form, mount: { where: 'wall', above: ticks(0) }, returns: NO_RETURNS };
    }
    case 'shower-curtain': {
      const liner = treatment.liner.from !== 'none';
      return { ...formed('flat', 'grommet'), mount: { where: 'wall', above: ticks(0) }, returns: NO_RETURNS, liner };
    }
    default:
      return exhaustive(treatment);
  }
}

function formOfValance(valance: ValanceTreatment): { readonly make: MakeKind; readonly heading: Heading } {
  if (valance.style === 'box-pleated') return { make: 'pleated', heading: 'box-pleat' };
  if (!isFull(valance)) return { make: 'flat', heading: 'flat' };
  return { make: 'gathered', heading: valance.hang.by === 'rod' ? 'rod-pocket' : 'pencil-pleat' };
}

function tailsOf(swags: SwagsTreatment, clothOf: (id: string) => Cloth | null): Pick<JudgedTreatment, 'tails'> {
  if (swags.cascades === null && swags.jabots === null) return {};
  return { tails: { lining: swags.contrast === null ? null : clothOf(swags.contrast) } };
}

function shadeOf(shade: RomanShadeTreatment, sheet: object | null): JudgedTreatment['shade'] {
  const counted = isShadeSheet(sheet);
  return {
    style: shade.style,
    lift: shade.lift,
    rings: counted ? sheet.rings.count : null,
    ribs: counted ? sheet.ribs.length : null,
  };
}

/** Covers the window when it is drawn or let down. */
export function closesOver(treatment: Treatment): boolean {
  switch (treatment.kind) {
    case 'panels':
      return treatment.arrangement !== 'pair-stationary';
    case 'roman-shade':
      return true;
    default:
      return false;
  }
}

/** Closes the top over whatever hangs below it: a board or a box on the wall. */
export function isPelmet(treatment: Treatment): boolean {
  switch (treatment.kind) {
    case 'cornice':
    case 'swags':
      return treatment.mount.where !== 'inside';
    case 'valance':
      return treatment.hang.by === 'board' && treatment.mount.where !== 'inside';
    default:
      return false;
  }
}

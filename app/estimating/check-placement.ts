/** Refuses a placed pattern that this cloth cannot show on this make, with field, fault and remedy. */
import type { FaceCloth } from '#shared/cloth.ts';
import { at } from '#shared/fault.ts';
import type { Fault } from '#shared/fault.ts';
import { formatLengthWithUnit } from '#shared/format-length.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { isFull } from '#shared/treatments/valance.ts';
import { centreMotif } from './centre-motif.ts';
import { flatFace as corniceFace } from './cornice/measure-cornice.ts';
import { addedWidth, valanceWidth } from './roman-shade/cut-shade.ts';
import { pieceCentred } from './roman-shade/piece-width.ts';
import { sizeShade } from './roman-shade/size-shade.ts';
import { flatOf, isOnBias, rowOf } from './swags/measure-swags.ts';
import { layFlat } from './top-treatment/lay-flat.ts';
import { flatFace as valanceFace } from './valance/measure-valance.ts';

type Tell = (field: string, wrong: string, right: string) => void;

/** The making must have been found without fault. */
export function checkPlacement(treatment: Treatment, face: FaceCloth, lined: boolean, unit: LengthUnit): Fault[] {
  const { pattern } = treatment;
  const faults: Fault[] = [];
  const tell: Tell = (field, wrong, right) => {
    faults.push({ path: at(at(treatment.key, 'pattern'), field), wrong, right });
  };
  if (pattern === null) return [];
  if (face.repeat === null)
    tell('place', `is given, but ${face.name} has no repeat`, 'give the repeat of the cloth, or leave "pattern" out');
  if (treatment.kind === 'swags') checkSwags(treatment, tell);
  if (pattern.centred && faults.length === 0) checkCentred(treatment, face, lined, tell, unit);
  return faults;
}

/** Folds hide all but the middle of a swag; on the bias the pattern turns with the cloth (common practice). */
function checkSwags(swags: Extract<Treatment, { kind: 'swags' }>, tell: Tell): void {
  if (swags.pattern?.place !== 'middle')
    tell(
      'place',
      `is ${swags.pattern?.place ?? ''} on swags, whose folds take the pattern up`,
      'give "middle": a motif in the middle of each swag, or leave "pattern" out',
    );
  if (isOnBias(swags, rowOf(swags).width))
    tell(
      'place',
      'is given for swags on the bias, where the pattern turns by 45 degrees',
      'give "onBias": false, or leave "pattern" out',
    );
}

function checkCentred(treatment: Treatment, face: FaceCloth, lined: boolean, tell: Tell, unit: LengthUnit): void {
  const say = (value: number): string => formatLengthWithUnit(value, unit);
  const gathered = gathersUp(treatment);
  if (gathered !== null)
    return tell('centred', `is asked of ${gathered}`, 'leave it out: folds break up what stands in the middle');
  const across = face.repeat?.horizontal ?? null;
  if (across === null || across === 0)
    return tell(
      'centred',
      `is asked, but the repeat across of ${face.name} is not known`,
      'give the horizontal repeat of the cloth, or leave it out',
    );
  const motif = treatment.pattern?.motifAcross ?? null;
  if (motif !== null && motif >= face.usableWidth)
    return tell(
      'motifAcross',
      `${say(motif)} lies beyond the usable width of ${face.name}`,
      `give less than ${say(face.usableWidth)}`,
    );
  if (bringsAbout(treatment, face, lined)) return;
  if (motif === null)
    tell(
      'centred',
      `is asked, but a repeat of ${say(across)} across leaves too little of ${say(face.usableWidth)} about a motif that may lie anywhere`,
      'give "motifAcross", from the left edge of the usable width to the middle of a motif',
    );
  else
    tell(
      'centred',
      `is asked, but no widths of ${face.name} read on about a motif ${say(motif)} from its edge`,
      'choose another cloth, or leave it out',
    );
}

/** Named where folds take up what would stand in the middle; else null. */
function gathersUp(treatment: Treatment): string | null {
  switch (treatment.kind) {
    case 'panels':
      return 'panels';
    case 'bed-skirt':
      return 'a bed skirt';
    case 'shower-curtain':
      return 'a shower curtain';
    case 'valance':
      return isFull(treatment) ? `a ${treatment.style} valance` : null;
    case 'cornice':
    case 'roman-shade':
    case 'swags':
      return null;
  }
}

/** True where some number of widths has a motif in the middle of every piece that shall have one. */
function bringsAbout(treatment: Treatment, face: FaceCloth, lined: boolean): boolean {
  const { pattern, practice } = treatment;
  const isFlat = (of: Parameters<typeof layFlat>[0]): boolean =>
    layFlat(of, face, pattern, practice.seam).centred !== undefined;
  switch (treatment.kind) {
    case 'valance':
      return isFlat(valanceFace(treatment));
    case 'cornice':
      return isFlat(corniceFace(treatment));
    case 'swags':
      return isFlat({ total: flatOf(treatment, rowOf(treatment).width).width, leftMore: 0 });
    case 'roman-shade': {
      const own = treatment.practice.romanShade;
      const size = sizeShade(treatment);
      const centred = centreMotif(pattern, face, own.seam);
      const widths = [size.width, ...(treatment.valance === null ? [] : [valanceWidth(treatment, size)])];
      const added = addedWidth(treatment, lined);
      return centred !== null && widths.every((width) => pieceCentred(face, width, added, own, centred) !== null);
    }
    case 'panels':
    case 'bed-skirt':
    case 'shower-curtain':
      return false;
  }
}

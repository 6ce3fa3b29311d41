/** Cloth by its id, and cloth with every value that a judgement needs: what was missing is typical and said so. */
import { LIGHT_BANDS } from '#shared/cloth.ts';
import type {
  BackCloth,
  Cloth,
  ClothSpectra,
  FaceCloth,
  Hand,
  LightBand,
  Optics,
  SourcedValue,
} from '#shared/cloth.ts';
import { visibleShare, xyzOfHex } from '../light-and-heat/colour.ts';
import type { Layer } from '../light-and-heat/compose-layers.ts';
import { STIFFNESS_OF_HAND } from './hand.ts';
import { nameLiningWeight } from './lining-weight.ts';
import type { LiningWeight } from './lining-weight.ts';
import { BANDS_NM } from '../light-and-heat/observer.ts';
import { StackFault } from '../stack-fault.ts';
import { isGenericId, OFF_WHITE, STARTER_CLOTH } from './starter-cloth.ts';
import { typicalValues } from './typical-values.ts';

/** The cloth of this id: the job's own, else the program's generic one, else null. */
export function resolveCloth(id: string, ownCloth: readonly Cloth[]): Cloth | null {
  const own = ownCloth.find((cloth) => cloth.id === id);
  if (own !== undefined) return own;
  return isGenericId(id) ? STARTER_CLOTH[id] : null;
}

/** No cloth is blacker than this by diffuse light, and none sends back and passes more than this together (assumed). */
const LEAST_REFLECTANCE = 0.03;
const MOST_REFLECTANCE = 0.9;

/** Values that can be missing; the last part of an entry of `assumed`. */
export type AssumedValue =
  | 'transmittance'
  | 'reflectance'
  | 'uv.transmittance'
  | 'uv.reflectance'
  | 'solar.transmittance'
  | 'solar.reflectance'
  | 'weight'
  | 'colour'
  | 'shade';

export const BAND_NAMES = LIGHT_BANDS;
export type BandName = LightBand;

/** A layer ready to be judged. Optics are of the side towards the room. */
export interface FilledCloth {
  readonly cloth: Cloth;
  readonly visible: Optics;
  readonly uv: Optics;
  readonly solar: Optics;
  /** Reflectance towards the street. */
  readonly street: Readonly<Record<BandName, number>>;
  /** Measured band by band; null where the shade gives the shape. */
  readonly spectra: ClothSpectra | null;
  /** The visible transmittance is right within this; null where nobody said. */
  readonly within: number | null;
  /** Grams a square metre. */
  readonly weight: number;
  /** Millimetres, lying loose; typical of the family unless told. */
  readonly thickness: number;
  readonly stiffness: number;
  /** `white`, `ivory`, `neutral` (a face whose colour nobody gave) or `#rrggbb`. */
  readonly shade: string;
  /** Values of this cloth that nobody measured. */
  readonly assumed: readonly AssumedValue[];
}

/** Grams a square metre, and whether that is a typical value of the family rather than the cloth's own. */
export function weightOf(cloth: Cloth): { readonly gramsPerM2: number; readonly assumed: boolean } {
  const assumed = cloth.weight === null || isStarterValue(cloth, 'weight') || isGuess(cloth, 'weight');
  return { gramsPerM2: cloth.weight ?? typicalValues(cloth).weight, assumed };
}

/**
 * Fills what is missing. Throws `StackFault`: `impossible-optics` when a given pair cannot be, `missing-spectrum` when a
 * spectrum has not its 16 bands, `impossible-number` for a thickness or shrinkage that cannot be.
 */
export function fillCloth(cloth: Cloth): FilledCloth {
  checkOptics(cloth.id, '', cloth.visible);
  checkOptics(cloth.id, 'uv', cloth.uv);
  checkOptics(cloth.id, 'solar', cloth.solar);
  const spectra = cloth.spectra ?? null;
  checkSpectra(cloth.id, spectra);
  checkMeasures(cloth);
  const typical = typicalValues(cloth);
  const { lone } = cloth;
  for (const band of BAND_NAMES) checkOptics(cloth.id, band, { transmittance: 0, reflectance: 0, ...lone?.[band] });
  const seen = cloth.visible ?? visibleOfSpectra(spectra);
  const visible = cloth.visible ?? withLone(seen ?? visibleByColour(cloth, typical.visible), lone?.visible);
  const uv = cloth.uv ?? withLone(alongVisible(typical.uv, typical.visible, visible), lone?.uv);
  const solar = cloth.solar ?? withLone(alongVisible(typical.solar, typical.visible, visible), lone?.solar);
  const weight = weightOf(cloth);
  return {
    cloth,
    visible,
    uv,
    solar,
    street: streetOf(cloth, { visible, uv, solar }),
    spectra,
    within: isTold(cloth, 'visible', 'transmittance') ? (cloth.transmittanceWithin ?? null) : null,
    weight: weight.gramsPerM2,
    thickness: cloth.thickness ?? typical.thickness,
    stiffness: cloth.hand === undefined ? stiffnessOf(cloth, weight.gramsPerM2) : STIFFNESS_OF_HAND[cloth.hand],
    shade: shadeOf(cloth),
    assumed: listAssumed(cloth, seen !== null, weight.assumed),
  };
}

/** Among woven linings 7 oz a square yard is firm by its make and not by its weight alone, 10 a luxury weight (common practice). */
function stiffnessOf(cloth: Cloth, weight: number): number {
  const { stiffness } = typicalValues(cloth);
  if (cloth.role !== 'lining' || cloth.family !== 'standard') return stiffness;
  const hand = HAND_OF_WEIGHT[nameLiningWeight(weight)];
  return hand === undefined ? stiffness : STIFFNESS_OF_HAND[hand];
}

const HAND_OF_WEIGHT: Readonly<Partial<Record<LiningWeight, Hand>>> = { firm: 'firm', luxury: 'medium' };

function listAssumed(cloth: Cloth, seen: boolean, weight: boolean): AssumedValue[] {
  const { sources } = cloth;
  const sourceOf = {
    transmittance: sources?.transmittance,
    reflectance: sources?.reflectance ?? sources?.transmittance,
  };
  const isAssumed = (band: BandName, share: keyof Optics): boolean => {
    const told = isTold(cloth, band, share) || (band === 'visible' && seen);
    const source = band === 'visible' ? sourceOf[share] : sources?.[band];
    return !told || source === 'assumed' || isStarterValue(cloth, band);
  };
  const assumed: AssumedValue[] = [];
  for (const share of ['transmittance', 'reflectance'] as const) if (isAssumed('visible', share)) assumed.push(share);
  for (const band of ['uv', 'solar'] as const)
    for (const share of ['transmittance', 'reflectance'] as const)
      if (isAssumed(band, share)) assumed.push(`${band}.${share}`);
  if (weight) assumed.push('weight');
  const coloured = cloth.spectra !== undefined && !isGuess(cloth, 'spectra');
  if (cloth.role === 'face' && cloth.colour === null && !coloured) assumed.push('colour');
  if (cloth.role !== 'face' && cloth.shade === null && !coloured) assumed.push('shade');
  return assumed;
}

/** Somebody gave this share, of a whole pair or by itself. */
function isTold(cloth: Cloth, band: BandName, share: keyof Optics): boolean {
  return cloth[band] !== null || cloth.lone?.[band]?.[share] !== undefined;
}

/** The share that was given, with the other as it would be, as far as light is left for it. */
function withLone(estimate: Optics, lone: Partial<Optics> | undefined): Optics {
  const { transmittance, reflectance } = lone ?? {};
  if (transmittance !== undefined)
    return { transmittance, reflectance: Math.min(estimate.reflectance, 1 - transmittance) };
  if (reflectance !== undefined)
    return { reflectance, transmittance: Math.min(estimate.transmittance, 1 - reflectance) };
  return estimate;
}

/** She said of it herself that it is a guess. */
function isGuess(cloth: Cloth, value: SourcedValue): boolean {
  return cloth.sources?.[value] === 'assumed';
}

/** One layer in one band, street side and room side. */
export function layerIn(filled: Pick<FilledCloth, BandName | 'street'>, band: BandName): Layer {
  const { transmittance, reflectance } = filled[band];
  return { Tf: transmittance, Tb: transmittance, Rb: reflectance, Rf: filled.street[band] };
}

function streetOf(cloth: Cloth, room: Readonly<Record<BandName, Optics>>): Readonly<Record<BandName, number>> {
  const side = (band: BandName): number => {
    const told = cloth.streetReflectance?.[band];
    if (told === undefined) return room[band].reflectance;
    // Beside an estimate of what passes nothing is at fault: what is told of the street side is held within it.
    if (!isTold(cloth, band, 'transmittance') && told >= 0 && told <= 1)
      return Math.min(told, 1 - room[band].transmittance);
    checkOptics(cloth.id, `streetReflectance.${band}`, { ...room[band], reflectance: told });
    return told;
  };
  return { visible: side('visible'), uv: side('uv'), solar: side('solar') };
}

function visibleOfSpectra(spectra: ClothSpectra | null): Optics | null {
  if (spectra === null) return null;
  return { transmittance: visibleShare(spectra.transmittance), reflectance: visibleShare(spectra.reflectance) };
}

function checkSpectra(id: string, spectra: ClothSpectra | null): void {
  if (spectra === null) return;
  for (const key of ['transmittance', 'reflectance'] as const) {
    if (spectra[key].length === BANDS_NM.length) continue;
    throw new StackFault('missing-spectrum', {
      path: `${id}.spectra.${key}`,
      wrong: `has ${spectra[key].length} bands`,
      right: `give ${BANDS_NM.length} shares, 400 to 700 nm by 20 nm`,
    });
  }
  BANDS_NM.forEach((nm, i) => {
    const pair = { transmittance: spectra.transmittance[i] ?? Number.NaN, reflectance: spectra.reflectance[i] ?? 0 };
    checkOptics(id, `spectra at ${nm} nm`, pair);
  });
}

function checkMeasures(cloth: Cloth): void {
  const shares = [cloth.shrinkage?.length, cloth.shrinkage?.width, cloth.transmittanceWithin];
  const wrong = [
    ...(cloth.thickness === undefined || (cloth.thickness > 0 && cloth.thickness < 100) ? [] : ['thickness']),
    ...(shares.every((share) => share === undefined || (share >= 0 && share < 1)) ? [] : ['shrinkage']),
  ][0];
  if (wrong === undefined) return;
  throw new StackFault('impossible-number', {
    path: `${cloth.id}.${wrong}`,
    wrong: 'cannot be of any cloth',
    right: wrong === 'thickness' ? 'give millimetres above 0' : 'give shares from 0 to 1: 0.03 is 3 %',
  });
}

/**
 * Without measured values a face of a known colour sends back what its colour says, and a deep one passes less by the
 * same measure: an estimate, marked.
 */
function visibleByColour(cloth: Cloth, typical: Optics): Optics {
  if (cloth.role !== 'face' || cloth.colour === null) return typical;
  const shown = xyzOfHex(cloth.colour).Y / 100;
  const reflectance = Math.min(MOST_REFLECTANCE - typical.transmittance, Math.max(LEAST_REFLECTANCE, shown));
  return { reflectance, transmittance: Math.min(1, reflectance / typical.reflectance) * typical.transmittance };
}

/** A cloth measured by eye alone passes other bands in the same measure as its family does: an estimate, marked. */
function alongVisible(band: Optics, typical: Optics, visible: Optics): Optics {
  if (visible.transmittance === typical.transmittance && visible.reflectance === typical.reflectance) return band;
  const transmittance = Math.min(1, (band.transmittance * visible.transmittance) / typical.transmittance);
  const wished = (band.reflectance * visible.reflectance) / typical.reflectance;
  return { transmittance, reflectance: Math.min(wished, 1 - transmittance) };
}

/** The shade whose spectrum stands for a layer: a lining is white, an interlining off-white unless it says otherwise. */
function shadeOf(cloth: Cloth): string {
  if (cloth.role === 'face') return cloth.colour ?? 'neutral';
  return cloth.shade ?? (cloth.role === 'lining' ? 'white' : OFF_WHITE);
}

function isStarterValue(cloth: Cloth, value: 'weight' | 'visible' | 'uv' | 'solar'): boolean {
  if (!isGenericId(cloth.id)) return false;
  const shipped = STARTER_CLOTH[cloth.id];
  if (value === 'weight') return shipped.weight === cloth.weight;
  const mine = cloth[value];
  const theirs = shipped[value];
  return (
    mine !== null &&
    theirs !== null &&
    mine.transmittance === theirs.transmittance &&
    mine.reflectance === theirs.reflectance
  );
}

function checkOptics(id: string, band: string, optics: Optics | null): void {
  if (optics === null) return;
  const path = band === '' ? id : `${id}.${band}`;
  for (const key of ['transmittance', 'reflectance'] as const) {
    if (!(optics[key] >= 0 && optics[key] <= 1)) {
      throw new StackFault('impossible-optics', {
        path: `${path}.${key}`,
        wrong: `${optics[key]} is not a share of the light`,
        right: 'give a number from 0 to 1',
      });
    }
  }
  const sum = optics.transmittance + optics.reflectance;
  if (sum > 1 + 1e-9) {
    throw new StackFault('impossible-optics', {
      path,
      wrong: `transmittance ${optics.transmittance} and reflectance ${optics.reflectance} make ${Number(sum.toPrecision(4))}`,
      right: 'their sum is at most 1: what is neither passed nor sent back is absorbed',
    });
  }
}

/**
 * The face and what hangs behind it, filled, room to street. Throws `StackFault` when the first is no face (`no-face`)
 * or another face stands behind it (`two-faces`).
 */
export function fillStack(
  face: FaceCloth,
  behind: readonly BackCloth[],
): { readonly face: FilledCloth; readonly behind: readonly FilledCloth[] } {
  checkRoles([face, ...behind]);
  return { face: fillCloth(face), behind: behind.map(fillCloth) };
}

/** Throws `StackFault` unless the first cloth is a face and no other is. */
export function checkRoles(stack: readonly Cloth[]): void {
  if (stack[0]?.role !== 'face') {
    throw new StackFault('no-face', {
      path: 'face',
      wrong: stack[0] === undefined ? 'no cloth is given' : `${stack[0].id} is a ${stack[0].role}`,
      right: 'the layer towards the room is a face cloth',
    });
  }
  const second = stack.findIndex((cloth, i) => i > 0 && cloth.role === 'face');
  if (second > 0) {
    throw new StackFault('two-faces', {
      path: `behind[${second - 1}]`,
      wrong: `${stack[second]?.id ?? ''} is a second face cloth`,
      right: 'behind the face stand only linings and interlinings',
    });
  }
}

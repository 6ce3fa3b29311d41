/** Cloth by its id, and cloth with every value that a judgement needs: what was missing is typical and said so. */
import type { BackCloth, Cloth, FaceCloth, Optics } from '#shared/cloth.ts';
import { xyzOfHex } from './colour.ts';
import { StackFault } from './stack-fault.ts';
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

/** A layer ready to be judged. */
export interface FilledCloth {
  readonly cloth: Cloth;
  readonly visible: Optics;
  readonly uv: Optics;
  readonly solar: Optics;
  /** Grams a square metre. */
  readonly weight: number;
  /** Millimetres, lying loose; always typical of the family. */
  readonly thickness: number;
  readonly stiffness: number;
  /** `white`, `ivory`, `neutral` (a face whose colour nobody gave) or `#rrggbb`. */
  readonly shade: string;
  /** Values of this cloth that nobody measured. */
  readonly assumed: readonly AssumedValue[];
}

/** Grams a square metre, and whether that is a typical value of the family rather than the cloth's own. */
export function weightOf(cloth: Cloth): { readonly gramsPerM2: number; readonly assumed: boolean } {
  const assumed = cloth.weight === null || isStarterValue(cloth, 'weight');
  return { gramsPerM2: cloth.weight ?? typicalValues(cloth).weight, assumed };
}

/** Fills what is missing. Throws `StackFault` (`impossible-optics`) when a given pair cannot be. */
export function fillCloth(cloth: Cloth): FilledCloth {
  checkOptics(cloth.id, '', cloth.visible);
  checkOptics(cloth.id, 'uv', cloth.uv);
  checkOptics(cloth.id, 'solar', cloth.solar);
  const typical = typicalValues(cloth);
  const visible = cloth.visible ?? visibleByColour(cloth, typical.visible);
  const assumed: AssumedValue[] = [];
  if (cloth.visible === null || isStarterValue(cloth, 'visible')) assumed.push('transmittance', 'reflectance');
  if (cloth.uv === null || isStarterValue(cloth, 'uv')) assumed.push('uv.transmittance', 'uv.reflectance');
  if (cloth.solar === null || isStarterValue(cloth, 'solar')) assumed.push('solar.transmittance', 'solar.reflectance');
  const weight = weightOf(cloth);
  if (weight.assumed) assumed.push('weight');
  if (cloth.role === 'face' && cloth.colour === null) assumed.push('colour');
  if (cloth.role !== 'face' && cloth.shade === null) assumed.push('shade');
  return {
    cloth,
    visible,
    uv: cloth.uv ?? alongVisible(typical.uv, typical.visible, visible),
    solar: cloth.solar ?? alongVisible(typical.solar, typical.visible, visible),
    weight: weight.gramsPerM2,
    thickness: typical.thickness,
    stiffness: typical.stiffness,
    shade: shadeOf(cloth),
    assumed,
  };
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

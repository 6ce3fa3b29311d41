/**
 * No cut may be longer than a whole piece of its cloth, whatever the kind: asked of the cuts themselves, with heading,
 * hem, shrinkage and all. The making must have been found without fault.
 */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Fault } from '#shared/fault.ts';
import { at } from '#shared/fault.ts';
import { formatLengthWithUnit } from '#shared/format-length.ts';
import { lengthFrom } from '#shared/length.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import type { CutGroup } from './cut-group.ts';
import type { Estimate, EstimateGiven } from './estimate.ts';
import { speaker } from './say.ts';

type ClothOf = (id: string) => Cloth | null;

interface Made {
  readonly estimate: Pick<Estimate, 'takeoff'>;
  readonly cuts: readonly CutGroup[];
}

/** `make` takes the treatment off under this face and these layers. It is asked only where a whole piece is known. */
export function checkBolts(
  treatment: Treatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  unit: LengthUnit,
  clothOf: ClothOf,
  make: (given: EstimateGiven) => Made,
): Fault[] {
  const named = [...otherCloth(treatment)].map(([id, field]) => ({ cloth: clothOf(id), field }));
  const cloths = [...[face, ...behind].map((cloth) => ({ cloth, field: null })), ...named];
  if (!cloths.some(({ cloth }) => boltOf(cloth) !== null)) return [];
  // Neither weight, words nor labour matter here.
  const made = make({ massOf: () => 0, clothOf, say: speaker(unit, 'en-US'), billableWidth: lengthFrom(54, 'in') });
  const say = (length: number): string => formatLengthWithUnit(length, unit);
  return cloths.flatMap(({ cloth, field }) => {
    const bolt = boltOf(cloth);
    const longest = cloth === null ? 0 : longestCut(treatment, made, cloth);
    if (cloth === null || bolt === null || longest <= bolt) return [];
    return [
      {
        path: (field ?? [usualField(treatment, cloth)]).reduce<string>(at, treatment.key),
        wrong: `a cut of ${say(longest)} is longer than a whole piece of ${cloth.name} (${say(bolt)})`,
        right: 'choose another cloth, or a shorter treatment',
      },
    ];
  });
}

function boltOf(cloth: Cloth | null): number | null {
  return cloth?.supply?.bolt ?? null;
}

/** Cloth run sideways is told by piece for panels; another run of strips may be joined wherever a piece ends. */
function longestCut(treatment: Treatment, { estimate, cuts }: Made, cloth: Cloth): number {
  const lengths = estimate.takeoff
    .filter((line) => line.cloth === cloth.id)
    .map((line) => {
      if (line.railroaded) return treatment.kind === 'panels' ? line.cutLength / treatment.pieces : 0;
      const own = cuts.filter((cut) => cut.cloth === line.cloth && cut.layer === line.layer);
      return Math.max(line.plainCut, ...own.map(({ length }) => length));
    });
  return Math.max(0, ...lengths);
}

function usualField(treatment: Treatment, cloth: Cloth): string {
  if (treatment.kind === 'panels') return 'finishedLength';
  return cloth.role === 'face' ? 'face' : 'stacks';
}

/** Cloth that is neither face nor layer, with the field that names it. */
function otherCloth(treatment: Treatment): ReadonlyMap<string, readonly (string | number)[]> {
  switch (treatment.kind) {
    case 'panels':
      return new Map(treatment.bands.map(({ cloth }, index) => [cloth, ['bands', index, 'cloth']]));
    case 'bed-skirt':
      return treatment.deck === null ? new Map() : new Map([[treatment.deck, ['deck']]]);
    case 'shower-curtain':
      return treatment.liner.from === 'cloth' ? new Map([[treatment.liner.cloth, ['liner']]]) : new Map();
    case 'swags':
      return treatment.contrast === null ? new Map() : new Map([[treatment.contrast, ['contrast']]]);
    case 'valance':
    case 'cornice':
    case 'roman-shade':
      return new Map();
  }
}

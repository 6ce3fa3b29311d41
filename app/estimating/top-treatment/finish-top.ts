/** From the pieces of every cloth to lines, cut groups, weight and their working. */
import type { Cloth } from '#shared/cloth.ts';
import type { Practice } from '#shared/practice.ts';
import type { TakeoffLine, WorkingStep } from '#shared/result.ts';
import { GRAMS_PER_OUNCE } from '#shared/weight.ts';
import type { CutGroup } from '../cut-group.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';
import { groupCuts, takeLine } from './lay-pieces.ts';
import type { Parcel } from './lay-pieces.ts';
import { keyOf, workParcel } from './work-parcel.ts';

const GRAMS_PER_POUND = 16 * GRAMS_PER_OUNCE;

export interface FinishedTop {
  readonly figures: {
    readonly takeoff: readonly TakeoffLine[];
    readonly grams: number;
    readonly cuts: readonly CutGroup[];
  };
  /** The line of the face. */
  readonly main: TakeoffLine;
  readonly working: readonly WorkingStep[];
}

/** `parcels`: the face first. */
export function finishTop(
  parcels: readonly Parcel[],
  practice: Practice,
  say: Say,
  massOf: (cloth: Cloth) => number,
): FinishedTop {
  const [first] = parcels;
  if (!first) throw new Error('a treatment has a face');
  const takeoff = parcels.map((parcel) => takeLine(parcel, practice));
  const grams = takeoff.reduce((sum, line) => sum + line.grams, 0);
  return {
    figures: { takeoff, grams, cuts: parcels.flatMap(groupCuts) },
    main: takeLine(first, practice),
    working: [
      ...parcels.flatMap((parcel, index) => {
        const line = takeoff[index];
        return line ? workParcel(parcel, line, practice, keyOf(parcel, first), say) : [];
      }),
      workWeight(parcels, grams, say, massOf),
    ],
  };
}

function workWeight(
  parcels: readonly Parcel[],
  grams: number,
  say: Say,
  massOf: (cloth: Cloth) => number,
): WorkingStep {
  const hung = parcels.filter((parcel) => parcel.grams > 0);
  const parts = hung.map(
    ({ cloth, grams: own }) => `${cloth.name} ${say.number(own, 0)} g at ${say.number(massOf(cloth), 0)} g/m²`,
  );
  const total =
    say.unit === 'in' ? `${say.number(grams / GRAMS_PER_POUND, 1)} lb` : `${say.number(grams / 1000, 1)} kg`;
  return step(
    'weight',
    'weight of the cloth',
    parts.join(' + '),
    total,
    'all of the quantity; board, rod and box left out',
  );
}

/** How the face of each kind hangs, as far as its pattern asks: how long it is, and what lies above its finished top. */
import { exhaustive } from '#shared/fault.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Thousandths } from '#shared/practice.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { faceCut } from '../cornice/measure-cornice.ts';
import { headingTurn } from './heading-turn.ts';
import { topOfShade } from '../roman-shade/top-of-shade.ts';
import { sizeShade } from '../roman-shade/size-shade.ts';
import { topOf } from '../valance/measure-valance.ts';

export interface HungCloth {
  /** Finished, top to hem. */
  readonly length: Ticks;
  /** Cloth of the cut above the finished top. */
  readonly turn: Ticks;
  /** Cloth over the way that it hangs down: 1000, more where it hangs in folds. */
  readonly fullness: Thousandths;
}

export function hungCloth(treatment: Treatment, lined: boolean): HungCloth {
  switch (treatment.kind) {
    case 'panels':
      return { length: treatment.finishedLength, turn: headingTurn(treatment, lined), fullness: 1000 };
    case 'valance':
      return { length: treatment.finishedLength, turn: sum(topOf(treatment)), fullness: 1000 };
    case 'cornice':
      return { length: treatment.finishedLength, turn: topOfCornice(treatment), fullness: 1000 };
    case 'swags': {
      const { flatDepth, boardTurn } = treatment.practice.swags;
      return { length: treatment.finishedLength, turn: boardTurn, fullness: flatDepth };
    }
    case 'roman-shade':
      return { length: sizeShade(treatment).length, turn: topOfShade(treatment, lined), fullness: foldsOf(treatment) };
    case 'bed-skirt':
      return { length: treatment.drop, turn: treatment.practice.bedSkirt.topSeam, fullness: 1000 };
    case 'shower-curtain':
      return { length: treatment.finishedLength, turn: treatment.practice.showerCurtain.topHem, fullness: 1000 };
    default:
      return exhaustive(treatment);
  }
}

function sum(lengths: readonly { readonly length: number }[]): Ticks {
  return ticks(lengths.reduce((all, { length }) => all + length, 0));
}

/** Half of what the cut has beside its height and squaring: over the padding and to the back of the board. */
function topOfCornice(cornice: Extract<Treatment, { kind: 'cornice' }>): Ticks {
  return sum(faceCut(cornice).length.filter(({ times }) => times === 2));
}

function foldsOf(shade: RomanShadeTreatment): Thousandths {
  return shade.style === 'soft-fold' ? shade.practice.romanShade.softFoldFullness : 1000;
}

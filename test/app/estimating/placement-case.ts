/** Treatments of any kind in one room, on one patterned cloth, read by the program's own reader, and their take-offs. */
import { checkTreatment, estimateTreatment } from '#app/estimating/estimate-treatment.ts';
import type { MadeTreatment } from '#app/estimating/estimate-treatment.ts';
import { speaker } from '#app/estimating/say.ts';
import { resolveCloth, weightOf } from '#app/lining/cloth/resolve-cloth.ts';
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import { sayFault } from '#shared/fault.ts';
import type { Fault } from '#shared/fault.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import type { ReadJob } from '#shared/job-file/read-job.ts';
import { lengthFrom } from '#shared/length.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';

type Loose = Readonly<Record<string, unknown>>;

export interface PlacementCase {
  /** Fields of each treatment over those of its kind; each hangs in an opening of its own. */
  readonly treatments: readonly Loose[];
  readonly cloth?: Loose;
  readonly behind?: readonly string[];
  readonly practice?: Loose;
  readonly ceiling?: number;
  /** Fields of each opening. */
  readonly openings?: readonly Loose[];
}

/** What a kind needs besides its name, so that each test names only what it is about. */
const USUAL: Readonly<Record<string, Loose>> = {
  panels: { heading: 'pinch-pleat', arrangement: 'pair', rodWidth: 72, finishedLength: 84, return: 0, overlap: 0 },
  valance: { style: 'tailored', width: 40, finishedLength: 16, return: 0, board: { depth: 3.5 } },
  cornice: { width: 40, finishedLength: 14, return: 4 },
  swags: { style: 'separate', width: 40, finishedLength: 18, onBias: false, return: 0 },
  'roman-shade': {
    ...{ style: 'flat', mount: { where: 'wall', above: 0 }, return: 0 },
    size: { basis: 'finished', width: 27, length: 58 },
  },
  'bed-skirt': { style: 'tailored', bed: { width: 60, length: 80 }, drop: 14 },
  'shower-curtain': { finishedWidth: 72, finishedLength: 72 },
};

/** Allowances that the figures of the tests rest on. */
const PRACTICE = {
  valance: { boardTurnFrom: 'board-depth', sideHem: 1, wrap: 0, facedSeam: 0.5, bottomHem: 2, boardCover: 'none' },
  cornice: { wrap: 2, padding: 1, boardCover: 'none' },
  swags: { flatDepth: 1.8, flatWidth: 1.25, boardTurn: 2, boardCover: 'none' },
};

export function placementJob(given: PlacementCase): Loose {
  return {
    ...{ linenfold: 1, units: 'in', currency: 'USD', client: { name: 'Invented client' }, priceBook: 'example' },
    practice: { ...PRACTICE, ...given.practice },
    cloth: [
      {
        ...{ id: 'face', role: 'face', width: 54, price: '42.00/yd' },
        repeat: { vertical: 27, horizontal: 13.5 },
        ...given.cloth,
      },
    ],
    rooms: [
      {
        ...{ name: 'Room', use: 'living' },
        ...(given.ceiling === undefined ? {} : { ceiling: given.ceiling }),
        openings: given.treatments.map((treatment, index) => ({
          ...{ name: `Window ${index + 1}`, width: 60, height: 54, sill: 30, ...given.openings?.[index] },
          treatments: [
            {
              ...{ name: 'Treatment', face: 'face' },
              ...USUAL[String(treatment['kind'])],
              stacks: { good: { behind: given.behind ?? [] } },
              ...treatment,
            },
          ],
        })),
      },
    ],
  };
}

export function readPlacement(given: PlacementCase): ReadJob {
  return readJob(placementJob(given));
}

export interface Placed {
  readonly treatment: Treatment;
  readonly face: FaceCloth;
  readonly faults: readonly Fault[];
  /** Throws where there are faults. */
  readonly made: () => MadeTreatment;
}

export function placedCases(given: PlacementCase): readonly Placed[] {
  const read = readPlacement(given);
  if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
  const { job } = read;
  const clothOf = (id: string) => resolveCloth(id, job.cloth);
  const face = clothOf('face');
  if (face?.role !== 'face') throw new Error('the case has no face');
  const behind = (given.behind ?? []).map(clothOf).filter((cloth): cloth is BackCloth => cloth?.role === 'lining');
  return job.rooms.flatMap(({ openings }) =>
    openings.flatMap(({ treatments }) =>
      treatments.map((treatment): Placed => {
        const faults = checkTreatment(treatment, face, behind, 'in', clothOf);
        return {
          treatment,
          face,
          faults,
          made: () => {
            if (faults.length > 0) throw new Error(faults.map(sayFault).join('\n'));
            return estimateTreatment(treatment, face, behind, {
              massOf: (cloth) => weightOf(cloth).gramsPerM2,
              clothOf,
              say: speaker('in', 'en-US'),
              billableWidth: lengthFrom(54, 'in'),
            });
          },
        };
      }),
    ),
  );
}

export function placedCase(given: Omit<PlacementCase, 'treatments'> & { readonly treatment: Loose }): Placed {
  const { treatment, ...more } = given;
  const [only] = placedCases({ ...more, treatments: [treatment] });
  if (!only) throw new Error('nothing was read');
  return only;
}

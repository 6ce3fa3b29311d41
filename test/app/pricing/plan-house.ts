/** Invented houses of panels in one cloth, for the joint plan: what a test changes, the rest usual. */
import type { ClothPlan } from '#app/plan/plan-cloth.ts';
import { planJob } from '#app/pricing/plan-job.ts';
import type { PlanOptions, WorkLaid } from '#app/pricing/plan-work.ts';
import { sayFault } from '#shared/fault.ts';
import type { Job } from '#shared/job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import type { WireCutting } from '#shared/job-file/wire-cutting.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';

export interface HouseGiven {
  /** Over 54 in wide face cloth without a repeat. */
  readonly cloth?: object;
  /** Each in a window of its own: `Window 1`, `Window 2`. */
  readonly windows: readonly object[];
  readonly practice?: WireJob['practice'];
  readonly cutting?: WireCutting;
}

/** Panels by widths, so that the number of cuts is known: 84 in finished is a plain cut of 100 in. */
export function houseOf({ cloth, windows, practice, cutting }: HouseGiven): WireJob {
  return {
    linenfold: 1,
    units: 'in',
    currency: 'USD',
    client: { name: 'Invented' },
    practice: { orderStep: '0.25 yd', ...practice },
    priceBook: 'example',
    cloth: [{ id: 'face', role: 'face', width: 54, price: '42.00/yd', ...cloth }],
    ...(cutting === undefined ? {} : { cutting }),
    rooms: [
      {
        name: 'Room',
        use: 'bedroom',
        openings: windows.map((fields, index) => ({
          name: `Window ${index + 1}`,
          width: 60,
          height: 54,
          treatments: [
            {
              name: 'Panels',
              kind: 'panels',
              heading: 'pinch-pleat',
              arrangement: 'pair',
              mount: { where: 'wall' },
              face: 'face',
              rodWidth: 72,
              finishedLength: 84,
              widths: 2,
              return: 0,
              overlap: 0,
              stacks: { good: { behind: [] }, better: { behind: [] }, best: { behind: [] } },
              ...fields,
            },
          ],
        })),
      },
    ],
  };
}

export function readHouse(wire: WireJob): Job {
  const read = readJob(wire);
  if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
  return read.job;
}

/** The plan of the face cloth, which there has to be. */
export function planHouse(given: HouseGiven, of: WorkLaid = 'good', options: PlanOptions = {}): ClothPlan {
  const { plans, faults } = planJob(readHouse(houseOf(given)), of, options);
  const [found] = plans;
  if (found === undefined) throw new Error(faults.map(sayFault).join('\n'));
  return found;
}

/** The faults of a house whose cutting is wrong, read or laid. */
export function faultsOfHouse(given: HouseGiven): string[] {
  const read = readJob(houseOf(given));
  if (!read.ok) return read.faults.map(sayFault);
  return planJob(read.job, 'good').faults.map(sayFault);
}

/** One treatment of panels from a few wire fields, read by the program's own reader, and its take-off. */
import { estimatePanels } from '#app/estimating/panels/estimate-panels.ts';
import type { Estimate } from '#app/estimating/estimate.ts';
import { speaker } from '#app/estimating/say.ts';
import { resolveCloth, weightOf } from '#app/lining/cloth/resolve-cloth.ts';
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import type { WirePanels } from '#shared/job-file/wire-panels.ts';
import { sayFault } from '#shared/fault.ts';
import { lengthFrom, lengthIn } from '#shared/length.ts';
import type { LengthUnit } from '#shared/length.ts';

type WireFace = Extract<NonNullable<WireJob['cloth']>[number], { role: 'face' }>;
type WireBack = Exclude<NonNullable<WireJob['cloth']>[number], { role: 'face' }>;

export interface PanelsCase {
  readonly units?: LengthUnit;
  readonly panels?: Partial<WirePanels>;
  readonly cloth?: Partial<WireFace>;
  /** Own linings, with an id each. */
  readonly linings?: readonly WireBack[];
  readonly behind?: readonly string[];
  readonly practice?: WireJob['practice'];
  /** More cloth, such as a contrast. */
  readonly more?: WireJob['cloth'];
  readonly sill?: number;
}

export const PLAIN_PRACTICE: WireJob['practice'] = {};

export function jobOf(given: PanelsCase): WireJob {
  return {
    linenfold: 1,
    units: given.units ?? 'in',
    currency: 'USD',
    client: { name: 'Invented client' },
    priceBook: 'example',
    ...(given.practice ? { practice: given.practice } : {}),
    cloth: [
      { id: 'face', role: 'face', width: 54, price: '42.00/yd', ...given.cloth },
      ...(given.linings ?? []),
      ...(given.more ?? []),
    ],
    rooms: [
      {
        name: 'Room',
        use: 'living',
        openings: [
          {
            name: 'Window',
            width: 60,
            height: 54,
            ...(given.sill === undefined ? {} : { sill: given.sill }),
            treatments: [
              {
                name: 'Panels',
                kind: 'panels',
                heading: 'pinch-pleat',
                arrangement: 'pair',
                face: 'face',
                rodWidth: 72,
                finishedLength: 84,
                return: 0,
                ...((given.panels?.arrangement ?? 'pair') === 'pair' ? { overlap: 0 } : {}),
                ...given.panels,
              },
            ],
          },
        ],
      },
    ],
  };
}

export interface ReadPanels {
  readonly panels: PanelsTreatment;
  readonly face: FaceCloth;
  readonly behind: BackCloth[];
  readonly cloths: readonly Cloth[];
}

export function readPanels(given: PanelsCase): ReadPanels {
  const read = readJob(jobOf(given));
  if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
  const panels = read.job.rooms[0]?.openings[0]?.treatments[0];
  const face = resolveCloth('face', read.job.cloth);
  if (panels?.kind !== 'panels' || face?.role !== 'face') throw new Error('the case has no panels');
  const behind = (given.behind ?? []).map((id) => {
    const cloth = resolveCloth(id, read.job.cloth);
    if (!cloth || cloth.role === 'face') throw new Error(`no lining ${id}`);
    return cloth;
  });
  return { panels, face, behind, cloths: read.job.cloth };
}

export interface CaseResult extends Estimate {
  /** A length of the estimate in the case's units. */
  readonly in: (ticks: number) => number;
  readonly yards: (ticks: number) => number;
}

export function estimateCase(given: PanelsCase): CaseResult {
  const { panels, face, behind, cloths } = readPanels(given);
  const units = given.units ?? 'in';
  const estimate = estimatePanels(panels, face, behind, {
    massOf: (cloth) => weightOf(cloth).gramsPerM2,
    clothOf: (id) => resolveCloth(id, cloths),
    say: speaker(units, 'en-US'),
    billableWidth: lengthFrom(54, 'in'),
  });
  return { ...estimate, in: (value) => lengthIn(value, units), yards: (value) => lengthIn(value, 'yd') };
}

/** The line of the face. */
export function faceLine(estimate: Estimate): Estimate['takeoff'][number] {
  const line = estimate.takeoff[0];
  if (!line) throw new Error('no take-off');
  return line;
}

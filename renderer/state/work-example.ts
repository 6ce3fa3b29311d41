/** A worked example of the help: read, reckoned and drawn by the program itself, in the reader's units. */
import { describeDrawn } from '#app/drawing/describe-drawn.ts';
import { drawRoom } from '#app/drawing/draw-room.ts';
import { drawWorkSheet } from '#app/drawing/draw-work-sheet.ts';
import type { Bounds, Drawing } from '#app/drawing/shape.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { priceJob } from '#app/pricing/price-job.ts';
import type { Fault } from '#shared/fault.ts';
import type { Job, Opening, Room } from '#shared/job.ts';
import { mapLengths } from '#shared/job-file/map-lengths.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { wireJob } from '#shared/job-file/wire-job.ts';
import type { TierResult, WorkingStep } from '#shared/result.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { EXAMPLE_CLOTH } from '../words/help/examples.ts';
import type { Example } from '../words/help/examples.ts';

export type HelpUnit = 'in' | 'cm';

export interface WorkedExample {
  readonly job: Job;
  readonly room: Room;
  readonly opening: Opening;
  readonly treatment: Treatment;
  /** Under the first of the three stacks, as the program chose it. */
  readonly made: TierResult;
}

/** The same example for those who measure in centimetres: two and a half to the inch keeps its figures round. */
const CENTIMETRES_TO_AN_INCH = 2.5;

export type WorkedAnswer =
  { readonly ok: true; readonly worked: WorkedExample } | { readonly ok: false; readonly faults: readonly Fault[] };

export function workExample(example: Example, unit: HelpUnit): WorkedAnswer {
  const inches = {
    linenfold: 1,
    units: unit,
    currency: 'USD',
    client: { name: 'Example (invented)' },
    priceBook: 'example',
    cloth: EXAMPLE_CLOTH,
    rooms: [
      {
        name: 'Example',
        use: example.use,
        ceiling: 108,
        openings: [{ ...example.opening, treatments: [example.treatment] }],
      },
    ],
  };
  const given =
    unit === 'in'
      ? inches
      : mapLengths(wireJob, inches, (length) =>
          typeof length === 'number' ? length * CENTIMETRES_TO_AN_INCH : length,
        );
  const read = readJob(given);
  if (!read.ok) return read;
  const result = priceJob(read.job, read.warnings);
  const room = read.job.rooms[0];
  const opening = room?.openings[0];
  const treatment = opening?.treatments[0];
  const priced = result.treatments[0];
  if (!room || !opening || !treatment || !priced) return { ok: false, faults: result.faults };
  return { ok: true, worked: { job: read.job, room, opening, treatment, made: priced.tiers.good } };
}

/** Steps of the take-off alone: what the working holds besides the readings. */
export function takeOffSteps({ made }: WorkedExample): readonly WorkingStep[] {
  const judged = new Set(made.judgement.working.map((step) => step.id));
  return made.working.filter((step) => !judged.has(step.id));
}

interface Sheet {
  readonly width: number;
  readonly height: number;
  /** With its dimension lines. */
  readonly dimensioned: boolean;
}

export function drawExample(worked: WorkedExample, { width, height, dimensioned }: Sheet): Drawing {
  const { job, room, opening, treatment, made } = worked;
  return drawRoom({
    room: {
      key: room.key,
      name: room.name,
      ceiling: room.ceiling,
      openings: [{ ...opening, treatments: [describeDrawn(treatment, made, (id) => resolveCloth(id, job.cloth))] }],
    },
    width,
    height,
    units: job.units,
    selected: dimensioned ? opening.key : null,
    detail: 'screen',
  });
}

export function drawExampleWork({ job, treatment, made }: WorkedExample, width: number): Drawing {
  return drawWorkSheet({
    treatment,
    made,
    clothOf: (id) => resolveCloth(id, job.cloth),
    units: job.units,
    width,
    detail: 'screen',
  });
}

/** The treatment alone, without wall and names: a target of the elevation knows where its picture stands. */
export function partOfExample(drawing: Drawing, { opening }: WorkedExample): Bounds | null {
  for (const shape of drawing.shapes)
    if (shape.kind === 'group' && shape.key === opening.key && shape.bounds)
      return { ...shape.bounds, height: shape.bounds.height - NAME_HEIGHT };
  return null;
}

/** What an opening's name takes under the floor, in points. */
const NAME_HEIGHT = 16;

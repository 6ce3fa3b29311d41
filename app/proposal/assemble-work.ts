/** Puts together what the workroom is handed. Pure: the same job, result and choices always give the same paper. */
import type { Job } from '#shared/job.ts';
import { decimalSign } from '#shared/locale.ts';
import type { JobResult, TierResult } from '#shared/result.ts';
import { PARTS } from '#shared/parts.ts';
import type { Tier } from '#shared/words.ts';
import { drawWorkRows } from '#app/drawing/draw-work-sheet.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { listWindows } from './listed-window.ts';
import type { ListedWindow } from './listed-window.ts';
import { workNotes } from './work-notes.ts';
import { nameTreatment, sayMeasures } from './say-treatment.ts';
import { speechOf } from './speak.ts';
import type { Speech } from './speak.ts';
import type { WorkPage, WorkPaper } from './work-paper.ts';
import { stepText, takeoffTable } from './write-working.ts';

export interface WorkGivenPaper {
  /** ISO date. */
  readonly date: string;
  /** `2026-014`; null leaves it out. */
  readonly number: string | null;
  /** The option that was chosen, by the treatment's key; the advised one where it says nothing. */
  readonly chosen: Readonly<Record<string, Tier>>;
}

/** Content width of the paper, in points. */
const PAPER_WIDTH = 504;

/** A sheet for each treatment that has a result, in the order of the rooms. */
export function assembleWork(job: Job, result: JobResult, given: WorkGivenPaper): WorkPaper {
  const speech = speechOf(job);
  const windows = listWindows(job, result);
  const reference =
    given.number === null || given.number.trim() === '' ? 'Work sheets' : `Work sheets for ${given.number.trim()}`;
  return {
    form: 1,
    language: 'en',
    title: `${reference}, ${job.client.name}`,
    date: given.date,
    dated: speech.date(given.date),
    letterhead: { name: job.letterhead.name },
    client: job.client.name,
    reference,
    pages: windows.map((window, index) => {
      const tier = given.chosen[window.treatment.key] ?? window.result.advised.tier;
      return writePage(job, result, window, tier, `sheet ${index + 1} of ${windows.length}`, speech);
    }),
  };
}

function writePage(
  job: Job,
  result: JobResult,
  window: ListedWindow,
  tier: Tier,
  count: string,
  speech: Speech,
): WorkPage {
  const { treatment } = window;
  const made = window.result.tiers[tier];
  const find = (id: string) => resolveCloth(id, job.cloth);
  const face = find(made.stack.face)?.name ?? made.stack.face;
  return {
    key: treatment.key,
    room: window.room.name,
    opening: window.name,
    count,
    words: `${nameTreatment(treatment, face)}, ${sayMeasures(treatment, made, speech)}.`,
    option: `${job.proposal.tierNames[tier]}: ${made.title}`,
    stack: [
      { place: 'face', cloth: face },
      ...made.stack.behind.map((id) => ({ place: find(id)?.role ?? 'layer', cloth: find(id)?.name ?? id })),
    ],
    drawings: drawWorkRows({
      treatment,
      made,
      clothOf: find,
      units: job.units,
      decimal: decimalSign(job.locale),
      width: PAPER_WIDTH,
      detail: 'paper',
    }),
    takeoff: takeoffTable(job, made, speech),
    parts: partsOf(made),
    steps: ownSteps(made).map(stepText),
    notes: workNotes(job, result, window, made, speech),
  };
}

/** Steps of the take-off: those that the readings rest on are the decorator's. */
function ownSteps(made: TierResult): TierResult['working'] {
  const judged = new Set(made.judgement.working.map((step) => JSON.stringify(step)));
  return made.working.filter((step) => !judged.has(JSON.stringify(step)));
}

/** Hardware and notions by their price lines, without the prices. */
function partsOf(made: TierResult): readonly string[] {
  const kinds = new Set(Object.values(PARTS).map((part): string => part.kind));
  return (made.price?.lines ?? []).filter((line) => kinds.has(line.kind)).map((line) => line.label);
}

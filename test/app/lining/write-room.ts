/** A room of the reference folder as a page that somebody can read: every option with its words, readings, advice and why. */
import { speaker } from '#app/estimating/say.ts';
import { chooseStacks } from '#app/lining/choose/choose-stacks.ts';
import type { ChooseInput } from '#app/lining/choose/choose-stacks.ts';
import { explainFamily } from '#app/lining/choose/explain-stack.ts';
import { judgeOpening } from '#app/lining/judge-opening.ts';
import type { HungTreatment } from '#app/lining/judge-opening.ts';
import { listReadings } from '#app/lining/say/list-readings.ts';
import { isUnlit } from '#app/lining/reckon-stack.ts';
import { placeOf } from '#app/lining/place-of-kind.ts';
import { staysDrawn } from '#app/lining/stays-drawn.ts';
import { behindOf, faceOf } from '#app/pricing/job-pricing.ts';
import type { JobPricing } from '#app/pricing/job-pricing.ts';
import { RateBook } from '#app/pricing/pick-rates.ts';
import { priceTreatment } from '#app/pricing/price-treatment.ts';
import { studyStacks } from '#app/pricing/study-stacks.ts';
import { sayFault } from '#shared/fault.ts';
import type { Job, Opening, Room } from '#shared/job.ts';
import { readJobText } from '#shared/job-file/read-job.ts';
import type { TierResult, TreatmentResult } from '#shared/result.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { TIERS } from '#shared/words.ts';

export function readRoom(text: string): Job {
  const read = readJobText(text);
  if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
  return read.job;
}

function pricingOf(job: Job): JobPricing {
  const rates = new RateBook(job.priceBook);
  const planned = { good: [], better: [], best: [] };
  return { job, rates, say: speaker(job.units, job.locale), faults: [], warnings: [], planned };
}

export interface StudiedTreatment {
  readonly treatment: Treatment;
  readonly result: TreatmentResult;
  readonly choose: ChooseInput;
  readonly hung: Omit<HungTreatment, 'drawn'>;
}

export interface StudiedOpening {
  readonly room: Room;
  readonly opening: Opening;
  readonly treatments: readonly StudiedTreatment[];
}

export function studyRoom(job: Job): readonly StudiedOpening[] {
  const pricing = pricingOf(job);
  return job.rooms.flatMap((room) =>
    room.openings.map((opening) => ({
      room,
      opening,
      treatments: opening.treatments.map((treatment) => study(room, opening, treatment, pricing)),
    })),
  );
}

function study(room: Room, opening: Opening, treatment: Treatment, pricing: JobPricing): StudiedTreatment {
  const result = priceTreatment(room, opening, treatment, pricing);
  const face = faceOf(pricing, treatment.face);
  if (result === null || face === null) throw new Error(pricing.faults.map(sayFault).join('\n'));
  const judged = studyStacks(room, opening, treatment, pricing);
  const advised = judged(face, behindOf(pricing, result.tiers[result.advised.tier].stack.behind));
  return {
    treatment,
    result,
    hung: { name: treatment.name, input: advised.input },
    choose: {
      face,
      room,
      opening: advised.input.opening,
      treatment: advised.input.treatment,
      ownCloth: pricing.job.cloth,
      judge: (behind) => judged(face, behind).judgement,
      given: Object.fromEntries(Object.entries(treatment.stacks).map(([tier, stack]) => [tier, stack.behind])),
    },
  };
}

/** The page. Prices are left out: they are checked elsewhere. */
export function writeRoom(job: Job, about: string): string {
  const parts = [`_${about}_`, ...studyRoom(job).map((studied) => writeOpening(studied))];
  return `${parts.join('\n\n')}\n`;
}

function writeOpening({ room, opening, treatments }: StudiedOpening): string {
  const facts = [
    room.use,
    room.facing === null ? 'facing unknown' : `faces ${room.facing}`,
    `${room.climate} climate`,
    `${opening.glazing} glass`,
    ...(opening.heatSourceBelow ? ['heat below'] : []),
  ];
  return [
    `# ${room.name}, ${opening.name}`,
    `${facts.join(', ')}.`,
    ...treatments.map((each) => writeTreatment(each)),
    ...writeTogether(room, treatments),
  ].join('\n\n');
}

function writeTreatment({ treatment, result, choose, hung }: StudiedTreatment): string {
  const chosen = chooseStacks(choose);
  const asked = TIERS.every((tier) => result.tiers[tier].chosen === null);
  const whyNot = asked || chosen.notChosen === null ? [] : [chosen.notChosen.why];
  const table = {
    ...chosen,
    stacks: {
      good: { behind: result.tiers.good.stack.behind, why: '' },
      better: { behind: result.tiers.better.stack.behind, why: '' },
      best: { behind: result.tiers.best.stack.behind, why: '' },
    },
  };
  const askedBlackout = (['blackout-3-pass', 'blackout-soft'] as const)
    .map((family) => explainFamily(choose, table, family))
    .filter((each) => each.verdict !== 'chosen' && each.behind.join('+') !== chosen.notChosen?.behind.join('+'));
  const blackout = isUnlit(placeOf(treatment.kind)) ? [] : askedBlackout.map((each) => each.says);
  const readings = listReadings(hung.input).map(
    (each) =>
      `- ${each.label}: ${round(each.value)}${unit(each.unit)} (${round(each.range[0])} to ${round(each.range[1])}). Rests on: ${each.rests}.`,
  );
  return [
    `## ${treatment.name} (${treatment.kind})`,
    `Advised: ${result.advised.tier}. ${result.advised.why}`,
    ...TIERS.map((tier) => writeTier(tier, result.tiers[tier])),
    ...[...new Set([...whyNot, ...blackout])].map((text) => `> ${text}`),
    '### Readings of the advised option',
    readings.join('\n'),
  ].join('\n\n');
}

function writeTier(name: string, tier: TierResult): string {
  const { words, advice } = tier.judgement;
  const same = tier.chosen?.sameAs;
  if (same !== undefined) return [`### ${name}: the same as ${same}`, tier.chosen?.why ?? ''].join('\n\n');
  // What no daylight is behind has only its body to tell of.
  const shown = Object.entries(words).filter(
    ([reading]) => reading === 'body' || words.fade.words !== 'no sun behind it',
  );
  const told = shown.map(([reading, { words: said, figure }]) => {
    const figures = figure === '' ? '' : ` (${figure})`;
    return `${reading} ${said}${figures}`;
  });
  const who = tier.chosen === null ? 'Asked for by hand.' : tier.chosen.why;
  return [
    `### ${name}: ${tier.title}`,
    tier.says,
    `Why: ${who}`,
    `${told.join('; ')}.`,
    advice.map((each) => `- ${each.level} (${each.rule}): ${each.says}`).join('\n'),
  ]
    .filter((text) => text !== '')
    .join('\n\n');
}

/** By night and by day, where more than one hangs before the window: a sheer stays drawn by day. */
function writeTogether(room: Room, treatments: readonly StudiedTreatment[]): string[] {
  const hung = treatments.filter((each) => placeOf(each.treatment.kind) !== 'away').map((each) => each.hung);
  const [first, second] = hung;
  if (!first || !second) return [];
  const atNight = hung.map((each) => ({ ...each, drawn: true }));
  const byDay = hung.map((each) => ({ ...each, drawn: staysDrawn(each.input.face, each.input.treatment.kind) }));
  const [night, day] = [atNight, byDay].map((all) =>
    judgeOpening(room, first.input.opening, all)
      .working.map((step) => `- ${step.label}: ${step.value}`)
      .join('\n'),
  );
  if (night === undefined || day === undefined) return [];
  if (night === day) return [`### All together\n\n${night}`];
  const sheer = byDay.some((each) => each.drawn);
  return [
    `### All together by night, drawn\n\n${night}`,
    `### All together by day, ${sheer ? 'the sheer drawn' : 'open'}\n\n${day}`,
  ];
}

function round(value: number): string {
  return Number(value.toPrecision(3)).toString();
}

function unit(text: string): string {
  return text === '' ? '' : ` ${text}`;
}

/** The decorator's appendix: what each option was reckoned from. No client sees it. */
import type { Job } from '#shared/job.ts';
import type { JobResult, TierResult, WorkingStep } from '#shared/result.ts';
import { GRAMS_PER_OUNCE } from '#shared/weight.ts';
import { TIERS } from '#shared/words.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import type { ListedWindow } from './listed-window.ts';
import type { PaperWorking, WorkingStepText, WorkingTable } from './proposal-paper.ts';
import { nameCloth } from './listed-window.ts';
import { nameTreatment, sayMeasures } from './say-treatment.ts';
import { NBSP } from './speak.ts';
import type { Speech } from './speak.ts';
import { NO_PRICE } from './write-summary.ts';

export function writeWorking(job: Job, result: JobResult, window: ListedWindow, speech: Speech): PaperWorking {
  const { tiers, advised } = window.result;
  const shared = sharedSteps(TIERS.map((tier) => tiers[tier].working));
  const says = [
    `${nameTreatment(window.treatment, nameCloth(job, window))}, ${sayMeasures(window.treatment, tiers[advised.tier], speech)}.`,
    `Advised: ${job.proposal.tierNames[advised.tier]}. ${advised.why}`,
    ...result.warnings
      .filter((warning) => warning.path.startsWith(window.treatment.key))
      .map((warning) => `Unlikely: ${warning.says}`),
  ];
  return {
    title: `${window.room.name}, ${window.name}`,
    says,
    options: [
      {
        title: 'The same for all three',
        says: [],
        tables: [],
        steps: tiers.good.working.filter((step) => shared.has(keyOf(step))).map(stepText),
      },
      ...TIERS.map((tier) => {
        const made = tiers[tier];
        const same = made.chosen?.sameAs;
        if (made.chosen !== null && same !== undefined) {
          const { tierNames } = job.proposal;
          return {
            title: `${tierNames[tier]}: the same as ${tierNames[same]}`,
            says: [made.chosen.why],
            tables: [],
            steps: [],
          };
        }
        return {
          title: `${job.proposal.tierNames[tier]}: ${made.title}`,
          says: sayOption(made, job, speech),
          tables: [takeoffTable(job, made, speech), priceTable(made, speech)],
          steps: made.working.filter((step) => !shared.has(keyOf(step))).map(stepText),
        };
      }),
    ].filter((option) => option.tables.length > 0 || option.steps.length > 0 || option.says.length > 0),
  };
}

function sayOption(made: TierResult, job: Job, speech: Speech): readonly string[] {
  const weight =
    job.units === 'in'
      ? `${speech.number(made.grams / (16 * GRAMS_PER_OUNCE), 1)}${NBSP}lb`
      : `${speech.number(made.grams / 1000, 1)}${NBSP}kg`;
  return [
    `Weight on the rod ${weight}, without hardware.`,
    ...(made.chosen === null ? [] : [`Chosen for you: ${made.chosen.why}`]),
    ...(made.offer === null ? [] : [made.offer.says]),
    ...(made.judgement.assumed.length === 0
      ? []
      : [`Typical values are assumed where none was entered: ${sayAssumed(made, job)}.`]),
  ];
}

/** `Larch stripe (reflectance, transmittance)`, from `larch.transmittance` and its like. */
function sayAssumed(made: TierResult, job: Job): string {
  const byCloth = new Map<string, string[]>();
  for (const entry of made.judgement.assumed) {
    const id = made.takeoff.map((line) => line.cloth).find((cloth) => entry.startsWith(`${cloth}.`));
    const name = id === undefined ? '' : (resolveCloth(id, job.cloth)?.name ?? id);
    const value = id === undefined ? entry : entry.slice(id.length + 1);
    const band = value.split('.')[0] ?? value;
    const values = byCloth.get(name) ?? [];
    const word = BANDS[band] ?? band;
    if (!values.includes(word)) values.push(word);
    byCloth.set(name, values);
  }
  return [...byCloth.entries()].map(([name, values]) => `${name} (${values.join(', ')})`.trim()).join('; ');
}

/** What is assumed, in the words of a sample card. */
const BANDS: Readonly<Partial<Record<string, string>>> = {
  transmittance: 'light',
  reflectance: 'light',
  uv: 'ultraviolet',
  solar: 'sun',
};

/** Each cloth with its widths, cuts and order. */
export function takeoffTable(job: Job, made: TierResult, speech: Speech): WorkingTable {
  return {
    title: 'Take-off',
    columns: [
      { label: 'cloth', align: 'start' },
      { label: 'widths', align: 'end' },
      { label: 'cuts', align: 'end' },
      { label: 'cut length', align: 'end' },
      { label: 'by the chart', align: 'end' },
      { label: 'laid out', align: 'end' },
      { label: 'order', align: 'end' },
    ],
    rows: made.takeoff.map((line) => [
      resolveCloth(line.cloth, job.cloth)?.name ?? line.cloth,
      line.halfWidths === null ? 'sideways' : speech.fullness(line.halfWidths * 500),
      String(line.cuts),
      speech.length(line.cutLength),
      speech.cloth(line.handbook),
      speech.cloth(line.plan),
      speech.cloth(line.order),
    ]),
    total: null,
  };
}

function priceTable(made: TierResult, speech: Speech): WorkingTable {
  return {
    title: 'Price',
    columns: [
      { label: 'line', align: 'start' },
      { label: 'reckoned', align: 'start' },
      { label: 'amount', align: 'end' },
    ],
    rows: (made.price?.lines ?? []).map((line) => [line.label, line.formula, speech.money(line.amount)]),
    total: ['before tax', '', made.price === null ? NO_PRICE : speech.money(made.price.total)],
  };
}

function keyOf(step: WorkingStep): string {
  return JSON.stringify([step.label, step.formula, step.value]);
}

/** Steps that every option has word for word. */
function sharedSteps(workings: readonly (readonly WorkingStep[])[]): ReadonlySet<string> {
  const [first = [], ...others] = workings.map((working) => working.map(keyOf));
  return new Set(first.filter((key) => others.every((keys) => keys.includes(key))));
}

export function stepText(step: WorkingStep): WorkingStepText {
  return { label: step.label, formula: step.formula, value: step.value, rests: step.rests };
}

/** The result of a job in its wire form: what `price --json` prints and what a proposal freezes. */
import type { Job } from '#shared/job.ts';
import type { WireResult } from '#shared/job-file/wire-result.ts';
import { lengthIn } from '#shared/length.ts';
import type { AcceptedLine, JobResult, TakenPattern, TakeoffLine, TierResult } from '#shared/result.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { roundFigure } from './round-figure.ts';

type WireTakeoff = WireResult['treatments'][number]['tiers']['good']['takeoff'][number];
type WirePattern = NonNullable<WireTakeoff['pattern']>;

/** Lengths in the job's units to four decimals. Throws when the job has faults or missing rates: those are told instead. */
export function writeResult(job: Job, result: JobResult): WireResult {
  if (result.totals === null) throw new Error('a job with faults or missing rates has no result');
  const { totals } = result;
  return {
    linenfold: 1,
    units: job.units,
    currency: job.currency,
    exampleRates: result.exampleRates,
    treatments: result.treatments.map((treatment) => ({
      path: treatment.path,
      kind: treatment.kind,
      finished: {
        width: lengthIn(treatment.finished.width, job.units),
        length: lengthIn(treatment.finished.length, job.units),
      },
      advised: treatment.advised,
      notChosen: treatment.notChosen && { ...treatment.notChosen, behind: [...treatment.notChosen.behind] },
      tiers: {
        good: writeTier(job, treatment.tiers.good),
        better: writeTier(job, treatment.tiers.better),
        best: writeTier(job, treatment.tiers.best),
      },
    })),
    plan: result.plan.map((line) => ({ cloth: line.cloth, tier: line.tier, ...writePlanned(line) })),
    ...(result.accepted === null
      ? {}
      : { accepted: result.accepted.map((line) => ({ cloth: line.cloth, ...writePlanned(line) })) }),
    totals: {
      good: { ...totals.good, taxes: [...totals.good.taxes] },
      better: { ...totals.better, taxes: [...totals.better.taxes] },
      best: { ...totals.best, taxes: [...totals.best.taxes] },
    },
    warnings: [...result.warnings],
  };
}

function writePlanned(line: AcceptedLine): Omit<WireResult['plan'][number], 'cloth' | 'tier'> {
  return {
    yards: lengthIn(line.plan, 'yd'),
    metres: lengthIn(line.plan, 'm'),
    orderYards: lengthIn(line.order, 'yd'),
    orderMetres: lengthIn(line.order, 'm'),
    handbookYards: lengthIn(line.handbook, 'yd'),
    handbookMetres: lengthIn(line.handbook, 'm'),
    bound: lengthIn(line.bound, 'yd'),
    aloneYards: lengthIn(line.alone, 'yd'),
    orderAloneYards: lengthIn(line.orderAlone, 'yd'),
    bolts: line.bolts,
    ...(line.unlaid === 0 ? {} : { unlaid: line.unlaid }),
  };
}

function writeTier(job: Job, tier: TierResult): WireResult['treatments'][number]['tiers']['good'] {
  const { judgement } = tier;
  if (tier.price === null) throw new Error('a tier without a price has no result');
  return {
    stack: { face: tier.stack.face, behind: [...tier.stack.behind] },
    chosen: tier.chosen,
    title: tier.title,
    says: tier.says,
    takeoff: tier.takeoff.map((line) => writeLine(job, line)),
    weight: { grams: roundFigure(tier.grams, 1) },
    ...writeDrawnBack(job, tier),
    readings: judgement.readings,
    ranges: Object.fromEntries(Object.entries(judgement.ranges).map(([name, range]) => [name, [...range]])),
    words: judgement.words,
    assumed: [...judgement.assumed],
    advice: [...judgement.advice],
    price: { total: tier.price.total, lines: [...tier.price.lines] },
    offer: tier.offer && {
      widths: tier.offer.halfWidths / 2,
      fullnessMade: roundFigure(tier.offer.fullnessMade, 4),
      says: tier.offer.says,
    },
    working: [...tier.working],
  };
}

/** What stands on the wall when it is drawn back; nothing of what does not draw to a side. */
function writeDrawnBack(
  job: Job,
  { stackback, clearing }: TierResult,
): Pick<WireResult['treatments'][number]['tiers']['good'], 'stackback' | 'rodToClear'> {
  if (stackback === null) return {};
  const { least, usual, most } = stackback;
  return {
    stackback: {
      least: lengthIn(least, job.units),
      usual: lengthIn(usual, job.units),
      most: lengthIn(most, job.units),
    },
    ...(clearing ? { rodToClear: { rod: lengthIn(clearing.rod, job.units), widths: clearing.halfWidths / 2 } } : {}),
  };
}

function writeLine(job: Job, line: TakeoffLine): WireTakeoff {
  return {
    cloth: line.cloth,
    name: resolveCloth(line.cloth, job.cloth)?.name ?? line.cloth,
    role: line.role,
    layer: line.layer,
    ...(line.use === undefined ? {} : { use: line.use }),
    widths: line.halfWidths === null ? null : line.halfWidths / 2,
    railroaded: line.railroaded,
    cuts: line.cuts,
    fullnessMade: line.fullnessMade === null ? null : roundFigure(line.fullnessMade, 4),
    plainCut: lengthIn(line.plainCut, job.units),
    cutLength: lengthIn(line.cutLength, job.units),
    repeatsPerCut: line.repeatsPerCut,
    length: lengthIn(line.handbook, job.units),
    yards: lengthIn(line.handbook, 'yd'),
    metres: lengthIn(line.handbook, 'm'),
    planYards: lengthIn(line.plan, 'yd'),
    planMetres: lengthIn(line.plan, 'm'),
    orderYards: lengthIn(line.order, 'yd'),
    orderMetres: lengthIn(line.order, 'm'),
    ...(line.pieces === undefined
      ? {}
      : {
          pieces: line.pieces.map(({ cuts, order }) => ({
            cuts,
            orderYards: lengthIn(order, 'yd'),
            orderMetres: lengthIn(order, 'm'),
          })),
        }),
    grams: roundFigure(line.grams, 1),
    ...(line.pattern === undefined ? {} : { pattern: writePattern(job, line.pattern) }),
  };
}

function writePattern(job: Job, { place, level, below, starts, about }: TakenPattern): WirePattern {
  return {
    place,
    ...(level === null ? {} : { level: lengthIn(level, job.units) }),
    motifBelow: lengthIn(below, job.units),
    cutsBegin: lengthIn(starts, job.units),
    ...(about === null ? {} : { widthAboutMotif: lengthIn(about, job.units) }),
  };
}

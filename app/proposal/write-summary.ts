/** The first page's table: every window with its three prices, and what the whole comes to each way. */
import type { Job } from '#shared/job.ts';
import type { JobResult, TierTotals } from '#shared/result.ts';
import { TIERS } from '#shared/words.ts';
import type { LineKind, Tier } from '#shared/words.ts';
import type { ByTier, PaperSummary, SummaryTotal } from './proposal-paper.ts';
import { nameTreatment } from './say-treatment.ts';
import { capital, sayList } from './speak.ts';
import type { Speech } from './speak.ts';
import { nameCloth, pieceWord } from './listed-window.ts';
import type { ListedWindow } from './listed-window.ts';

export const NO_PRICE = 'to follow';

export function byTier(make: (tier: Tier) => string): ByTier {
  return [make('good'), make('better'), make('best')];
}

export function pricesOf(window: ListedWindow, speech: Speech): ByTier {
  return byTier((tier) => {
    const { price } = window.result.tiers[tier];
    return price === null ? NO_PRICE : speech.money(price.total);
  });
}

export function writeSummary(
  job: Job,
  result: JobResult,
  windows: readonly ListedWindow[],
  speech: Speech,
): PaperSummary {
  return {
    tierNames: byTier((tier) => job.proposal.tierNames[tier]),
    rows: windows.map((window) => ({
      room: window.room.name,
      opening: window.name,
      words: nameTreatment(window.treatment, nameCloth(job, window)),
      prices: pricesOf(window, speech),
      advised: adviceIndex(window.result.advised.tier),
    })),
    totals: result.totals === null ? [] : writeTotals(result.totals, speech),
    notes: [
      ...(windows.length > 1
        ? [
            `Each total takes that one option at every ${pieceWord(windows)}; you may mix them ${pieceWord(windows)} by ${pieceWord(windows)}.`,
          ]
        : []),
      ...job.priceBook.tax.map((tax) => `${tax.name}: ${speech.percent(tax.rate)} on ${sayList(tax.on.map(sayKind))}.`),
      ...(result.totals === null ? ['Prices marked “to follow” are not settled yet, so nothing is added up.'] : []),
    ],
  };
}

function adviceIndex(tier: Tier): 0 | 1 | 2 {
  const index = TIERS.indexOf(tier);
  return index === 1 || index === 2 ? index : 0;
}

function writeTotals(totals: Readonly<Record<Tier, TierTotals>>, speech: Speech): readonly SummaryTotal[] {
  const amounts = (pick: (of: TierTotals) => number) => byTier((tier) => speech.money(pick(totals[tier])));
  const names = [...new Set(TIERS.flatMap((tier) => totals[tier].taxes.map((tax) => tax.name)))];
  return [
    { kind: 'net', label: 'Before tax', amounts: amounts((of) => of.net) },
    ...names.map((name): SummaryTotal => ({
      kind: 'tax',
      label: capital(name),
      amounts: amounts((of) => of.taxes.filter((tax) => tax.name === name).reduce((sum, tax) => sum + tax.amount, 0)),
    })),
    { kind: 'total', label: 'Total', amounts: amounts((of) => of.total) },
    { kind: 'deposit', label: 'Deposit to begin', amounts: amounts((of) => of.deposit) },
  ];
}

const KINDS: Readonly<Record<LineKind, string>> = {
  cloth: 'cloth',
  hardware: 'hardware',
  notions: 'notions',
  labour: 'labour',
  freight: 'freight',
};

function sayKind(kind: LineKind): string {
  return KINDS[kind];
}

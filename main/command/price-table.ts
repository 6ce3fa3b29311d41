/** The result of a job as a table for a terminal: three priced options side by side, plain text. */
import type { WireResult } from '#shared/job-file/wire-result.ts';
import { formatMoney, formatNumber } from '#shared/locale.ts';
import type { Locale } from '#shared/locale.ts';
import { TIERS } from '#shared/words.ts';
import type { Tier } from '#shared/words.ts';

type Treatment = WireResult['treatments'][number];
type Row = readonly [label: string, cells: readonly [string, string, string]];

const LABEL_WIDTH = 26;
const CELL_WIDTH = 30;
const OPTIONS_WIDTH = 20;
const FIGURE_WIDTH = 15;

type PlannedLine = Omit<WireResult['plan'][number], 'tier'>;

/** The whole table, lines parted by newlines, with advice on what is advised and every warning below. */
export function tellPrices(result: WireResult, locale: Locale): string {
  const money = (amount: number): string => formatMoney(amount, result.currency, locale);
  const lines: string[] = [];
  for (const treatment of result.treatments) {
    lines.push(treatment.path, ...treatmentRows(treatment, result, locale).flatMap(layRow));
    lines.push(...tellOffers(treatment), ...tellSame(treatment));
    lines.push(`  Advised: ${treatment.advised.tier}. ${treatment.advised.why}`, '');
  }
  const totals = (of: (tier: Tier) => number): Row[1] => [money(of('good')), money(of('better')), money(of('best'))];
  const rows: Row[] = [
    ['', ['good', 'better', 'best']],
    ['net', totals((tier) => result.totals[tier].net)],
    ...result.totals.good.taxes.map((tax, index): Row => [
      tax.name,
      totals((tier) => result.totals[tier].taxes[index]?.amount ?? 0),
    ]),
    ['total', totals((tier) => result.totals[tier].total)],
    ['deposit', totals((tier) => result.totals[tier].deposit)],
  ];
  lines.push('Whole project', ...rows.flatMap(layRow));
  lines.push(...tellPlan(result, locale));
  if (result.exampleRates) lines.push('', "Example rates were used: they are the program's, not yours.");
  if (result.warnings.length > 0)
    lines.push('', ...result.warnings.map((warning) => `warning: ${warning.path}: ${warning.says}`));
  return `${lines.join('\n')}\n`;
}

/** One width fewer, where it would still hang well: the same of options that are alike. */
function tellOffers({ tiers }: Treatment): string[] {
  const offers = new Set(TIERS.flatMap((tier) => tiers[tier].offer?.says ?? []));
  return [...offers].map((says) => `  One width fewer: ${says}`);
}

/** Why an option is the same as one before it: once for a reason. */
function tellSame({ tiers }: Treatment): string[] {
  const whys = new Map<string, Tier[]>();
  for (const tier of TIERS) {
    const { chosen } = tiers[tier];
    if (chosen?.sameAs) whys.set(chosen.why, [...(whys.get(chosen.why) ?? []), tier]);
  }
  return [...whys].map(([why, same]) => `  ${same.join(', ')}: ${why}`);
}

/** The joint plan of each cloth, a line for the options that are alike: what prices rest on stands above. */
function tellPlan(result: WireResult, locale: Locale): string[] {
  if (result.plan.length === 0) return [];
  const [unit, perYard] = result.units === 'in' ? ['yd', 1] : ['m', 0.9144];
  const lines = (list: readonly PlannedLine[], tiers: (line: PlannedLine) => readonly string[]): string[] => {
    const grouped = new Map<string, string[]>();
    for (const line of list) {
      const figures = [line.orderYards, line.yards, line.bound, line.handbookYards].map((yards) =>
        `${formatNumber(yards * perYard, 2, locale)} ${unit}`.padStart(FIGURE_WIDTH),
      );
      const unlaid = line.unlaid === undefined ? '' : `  ${line.unlaid} cuts found no place`;
      const key = `${figures.join('')}${unlaid}`;
      const row = JSON.stringify([line.cloth, key]);
      grouped.set(row, [...(grouped.get(row) ?? []), ...tiers(line)]);
    }
    return [...grouped].map(([row, options]) => {
      const [cloth = '', key = ''] = JSON.parse(row) as string[];
      return `  ${cloth.padEnd(LABEL_WIDTH)}${options.join(', ').padEnd(OPTIONS_WIDTH)}${key}`.trimEnd();
    });
  };
  const head = ['order', 'laid together', 'none below', 'by the chart'].map((each) => each.padStart(FIGURE_WIDTH));
  return [
    '',
    'All cuts of one cloth laid together. What that saves is a reserve for flaws, and is promised to nobody.',
    `  ${''.padEnd(LABEL_WIDTH + OPTIONS_WIDTH)}${head.join('')}`,
    ...lines(result.plan, (line) => ('tier' in line ? [String(line.tier)] : [])),
    ...(result.accepted === undefined ? [] : lines(result.accepted, () => ['accepted'])),
  ];
}

function treatmentRows(treatment: Treatment, result: WireResult, locale: Locale): Row[] {
  const cells = (of: (tier: Treatment['tiers']['good']) => string): Row[1] => [
    of(treatment.tiers.good),
    of(treatment.tiers.better),
    of(treatment.tiers.best),
  ];
  const cloth = (tier: Treatment['tiers']['good'], layer: number): string => {
    const line = tier.takeoff[layer];
    if (!line) return '';
    const inches = result.units === 'in';
    const order = inches
      ? `${formatNumber(line.orderYards, 2, locale)} yd`
      : `${formatNumber(line.orderMetres, 2, locale)} m`;
    return line.widths === null
      ? `${line.name}, ${order} sideways`
      : `${line.name}, ${formatNumber(line.widths, 1, locale)} w, ${order}`;
  };
  const layers = Math.max(...TIERS.map((tier) => treatment.tiers[tier].takeoff.length));
  return [
    ['', ['good', 'better', 'best']],
    ['', cells((tier) => (tier.chosen?.sameAs ? `the same as ${tier.chosen.sameAs}` : tier.title))],
    ...Array.from({ length: layers }, (_, layer): Row => [
      layer === 0 ? 'cloth' : '',
      cells((tier) => cloth(tier, layer)),
    ]),
    ['light', cells((tier) => sayReading(tier.words.light))],
    ['colour by day', cells((tier) => sayReading(tier.words.colour))],
    ['warmth', cells((tier) => sayReading(tier.words.warmth))],
    ['fading', cells((tier) => sayReading(tier.words.fade))],
    ['body', cells((tier) => sayReading(tier.words.body))],
    ['price before tax', cells((tier) => formatMoney(tier.price.total, result.currency, locale))],
  ];
}

function sayReading(words: { readonly words: string; readonly figure: string }): string {
  return words.figure === '' ? words.words : `${words.words}, ${words.figure}`;
}

/** One row; a cell too long for its column goes on in the next line. */
function layRow([label, cells]: Row): string[] {
  const columns = cells.map((cell) => wrap(cell, CELL_WIDTH - 2));
  const height = Math.max(1, ...columns.map((column) => column.length));
  return Array.from({ length: height }, (_, line) =>
    `  ${(line === 0 ? label : '').padEnd(LABEL_WIDTH)}${columns.map((column) => (column[line] ?? '').padEnd(CELL_WIDTH)).join('')}`.trimEnd(),
  );
}

function wrap(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

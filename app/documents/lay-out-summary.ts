/** The first page: who it is for, the house at a glance, and what every window costs each way. */
import type { ProposalPaper, SummaryTotal } from '#app/proposal/proposal-paper.ts';
import type { Shape } from '#app/drawing/shape.ts';
import { artifact, figureItem, keep, stack, textBlock, textBlocks } from './block.ts';
import type { Block } from './block.ts';
import type { FontSet } from './font-set.ts';
import { padded, rowBlock, ruledAbove } from './lay-out-table.ts';
import type { Cell, Column } from './lay-out-table.ts';
import { CONTENT_WIDTH, STYLES } from './paper-style.ts';
import type { TextStyle } from './paper-style.ts';
import { baselineIn } from './set-text.ts';
import { plainSpaces } from './clean-text.ts';

const AMOUNT = 84;
const WORDS = CONTENT_WIDTH - 3 * AMOUNT - 14;
export const AMOUNT_COLUMNS: readonly Column[] = [
  { x: 0, width: WORDS, align: 'start' },
  { x: CONTENT_WIDTH - 3 * AMOUNT + 6, width: AMOUNT - 6, align: 'end' },
  { x: CONTENT_WIDTH - 2 * AMOUNT + 6, width: AMOUNT - 6, align: 'end' },
  { x: CONTENT_WIDTH - AMOUNT + 6, width: AMOUNT - 6, align: 'end' },
];

export function clientBlocks(paper: ProposalPaper, fonts: FontSet): readonly Block[] {
  const width = CONTENT_WIDTH * 0.8;
  const name = textBlock({
    text: paper.client.name,
    field: 'client.name',
    style: STYLES.client,
    width: CONTENT_WIDTH,
    fonts,
    role: 'H1',
    before: 24,
  });
  const lines = paper.client.lines.map((text, i) =>
    textBlock({ text, field: `client.lines[${i}]`, style: STYLES.bodyQuiet, width, fonts, before: i === 0 ? 1 : 0 }),
  );
  const opening = textBlocks({ text: paper.opening, field: 'opening', style: STYLES.body, width, fonts, before: 10 });
  return [name, ...lines, ...opening];
}

export function overviewBlock(paper: ProposalPaper): readonly Block[] {
  const { overview } = paper;
  if (overview === null) return [];
  return [
    {
      height: overview.height,
      items: [figureItem(overview, 'overview', (CONTENT_WIDTH - overview.width) / 2, 0)],
      before: 18,
      keepWithNext: false,
    },
  ];
}

/** The row of tier names that heads the table on each of its pages. */
export function summaryHead(
  names: readonly [string, string, string],
  field: string,
  title: string,
  fonts: FontSet,
): Block {
  const cell = (text: string, i: number): Cell => ({ text, style: STYLES.small, field: `${field}[${i}]` });
  const row = rowBlock(
    AMOUNT_COLUMNS,
    [{ text: title, style: STYLES.heading, field: 'title' }, ...names.map(cell)],
    fonts,
  );
  const down = STYLES.heading.leading - STYLES.small.leading - 1.5;
  const items = row.items.map((item, i) =>
    i === 0 && title !== '' ? { ...item, role: 'H2' as const } : { ...item, y: item.y + down },
  );
  return keep(padded({ ...row, items, height: row.height + down, before: 24 }, 0, 4));
}

export function summaryBlocks(
  paper: ProposalPaper,
  fonts: FontSet,
): { readonly head: Block; readonly blocks: readonly Block[] } {
  const { summary } = paper;
  const head = summaryHead(summary.tierNames, 'summary.tierNames', 'What it comes to', fonts);
  const rows = summary.rows.map((row, i) => {
    const field = `summary.rows[${i}]`;
    const words = stack([
      textBlock({
        text: `${row.room}, ${row.opening}`,
        field: `${field}.opening`,
        style: STYLES.strong,
        width: WORDS,
        fonts,
      }),
      textBlock({ text: row.words, field: `${field}.words`, style: STYLES.small, width: WORDS, fonts }),
    ]);
    const amounts = rowBlock(
      AMOUNT_COLUMNS,
      [null, ...row.prices.map((text, k) => ({ text, style: STYLES.body, field: `${field}.prices[${k}]` }))],
      fonts,
    );
    const price = row.prices[row.advised];
    const column = AMOUNT_COLUMNS[row.advised + 1];
    const stitch = column === undefined ? [] : [artifact([threadUnder(price, column, STYLES.body, fonts)])];
    return ruledAbove(
      padded(
        {
          height: Math.max(words.height, amounts.height),
          items: [...words.items, ...amounts.items, ...stitch],
          before: 0,
          keepWithNext: keepsWithNext(i, summary.rows.length, summary.totals.length > 0),
        },
        6,
        6,
      ),
      CONTENT_WIDTH,
      i === 0 ? 'ink' : 'rule',
      i === 0 ? 0.9 : 0.6,
    );
  });
  const totals = summary.totals.map((total, i) => totalRow(total, i, fonts));
  const notes = ['Stitched in red: our advice for that room.', ...summary.notes].map((text, i) =>
    textBlock({
      text,
      field: `summary.notes[${i}]`,
      style: STYLES.small,
      width: CONTENT_WIDTH * 0.86,
      fonts,
      before: i === 0 ? 12 : 1,
    }),
  );
  return { head, blocks: [head, ...rows, ...totals, keepAll(notes)] };
}

/** No row stands alone: the first two stay together under their head, the last two over the totals. */
function keepsWithNext(row: number, count: number, totalled: boolean): boolean {
  if (row === count - 1) return totalled;
  return row === 0 || row === count - 2;
}

function keepAll(blocks: readonly Block[]): Block {
  return { ...stack(blocks), before: 12 };
}

function totalRow(total: SummaryTotal, i: number, fonts: FontSet): Block {
  const strong = total.kind === 'total';
  const label: TextStyle = strong ? STYLES.strong : STYLES.bodyQuiet;
  const amount: TextStyle = strong ? STYLES.strong : { ...STYLES.body };
  const row = rowBlock(
    AMOUNT_COLUMNS,
    [
      { text: total.label, style: label, field: `summary.totals[${i}].label` },
      ...total.amounts.map((text, k) => ({ text, style: amount, field: `summary.totals[${i}].amounts[${k}]` })),
    ],
    fonts,
    { above: i === 0 || strong ? 6 : 1.5, below: strong ? 6 : 1.5 },
  );
  const ruled = i === 0 || strong ? ruledAbove(row, CONTENT_WIDTH, strong ? 'rule' : 'ink', strong ? 0.6 : 0.9) : row;
  return { ...ruled, keepWithNext: true };
}

/** A row of running stitches under an amount: the thread marks what we advise, the stitches say it without colour. */
function threadUnder(price: string, column: Column, style: TextStyle, fonts: FontSet): Shape {
  const width = fonts.measure(plainSpaces(price), style, style.size);
  const right = column.x + column.width;
  const y = baselineIn(style) + 3.4;
  return {
    kind: 'line',
    x1: right - width,
    y1: y,
    x2: right,
    y2: y,
    style: { stroke: 'thread', strokeWidth: 1.1, dash: [4.4, 2.2], cap: 'round' },
  };
}

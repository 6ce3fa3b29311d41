/** The decorator's appendix: tables and working steps, close set, a treatment after the other. */
import type { PaperWorking, WorkingStepText, WorkingTable } from '#app/proposal/proposal-paper.ts';
import { keep, stack, textBlock, textBlocks } from './block.ts';
import type { Block } from './block.ts';
import type { FontSet } from './font-set.ts';
import { padded, rowBlock, ruledAbove } from './lay-out-table.ts';
import type { Column } from './lay-out-table.ts';
import { CONTENT_WIDTH, STYLES } from './paper-style.ts';

export function workingBlocks(working: PaperWorking, index: number, fonts: FontSet): readonly Block[] {
  const field = `working[${index}]`;
  const title = textBlock({
    text: working.title,
    field: `${field}.title`,
    style: STYLES.title,
    width: CONTENT_WIDTH,
    fonts,
    role: 'H1',
    keepWithNext: true,
  });
  const kicker = textBlock({
    text: 'For the decorator alone: take-off, prices and working',
    field: `${field}.kicker`,
    style: STYLES.small,
    width: CONTENT_WIDTH,
    fonts,
    keepWithNext: true,
  });
  const says = working.says.flatMap((text, i) =>
    textBlocks({
      text,
      field: `${field}.says[${i}]`,
      style: STYLES.bodyQuiet,
      width: 440,
      fonts,
      before: i === 0 ? 3 : 1,
    }),
  );
  const options = working.options.flatMap((option, i) => {
    const at = `${field}.options[${i}]`;
    return [
      textBlock({
        text: option.title,
        field: `${at}.title`,
        style: STYLES.option,
        width: CONTENT_WIDTH,
        fonts,
        role: 'H2',
        before: 16,
        keepWithNext: true,
      }),
      ...option.says.flatMap((text, k) =>
        textBlocks({
          text,
          field: `${at}.says[${k}]`,
          style: STYLES.small,
          width: CONTENT_WIDTH,
          fonts,
          keepWithNext: k === 0,
        }),
      ),
      ...option.tables.flatMap((table, k) => tableBlocks(table, `${at}.tables[${k}]`, fonts)),
      ...stepBlocks(option.steps, `${at}.steps`, fonts),
    ];
  });
  return [kicker, title, ...says, ...options];
}

/** The first column takes what the amounts leave; other words share it. */
function columnsOf(table: WorkingTable): readonly Column[] {
  const amounts = table.columns.filter((column) => column.align === 'end').length;
  const each = amounts > 2 ? 58 : 74;
  const words = table.columns.length - amounts;
  const room = CONTENT_WIDTH - amounts * each;
  const shares = words === 1 ? [1] : [0.4, ...Array.from({ length: words - 1 }, () => 0.6 / (words - 1))];
  let x = 0;
  let word = 0;
  return table.columns.map((column) => {
    const width = column.align === 'end' ? each : room * (shares[word++] ?? 0);
    const placed: Column = {
      x: column.align === 'end' ? x + 6 : x,
      width: column.align === 'end' ? width - 6 : width - 10,
      align: column.align,
    };
    x += width;
    return placed;
  });
}

/** A table with its head; rows never part from a total. */
export function tableBlocks(table: WorkingTable, field: string, fonts: FontSet): readonly Block[] {
  const columns = columnsOf(table);
  const head = keep(
    rowBlock(
      columns,
      table.columns.map((column, i) => ({ text: column.label, style: STYLES.small, field: `${field}.columns[${i}]` })),
      fonts,
      { before: 7, below: 2 },
    ),
  );
  const row = (cells: readonly string[], at: string, strong: boolean) =>
    rowBlock(
      columns,
      cells.map((text, i) => ({ text, style: strong ? STYLES.smallStrong : STYLES.smallInk, field: `${at}[${i}]` })),
      fonts,
      { above: 1.6, below: 1.6 },
    );
  const rows = table.rows.map((cells, i) => {
    const block = ruledAbove(row(cells, `${field}.rows[${i}]`, false), CONTENT_WIDTH, 'rule');
    return i >= table.rows.length - 2 && table.total !== null ? keep(block) : block;
  });
  const total =
    table.total === null ? [] : [ruledAbove(row(table.total, `${field}.total`, true), CONTENT_WIDTH, 'ink', 0.8)];
  return [head, ...rows, ...total];
}

const STEP_COLUMNS: readonly Column[] = [
  { x: 0, width: 108, align: 'start' },
  { x: 114, width: 156, align: 'start' },
  { x: 276, width: 80, align: 'end' },
  { x: 366, width: 138, align: 'start' },
];

function stepBlocks(steps: readonly WorkingStepText[], field: string, fonts: FontSet): readonly Block[] {
  if (steps.length === 0) return [];
  const head = keep(
    rowBlock(
      STEP_COLUMNS,
      ['working', 'in figures', '', 'rests on'].map((text) => ({ text, style: STYLES.small, field })),
      fonts,
      { before: 9, below: 2 },
    ),
  );
  const rows = steps.map((step, i) => {
    const at = `${field}[${i}]`;
    const block = rowBlock(
      STEP_COLUMNS,
      [
        { text: step.label, style: STYLES.smallInk, field: `${at}.label` },
        { text: step.formula, style: STYLES.small, field: `${at}.formula` },
        { text: step.value, style: STYLES.smallStrong, field: `${at}.value` },
        { text: step.rests, style: STYLES.small, field: `${at}.rests` },
      ],
      fonts,
      { above: 1.6, below: 1.6 },
    );
    return ruledAbove(block, CONTENT_WIDTH, 'rule');
  });
  const first = rows[0];
  return first === undefined ? [] : [keep(stack([head, padded(first, 0, 0)])), ...rows.slice(1)];
}

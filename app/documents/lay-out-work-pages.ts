/** Work sheets as pages: each treatment begins a page; drawing, take-off, checklist and cautions follow one another. */
import type { WorkPage, WorkPaper } from '#app/proposal/work-paper.ts';
import type { WorkingStepText } from '#app/proposal/proposal-paper.ts';
import { artifact, figureItem, keep, stack, textBlock, textBlocks } from './block.ts';
import type { Block } from './block.ts';
import { heightOf, makeFlow } from './flow-pages.ts';
import type { FontSet } from './font-set.ts';
import { openingHead } from './lay-out-opening-head.ts';
import { padded, rowBlock, ruledAbove } from './lay-out-table.ts';
import type { Column } from './lay-out-table.ts';
import { headingBlock } from './lay-out-notes.ts';
import { runningFoot, runningHead } from './lay-out-running.ts';
import { tableBlocks } from './lay-out-working.ts';
import type { LaidPage } from './page-item.ts';
import { CONTENT_WIDTH, STYLES } from './paper-style.ts';
import type { PageFrame } from './paper-style.ts';
import { tickBox } from './tick-box.ts';

const FOOT =
  'Dashed: fold. Dash and dot: motif. Red: seam. Grey: turned under or taken up. Cut nothing before the cloth is checked for flaws.';

export function layOutWorkPages(paper: WorkPaper, frame: PageFrame, fonts: FontSet): readonly LaidPage[] {
  const flow = makeFlow(frame, frame.top);
  if (paper.pages.length === 0) flow.add([emptyBlock(fonts)]);
  paper.pages.forEach((page, i) => {
    flow.startPage();
    const field = `pages[${i}]`;
    flow.add([...headBlocks(page, field, fonts), ...drawingBlocks(page, field)]);
    flow.add(noteBlocks(page, field, fonts));
    // Take-off and check list stand under the drawing where both fit, else on the back of the sheet.
    const back = [...takeoffBlocks(page, field, fonts), ...stepBlocks(page.steps, `${field}.steps`, fonts)];
    if ((back[0]?.before ?? 0) + heightOf(back) > flow.roomLeft()) flow.startPage();
    flow.add(back);
  });
  const count = flow.pages.length;
  return flow.pages.map((items, i) => ({
    width: frame.width,
    height: frame.height,
    items: [...runningHead(paper, frame, fonts), ...items, ...runningFoot(FOOT, frame, i + 1, count, fonts)],
  }));
}

function emptyBlock(fonts: FontSet): Block {
  return textBlock({
    text: 'Nothing is taken off yet.',
    field: 'pages',
    style: STYLES.lead,
    width: CONTENT_WIDTH,
    fonts,
  });
}

function headBlocks(page: WorkPage, field: string, fonts: FontSet): readonly Block[] {
  const layers = page.stack.map((layer) => `${layer.place} ${layer.cloth}`).join(' · ');
  const option = textBlock({
    text: layers,
    lead: `${page.option}.`,
    field: `${field}.stack`,
    style: STYLES.reading,
    width: CONTENT_WIDTH,
    fonts,
    before: 3,
  });
  return [...openingHead(page, field, fonts), keep(option)];
}

function drawingBlocks(page: WorkPage, field: string): readonly Block[] {
  return page.drawings.map((drawing, i): Block => ({
    height: drawing.height,
    items: [figureItem(drawing, `${field}.drawings[${i}]`, 0, 0)],
    before: i === 0 ? 12 : 11,
    keepWithNext: false,
  }));
}

function noteBlocks(page: WorkPage, field: string, fonts: FontSet): readonly Block[] {
  if (page.notes.length === 0) return [];
  return [
    headingBlock('Heed', `${field}.notes`, fonts, 14),
    ...page.notes.flatMap((text, i) =>
      textBlocks({
        text,
        field: `${field}.notes[${i}]`,
        style: STYLES.reading,
        width: 470,
        fonts,
        before: i === 0 ? 2 : 3,
      }),
    ),
  ];
}

function takeoffBlocks(page: WorkPage, field: string, fonts: FontSet): readonly Block[] {
  const parts =
    page.parts.length === 0
      ? []
      : textBlocks({
          text: page.parts.join(' · '),
          lead: 'Hardware and notions.',
          field: `${field}.parts`,
          style: STYLES.reading,
          width: CONTENT_WIDTH,
          fonts,
          before: 5,
        });
  return [
    headingBlock('Take-off', `${field}.takeoff`, fonts, 14),
    ...tableBlocks(page.takeoff, `${field}.takeoff`, fonts),
    ...parts,
  ];
}

const TICK = 8;
const COLUMNS: readonly Column[] = [
  { x: 16, width: 150, align: 'start' },
  { x: 172, width: 226, align: 'start' },
  { x: 402, width: 102, align: 'end' },
];

/** Each step behind a box to tick: what it is, how it was reckoned, what came out. */
function stepBlocks(steps: readonly WorkingStepText[], field: string, fonts: FontSet): readonly Block[] {
  const rows = steps.map((step, i) => {
    const at = `${field}[${i}]`;
    const row = rowBlock(
      COLUMNS,
      [
        { text: step.label, style: STYLES.smallInk, field: `${at}.label` },
        { text: step.formula, style: STYLES.small, field: `${at}.formula` },
        { text: step.value, style: STYLES.smallStrong, field: `${at}.value` },
      ],
      fonts,
      { above: 1.6, below: 1.6 },
    );
    const ticked: Block = { ...row, items: [artifact([tickBox(0.5, 3.2, TICK)]), ...row.items] };
    return ruledAbove(ticked, CONTENT_WIDTH, 'rule');
  });
  const first = rows[0];
  if (first === undefined) return [];
  const head = headingBlock('Check list', field, fonts, 14);
  return [keep(stack([head, padded(first, 0, 0)])), ...rows.slice(1)];
}

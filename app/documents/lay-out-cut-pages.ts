/** Cut plans as pages: each cloth begins a page with its figures and its bolts; the list of cuts follows. */
import type { CutPlanPaper, CutPlanSection, ListedBoltCuts } from '#app/proposal/cut-plan-paper.ts';
import { artifact, figureItem, keep, stack, textBlock, textBlocks } from './block.ts';
import type { Block } from './block.ts';
import { heightOf, makeFlow } from './flow-pages.ts';
import type { FontSet } from './font-set.ts';
import { headingBlock } from './lay-out-notes.ts';
import { runningFoot, runningHead } from './lay-out-running.ts';
import { rowBlock, ruledAbove } from './lay-out-table.ts';
import type { Column } from './lay-out-table.ts';
import type { LaidPage } from './page-item.ts';
import { CONTENT_WIDTH, STYLES } from './paper-style.ts';
import type { PageFrame } from './paper-style.ts';
import { tickBox } from './tick-box.ts';

const FOOT = 'Hatched: waste. Barb: top of the cut. Ticks: repeats. Cut nothing before the cloth is checked for flaws.';
/** Lines of running text are easiest to read at this width. */
const MEASURE = 470;

export function layOutCutPages(paper: CutPlanPaper, frame: PageFrame, fonts: FontSet): readonly LaidPage[] {
  const flow = makeFlow(frame, frame.top);
  flow.add(openingBlocks(paper, fonts));
  paper.sections.forEach((section, i) => {
    const field = `sections[${i}]`;
    const bolts = section.bolts.flatMap((bolt, index) =>
      cutBlocks(bolt, `${field}.bolts[${index}]`, fonts, index === 0),
    );
    const blocks = [
      ...headBlocks(section, field, fonts),
      ...drawingBlocks(section, field),
      ...noteBlocks(section, field, fonts),
      ...bolts,
    ];
    // A small cloth shares the page with the one before it.
    if (i > 0 && (blocks[0]?.before ?? 0) + heightOf(blocks) > flow.roomLeft()) flow.startPage();
    flow.add(blocks);
  });
  const count = flow.pages.length;
  return flow.pages.map((items, i) => ({
    width: frame.width,
    height: frame.height,
    items: [...runningHead(paper, frame, fonts), ...items, ...runningFoot(FOOT, frame, i + 1, count, fonts)],
  }));
}

function openingBlocks(paper: CutPlanPaper, fonts: FontSet): readonly Block[] {
  const title = textBlock({
    ...{ text: paper.reference, field: 'reference', style: STYLES.title, width: CONTENT_WIDTH, fonts, role: 'H1' },
    keepWithNext: true,
  });
  const words = textBlock({
    ...{ text: paper.opening, field: 'opening', style: STYLES.lead, width: MEASURE, fonts, before: 2 },
    keepWithNext: true,
  });
  const lines = (list: readonly string[], field: string): readonly Block[] =>
    list.flatMap((text, i) =>
      textBlocks({
        ...{ text, field: `${field}[${i}]`, style: STYLES.reading, width: MEASURE, fonts, before: i === 0 ? 8 : 3 },
      }),
    );
  const faults =
    paper.faults.length === 0
      ? []
      : [headingBlock('Not laid', 'faults.title', fonts, 14), ...lines(paper.faults, 'faults')];
  const empty =
    paper.sections.length > 0 || paper.faults.length > 0
      ? []
      : textBlocks({
          text: 'Nothing to cut yet.',
          field: 'sections',
          style: STYLES.body,
          width: MEASURE,
          fonts,
          before: 14,
        });
  return [title, words, ...lines(paper.cautions, 'cautions'), ...faults, ...empty];
}

const FIGURES: readonly Column[] = [
  { x: 0, width: 118, align: 'start' },
  { x: 122, width: 62, align: 'end' },
  { x: 194, width: 310, align: 'start' },
];

function headBlocks(section: CutPlanSection, field: string, fonts: FontSet): readonly Block[] {
  const title = headingBlock(section.title, `${field}.title`, fonts, 20);
  const words = textBlock({
    ...{
      text: section.words,
      field: `${field}.words`,
      style: STYLES.bodyQuiet,
      width: CONTENT_WIDTH,
      fonts,
      before: 1,
    },
    keepWithNext: true,
  });
  const rows = section.figures.map((figure, i) => {
    const at = `${field}.figures[${i}]`;
    const row = rowBlock(
      FIGURES,
      [
        { text: figure.label, style: STYLES.smallInk, field: `${at}.label` },
        { text: figure.value, style: STYLES.smallStrong, field: `${at}.value` },
        { text: figure.rests, style: STYLES.small, field: `${at}.rests` },
      ],
      fonts,
      { above: 1.4, below: 1.4, before: i === 0 ? 6 : 0 },
    );
    return keep(ruledAbove(row, CONTENT_WIDTH, 'rule'));
  });
  return [title, words, ...rows];
}

function drawingBlocks(section: CutPlanSection, field: string): readonly Block[] {
  return section.drawings.map((drawing, i): Block => ({
    height: drawing.height,
    items: [figureItem(drawing, `${field}.drawings[${i}]`, 0, 0)],
    before: i === 0 ? 14 : 0,
    keepWithNext: false,
  }));
}

function noteBlocks(section: CutPlanSection, field: string, fonts: FontSet): readonly Block[] {
  return section.notes.flatMap((text, i) =>
    textBlocks({
      ...{ text, field: `${field}.notes[${i}]`, style: STYLES.reading, width: MEASURE, fonts, before: i === 0 ? 8 : 2 },
    }),
  );
}

const TICK = 8;
const CUTS: readonly Column[] = [
  { x: 16, width: 20, align: 'end' },
  { x: 40, width: 58, align: 'end' },
  { x: 100, width: 58, align: 'end' },
  { x: 164, width: 58, align: 'end' },
  { x: 230, width: 150, align: 'start' },
  { x: 384, width: 120, align: 'start' },
];
const CUT_HEADS = ['', 'from', 'to', 'long', 'cut', ''];

/** Each cut behind a box to tick, in the order in which it comes off the bolt. */
function cutBlocks(bolt: ListedBoltCuts, field: string, fonts: FontSet, isFirst: boolean): readonly Block[] {
  const rows = bolt.cuts.map((cut, i) => {
    const at = `${field}.cuts[${i}]`;
    const note = [...(cut.across === 'whole width' ? [] : [cut.across]), ...(cut.note === '' ? [] : [cut.note])];
    const row = rowBlock(
      CUTS,
      [
        { text: cut.number, style: STYLES.small, field: `${at}.number` },
        { text: cut.from, style: STYLES.smallStrong, field: `${at}.from` },
        { text: cut.to, style: STYLES.smallInk, field: `${at}.to` },
        { text: cut.length, style: STYLES.smallInk, field: `${at}.length` },
        { text: cut.label, style: STYLES.smallInk, field: `${at}.label` },
        { text: note.join(', '), style: STYLES.small, field: `${at}.note` },
      ],
      fonts,
      { above: 1.4, below: 1.4 },
    );
    const ticked: Block = { ...row, items: [artifact([tickBox(0.5, 2.8, TICK)]), ...row.items] };
    return ruledAbove(ticked, CONTENT_WIDTH, 'rule');
  });
  const title = textBlock({
    ...{
      text: bolt.says,
      lead: `${bolt.title}.`,
      field: `${field}.title`,
      style: STYLES.small,
      width: CONTENT_WIDTH,
      fonts,
    },
    ...{ before: isFirst ? 4 : 12, keepWithNext: true },
  });
  const heads = rowBlock(
    CUTS,
    CUT_HEADS.map((text, i) => ({ text, style: STYLES.small, field: `${field}.head[${i}]` })),
    fonts,
    { before: 2 },
  );
  const first = rows[0];
  if (first === undefined) return [];
  const above = isFirst ? [headingBlock('Cut in this order', `${field}.order`, fonts, 16)] : [];
  return [...above, keep(title), keep(stack([heads, first])), ...rows.slice(1)];
}

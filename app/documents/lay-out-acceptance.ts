/** The last page: one line a window with three boxes to tick, what is due, and where to sign. */
import type { ProposalPaper } from '#app/proposal/proposal-paper.ts';
import { artifact, keep, textBlock, textBlocks } from './block.ts';
import type { Block } from './block.ts';
import { plainSpaces } from './clean-text.ts';
import type { FontSet } from './font-set.ts';
import { blankLine, headingBlock } from './lay-out-notes.ts';
import { padded, rowBlock, ruledAbove } from './lay-out-table.ts';
import type { Column } from './lay-out-table.ts';
import { tickBox } from './tick-box.ts';
import { CONTENT_WIDTH, STYLES } from './paper-style.ts';

const BOX = 10;
const BOX_GAP = 7;
const CHOICE_GAP = 24;
const WIDEST_CHOICE = 84;
/** At least so many lines stand on the page that is signed. */
const SIGNED_WITH = 3;

/** A box to tick with the price beside it, three times, flush with the right edge. */
function choiceColumns(
  acceptance: Acceptance,
  fonts: FontSet,
): { readonly columns: readonly Column[]; readonly boxes: readonly number[]; readonly words: number } {
  const texts = [
    ...acceptance.tierNames.map((text) => ({ text, style: STYLES.small })),
    ...acceptance.lines.flatMap((line) => line.prices.map((text) => ({ text, style: STYLES.body }))),
  ];
  const widest = Math.max(40, ...texts.map(({ text, style }) => fonts.measure(plainSpaces(text), style, style.size)));
  const width = Math.min(WIDEST_CHOICE, widest) + 0.5;
  const each = BOX + BOX_GAP + width;
  const boxes = [2, 1, 0].map((after) => CONTENT_WIDTH - each - after * (each + CHOICE_GAP));
  const words = (boxes[0] ?? 0) - CHOICE_GAP;
  return {
    boxes,
    words,
    columns: [
      { x: 0, width: words, align: 'start' },
      ...boxes.map((x): Column => ({ x: x + BOX + BOX_GAP, width, align: 'start' })),
    ],
  };
}

type Acceptance = ProposalPaper['closing']['acceptance'];

export interface AcceptanceBlocks {
  readonly head: Block;
  readonly blocks: readonly Block[];
}

export function acceptanceBlocks(paper: ProposalPaper, fonts: FontSet): AcceptanceBlocks {
  const { acceptance } = paper.closing;
  const field = 'closing.acceptance';
  const { columns, boxes, words: wordsWidth } = choiceColumns(acceptance, fonts);
  const head = keep(
    rowBlock(
      columns,
      [
        null,
        ...acceptance.tierNames.map((text, i) => ({ text, style: STYLES.small, field: `${field}.tierNames[${i}]` })),
      ],
      fonts,
      { before: 8, below: 3 },
    ),
  );
  const rows = acceptance.lines.map((line, i): Block => {
    const words = textBlock({
      text: `${line.room}, ${line.opening}`,
      field: `${field}.lines[${i}].opening`,
      style: STYLES.body,
      width: wordsWidth,
      fonts,
    });
    const prices = rowBlock(
      columns,
      [
        null,
        ...line.prices.map((text, k) => ({ text, style: STYLES.body, field: `${field}.lines[${i}].prices[${k}]` })),
      ],
      fonts,
    );
    const row: Block = {
      height: Math.max(words.height, prices.height),
      items: [...words.items, artifact(boxes.map((x) => tickBox(x, 1.4, BOX))), ...prices.items],
      before: 0,
      keepWithNext: i === 0 || i >= acceptance.lines.length - SIGNED_WITH,
    };
    const ruled = ruledAbove(padded(row, 5.5, 5.5), CONTENT_WIDTH, i === 0 ? 'ink' : 'rule', i === 0 ? 0.9 : 0.6);
    return ruled;
  });
  const [signature = '', name = '', date = ''] = acceptance.blanks;
  const sign = [
    ...textBlocks({
      text: acceptance.deposit,
      field: `${field}.deposit`,
      style: STYLES.body,
      width: 440,
      fonts,
      before: 12,
      keepWithNext: true,
    }),
    { ...blankLine([signature, date], `${field}.blanks`, [0.66, 0.34], fonts, 44), keepWithNext: true },
    { ...blankLine([name], `${field}.blanks`, [0.64], fonts, 34), keepWithNext: false },
  ];
  return {
    head,
    blocks: [
      headingBlock('Acceptance', `${field}.title`, fonts, 28),
      ...acceptance.says.flatMap((text, i) =>
        textBlocks({
          text,
          field: `${field}.says[${i}]`,
          style: STYLES.body,
          width: 440,
          fonts,
          before: 4,
          keepWithNext: true,
        }),
      ),
      head,
      ...rows,
      ...sign,
    ],
  };
}

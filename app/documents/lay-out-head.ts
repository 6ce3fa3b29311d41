/** What stands at the edges of every page: letterhead on the first, running head on the others, foot on all. */
import type { ProposalPaper } from '#app/proposal/proposal-paper.ts';
import { artifact, beside, lineItem, ruleBlock, ruleShape, stack, textBlock } from './block.ts';
import type { Block } from './block.ts';
import type { FontSet } from './font-set.ts';
import type { PageItem } from './page-item.ts';
import { CONTENT_WIDTH, STYLES } from './paper-style.ts';
import type { PageFrame, TextStyle } from './paper-style.ts';
import { fitLine } from './fit-line.ts';

/** Where the letterhead begins on the first page. */
export const FIRST_TOP = 50;
const HEAD_TOP = 38;
const FOOT_BELOW = 11;

export function letterheadBlock(paper: ProposalPaper, fonts: FontSet): Block {
  const half = CONTENT_WIDTH * 0.56;
  const name = textBlock({
    text: paper.letterhead.name,
    field: 'letterhead.name',
    style: STYLES.letterhead,
    width: half,
    fonts,
  });
  const lines = paper.letterhead.lines
    .filter((line) => line.trim() !== '')
    .map((text, i) =>
      textBlock({
        text,
        field: `letterhead.lines[${i}]`,
        style: STYLES.small,
        width: half,
        fonts,
        before: i === 0 ? 2 : 0,
      }),
    );
  const reference = (text: string, field: string, style: TextStyle, before = 0) =>
    textBlock({ text, field, style, width: CONTENT_WIDTH - half - 20, fonts, anchor: 'end', before });
  const right = [
    reference(paper.reference, 'reference', STYLES.strong, 4),
    reference(paper.dated, 'dated', STYLES.small, 1),
    ...(paper.holds === null ? [] : [reference(capital(paper.holds), 'holds', STYLES.small)]),
    ...(paper.mark === null ? [] : [reference(paper.mark, 'mark', STYLES.mark, 3)]),
  ];
  const top = beside([
    { x: 0, block: stack([name, ...lines]) },
    { x: half + 20, block: stack(right) },
  ]);
  return stack([top, ruleBlock(CONTENT_WIDTH, 'ink', 11, 0, 0.9)]);
}

/** The head of the pages that follow: whose paper, which proposal. A long name is cut: it stands whole on page one. */
export function runningHead(paper: ProposalPaper, frame: PageFrame, fonts: FontSet): readonly PageItem[] {
  const words = [paper.reference, paper.dated, ...(paper.holds === null ? [] : [paper.holds])].join(' · ');
  const right = fitLine(words, STYLES.small, CONTENT_WIDTH * 0.62, fonts);
  const room = CONTENT_WIDTH - fonts.measure(right, STYLES.small, STYLES.small.size) - 24;
  const left = fitLine(paper.letterhead.name, STYLES.running, room, fonts);
  return [
    lineItem(left, STYLES.running, { x: frame.left, y: HEAD_TOP, field: 'letterhead.name' }, 'Artifact'),
    lineItem(right, STYLES.small, { x: frame.right, y: HEAD_TOP + 1.8, field: 'reference', anchor: 'end' }, 'Artifact'),
    artifact([ruleShape(frame.left, frame.right, HEAD_TOP + 19, 'ink', 0.9)]),
  ];
}

export function foot(
  paper: ProposalPaper,
  frame: PageFrame,
  place: { readonly page: number; readonly pages: number },
  fonts: FontSet,
): readonly PageItem[] {
  const y = frame.bottom + FOOT_BELOW;
  const number = `page ${place.page} of ${place.pages}`;
  const taken = fonts.measure(number, STYLES.small, STYLES.small.size) + 20;
  const mark = paper.mark === null ? '' : `· ${paper.mark}`;
  const room = CONTENT_WIDTH - taken - fonts.measure(mark, STYLES.mark, STYLES.mark.size);
  const left = fitLine(paper.reference, STYLES.small, room, fonts);
  const after = frame.left + fonts.measure(`${left} `, STYLES.small, STYLES.small.size);
  return [
    lineItem(left, STYLES.small, { x: frame.left, y, field: 'reference' }, 'Artifact'),
    ...(mark === '' ? [] : [lineItem(mark, STYLES.mark, { x: after, y, field: 'mark' }, 'Artifact')]),
    lineItem(number, STYLES.small, { x: frame.right, y, field: 'page number', anchor: 'end' }, 'Artifact'),
  ];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Head and foot of the papers that the workroom is handed: whose they are, of when, which page. */
import type { WorkshopPaper } from '#app/proposal/workshop-paper.ts';
import { artifact, lineItem, ruleShape } from './block.ts';
import type { FontSet } from './font-set.ts';
import { fitLine } from './fit-line.ts';
import type { PageItem } from './page-item.ts';
import { CONTENT_WIDTH, STYLES } from './paper-style.ts';
import type { PageFrame } from './paper-style.ts';

const HEAD_TOP = 38;

export function runningHead(paper: WorkshopPaper, frame: PageFrame, fonts: FontSet): readonly PageItem[] {
  const words = fitLine(
    `${paper.reference} · ${paper.client} · ${paper.dated}`,
    STYLES.small,
    CONTENT_WIDTH * 0.66,
    fonts,
  );
  const room = CONTENT_WIDTH - fonts.measure(words, STYLES.small, STYLES.small.size) - 24;
  return [
    lineItem(
      fitLine(paper.letterhead.name, STYLES.running, room, fonts),
      STYLES.running,
      { x: frame.left, y: HEAD_TOP, field: 'letterhead.name' },
      'Artifact',
    ),
    lineItem(words, STYLES.small, { x: frame.right, y: HEAD_TOP + 1.8, field: 'reference', anchor: 'end' }, 'Artifact'),
    artifact([ruleShape(frame.left, frame.right, HEAD_TOP + 19, 'ink', 0.9)]),
  ];
}

/** `words` tells the signs of the paper's drawings. */
export function runningFoot(
  words: string,
  frame: PageFrame,
  page: number,
  pages: number,
  fonts: FontSet,
): readonly PageItem[] {
  const y = frame.bottom + 11;
  const number = `page ${page} of ${pages}`;
  const room = CONTENT_WIDTH - fonts.measure(number, STYLES.small, STYLES.small.size) - 20;
  return [
    lineItem(fitLine(words, STYLES.small, room, fonts), STYLES.small, { x: frame.left, y, field: 'foot' }, 'Artifact'),
    lineItem(number, STYLES.small, { x: frame.right, y, field: 'page number', anchor: 'end' }, 'Artifact'),
  ];
}

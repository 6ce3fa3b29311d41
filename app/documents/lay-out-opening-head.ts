/** The head of an opening's page: its room as the title, which page of how many, and the opening in words. */
import { beside, keep, lineItem, textBlock } from './block.ts';
import type { Block } from './block.ts';
import type { FontSet } from './font-set.ts';
import { CONTENT_WIDTH, STYLES } from './paper-style.ts';

export interface HeadedOpening {
  readonly room: string;
  readonly opening: string;
  readonly words: string;
  readonly count: string;
}

/** Fields are named under `field`, as in the paper. */
export function openingHead(opening: HeadedOpening, field: string, fonts: FontSet): readonly Block[] {
  const count = fonts.measure(opening.count, STYLES.small, STYLES.small.size);
  const room = textBlock({
    text: opening.room,
    field: `${field}.room`,
    style: STYLES.title,
    width: CONTENT_WIDTH - count - 20,
    fonts,
    role: 'H1',
  });
  const title = beside([
    { x: 0, block: room },
    {
      x: 0,
      block: {
        height: 0,
        items: [
          lineItem(opening.count, STYLES.small, { x: CONTENT_WIDTH, y: 9.5, field: `${field}.count`, anchor: 'end' }),
        ],
        before: 0,
        keepWithNext: true,
      },
    },
  ]);
  const words = textBlock({
    text: opening.words,
    lead: `${opening.opening}.`,
    field: `${field}.words`,
    style: STYLES.lead,
    width: CONTENT_WIDTH,
    fonts,
    before: 1,
  });
  return [keep({ ...title, before: 30 }), keep(words)];
}

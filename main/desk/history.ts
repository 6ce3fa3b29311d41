import { listHistory } from '#main/portfolio/history.ts';
import type { DeskParts } from './desk-parts.ts';
import type { Implementer } from './implementer.ts';

/** Entries given when nobody says how many. */
const USUAL = 200;

export function makeHistoryRequests(os: Implementer['history'], { door }: DeskParts) {
  return {
    listHistory: os.listHistory.handler(({ input }) =>
      door.read((reading) => listHistory(reading, { ...input, most: input.most ?? USUAL })),
    ),
  };
}

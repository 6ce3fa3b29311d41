/** Chains of measures from lengths in a row; equal ones that follow one another are told together. */
import type { Chain, ChainPart } from './work-piece.ts';

export interface Link {
  readonly length: number;
  /** What it is: `4 hem`. */
  readonly says?: string;
}

export type SayLength = (length: number) => string;

/** Equal lengths differ by less than this, in ticks. */
const SAME = 2;

export function chainOf(side: Chain['side'], links: readonly Link[], say: SayLength, start = 0): Chain {
  const parts: ChainPart[] = [];
  let at = start;
  let place = 0;
  while (place < links.length) {
    const link = links[place] as Link;
    let last = place;
    while (isSame(link, links[last + 1])) last += 1;
    const count = last - place + 1;
    const words = link.says === undefined ? say(link.length) : `${say(link.length)} ${link.says}`;
    if (count > 2) {
      parts.push({
        from: at,
        to: at + link.length * count,
        words: `${count} × ${words}`,
        inner: Array.from({ length: count - 1 }, (_, mark) => at + link.length * (mark + 1)),
      });
      at += link.length * count;
    } else {
      for (let each = 0; each < count; each += 1) {
        parts.push({ from: at, to: at + link.length, words });
        at += link.length;
      }
    }
    place = last + 1;
  }
  return { side, parts: parts.filter((part) => part.to - part.from > 0) };
}

function isSame(link: Link, next: Link | undefined): boolean {
  return next !== undefined && next.says === link.says && Math.abs(next.length - link.length) < SAME;
}

/** Lengths between places, both ends with them. */
export function linksBetween(places: readonly number[], start: number, end: number): readonly Link[] {
  const stops = [start, ...places, end];
  return stops.slice(1).map((stop, place) => ({ length: stop - (stops[place] ?? start) }));
}

/** The whole length as one measure. */
export function whole(side: Chain['side'], length: number, say: SayLength, says?: string): Chain {
  return chainOf(side, [says === undefined ? { length } : { length, says }], say);
}

/** Even spacing along a board, in ticks from its left end; unrounded, for the worktable shares them out. */

/** Ends of `parts` equal parts of `width`: `parts` + 1 places, both ends with them. */
export function partEnds(width: number, parts: number): number[] {
  return Array.from({ length: parts + 1 }, (_, index) => (width * index) / parts);
}

/** Middles of `count` things that share a width, none at its ends. */
export function betweenEnds(width: number, count: number): number[] {
  return partEnds(width, count + 1).slice(1, -1);
}

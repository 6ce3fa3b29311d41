/**
 * A stream of shares in [0, 1) that is the same every time (a linear congruential generator with the constants of Numerical
 * Recipes): the search needs variety, the program needs the same plan for the same question.
 */
export function makeStream(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

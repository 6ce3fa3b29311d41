import { HANDS } from '#shared/cloth.ts';
import type { Hand } from '#shared/cloth.ts';

/** How firmly a gram of it holds, by its hand; a coated cloth is 1 (assumed). */
export const STIFFNESS_OF_HAND: Readonly<Record<Hand, number>> = {
  limp: 0.35,
  soft: 0.45,
  medium: 0.6,
  firm: 0.75,
  stiff: 1,
};

/** The hand that holds most nearly so; of two equally near the softer. */
export function nearestHand(stiffness: number): Hand {
  const far = (hand: Hand): number => Math.abs(STIFFNESS_OF_HAND[hand] - stiffness);
  return HANDS.reduce((best, hand) => (far(hand) < far(best) - 1e-9 ? hand : best));
}

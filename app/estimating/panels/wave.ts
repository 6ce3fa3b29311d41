/**
 * Wave headings on carriers: the gliders decide. The track of one panel is its finished width, since it hangs round its
 * return and over its half of the overlap. Spaces = that track over the glider spacing, up; gliders are
 * made even, so that both edges turn the same way; the flat width is spaces times the pitch of the tape and the ends
 * (common practice). The pitch is glider spacing times fullness.
 */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { finishedWidth } from './finished-width.ts';
import { upToEven, upToWhole } from '../round.ts';

export interface WavePiece {
  readonly gliders: number;
  readonly spaces: number;
  /** Flat width of one piece, in thousandths of a tick. */
  readonly flatMilli: number;
}

export function wavePiece(panels: PanelsTreatment): WavePiece {
  const { glider, waveEnds } = panels.practice.spacing;
  const pieces = panels.pieces;
  const least = glider === 0 ? 1 : Math.max(1, upToWhole(finishedWidth(panels), pieces * glider));
  const gliders = upToEven(least + 1);
  const spaces = gliders - 1;
  return { gliders, spaces, flatMilli: spaces * glider * panels.fullness + 1000 * waveEnds };
}

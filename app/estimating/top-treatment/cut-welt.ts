/**
 * Cloth for a welt. Straight strips go across the cloth, joined on the slant, which takes a strip's width of each. On
 * the bias one rectangle is sewn into a tube and cut round and round: its area is the strip's, and one strip more is
 * lost at the ends (common practice).
 */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { BoardChoices } from '#shared/treatments/board-practice.ts';
import { upToWhole } from '../round.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';
import { freePiece } from './lay-pieces.ts';
import type { Piece } from './lay-pieces.ts';

export interface WeltMaking extends Pick<BoardChoices, 'weltGrain'> {
  readonly weltStrip: Ticks;
}

/** `run` is all welt of this cloth, of all quantity. */
export function cutWelt(run: Ticks, cloth: Cloth, { weltStrip, weltGrain }: WeltMaking): Piece {
  if (weltGrain === 'straight') {
    const strips = Math.max(1, upToWhole(run, cloth.usableWidth - weltStrip));
    return freePiece('welt strips', weltStrip, strips);
  }
  return freePiece('welt, on the bias', ticks(upToWhole(run * weltStrip, cloth.usableWidth) + weltStrip), 1);
}

export function workWelt(id: string, run: Ticks, cloth: Cloth, making: WeltMaking, say: Say): WorkingStep {
  const piece = cutWelt(run, cloth, making);
  const { weltStrip, weltGrain } = making;
  if (weltGrain === 'straight')
    return step(
      id,
      `welt of ${cloth.name}`,
      `${say.length(run)} ÷ (${say.length(cloth.usableWidth)} − ${say.length(weltStrip)}), up: strips of ${say.length(weltStrip)}`,
      String(piece.count),
      'practice: straight strips, joined on the slant',
    );
  return step(
    id,
    `welt of ${cloth.name}`,
    `${say.length(run)} × ${say.length(weltStrip)} ÷ ${say.length(cloth.usableWidth)} + ${say.length(weltStrip)}`,
    say.length(piece.cut.plain),
    'practice: on the bias, one tube cut round and round',
  );
}

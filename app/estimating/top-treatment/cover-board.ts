/** The board and the cloth that covers it: round its girth, over both ends, pieced where nobody looks. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { BoardChoices } from '#shared/treatments/board-practice.ts';
import { upToWhole } from '../round.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';
import { freePiece } from './lay-pieces.ts';
import type { Piece } from './lay-pieces.ts';

export interface BoardMaking extends Pick<BoardChoices, 'boardCover'> {
  readonly boardThickness: Ticks;
  readonly coverLap: Ticks;
}

export interface BoardCover {
  readonly cloth: Cloth;
  /** Round the board: twice depth and thickness, and the lap. */
  readonly girth: Ticks;
  /** Along the board: its length and both ends. */
  readonly run: Ticks;
  /** Strips across the cloth for one board. */
  readonly strips: number;
}

/** Null where nothing covers the board. */
export function coverBoard(
  board: { readonly length: Ticks; readonly depth: Ticks },
  making: BoardMaking,
  face: FaceCloth,
  behind: readonly BackCloth[],
): BoardCover | null {
  if (making.boardCover === 'none') return null;
  const lining = behind.find((layer) => layer.role === 'lining');
  const cloth = making.boardCover === 'lining' ? (lining ?? face) : face;
  const { boardThickness, coverLap } = making;
  const run = ticks(board.length + 2 * (boardThickness + coverLap));
  return {
    cloth,
    girth: ticks(2 * (board.depth + boardThickness) + coverLap),
    run,
    strips: upToWhole(run, cloth.usableWidth),
  };
}

export function coverPiece(cover: BoardCover, quantity: number): Piece {
  const across = cover.strips === 1 ? cover.run : null;
  return freePiece('board cover', cover.girth, cover.strips * quantity, across);
}

export function workCover(
  cover: BoardCover,
  board: { readonly length: Ticks; readonly depth: Ticks },
  making: BoardMaking,
  say: Say,
): WorkingStep[] {
  const { boardThickness, coverLap } = making;
  return [
    step(
      'board-cover',
      `board cover of ${cover.cloth.name}`,
      `2 × (${say.length(board.depth)} + ${say.length(boardThickness)}) + ${say.length(coverLap)}`,
      say.length(cover.girth),
      'practice: round the board, with its lap',
    ),
    step(
      'board-cover-strips',
      'strips for one board',
      `${say.length(board.length)} + 2 × (${say.length(boardThickness)} + ${say.length(coverLap)}) = ${say.length(cover.run)} ÷ ${say.length(cover.cloth.usableWidth)}, up`,
      String(cover.strips),
      'over both ends; pieced where nobody looks',
    ),
  ];
}

/** Two ends, and one more wherever a span would be too wide. */
export function countBoardBrackets(length: Ticks, { bracketSpacing }: Pick<Practice, 'bracketSpacing'>): number {
  return 1 + (bracketSpacing === 0 ? 1 : Math.max(1, upToWhole(length, bracketSpacing)));
}

/** A board seen from above, and the cloth that covers it. */
import type { BoardCover } from '#app/estimating/top-treatment/cover-board.ts';
import type { SayLength } from './chain-of.ts';
import { whole } from './chain-of.ts';
import type { WorkPiece } from './work-piece.ts';

export interface WorkBoard {
  readonly length: number;
  readonly depth: number;
  readonly thickness: number;
}

export function pieceOfBoard(
  board: WorkBoard,
  say: SayLength,
  sayUnit: SayLength,
  title = 'Board, from above',
): WorkPiece {
  return {
    title,
    says: [`${sayUnit(board.thickness)} thick`],
    width: board.length,
    height: board.depth,
    chains: [whole('bottom', board.length, say), whole('left', board.depth, say, 'deep')],
  };
}

export function pieceOfCover(cover: BoardCover, say: SayLength): WorkPiece {
  const strips = cover.strips === 1 ? 'one strip' : `${cover.strips} strips, pieced where nobody looks`;
  return {
    title: 'Board cover, cut',
    says: [`${cover.cloth.name}, ${strips}`],
    width: cover.run,
    height: cover.girth,
    chains: [whole('bottom', cover.run, say), whole('left', cover.girth, say, 'round the board')],
  };
}

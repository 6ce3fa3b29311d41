/** The layers behind the face, a piece each: one full width as it is cut, or the run of cloth that lies sideways. */
import type { WorkGiven } from './work-given.ts';
import type { TakeoffLine } from '#shared/result.ts';
import { whole } from './chain-of.ts';
import { backLines, nameOf, sayCuts } from './cloth-words.ts';
import type { WorkPiece } from './work-piece.ts';

export function piecesOfLayers(given: WorkGiven): readonly WorkPiece[] {
  return backLines(given).map((line) => pieceOfLayer(given, line));
}

function pieceOfLayer(given: WorkGiven, line: TakeoffLine): WorkPiece {
  const name = nameOf(given, line.cloth);
  const title = line.role === 'interlining' ? 'Interlining, one cut' : 'Lining, one cut';
  if (line.railroaded) {
    return {
      title: line.role === 'interlining' ? 'Interlining, sideways' : 'Lining, sideways',
      says: [name],
      width: line.cutLength,
      height: line.plainCut,
      chains: [whole('left', line.plainCut, given.say), whole('bottom', line.cutLength, given.say)],
    };
  }
  const usable = given.clothOf(line.cloth)?.usableWidth ?? line.cutLength;
  return {
    title,
    says: [sayCuts(line.cuts, name)],
    width: usable,
    height: line.cutLength,
    chains: [whole('left', line.cutLength, given.say), whole('bottom', usable, given.say)],
  };
}

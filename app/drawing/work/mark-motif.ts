/** Where the placed motif stands on the cuts of the face: a line across each, and in words where the cuts begin. */
import { intoRepeat } from '#app/estimating/into-repeat.ts';
import type { Repeat } from '#shared/cloth.ts';
import type { TakenPattern } from '#shared/result.ts';
import { placePattern } from '#app/estimating/place-pattern.ts';
import type { PlacedPattern } from '#app/estimating/place-pattern.ts';
import { placeOnOwnValance } from '#app/estimating/roman-shade/cut-shade.ts';
import type { WorkGiven } from './work-given.ts';
import { faceLine } from './cloth-words.ts';
import type { WorkPiece, WorkRow } from './work-piece.ts';

/** Nothing is marked where no pattern is placed, or the cloth runs sideways. */
export function markMotif(given: WorkGiven, rows: readonly WorkRow[]): readonly WorkRow[] {
  const { treatment, made } = given;
  const line = faceLine(given);
  const cloth = line === null ? null : given.clothOf(line.cloth);
  const repeat = cloth?.repeat ?? null;
  if (line?.pattern === undefined || cloth === null || repeat === null) return rows;
  const { pattern } = line;
  const lined = made.stack.behind.length > 0;
  const placed = placePattern(treatment, cloth, lined);
  const own = treatment.kind === 'roman-shade' ? placeOnOwnValance(treatment, cloth, lined) : null;
  const mark = (piece: WorkPiece): WorkPiece => {
    if (piece.face === undefined) return piece;
    const found = piece.face.of === 'own-valance' ? own : placed;
    return found === null ? piece : markPiece(given, piece, found, pattern, repeat);
  };
  return rows.map((row) => ({ ...row, pieces: row.pieces.map(mark) }));
}

/** A motif that stands beyond the cut has its like on it, whole repeats further. */
function markPiece(
  given: WorkGiven,
  piece: WorkPiece,
  placed: PlacedPattern,
  pattern: TakenPattern,
  repeat: Repeat,
): WorkPiece {
  const { down } = placed;
  const size = repeat.vertical;
  const y = down >= 0 && down <= piece.height ? down : intoRepeat(down, size);
  const says = [
    ...(piece.face?.of === 'own-valance' ? [] : [sayMotif(given, pattern)]),
    `cuts begin ${given.sayUnit(placed.phase)} into the repeat of ${given.say(size)}`,
    ...(repeat.match === 'half-drop' ? ['every second width half a repeat further'] : []),
    ...(pattern.about === null ? [] : ['a motif in the middle across']),
  ].join('; ');
  if (y > piece.height) return { ...piece, says: [...piece.says, says] };
  const middle = { x: piece.face?.middle ?? piece.width / 2, y };
  return {
    ...piece,
    says: [...piece.says, says],
    lines: [...(piece.lines ?? []), { is: 'motif', from: { x: 0, y }, to: { x: piece.width, y } }],
    dots: [...(piece.dots ?? []), ...(pattern.about === null ? [] : [middle])],
  };
}

function sayMotif(given: WorkGiven, { below, level }: TakenPattern): string {
  const way = `middle of the motif ${given.say(Math.abs(below))} ${below < 0 ? 'above' : 'below'} the finished top`;
  return level === null ? way : `${way}, ${given.sayUnit(level)} above the floor`;
}

/** The working of swags and tails: finished, flat and cut sizes and their places, and what each rests on. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { SwagsTreatment } from '#shared/treatments/swags.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';
import { workCover } from '../top-treatment/cover-board.ts';
import { layFlat } from '../top-treatment/lay-flat.ts';
import { addUp, nameAddends, sayAddends } from '../top-treatment/work-parcel.ts';
import { workWidths } from '../top-treatment/work-widths.ts';
import type { SwagsSheet } from './estimate-swags.ts';
import { tailPiece } from './lay-swags.ts';
import type { CutSwags, CutTail } from './lay-swags.ts';
import type { FlatSwag } from './measure-swags.ts';
import { biasCut, depthAddends, finishedWidthOf } from './measure-swags.ts';
import { biasReach, pieceOnBias } from './piece-on-bias.ts';

export function workSwags(
  swags: SwagsTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  contrast: Cloth | null,
  sheet: SwagsSheet,
  say: Say,
): WorkingStep[] {
  return [
    step(
      'finished-width',
      'board with returns',
      [swags.width, swags.returns.left, swags.returns.right]
        .filter((each) => each > 0)
        .map(say.length)
        .join(' + '),
      say.length(finishedWidthOf(swags)),
      'face of the board, left and right return',
    ),
    ...workRow(swags, sheet, say),
    ...workFlat(swags, face, behind, sheet, say),
    ...sheet.tails.flatMap((tail) => workTail(swags, tail, face, contrast, say)),
    ...(sheet.jabots.length > 0
      ? [
          step(
            'jabot-places',
            'middles of the jabots, from the left end',
            sheet.jabots.map(say.length).join(', '),
            String(sheet.jabots.length),
            sheet.jabots.length === sheet.row.count - 1 ? 'one over each joint' : 'spread evenly over the board',
          ),
        ]
      : []),
    step(
      'board',
      'board',
      `face ${say.length(sheet.board.length)}`,
      `${say.length(sheet.board.length)} × ${say.length(sheet.board.depth)} × ${say.length(sheet.board.thickness)}`,
      'face end to end, wall to front; practice: thickness',
    ),
    ...(sheet.cover ? workCover(sheet.cover, sheet.board, swags.practice.swags, say) : []),
  ];
}

function workRow(swags: SwagsTreatment, { row }: SwagsSheet, say: Say): WorkingStep[] {
  const making = swags.practice.swags;
  const board = say.length(swags.width);
  const counted =
    swags.style === 'separate'
      ? `${board} ÷ ${say.length(making.widestSwag)}, up`
      : `2 × ${board} ÷ ${say.length(making.widestSwag)}, up, − 1`;
  const width =
    swags.style === 'separate' || row.count === 1
      ? `${board} ÷ ${row.count}`
      : `2 × ${board} ÷ (${row.count} + 1)${making.widthStep > 0 ? `, up to ${say.length(making.widthStep)}` : ''}`;
  return [
    step(
      'swags',
      'swags',
      swags.swags === null ? counted : String(row.count),
      String(row.count),
      swags.swags === null ? 'practice: the widest swag' : 'as given',
    ),
    step('swag-width', 'width of a swag', width, say.length(row.width), `common practice: ${swags.style} swags`),
    ...(row.count > 1
      ? [
          step(
            'swag-places',
            'left ends of the swags',
            row.lefts.map(say.length).join(', '),
            say.length(row.pitch),
            row.overlap > 0
              ? `(${board} − ${say.length(row.width)}) ÷ ${row.count - 1} apart; each laps ${say.length(row.overlap)}`
              : 'side by side',
          ),
        ]
      : []),
  ];
}

function workFlat(
  swags: SwagsTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  { row, flat, onBias }: SwagsSheet,
  say: Say,
): WorkingStep[] {
  const making = swags.practice.swags;
  const ratio = (thousandths: number): string => say.number(thousandths / 1000, 3);
  const addends = depthAddends(swags);
  const [folded, ...turns] = addends;
  const grain = sayGrain(swags, onBias, say);
  return [
    step(
      'swag-flat-width',
      'flat, lower edge',
      `${say.length(row.width)} × ${ratio(making.flatWidth)}`,
      say.length(flat.width),
      'practice: flat cloth over finished width',
    ),
    step(
      'swag-flat-depth',
      'flat, down the middle',
      `${say.length(swags.finishedLength)} × ${ratio(making.flatDepth)}${turns.some(({ length }) => length > 0) ? ` + ${sayAddends(turns, say)}` : ''}`,
      say.length(addUp(addends)),
      `${nameAddends(folded ? [folded, ...turns] : turns)}; practice: flat cloth over finished depth`,
    ),
    step(
      'swag-top',
      'top between the folds',
      `${say.length(row.width)} × ${ratio(making.topShare)}`,
      say.length(flat.top),
      'practice: share of the width',
    ),
    step(
      'folds',
      'folds',
      `${say.length(swags.finishedLength)} ÷ ${say.length(making.fold)}, up`,
      String(flat.folds),
      'practice: depth of one fold',
    ),
    onBias
      ? step(
          'plain-cut',
          'cloth for a swag, on the bias',
          sayOnBias(flat, face, say),
          say.length(pieceOnBias(flat, face).length),
          grain,
        )
      : step('plain-cut', 'cloth for a swag, straight', say.length(flat.depth), say.length(flat.depth), grain),
    ...(onBias ? [] : workStraight(swags, face, flat, say)),
    ...(onBias || behind.length > 0 ? [workSpan(flat, onBias ? [face, ...behind] : behind, say)] : []),
    ...behind.map((cloth, index) => {
      const { length } = pieceOnBias(flat, cloth);
      return step(
        `layer-${index + 1}-cut`,
        `${cloth.name}, for a swag`,
        sayOnBias(flat, cloth, say),
        say.length(length),
        'common practice: behind the face always on the bias',
      );
    }),
  ];
}

/** How many widths one swag takes on the straight grain, where a motif stands in its middle. */
function workStraight(swags: SwagsTreatment, face: FaceCloth, flat: FlatSwag, say: Say): WorkingStep[] {
  const { practice, pattern } = swags;
  const widths = layFlat({ total: flat.width, leftMore: 0 }, face, pattern, practice.seam);
  return widths.centred ? [workWidths('swag-widths', 'widths for a swag', face, widths, practice, say)] : [];
}

/** The side of the square; where a corner does not come out of what that leaves, the swag and its corner. */
function sayOnBias(flat: FlatSwag, cloth: Cloth, say: Say): string {
  const { span, corner, length } = pieceOnBias(flat, cloth);
  if (length > biasCut(flat)) return `${say.length(span)} + ${say.length(corner)}`;
  return `(${say.length(flat.width)} + ${say.length(flat.depth)}) ÷ √2`;
}

/** Whether the swag fits across each cloth at 45 degrees, and where its corners come from if not. */
function workSpan(flat: FlatSwag, cloths: readonly Cloth[], say: Say): WorkingStep {
  const { far, near } = biasReach(flat);
  const found = cloths.map((cloth) => {
    const { corner } = pieceOnBias(flat, cloth);
    const pieced = corner === 0 ? 'in one' : `its corner, ${say.length(corner)} along the cloth, is pieced on`;
    return `${cloth.name}, ${say.length(cloth.usableWidth)} wide: ${pieced}`;
  });
  return step(
    'swag-span',
    'across the cloth, on the bias',
    `(${say.length(far)} + ${say.length(near)}) ÷ √2`,
    say.length(pieceOnBias(flat, { usableWidth: flat.width }).span),
    found.join('; '),
  );
}

function sayGrain(swags: SwagsTreatment, onBias: boolean, say: Say): string {
  if (swags.onBias !== null) return onBias ? 'on the bias, as given' : 'on the straight grain, as given';
  const { biasWidest, biasDeepest } = swags.practice.swags;
  const limits = `${say.length(biasWidest)} wide or ${say.length(biasDeepest)} deep`;
  return onBias ? `practice: on the bias up to ${limits}` : `practice: straight over ${limits}`;
}

function workTail(
  swags: SwagsTreatment,
  tail: CutTail,
  face: FaceCloth,
  contrast: Cloth | null,
  say: Say,
): WorkingStep[] {
  const { pleats, flat, name } = tail;
  const { seam, pleatFace } = swags.practice.swags;
  const outer = name === 'cascades' ? Math.max(swags.returns.left, swags.returns.right) : 0;
  const piece = tailPiece(swags, tail, face, 0);
  const each = piece.count / (tail.count * swags.quantity);
  const returned = outer > 0 ? ` + ${say.length(outer)}` : '';
  return [
    step(
      `${name}-pleats`,
      `${name}, knife pleats`,
      tail.tail.pleats === null
        ? `${say.length(tail.tail.width)} ÷ ${say.length(pleatFace)}, to the nearest whole`
        : String(pleats.count),
      `${pleats.count} of ${say.length(pleats.face)}`,
      tail.tail.pleats === null ? 'practice: face of one pleat, then re-spaced' : 'as given, re-spaced',
    ),
    step(
      `${name}-flat`,
      `${name}, flat width`,
      `${say.length(tail.tail.width)} + 2 × ${say.length(pleats.depth)} × ${pleats.count}${returned} + 2 × ${say.length(seam)}`,
      say.length(Math.max(flat.left, flat.right)),
      `finished + 2 × depth × pleats${outer > 0 ? ', return' : ''}, seams`,
    ),
    step(
      `${name}-cut`,
      `${name}, cut`,
      sayAddends(tail.length, say),
      say.length(piece.cut.plain),
      `${nameAddends(tail.length)}; ${each === 1 ? 'one width each' : `${each} widths each`}${contrast ? `; lined with ${contrast.name}, which shows` : ''}`,
    ),
    step(
      `${name}-slope`,
      `${name}, longest and shortest`,
      `${say.length(tail.tail.longest)} − ${say.length(tail.tail.shortest)}`,
      say.length(tail.tail.longest - tail.tail.shortest),
      `rise of the slanted edge over ${pleats.count} pleats`,
    ),
  ];
}

/** How long the welt is, of all quantity. */
export function workWeltRun(swags: SwagsTreatment, { row, flat }: CutSwags, run: Ticks, say: Say): WorkingStep {
  return step(
    'welt-run',
    'welt along the lower edges',
    `${row.count * swags.quantity} × (${say.length(flat.width)} + ${say.length(swags.practice.swags.weltEnds)})`,
    say.length(run),
    'lower edge of each swag spread flat; practice: ends of a welt',
  );
}

/** The working of a Roman shade: every step with its figures and the setting or source that it rests on. */
import type { BackCloth, Cloth } from '#shared/cloth.ts';
import { ticksPer } from '#shared/length.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';
import { sayCut, workGrams, workOrder, workRows } from '../work-rows.ts';
import type { ShadeCut, ShadePiece } from './cut-shade.ts';
import type { LaidShade } from './lay-shade.ts';
import { cutPieces, shadesAcross } from './piece-width.ts';
import type { PiecedWidth } from './piece-width.ts';
import { insetOf, isLarge, usualRowSpacing } from './place-rings.ts';
import { isWoundAbove, rowThickness } from './raise-shade.ts';
import type { RomanShadeSheet } from './roman-shade-sheet.ts';
import { workSize } from './size-shade.ts';
import { workMotor } from './work-motor.ts';

type Sheet = Omit<RomanShadeSheet, 'warnings'>;

export function workRomanShade(
  shade: RomanShadeTreatment,
  sheet: Sheet,
  made: {
    readonly cuts: readonly ShadeCut[];
    readonly laid: readonly LaidShade[];
    readonly behind: readonly BackCloth[];
  },
  massOf: (cloth: Cloth) => number,
  say: Say,
): WorkingStep[] {
  const { cuts, laid, behind } = made;
  return [
    ...workSize(shade, sheet.finished, say),
    ...cuts.flatMap((cut, index) => {
      const each = laid[index];
      return each ? workCloth(shade, cut, each, say) : [];
    }),
    ...workRings(shade, sheet, say),
    workStack(shade, sheet, behind, say),
    workCords(shade, sheet, say),
    ...workMotor(shade, sheet.finished.width, say),
    step('board', 'board', say.length(sheet.finished.width), say.length(sheet.board.length), 'as wide as the shade'),
    workGrams(
      cuts.map((cut) => cut.cloth),
      laid.map((each) => each.line),
      massOf,
      say,
    ),
  ];
}

function workCloth(shade: RomanShadeTreatment, cut: ShadeCut, laid: LaidShade, say: Say): WorkingStep[] {
  const key = cut.layer === 0 ? '' : `layer-${cut.layer}-`;
  const shrinkage = cut.layer === 0 ? shade.practice.shrinkage : 0;
  const steps = [
    ...workPiece(key, 'shade', shade, cut, cut.shade, laid, shrinkage, say),
    ...(cut.valance ? workPiece(`${key}valance-`, 'valance', shade, cut, cut.valance, laid, shrinkage, say) : []),
  ];
  const returns = cut.returns;
  if (returns)
    steps.push(
      step(
        'return-cut',
        'side returns, cut',
        `wide: ${say.length(Math.max(shade.returns.left, shade.returns.right))} + ${say.length(shade.practice.romanShade.returnWidth)}; long: ${sayCut([say.length(returns.drop), say.length(shade.practice.romanShade.returnLength)], shrinkage, say)}`,
        `${returns.count} of ${say.length(returns.width)} × ${say.length(returns.plain)}`,
        `${laid.returnsBeside > 0 ? `${laid.returnsBeside} from the cloth beside the shade; ` : ''}practice: they hang ${shade.practice.romanShade.returnDrop === 'stack' ? 'as deep as the raised stack' : 'over the whole length'}`,
      ),
    );
  const practice = shade.practice;
  if (laid.rows) return [...steps, ...workRows(key, cut.cloth, laid.rows, laid.line, practice, say)];
  return [
    ...steps,
    step(
      `${key}laid-out`,
      `${cut.cloth.name}, run sideways`,
      `${shade.quantity} × ${say.length(laid.line.cutLength)}`,
      say.cloth(laid.line.plan),
      'the cut length fits across the cloth, without seams, and this way takes less of it',
    ),
    workOrder(key, cut.cloth, laid.line, practice, say),
  ];
}

function workPiece(
  key: string,
  name: string,
  shade: RomanShadeTreatment,
  cut: ShadeCut,
  piece: ShadePiece,
  laid: LaidShade,
  shrinkage: number,
  say: Say,
): WorkingStep[] {
  const { pieced } = piece;
  const cloth = cut.cloth;
  const steps = [
    step(
      `${key}cut-width`,
      `${cloth.name}, ${name}, cut width`,
      `${say.length(pieced.finished)} + ${say.length(cut.added)}`,
      say.length(pieced.cutWidth),
      'practice: added for both sides',
    ),
    step(
      `${key}plain-cut`,
      `${cloth.name}, ${name}, cut before repeat`,
      sayCut(
        piece.terms.map((term) => term.figures(say)),
        shrinkage,
        say,
      ),
      say.length(piece.plain),
      `practice: what is added to the length${shrinkage > 0 ? ', shrinkage before rounding' : ''}`,
    ),
  ];
  if (laid.line.railroaded) return steps;
  return [...steps, workPieces(key, name, shade, cut, piece, say)];
}

function workPieces(
  key: string,
  name: string,
  shade: RomanShadeTreatment,
  cut: ShadeCut,
  piece: ShadePiece,
  say: Say,
): WorkingStep {
  const { pieced } = piece;
  const { quantity } = shade;
  const own = shade.practice.romanShade;
  const usable = say.length(cut.cloth.usableWidth);
  const label = `${cut.cloth.name}, ${name}, pieces`;
  const cuts = cutPieces(cut.cloth, pieced, quantity);
  const all = `${cuts.all} full-width ${cuts.all === 1 ? 'cut' : 'cuts'}${quantity > 1 ? ` for ${quantity}` : ''}`;
  if (pieced.side === 0) {
    const across = shadesAcross(cut.cloth, pieced);
    return step(
      `${key}pieces`,
      label,
      `${say.length(pieced.cutWidth)} fits in ${usable}${pieced.centred ? ' about a motif' : ''}${across > 1 ? `, ${across} side by side` : ''}`,
      all,
      cut.layer === 0
        ? `practice: one width where ${say.length(pieced.finished)} + ${say.length(own.oneWidthMargin)} fits`
        : 'one width',
    );
  }
  const centre = pieced.centres === 1 ? say.length(pieced.centre) : `${pieced.centres} × ${say.length(pieced.centre)}`;
  const least = pieced.side === own.leastSide ? `, side pieces of at least ${say.length(own.leastSide)}` : '';
  return step(
    `${key}pieces`,
    label,
    `more than one width of ${usable}${sayAbout(pieced, say)}${least}: (${say.length(pieced.cutWidth)} + ${pieced.joins} × ${say.length(2 * own.seam)} − ${centre}) ÷ 2 = ${say.length(pieced.side)}`,
    `centre ${centre}, two sides of ${say.length(pieced.side)}; ${all}`,
    `${pieced.centred ? 'a motif in the middle of the centre width, every piece reads on' : 'a whole width in the centre'}, equal side pieces, both from one cut where they fit; practice: joins`,
  );
}

/** What one width gives where a motif stands in its middle. */
function sayAbout({ centred }: PiecedWidth, say: Say): string {
  return centred ? `, of which ${say.length(centred.centre)} lies about a motif` : '';
}

function workRings(shade: RomanShadeTreatment, sheet: Sheet, say: Say): WorkingStep[] {
  const { rings, finished } = sheet;
  const byBoard = rings.rule === 'board-line';
  const large = isLarge(shade, finished) ? ', a large shade' : '';
  const spacing = byBoard
    ? `${say.length(finished.length)} ÷ (${rings.counted} − ½)`
    : `(${say.length(finished.length)} − ${say.length(rings.headRoom)}) ÷ (${rings.counted} + ½)`;
  const columns = rings.columns.map(say.length).join(', ');
  return [
    step(
      'rows',
      byBoard ? 'rows, the board line counted' : 'ring rows',
      shade.rows === null ? countFormula(shade, sheet, say) : 'as given',
      String(rings.counted),
      shade.rows === null ? `practice: usual spacing of rows${large}` : 'given',
    ),
    step(
      'row-spacing',
      'spacing of rows',
      `${spacing} = ${say.number(rings.spacing / ticksPer(say.unit), 3)}`,
      say.length(rings.spacing),
      byBoard ? 'length / (rows − ½), the board line is the last row' : '(length − head room) / (ring rows + ½)',
    ),
    step(
      'first-row',
      'first row above the hem',
      `${say.length(rings.spacing)} ÷ 2 = ${say.number(rings.firstRow / ticksPer(say.unit), 3)}`,
      say.length(rings.firstRow),
      'half a space up',
    ),
    step(
      'columns',
      'columns of rings, from the left edge',
      columns,
      String(rings.columns.length),
      shade.columns === null
        ? `practice: ${say.length(insetOf(shade))} from the edges, on seams, at most ${say.length(shade.practice.romanShade.columnSpacing)} apart`
        : 'as many as given',
    ),
    step('rings', 'rings', `${rings.sewn} rows × ${rings.columns.length} columns`, String(rings.count), 'of one shade'),
  ];
}

/** The count of rows in figures: the number whose spacing is nearest the usual one. */
function countFormula(shade: RomanShadeTreatment, sheet: Sheet, say: Say): string {
  const { rings, finished } = sheet;
  const usual = usualRowSpacing(shade, finished);
  const byBoard = rings.rule === 'board-line';
  const quotient = (finished.length - rings.headRoom) / usual + (byBoard ? 0.5 : -0.5);
  const run = byBoard
    ? say.length(finished.length)
    : `(${say.length(finished.length)} − ${say.length(rings.headRoom)})`;
  return `${run} ÷ ${say.length(usual)} ${byBoard ? '+' : '−'} ½ = ${say.number(quotient)}, to the nearest`;
}

function workStack(shade: RomanShadeTreatment, sheet: Sheet, behind: readonly BackCloth[], say: Say): WorkingStep {
  const { rings } = sheet;
  const own = shade.practice.romanShade;
  const hangs = shade.style === 'soft-fold' ? rings.clothBetween / 2 : rings.spacing / 2;
  const terms = [
    ...(rings.headRoom > 0 ? [say.length(rings.headRoom)] : []),
    say.length(rings.spacing),
    `${Math.max(0, rings.sewn - 1)} × ${say.length(rowThickness(shade, behind))}`,
    say.length(hangs),
    ...(shade.style === 'relaxed' ? [say.length(own.relaxedExtra)] : []),
  ];
  return step(
    'raised-stack',
    'height when raised',
    terms.join(' + '),
    say.length(sheet.raisedStack),
    'to the top row, the gathered rows, half a fold below; practice: thickness of a row (from memory)',
  );
}

function workCords(shade: RomanShadeTreatment, sheet: Sheet, say: Say): WorkingStep {
  const length = say.length(sheet.finished.length);
  const { columns } = sheet.rings;
  const pull = shade.lift === 'cords' ? ` + ${length} to pull` : '';
  const each = sheet.finished.length * (shade.lift === 'cords' ? 2 : 1) + shade.practice.romanShade.cordExtra;
  const along = sheet.cords.total - columns.length * each;
  const across = isWoundAbove(shade.lift) ? '' : ` + ${say.length(along)} in all along to the ${shade.control}`;
  return step(
    'cords',
    'cord',
    `${columns.length} × (${length}${pull} + ${say.length(shade.practice.romanShade.cordExtra)})${across}`,
    say.length(sheet.cords.total),
    sheet.cords.says,
  );
}

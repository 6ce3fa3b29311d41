/** The working of panels: every step with its formula in figures and the setting or source that it rests on. */
import type { BackCloth, Cloth, FaceCloth, Repeat } from '#shared/cloth.ts';
import { liesOnFloor } from '#shared/treatments/panels.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { TakeoffLine, WorkingStep } from '#shared/result.ts';
import { flatAsked } from './count-widths.ts';
import { finishedWidth, headingLength } from './finished-width.ts';
import { countPhases, orderHalfDrop } from '../cut-cloth.ts';
import type { Cut } from '../cut-cloth.ts';
import type { LaidFace } from './laid-face.ts';
import { headingTurn } from './heading-turn.ts';
import { workOrderOf } from '../say-order.ts';
import { countOf, step } from '../say.ts';
import { workMeasures } from './work-measures.ts';
import type { Say } from '../say.ts';
import { wavePiece } from './wave.ts';
import { workHalfWidth, workPocket } from './work-make.ts';
import { GRAMS_PER_OUNCE } from '#shared/weight.ts';

const GRAMS_PER_POUND = 16 * GRAMS_PER_OUNCE;

export function workFace(
  panels: PanelsTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  laid: LaidFace,
  say: Say,
): WorkingStep[] {
  const { practice, returns } = panels;
  const width = finishedWidth(panels);
  const steps = [
    ...workMeasures(panels, say),
    step(
      'finished-width',
      'width with returns and overlap',
      `${say.length(headingLength(panels))} + ${say.length(returns.left)} + ${say.length(returns.right)} + ${say.length(panels.overlap)}`,
      say.length(width),
      'rod face, both returns, the whole overlap',
    ),
  ];
  if (panels.halfWidths !== null) {
    const pieces = panels.pieces;
    steps.push(
      step(
        'widths',
        'widths',
        `${pieces} × ${say.widths(panels.halfWidths)}`,
        say.widths(panels.halfWidths * pieces),
        'given for each piece',
      ),
    );
  } else {
    steps.push(workFlat(panels, say));
    if (laid.counted) steps.push(workWidths(panels, face, laid, say));
  }
  steps.push(...workHalfWidth(panels, laid, say));
  if (laid.counted) steps.push(workFullness(panels, laid, say));
  else
    steps.push(
      step(
        'railroaded',
        'run, sideways',
        `${say.length(flatAsked(panels))} + ${2 * panels.pieces} × ${say.length(practice.sideHem)}`,
        say.length(laid.line.cutLength),
        `practice: side hems; ${saySideways(panels, face)}`,
      ),
    );
  const turn = headingTurn(panels, behind.length > 0);
  const parts = [
    panels.finishedLength,
    turn,
    ...(practice.bottomHem > 0 ? [practice.bottomHem] : []),
    ...(practice.squaring > 0 ? [practice.squaring] : []),
  ];
  const sum = parts.map(say.length).join(' + ');
  steps.push(
    ...workPocket(panels, say),
    step(
      'plain-cut',
      'cut before repeat',
      practice.shrinkage > 0 ? `(${sum}) ÷ (1 − ${say.number(practice.shrinkage / 1e6, 6)})` : sum,
      say.length(laid.cut.plain),
      `practice: heading of ${behind.length > 0 ? 'lined' : 'unlined'} ${panels.heading}, ${sayHem(panels, face)}${practice.squaring > 0 ? ', squaring' : ''}${practice.shrinkage > 0 ? ', shrinkage before rounding' : ''}`,
    ),
  );
  return steps;
}

/** Which hem it is: sheers, cloth on the floor and a weighted edge have their own. */
function sayHem({ weightedEdge, hang, practice }: PanelsTreatment, face: FaceCloth): string {
  if (weightedEdge) return 'a weighted edge instead of a hem';
  if (hang && liesOnFloor(hang) && practice.bottomHem === practice.puddleHem)
    return 'bottom hem of what lies on the floor';
  return face.family === 'sheer' && practice.bottomHem === practice.sheer.bottomHem
    ? 'bottom hem of sheers'
    : 'bottom hem';
}

function saySideways({ weightedEdge }: PanelsTreatment, face: FaceCloth): string {
  if (weightedEdge) return 'the weighted edge of the cloth is the hem';
  if (face.family === 'sheer') return 'the cut length fits across the cloth: a sheer shows no seam this way';
  return 'the cut length fits across the cloth, and this way takes less of it';
}

function workFlat(panels: PanelsTreatment, say: Say): WorkingStep {
  const { practice, returns } = panels;
  const times = say.number(panels.fullness / 1000, 3);
  const value = say.length(flatAsked(panels));
  const source = panels.fullnessGiven ? 'fullness as written' : `practice: fullness of ${panels.heading}`;
  if (panels.heading === 'wave') {
    const { spaces } = wavePiece(panels);
    const { glider, waveEnds } = practice.spacing;
    const formula = `${panels.pieces} × (${spaces} × ${say.length(glider)} × ${times} + ${say.length(waveEnds)})`;
    return step(
      'flat-width',
      'flat width',
      formula,
      value,
      `${source}; practice: glider spacing and ends; gliders decide, an even number in each piece`,
    );
  }
  const over = practice.fullnessOver;
  const formula =
    over === 'face'
      ? `(${say.length(headingLength(panels))} + ${say.length(panels.overlap)}) × ${times} + ${say.length(returns.left + returns.right)}`
      : `${say.length(finishedWidth(panels))} × ${times}`;
  return step('flat-width', 'flat width', formula, value, `${source}; practice: fullness over ${over}`);
}

function workWidths(panels: PanelsTreatment, face: FaceCloth, laid: LaidFace, say: Say): WorkingStep {
  const { practice } = panels;
  const halves = laid.counted?.halves ?? 0;
  const flat = flatAsked(panels);
  const rounding = {
    up: panels.pieces > 2 ? 'each piece up to half widths' : 'up to whole widths',
    'half-up': 'each piece up to half widths',
    'nearest-half': 'each piece to the nearest half width',
  }[practice.widthRounding];
  const quotient = `${say.length(flat)} ÷ ${say.length(face.usableWidth)} = ${say.number(flat / face.usableWidth)}`;
  const rests = practice.hemsInWidth
    ? `practice: ${rounding}, hems and seams counted in`
    : `practice: ${rounding}, hems and seams left out`;
  return step('widths', 'widths', `${quotient}, ${rounding}`, say.widths(halves), rests);
}

function workFullness(panels: PanelsTreatment, laid: LaidFace, say: Say): WorkingStep {
  const { practice, returns } = panels;
  const counted = laid.counted;
  const halves = counted?.halves ?? 0;
  const edges = counted?.edges ?? 0;
  const joins = counted?.joins ?? 0;
  const lost = practice.seam > 0 && joins > 0 ? ` − ${joins} × 2 × ${say.length(practice.seam)}` : '';
  const top = `${say.widths(halves)} × ${say.length(laid.usable)}${lost} − ${edges} × ${say.length(practice.sideHem)}`;
  const face = practice.fullnessOver === 'face';
  const formula = face
    ? `(${top} − ${say.length(returns.left + returns.right)}) ÷ (${say.length(headingLength(panels))} + ${say.length(panels.overlap)})`
    : `(${top}) ÷ ${say.length(finishedWidth(panels))}`;
  return step(
    'fullness-made',
    'fullness made',
    formula,
    say.number(laid.fullnessMade),
    'practice: side hems and seams taken off',
  );
}

export function workCut(panels: PanelsTreatment, face: FaceCloth, laid: LaidFace, say: Say): WorkingStep[] {
  const { line, cut } = laid;
  const repeat = face.repeat;
  const steps: WorkingStep[] = [];
  if (repeat && !line.railroaded) {
    if (cut.repeats === null)
      steps.push(
        step(
          'cut-length',
          'cut length',
          `${say.length(cut.plain)} + ${say.length(repeat.vertical)}`,
          say.length(cut.length),
          'practice: one repeat added to each cut',
        ),
      );
    else {
      steps.push(
        step(
          'repeats',
          'repeats in a cut',
          `${say.length(cut.plain)} ÷ ${say.length(repeat.vertical)} = ${say.number(cut.plain / repeat.vertical)}, up`,
          String(cut.repeats),
          'practice: up to whole repeats',
        ),
        step(
          'cut-length',
          'cut length',
          `${cut.repeats} × ${say.length(repeat.vertical)}`,
          say.length(cut.length),
          `${repeat.match === 'half-drop' ? 'half-drop' : 'straight'} match`,
        ),
      );
    }
  }
  if (laid.tabs) {
    const { count, across, rows, cutWidth, cutLength } = laid.tabs;
    const cutAt = `${say.length(cutWidth)} × ${say.length(cutLength)}`;
    steps.push(
      step(
        'tabs',
        'cloth for tabs',
        `${count} of ${cutAt}, ${across} across: ${rows} rows`,
        say.length(laid.tabs.length),
        'practice: width, drop and seam of a tab, doubled',
      ),
    );
  }
  const all = countOf(line.cuts, 'cut');
  const cuts = panels.quantity > 1 ? `${all} of ${panels.quantity} treatments` : all;
  steps.push(
    step(
      'laid-out',
      'laid out',
      `${layOutFormula(panels, laid, face, say)}; by the chart ${sayChart(line, cut, face, say)}${say.cloth(line.handbook)}`,
      say.cloth(line.plan),
      `${cuts}, this treatment alone, the first in phase${face.supply?.oneWay === true || face.family === 'velvet' ? ', all tops one way: nap or pattern' : ''}`,
    ),
    workOrderOf('order', 'order', face, line, panels.practice, say),
  );
  return steps;
}

function layOutFormula(panels: PanelsTreatment, laid: LaidFace, face: FaceCloth, say: Say): string {
  const { line, cut, tabs } = laid;
  if (line.railroaded) return `${say.length(line.cutLength)} each`;
  const besides = tabs ? ` + ${say.length(tabs.length)} of tabs` : '';
  return `${layOutWidths(panels, line, cut, face, say)}${besides}`;
}

function layOutWidths(panels: PanelsTreatment, line: TakeoffLine, cut: Cut, face: FaceCloth, say: Say): string {
  if (face.repeat?.match === 'half-drop') return layOutHalfDrop(panels, line, cut, face.repeat, say);
  if (face.repeat && line.cuts > 1) return `${line.cuts - 1} × ${say.length(cut.length)} + ${say.length(cut.plain)}`;
  return `${line.cuts} × ${say.length(cut.plain)}`;
}

/** `2 × 108 + 1 × 121½ to the other phase + 100, 2 level and 2 dropped`. */
function layOutHalfDrop(panels: PanelsTreatment, line: TakeoffLine, cut: Cut, repeat: Repeat, say: Say): string {
  const { cuts } = line;
  const phases = countPhases(line.halfWidths ?? 0, panels.pieces, panels.quantity);
  const { changes, same2, other2 } = orderHalfDrop(cut, cuts, repeat, phases);
  const others = changes === 0 ? [] : [`${changes} × ${say.length(other2 / 2)} to the other phase`];
  const same = cuts - 1 - changes;
  const alike = same === 0 ? [] : [`${same} × ${say.length(same2 / 2)}`];
  return `${[...alike, ...others, say.length(cut.plain)].join(' + ')}, ${phases.level} level and ${phases.dropped} dropped`;
}

/** The printed rule of a half-drop in figures; elsewhere every cut end to end. */
function sayChart({ cuts, railroaded }: TakeoffLine, cut: Cut, { repeat }: FaceCloth, say: Say): string {
  if (railroaded || repeat?.match !== 'half-drop') return '';
  const odd = cuts % 2 === 1 ? ` + ${say.length(repeat.vertical)}` : '';
  return `${cuts} × (${say.length(cut.length)} + ${say.length(repeat.vertical / 2)})${odd} = `;
}

export function workWeight(
  panels: PanelsTreatment,
  cloths: readonly Cloth[],
  takeoff: readonly TakeoffLine[],
  grams: number,
  massOf: (cloth: Cloth) => number,
  say: Say,
): WorkingStep[] {
  const weight = (value: number): string =>
    say.unit === 'in' ? `${say.number(value / GRAMS_PER_POUND, 1)} lb` : `${say.number(value / 1000, 1)} kg`;
  const parts = takeoff.map((line, index) => {
    const cloth = cloths[index];
    const mass = cloth ? say.number(massOf(cloth), 0) : '';
    return `${cloth?.name ?? line.cloth} ${say.number(line.grams, 0)} g at ${mass} g/m²`;
  });
  const rods = panels.quantity > 1 ? ` on ${panels.quantity} rods` : '';
  return [
    step(
      'weight',
      'weight on the rod',
      parts.join(' + '),
      `${weight(grams)}${rods}`,
      'made width × length with the hems that stay in; hardware left out',
    ),
  ];
}

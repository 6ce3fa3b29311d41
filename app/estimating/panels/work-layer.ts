/** The working of a layer behind panels: which way it lies, its seams, its cut and its order. */
import { isBlackout } from '#shared/cloth.ts';
import type { BackCloth } from '#shared/cloth.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { WorkingStep } from '#shared/result.ts';
import { allowancesOf, layerFlat2, linesUp } from './lay-behind.ts';
import type { LaidLayer } from './lay-behind.ts';
import type { LaidFace } from './laid-face.ts';
import { workOrderOf } from '../say-order.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';

export function workLayer(panels: PanelsTreatment, laid: LaidFace, own: LaidLayer, say: Say): WorkingStep[] {
  const { layer, line } = own;
  const allowances = allowancesOf(panels, layer);
  const key = `layer-${line.layer}`;
  const role = layer.role === 'interlining' ? 'interlining' : 'lining';
  const cutFormula = [
    say.length(panels.finishedLength),
    ...(allowances.headingAllowance > 0 ? [`+ ${say.length(allowances.headingAllowance)}`] : []),
    ...(allowances.bottomHem > 0 ? [`+ ${say.length(allowances.bottomHem)}`] : []),
    ...(allowances.shorter > 0 ? [`− ${say.length(allowances.shorter)}`] : []),
  ].join(' ');
  return [
    line.railroaded ? workSideways(key, own, say) : workWidths(key, panels, laid, own, say),
    ...workSeams(key, laid, own),
    step(
      `${key}-cut`,
      `${layer.name}, cut`,
      cutFormula,
      say.length(line.plainCut),
      `practice: ${role} heading, hem and how much shorter it hangs`,
    ),
    workOrderOf(`${key}-order`, `${layer.name}, order`, layer, line, panels.practice, say),
  ];
}

/** Both quantities where it takes more this way, so that what the seams would have saved can be seen. */
function workSideways(key: string, { layer, line, upright }: LaidLayer, say: Say): WorkingStep {
  const isLess = line.plan < upright.plan;
  const widths = `${say.cloth(upright.plan)} in ${say.widths(upright.halfWidths ?? 0)} widths`;
  return step(
    `${key}-widths`,
    `${layer.name}, run sideways`,
    `the cut fits across the cloth: no seams; ${say.cloth(line.plan)} instead of ${widths}`,
    say.length(line.cutLength),
    isLess ? 'less cloth this way' : 'no seam in a blackout that can run sideways: each is a line of daylight',
  );
}

function workWidths(
  key: string,
  panels: PanelsTreatment,
  laid: LaidFace,
  { layer, line }: LaidLayer,
  say: Say,
): WorkingStep {
  const widths = say.widths(line.halfWidths ?? 0);
  if (laid.counted && linesUp(layer, laid.usable))
    return step(`${key}-widths`, `${layer.name}, widths`, 'as wide as the face', widths, 'seams line up with the face');
  const flat = layerFlat2(panels, layer, laid.made2) / 2;
  const { narrower, sideHem } = allowancesOf(panels, layer);
  const pieces = panels.pieces;
  const own = [
    ...(narrower > 0 ? [` − ${pieces} × ${say.length(narrower)}`] : []),
    ...(sideHem > 0 ? [` + ${2 * pieces} × ${say.length(sideHem)}`] : []),
  ].join('');
  const made = own === '' ? '' : `${say.length(laid.made2 / 2)}${own} = ${say.length(flat)}; `;
  return step(
    `${key}-widths`,
    `${layer.name}, widths`,
    `${made}${say.length(flat)} ÷ ${say.length(layer.usableWidth)} = ${say.number(flat / layer.usableWidth)}, up`,
    widths,
    `${own === '' ? '' : 'practice: narrower than the face, side hems; '}on its own width: its seams do not line up with the face`,
  );
}

/** A seam in a blackout is a row of needle holes: each is counted, and where it lies. */
function workSeams(key: string, laid: LaidFace, { layer, line, joins }: LaidLayer): WorkingStep[] {
  if (!isBlackout(layer) || line.railroaded) return [];
  return [
    step(
      `${key}-seams`,
      `${layer.name}, seams`,
      'widths joined in each panel, less one',
      String(joins),
      sayWhere(layer, laid, joins),
    ),
  ];
}

function sayWhere(layer: BackCloth, laid: LaidFace, joins: number): string {
  if (joins === 0) return 'a blackout without a seam';
  return laid.counted && linesUp(layer, laid.usable)
    ? 'behind the seams of the face, where they show least'
    : 'not behind the seams of the face: each may show as a line of daylight';
}

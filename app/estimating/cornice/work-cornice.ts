/** The working of a cornice: boards, cuts, welts, with formula in figures and what each rests on. */
import type { Cloth } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { CorniceTreatment } from '#shared/treatments/cornice.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';
import { workCover } from '../top-treatment/cover-board.ts';
import { workWelt } from '../top-treatment/cut-welt.ts';
import type { LaidLayer } from '../top-treatment/lay-widths.ts';
import { addUp, nameAddends, sayAddends } from '../top-treatment/work-parcel.ts';
import type { Addend } from '../top-treatment/work-parcel.ts';
import { workWidths } from '../top-treatment/work-widths.ts';
import type { CorniceSheet } from './estimate-cornice.ts';
import { faceCut, finishedWidthOf, layerCut, projectionOf, weltAddends } from './measure-cornice.ts';

/** `cloths` and `laid`: the face, then the layers behind it. */
export function workCornice(
  cornice: CorniceTreatment,
  cloths: readonly Cloth[],
  laid: readonly LaidLayer[],
  sheet: CorniceSheet,
  welts: readonly { readonly cloth: Cloth; readonly run: Ticks }[],
  say: Say,
): WorkingStep[] {
  const making = cornice.practice.cornice;
  const edges = (['top', 'bottom'] as const).filter((edge) => cornice.welts[edge] !== null);
  return [
    ...workBox(cornice, sheet, say),
    ...cloths.flatMap((cloth, index) => workCut(cornice, cloth, index, laid[index], say)),
    ...edges.map((edge) => sum(`welt-${edge}`, `welt, ${edge}`, weltAddends(cornice, edge), 'ends of the welt', say)),
    ...welts.map(({ cloth, run }) => workWelt(`welt-${cloth.id}`, run, cloth, making, say)),
    ...(sheet.cover ? workCover(sheet.cover, sheet.box.dustBoard, making, say) : []),
  ];
}

/** `practiced`: what of the sum are settings. */
function sum(id: string, label: string, addends: readonly Addend[], practiced: string, say: Say): WorkingStep {
  return step(
    id,
    label,
    sayAddends(addends, say),
    say.length(addUp(addends)),
    `${nameAddends(addends)}; practice: ${practiced}`,
  );
}

function workBox(cornice: CorniceTreatment, { box }: CorniceSheet, say: Say): WorkingStep[] {
  const { returns } = cornice;
  const ends = [returns.left, returns.right].filter((each) => each > 0);
  const thick = say.length(box.thickness);
  return [
    step(
      'finished-width',
      'face and ends',
      [cornice.width, ...ends].map(say.length).join(' + '),
      say.length(finishedWidthOf(cornice)),
      'outside of the box; padding and face go round it',
    ),
    step(
      'face-board',
      'face board',
      `${say.length(box.face.width)} × ${say.length(box.face.height)}`,
      say.length(box.face.width),
      'covers the ends',
    ),
    ...(ends.length === 0
      ? []
      : [
          step(
            'end-boards',
            'end boards',
            ends.map((each) => `${say.length(each)} − ${thick}`).join(', '),
            [box.ends.left, box.ends.right]
              .filter((each) => each > 0)
              .map(say.length)
              .join(', '),
            'from the back of the face board to the wall; practice: thickness',
          ),
        ]),
    step(
      'dust-board',
      'dust board',
      ends.length === 0 ? say.length(cornice.width) : `${say.length(cornice.width)} − ${ends.length} × ${thick}`,
      say.length(box.dustBoard.length),
      'between the ends, flush with the top',
    ),
    step(
      'dust-board-depth',
      'its depth',
      `${say.length(projectionOf(cornice))} − ${thick}`,
      say.length(box.dustBoard.depth),
      'from the back of the face board to the wall',
    ),
  ];
}

function workCut(
  cornice: CorniceTreatment,
  cloth: Cloth,
  index: number,
  laid: LaidLayer | undefined,
  say: Say,
): WorkingStep[] {
  if (!laid) return [];
  const cut = cloth.role === 'face' ? faceCut(cornice) : layerCut(cornice, cloth);
  const [key, who] = index === 0 ? ['', ''] : [`layer-${index}-`, `${cloth.name}, `];
  const { shrinkage } = cornice.practice;
  const washed = index === 0 && shrinkage > 0;
  return [
    sum(`${key}cut-width`, `${who}cut width`, cut.width, 'wrap, padding and turns', say),
    workWidths(`${key}widths`, `${who}widths`, cloth, laid.widths, cornice.practice, say),
    step(
      index === 0 ? 'plain-cut' : `${key}cut`,
      `${who}cut`,
      washed
        ? `(${sayAddends(cut.length, say)}) ÷ (1 − ${say.number(shrinkage / 1e6, 6)})`
        : sayAddends(cut.length, say),
      say.length(laid.plain),
      `${nameAddends(cut.length)}; practice: wrap, padding and turns`,
    ),
  ];
}

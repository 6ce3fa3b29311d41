/** Strips of another cloth along leading edges, sides or hem: doubled, as many across their cloth as fit. */
import type { Cloth } from '#shared/cloth.ts';
import { exhaustive } from '#shared/fault.ts';
import type { Band, PanelsTreatment } from '#shared/treatments/panels.ts';
import { TICKS_PER_INCH, ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import type { TakeoffLine, WorkingStep } from '#shared/result.ts';
import { cutToRepeat, handbookLength, planAlone } from '../cut-cloth.ts';
import type { EstimateGiven, Labour } from '../estimate.ts';
import type { LaidFace } from './laid-face.ts';
import type { LaidLength } from '../lay-on-pieces.ts';
import { alikeCuts, orderCloth } from '../order-cloth.ts';
import { downToWhole, halvesUpToTick, upToWhole } from '../round.ts';
import { countOf, step } from '../say.ts';
import type { Say } from '../say.ts';
import { workOrder } from '../work-rows.ts';
import { gramsOf } from './weigh-layer.ts';

export interface LaidBand {
  readonly band: Band;
  readonly cloth: Cloth;
  readonly line: TakeoffLine;
  readonly strips: number;
  readonly across: number;
  readonly cutWidth: Ticks;
  /** Finished length of all strips, for labour. */
  readonly finished: number;
}

/** Every band whose cloth is known; `check-job.ts` has refused the others. */
export function layBands(
  panels: PanelsTreatment,
  laid: LaidFace,
  { clothOf, massOf }: Pick<EstimateGiven, 'clothOf' | 'massOf'>,
): LaidBand[] {
  return panels.bands.flatMap((band) => {
    const cloth = clothOf(band.cloth);
    return cloth ? [layBand(panels, band, cloth, laid, massOf(cloth))] : [];
  });
}

function layBand(panels: PanelsTreatment, band: Band, cloth: Cloth, laid: LaidFace, mass: number): LaidBand {
  const { practice, quantity } = panels;
  const cutWidth = stripWidth(panels, band);
  const along = runsAcross(band);
  const made = halvesUpToTick(laid.made2);
  // A hem strip runs across its cloth and is joined; a side strip is as long as the face's cut.
  const strips = along ? upToWhole(made * quantity, cloth.usableWidth) : sideStrips(panels, band);
  const across = along ? 1 : Math.max(1, downToWhole(cloth.usableWidth, cutWidth));
  const plain = along ? cutWidth : laid.cut.plain;
  const cut = cutToRepeat(plain, along ? null : cloth.repeat, practice.repeatRule);
  const cuts = upToWhole(strips, across);
  const repeat = along ? null : cloth.repeat;
  const lay = (count: number): LaidLength => ({
    handbook: handbookLength(cut, count, repeat),
    plan: planAlone(cut, count, repeat, { level: count, dropped: 0 }),
  });
  const all = lay(cuts);
  return {
    band,
    cloth,
    strips,
    across,
    cutWidth,
    finished: along ? made * quantity : panels.finishedLength * strips,
    line: {
      cloth: cloth.id,
      role: cloth.role,
      layer: 0,
      use: `band, ${EDGES[band.edge]}`,
      halfWidths: null,
      railroaded: false,
      cuts,
      fullnessMade: null,
      plainCut: cut.plain,
      cutLength: cut.length,
      repeatsPerCut: cut.repeats,
      ...all,
      ...orderCloth(cloth, all, practice, alikeCuts(cuts, lay)),
      // A strip stays in the panel with its seams: along the hem as wide as the panels are made, else as long as their cut.
      grams: gramsOf({ width: cutWidth, length: along ? made * quantity : cut.plain * strips }, mass),
    },
  };
}

/** A hem strip runs across its cloth. */
export function runsAcross(band: Band): boolean {
  return band.edge === 'hem';
}

/** A strip as it is cut: doubled, with a seam at each long edge. */
export function stripWidth({ practice }: PanelsTreatment, band: Band): Ticks {
  return ticks(2 * (band.width + practice.band.seam));
}

/** Strips of all quantity along leading edges or sides. */
export function sideStrips(panels: PanelsTreatment, band: Band): number {
  return edgesOf(panels, band) * panels.quantity;
}

const EDGES: Readonly<Record<Band['edge'], string>> = {
  leading: 'leading edge',
  hem: 'hem',
  'both-sides': 'both sides',
};

function edgesOf(panels: PanelsTreatment, band: Band): number {
  switch (band.edge) {
    case 'leading':
    case 'hem':
      return panels.pieces;
    case 'both-sides':
      return 2 * panels.pieces;
    default:
      return exhaustive(band.edge);
  }
}

/** By the foot or part of it. */
export function labourOfBands(bands: readonly LaidBand[]): Labour[] {
  const finished = bands.reduce((sum, each) => sum + each.finished, 0);
  return finished === 0 ? [] : [{ work: 'bandPerFoot', count: upToWhole(finished, 12 * TICKS_PER_INCH) }];
}

export function workBand(
  { band, cloth, line, strips, across, cutWidth }: LaidBand,
  practice: Practice,
  say: Say,
): WorkingStep[] {
  const edge = EDGES[band.edge];
  const cut = `${countOf(strips, 'strip')} of ${say.length(cutWidth)} × ${say.length(line.plainCut)}`;
  const formula =
    band.edge === 'hem' ? `${cut}, across the cloth` : `${cut}, ${across} across: ${countOf(line.cuts, 'cut')}`;
  return [
    step(
      `band-${band.edge}`,
      `${cloth.name}, band on the ${edge}`,
      `${formula}; by the chart ${say.cloth(line.handbook)}`,
      say.cloth(line.plan),
      'practice: doubled, a seam at each long edge',
    ),
    workOrder(`band-${band.edge}-`, cloth, line, practice, say),
  ];
}

/** The working of what stands along the heading: how many, how far apart, and by which rule. */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { WorkingStep } from '#shared/result.ts';
import { finishedWidth } from './finished-width.ts';
import type { Grommets } from './grommets.ts';
import type { HeadingPoints } from './heading-points.ts';
import { sidesOfPanels, unlikePanels } from './panel-sides.ts';
import { pleatOf } from './pleats.ts';
import type { CountedPleats } from './pleats.ts';
import { toNearestTick } from './round.ts';
import { step } from './say.ts';
import type { Say } from './say.ts';

const NAMES: Readonly<Record<Exclude<HeadingPoints['what'], 'none'>, string>> = {
  pleat: 'pleats in a piece',
  grommet: 'grommets in a piece',
  glider: 'gliders in a piece',
  tab: 'tabs in a piece',
  clip: 'rings in a piece',
  hook: 'hooks in a piece',
};

function workCount(panels: PanelsTreatment, { count, counted, toPattern }: CountedPleats, say: Say): WorkingStep {
  if (toPattern !== null)
    return step(
      'points',
      NAMES.pleat,
      `a pleat and its space ${say.length(toNearestTick(toPattern.unit * toPattern.parts))} ÷ ${toPattern.parts} = ${say.length(toNearestTick(toPattern.unit))}; ${say.length(toNearestTick(toPattern.trimmed))} trimmed at the return`,
      String(count),
      `pleated to the pattern (common practice): the division nearest to ${counted.count} pleats`,
    );
  const { pleatsPerWidth, pleatsClothWidth } = panels.practice;
  const formula =
    counted.halves === null
      ? `${pleatsPerWidth} × ${say.length(counted.cloth)} ÷ ${say.length(pleatsClothWidth)}, to the nearest`
      : `${pleatsPerWidth} × ${say.widths(counted.halves)}${counted.halves % 2 === 0 ? '' : ', down'}`;
  const rests =
    counted.halves === null
      ? 'practice: pleats in a width of the usual cloth; wider or narrower cloth, or cloth run sideways, by its flat width'
      : 'practice: pleats in a width, half widths round down';
  return step('points', NAMES.pleat, formula, String(count), rests);
}

/** One figure, or one for each panel where their returns differ. */
function sayPleats(panels: PanelsTreatment, pleats: CountedPleats, say: Say): string {
  const unlike = unlikePanels(sidesOfPanels(panels, toNearestTick(2 * pleats.flat * panels.pieces)));
  if (unlike.length === 1) return say.length(toNearestTick(pleats.pleat));
  const right = unlike.some(({ name }) => name === 'right');
  return unlike
    .map(
      (sides) =>
        `${sides.name === 'left' && !right ? 'outer' : sides.name} ${say.length(toNearestTick(pleatOf(pleats, pleats.flat, sides)))}`,
    )
    .join(', ');
}

function sayTrimmed(grommets: Grommets | undefined, say: Say): string {
  return grommets && grommets.trimmed > 0 ? ` − ${say.length(grommets.trimmed)} trimmed at the wall side` : '';
}

/** How the grommets keep clear of the seams, and by how much. */
function saySeams(panels: PanelsTreatment, grommets: Grommets | undefined, say: Say): string {
  if (!grommets || grommets.nearest === null) return 'no seam';
  const ring = say.length(panels.practice.spacing.grommetRing);
  const off = `${say.length(toNearestTick(grommets.nearest))} ${say.unit}`;
  if (!grommets.clear) return `a seam lies ${off} from the middle of a ring ${ring} wide, and nothing tried clears it`;
  const moved = [
    ...(grommets.more > 0 ? ['closer'] : []),
    ...(grommets.trimmed > 0 ? ['trimmed at the wall side'] : []),
  ].join(' and ');
  return `none on a seam: the nearest is ${off} from the middle of a ring ${ring} wide${moved === '' ? '' : `, ${moved} to clear it`}`;
}

export function workPoints(panels: PanelsTreatment, points: HeadingPoints, say: Say): WorkingStep[] {
  const { what, count, pleats } = points;
  if (what === 'none') return [];
  const { spacing } = panels.practice;
  const apart = say.length(toNearestTick(points.space));
  const one = (formula: string, rests: string): WorkingStep[] => [
    step('points', NAMES[what], formula, String(count), rests),
  ];
  switch (what) {
    case 'pleat':
      return [
        ...(pleats ? [workCount(panels, pleats, say)] : []),
        ...(pleats
          ? [
              step(
                'pleat',
                'cloth in a pleat',
                `(flat − finished) ÷ ${count}`,
                sayPleats(panels, pleats, say),
                'returns and overlap hang flat',
              ),
              step(
                'pleat-space',
                'space between pleats',
                `(finished − return − half overlap) ÷ ${count - 1}`,
                apart,
                'shared out in eighths at the table',
              ),
            ]
          : []),
      ];
    case 'grommet':
      return one(
        `(flat${sayTrimmed(points.grommets, say)} − 2 × ${say.length(spacing.grommetEdge)}) ÷ ${say.length(spacing.grommet)} + 1, up to even${points.grommets?.more ? `, and ${points.grommets.more} more` : ''}; ${apart} apart`,
        `an even number, so that both edges turn to the wall; ${saySeams(panels, points.grommets, say)}; inner diameter at least the pole and ½ in`,
      );
    case 'glider':
      return one(
        `${say.length(finishedWidth(panels))} ÷ ${panels.pieces} ÷ ${say.length(spacing.glider)}, up, and 1, made even`,
        'the track of one panel, round its returns and over the overlap; the gliders decide the flat width: spaces × spacing × fullness, and the ends',
      );
    case 'tab':
      return one(
        `flat ÷ ${say.length(spacing.tab)}, up, and 1; ${apart} apart`,
        'practice: tabs between seams where they can be',
      );
    case 'clip':
      return one(
        `flat ÷ ${say.length(spacing.clip)}, up, and 1; ${apart} apart`,
        'practice: rings or clips of a flat panel',
      );
    case 'hook':
      return one(
        `finished ÷ ${say.length(spacing.hook)}, up, and 1; ${apart} apart`,
        'practice: hooks on a gathered tape',
      );
  }
}

/** The working of what stands along the heading: how many, how far apart, and by which rule. */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { WorkingStep } from '#shared/result.ts';
import { coveredWidth } from './covered-width.ts';
import { finishedWidth } from './finished-width.ts';
import type { Grommets } from './grommets.ts';
import type { HeadingPoints } from './heading-points.ts';
import { sidesOfPanels, unlikePanels } from './panel-sides.ts';
import type { PanelSides } from './panel-sides.ts';
import { pleatOf } from './pleats.ts';
import type { CountedPleats } from './pleats.ts';
import { toNearestTick } from '../round.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';

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

/** The cloth in a pleat and the space beside it, in figures: one, or one for each panel where their returns differ. */
function workPleats(panels: PanelsTreatment, pleats: CountedPleats, say: Say): WorkingStep[] {
  const { count, flat, space } = pleats;
  const unlike = unlikePanels(sidesOfPanels(panels, toNearestTick(2 * flat * panels.pieces)));
  const length = (value: number): string => say.length(toNearestTick(value));
  const each = (of: (sides: PanelSides) => string): string => [...new Set(unlike.map(of))].join('; ');
  const hangsFlat = (sides: PanelSides): string =>
    [sides.left, sides.right]
      .filter(({ width }) => width > 0)
      .map(({ width }) => ` − ${length(width)}`)
      .join('');
  return [
    step(
      'pleat',
      'cloth in a pleat',
      each((sides) => `(${length(flat)} − ${length(sides.finished)}) ÷ ${count}`),
      sayPleats(unlike, pleats, say),
      'flat less finished width of a panel; returns and overlap hang flat',
    ),
    step(
      'pleat-space',
      'space between pleats',
      each((sides) => `(${length(sides.finished)}${hangsFlat(sides)}) ÷ ${count - 1}`),
      length(space),
      'finished width less return and half the overlap; shared out in eighths at the table',
    ),
  ];
}

function sayPleats(unlike: readonly PanelSides[], pleats: CountedPleats, say: Say): string {
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

/** `made2` is twice the flat width of all pieces as made. */
export function workPoints(panels: PanelsTreatment, points: HeadingPoints, made2: number, say: Say): WorkingStep[] {
  const { what, count, pleats } = points;
  if (what === 'none') return [];
  const { spacing } = panels.practice;
  const apart = say.length(toNearestTick(points.space));
  const flat = say.length(toNearestTick(made2 / 2 / panels.pieces));
  const finished = say.length(toNearestTick(coveredWidth(panels, made2) / panels.pieces));
  const one = (formula: string, rests: string): WorkingStep[] => [
    step('points', NAMES[what], formula, String(count), rests),
  ];
  switch (what) {
    case 'pleat':
      return [...(pleats ? [workCount(panels, pleats, say)] : []), ...(pleats ? workPleats(panels, pleats, say) : [])];
    case 'grommet':
      return one(
        `(${flat}${sayTrimmed(points.grommets, say)} − 2 × ${say.length(spacing.grommetEdge)}) ÷ ${say.length(spacing.grommet)} + 1, up to even${points.grommets?.more ? `, and ${points.grommets.more} more` : ''}; ${apart} apart`,
        `practice: spacing, edge and ring of grommets; an even number, so that both edges turn to the wall; ${saySeams(panels, points.grommets, say)}; inner diameter at least the pole and ½ in`,
      );
    case 'glider':
      return one(
        `${say.length(finishedWidth(panels))} ÷ ${panels.pieces} ÷ ${say.length(spacing.glider)}, up, and 1, made even`,
        'practice: glider spacing; the track of one panel, round its returns and over the overlap; the gliders decide the flat width: spaces × spacing × fullness, and the ends',
      );
    case 'tab':
      return one(
        `${flat} ÷ ${say.length(spacing.tab)}, up, and 1; ${apart} apart`,
        'practice: spacing of tabs on the flat width, between seams where they can be',
      );
    case 'clip':
      return one(
        `${flat} ÷ ${say.length(spacing.clip)}, up, and 1; ${apart} apart`,
        'practice: spacing of rings or clips on the flat width',
      );
    case 'hook':
      return one(
        `${finished} ÷ ${say.length(spacing.hook)}, up, and 1; ${apart} apart`,
        'practice: spacing of hooks on the finished width of a gathered tape',
      );
  }
}

/** The working of what is bought besides cloth, and of the widths that labour counts: each figure as it was counted. */
import type { FaceCloth } from '#shared/cloth.ts';
import { exhaustive } from '#shared/fault.ts';
import type { Ticks } from '#shared/length.ts';
import type { Part, PartName } from '#shared/parts.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { billsByWidths } from '../billable-widths.ts';
import { flatAsked } from './count-widths.ts';
import { headingLength } from './finished-width.ts';
import type { HeadingPoints } from './heading-points.ts';
import type { LaidFace } from './laid-face.ts';
import { halvesUpToTick } from '../round.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';

interface Bought {
  readonly panels: PanelsTreatment;
  readonly laid: LaidFace;
  readonly points: HeadingPoints;
  readonly parts: readonly Part[];
  readonly say: Say;
}

export function workParts(bought: Bought): WorkingStep[] {
  return [
    ...workRod(bought),
    ...workMotor(bought),
    ...workFixings(bought),
    ...workTape(bought),
    ...workWeights(bought),
  ];
}

function amountOf(parts: readonly Part[], name: PartName): number | null {
  const found = parts.find(({ part }) => part === name);
  if (found === undefined) return null;
  return 'count' in found ? found.count : found.length;
}

function times(quantity: number): string {
  return quantity === 1 ? '' : ` × ${quantity} treatments`;
}

function workRod({ panels, parts, say }: Bought): WorkingStep[] {
  const { returns, quantity, practice, arch } = panels;
  const along = headingLength(panels);
  const spacing = practice.bracketSpacing;
  const sum = [along, returns.left, returns.right].map(say.length).join(' + ');
  return [
    step(
      'rod',
      'rod',
      quantity === 1 ? sum : `(${sum})${times(quantity)}`,
      say.length(amountOf(parts, 'rod') ?? 0),
      arch === null ? 'rod face and both returns' : 'bent along the arch, or a board cut to it; and both returns',
    ),
    step(
      'brackets',
      'brackets',
      spacing === 0
        ? `2 ends${times(quantity)}`
        : `${say.length(along)} ÷ ${say.length(spacing)} = ${say.number(along / spacing)}, up, and 1${times(quantity)}`,
      String(amountOf(parts, 'bracket') ?? 0),
      'practice: the widest span between two brackets',
    ),
  ];
}

function workMotor({ panels, say }: Bought): WorkingStep[] {
  const { motor, practice, rodWidth } = panels;
  if (motor === null) return [];
  const { least, most } = practice.motor;
  const left = (takes: Ticks): string => say.length(Math.max(0, rodWidth - takes));
  return [
    step(
      'motor',
      'track left beside the motor',
      `${say.length(rodWidth)} − ${say.length(least)} to ${say.length(most)}`,
      `${left(most)} to ${left(least)}`,
      `practice: what a motor takes at its end, the ${motor} one; no cloth stacks there`,
    ),
  ];
}

const CARRIERS = { ring: 'rings', glider: 'gliders', grommet: 'grommets', hook: 'hooks' } as const;

function workFixings({ panels, points, parts, say }: Bought): WorkingStep[] {
  const names = (['ring', 'glider', 'grommet', 'hook'] as const).filter((name) => amountOf(parts, name) !== null);
  const [first] = names;
  if (first === undefined) return [];
  const pieces = panels.pieces;
  const panelsSaid = pieces === 1 ? '' : ` × ${pieces} panels`;
  const each = points.what === 'pleat' ? `(${points.count} pleats + 2 ends)` : say.number(points.count);
  return [
    step(
      'fixings',
      names.map((name) => CARRIERS[name]).join(', and as many '),
      `${each}${panelsSaid}${times(panels.quantity)}`,
      String(amountOf(parts, first)),
      restsOf(panels, points),
    ),
  ];
}

function restsOf({ heading }: PanelsTreatment, { what }: HeadingPoints): string {
  if (what === 'pleat') return 'one for a pleat and one for each end';
  switch (heading) {
    case 'wave':
      return 'the gliders of each panel, an even number';
    case 'grommet':
      return 'an even number in each panel';
    case 'pencil-pleat':
      return 'hooks along the gathered heading of each panel';
    case 'pinch-pleat':
    case 'goblet':
    case 'box-pleat':
    case 'flat':
    case 'tab':
    case 'rod-pocket':
      return 'along the heading of each panel';
    default:
      return exhaustive(heading);
  }
}

function workTape({ panels, laid, parts, say }: Bought): WorkingStep[] {
  const length = amountOf(parts, 'headingTape');
  if (length === null) return [];
  const wave = panels.heading === 'wave';
  const flat = wave ? flatAsked(panels) : halvesUpToTick(laid.made2);
  return [
    step(
      'heading-tape',
      'heading tape or buckram',
      `${say.length(flat)}${times(panels.quantity)}`,
      say.cloth(length),
      wave ? 'what the pitch of the tape asks' : 'the flat width as made, side hems off',
    ),
  ];
}

function workWeights({ panels, laid, parts, say }: Bought): WorkingStep[] {
  const { pieces, quantity } = panels;
  const cord = amountOf(parts, 'weightedCord');
  if (cord !== null)
    return [
      step(
        'weighted-cord',
        'weighted cord',
        `${say.length(halvesUpToTick(laid.made2))}${times(quantity)}`,
        say.cloth(cord),
        'along the hem of a sheer, which would show loose weights',
      ),
    ];
  const count = amountOf(parts, 'weight');
  if (count === null) return [];
  const joins = laid.counted?.joins ?? 0;
  const sum = `2 × ${pieces} + ${joins}`;
  return [
    step(
      'weights',
      'weights',
      quantity === 1 ? sum : `(${sum})${times(quantity)}`,
      String(count),
      'two corners of each panel and one at every join, in pouches; never lead',
    ),
  ];
}

/** Labour counts widths whatever it costs: of usual cloth those made, of wide or sideways cloth its flat width. */
export function workBillable(
  panels: PanelsTreatment,
  face: FaceCloth,
  laid: LaidFace,
  billable: { readonly width: Ticks; readonly widths: number },
  say: Say,
): WorkingStep {
  const { halfWidths, cutLength } = laid.line;
  const flat = halfWidths === null ? cutLength : (halfWidths * face.usableWidth) / 2;
  const counted = billsByWidths(face, laid.line, billable.width);
  return step(
    'billable-widths',
    'billable widths',
    counted
      ? `${say.widths(halfWidths ?? 0)}, up${times(panels.quantity)}`
      : `${say.length(flat)} ÷ ${say.length(billable.width)} = ${say.number(flat / billable.width)}, up${times(panels.quantity)}`,
    String(billable.widths),
    counted ? 'the widths made' : 'price book: the width that labour counts by',
  );
}

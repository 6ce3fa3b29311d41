/**
 * The worked examples of the help, in inches and all invented: one for every style of every kind, as a job file writes
 * it. The program reads, reckons and draws them when the help is opened; no figure of theirs stands in the words.
 */
import { HEADINGS } from '#shared/words.ts';
import type { Heading, RoomUse } from '#shared/words.ts';
import type { TreatmentKind } from '#shared/treatments/treatment.ts';
import type { StylesOf } from './help-text.ts';

export interface Example {
  readonly use: RoomUse;
  readonly opening: Readonly<Record<string, unknown>>;
  readonly treatment: Readonly<Record<string, unknown>>;
}
type ExamplesOf<Kind extends TreatmentKind> = Readonly<Record<StylesOf[Kind], Example>>;

const WINDOW = { name: 'Window', width: 60, height: 54, sill: 30, at: 30, glazing: 'double' } as const;
const ABOVE = { where: 'wall', above: 6 } as const;

/** Kept low in numbers, so that a drawing can be counted by hand. */
export const EXAMPLE_CLOTH = [
  {
    id: 'example-print',
    role: 'face',
    family: 'print',
    name: 'Hazel print',
    width: 54,
    repeat: { vertical: 18, match: 'straight' },
    content: { cotton: 100 },
    weight: '7 oz/yd2',
    colour: '#b9a27c',
    price: '40.00/yd',
  },
  {
    id: 'example-plain',
    role: 'face',
    family: 'plain',
    name: 'Hazel plain',
    width: 54,
    content: { cotton: 100 },
    weight: '8 oz/yd2',
    colour: '#8a9a7b',
    price: '32.00/yd',
  },
  {
    id: 'example-contrast',
    role: 'lining',
    family: 'contrast',
    name: 'Rowan contrast',
    width: 54,
    shade: '#a3302a',
    price: '14.00/yd',
  },
] as const;

function panels(heading: Heading): Example {
  const draws = ['pinch-pleat', 'pencil-pleat', 'wave'].includes(heading);
  const returns = heading === 'pinch-pleat' || heading === 'goblet' || heading === 'box-pleat' ? 3.5 : 0;
  return {
    use: 'living',
    opening: WINDOW,
    treatment: {
      name: 'Panels',
      kind: 'panels',
      heading,
      arrangement: draws ? 'pair' : 'pair-stationary',
      mount: { where: 'wall', above: 4 },
      face: heading === 'pinch-pleat' ? 'example-print' : 'example-plain',
      rodWidth: 84,
      finishedLength: 87,
      return: returns,
      overlap: heading === 'pinch-pleat' ? 3.5 : 0,
      ...(heading === 'rod-pocket' ? { rodDiameter: 1, header: 2 } : {}),
    },
  };
}

function valance(style: StylesOf['valance'], own: Readonly<Record<string, unknown>>): Example {
  const treatment = { name: 'Valance', kind: 'valance', style, mount: ABOVE, face: 'example-plain' } as const;
  return {
    use: 'dining',
    opening: WINDOW,
    treatment: { ...treatment, width: 72, finishedLength: 16, return: 5.5, ...own },
  };
}

function cornice(own: Readonly<Record<string, unknown>>): Example {
  const treatment = { name: 'Cornice', kind: 'cornice', mount: ABOVE, face: 'example-print', width: 72, return: 5.5 };
  return { use: 'bedroom', opening: WINDOW, treatment: { ...treatment, finishedLength: 14, ...own } };
}

function swags(style: StylesOf['swags'], own: Readonly<Record<string, unknown>>): Example {
  return {
    use: 'dining',
    opening: { ...WINDOW, width: 72 },
    treatment: {
      name: 'Swags',
      kind: 'swags',
      style,
      mount: ABOVE,
      face: 'example-plain',
      width: 84,
      finishedLength: 18,
      return: 5.5,
      contrast: 'example-contrast',
      ...own,
    },
  };
}

function shade(style: StylesOf['roman-shade']): Example {
  return {
    use: 'study',
    opening: { ...WINDOW, width: 36 },
    treatment: {
      name: 'Shade',
      kind: 'roman-shade',
      style,
      mount: { where: 'inside' },
      face: 'example-plain',
      size: { basis: 'opening', widths: [36, 36, 36], lengths: [54, 54, 54] },
    },
  };
}

function bedSkirt(style: StylesOf['bed-skirt']): Example {
  return {
    use: 'bedroom',
    opening: { name: 'Bed', at: 30 },
    treatment: {
      name: 'Bed skirt',
      kind: 'bed-skirt',
      style,
      face: 'example-plain',
      bed: { width: 60, length: 80 },
      drop: 14,
    },
  };
}

function shower(arrangement: StylesOf['shower-curtain']): Example {
  return {
    use: 'bath',
    opening: { name: 'Bath', at: 30 },
    treatment: {
      name: 'Curtain',
      kind: 'shower-curtain',
      face: 'example-plain',
      arrangement,
      finishedWidth: 72,
      finishedLength: 75,
    },
  };
}

const CASCADES = { longest: 42, shortest: 18, width: 11 } as const;

export const EXAMPLES: { readonly [Kind in TreatmentKind]: ExamplesOf<Kind> } = {
  panels: Object.fromEntries(HEADINGS.map((heading) => [heading, panels(heading)])) as Record<Heading, Example>,
  valance: {
    tailored: valance('tailored', { face: 'example-print' }),
    'box-pleated': valance('box-pleated', { pleats: 3 }),
    gathered: valance('gathered', { rod: { diameter: 1, header: 2 }, return: 3.5 }),
    scalloped: valance('scalloped', { scallops: 5, scallopDepth: 4 }),
    balloon: valance('balloon', { board: {}, puffs: 5 }),
  },
  cornice: { straight: cornice({}), shaped: cornice({ shapedEdge: 80 }) },
  swags: {
    overlapped: swags('overlapped', { swags: 3, cascades: CASCADES }),
    separate: swags('separate', { swags: 2, jabots: { ...CASCADES, longest: 24, shortest: 12, width: 9, count: 1 } }),
  },
  'roman-shade': { flat: shade('flat'), 'soft-fold': shade('soft-fold'), relaxed: shade('relaxed') },
  'bed-skirt': {
    gathered: bedSkirt('gathered'),
    tailored: bedSkirt('tailored'),
    'box-pleated': bedSkirt('box-pleated'),
  },
  'shower-curtain': { 'one-piece': shower('one-piece'), pair: shower('pair') },
};

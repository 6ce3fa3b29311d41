/**
 * Where the length starts and ends, drawn small: the fixing as this heading and mount have it, the top of the heading
 * above or below it, the hem at sill, apron, floor or on it. A sketch that asks; not to scale.
 */
import { line, outline, path, rect, circle } from '#app/drawing/make-shapes.ts';
import type { Drawing, Shape } from '#app/drawing/shape.ts';
import type { HangEnd } from '#shared/treatments/panels.ts';
import type { Heading, MountPlace } from '#shared/words.ts';
import { FIXING_WORDS, fixingOf } from '../words/kind-sheets/fixing.ts';
import type { Fixing } from '../words/kind-sheets/fixing.ts';

export interface HangSketch {
  readonly heading: Heading;
  readonly where: MountPlace;
  readonly to: HangEnd;
  /** Written measurements as shown; empty where nothing is written yet. */
  /** Top of the heading against the fixing, as it is written. */
  readonly stands: 'above' | 'level' | 'below';
  readonly says: { readonly fixing: string; readonly heading: string; readonly by: string; readonly length: string };
}

const WIDTH = 236;
const HEIGHT = 132;
const FLOOR = 116;
const SILL = 82;
const LEFT = 26;
const RIGHT = 96;
const FIX = 22;
/** Top of the heading against the fixing, in the sketch. */
const HEADING_TOPS = { above: FIX - 5, level: FIX + 1, below: FIX + 11 } as const;
const HEMS = {
  sill: SILL - 4,
  apron: SILL + 12,
  floor: FLOOR - 3,
  break: FLOOR,
  puddle: FLOOR,
  'full-puddle': FLOOR,
} as const satisfies Readonly<Record<HangEnd, number>>;
/** How far the cloth spreads on the floor. */
const SPREADS: Readonly<Partial<Record<HangEnd, number>>> = { break: 2, puddle: 7, 'full-puddle': 12 };
const END_WORDS: Readonly<Record<HangEnd, string>> = {
  sill: 'the sill',
  apron: 'the apron',
  floor: 'the floor',
  break: 'the floor, with a break',
  puddle: 'the puddle',
  'full-puddle': 'the full puddle',
};

export function drawHang({ heading, where, to, stands, says }: HangSketch): Drawing {
  const fixing = fixingOf(heading, where);
  const top = HEADING_TOPS[stands];
  const hem = HEMS[to];
  const pencil = { stroke: 'pencil', strokeWidth: 0.8 } as const;
  return {
    width: WIDTH,
    height: HEIGHT,
    title: `The fixing is the ${FIXING_WORDS[fixing]}; the length runs from the top of the heading to the hem at ${END_WORDS[to]}.`,
    shapes: [
      ...(where === 'ceiling' ? [line(4, 10, 112, 10, { stroke: 'pencil', strokeWidth: 1.2 })] : []),
      line(4, FLOOR, 112, FLOOR, { stroke: 'pencil', strokeWidth: 1.2 }),
      rect(40, 34, 42, SILL - 34, { stroke: 'faint', strokeWidth: 0.8, fill: 'glass-bottom' }),
      line(34, SILL, 88, SILL, { stroke: 'pencil', strokeWidth: 1.4 }),
      ...cloth(top, hem, SPREADS[to] ?? 0),
      ...fixingShapes(fixing),
      line(4, FIX, 118, FIX, { stroke: 'thread', strokeWidth: 0.8, dash: [2, 2] }),
      line(RIGHT, top, 118, top, { ...pencil, dash: [2, 2] }),
      line(RIGHT, hem, 118, hem, { ...pencil, dash: [2, 2] }),
      ...brace(122, top, hem),
      ...words(stands, (top + hem) / 2, hem, to, says),
    ],
  };
}

function cloth(top: number, hem: number, spread: number): Shape[] {
  const body = path(
    outline([
      { x: LEFT, y: top },
      { x: RIGHT, y: top },
      { x: RIGHT + spread, y: hem },
      { x: LEFT - spread, y: hem },
    ]),
    { fill: 'wall', stroke: 'ink', strokeWidth: 0.9, opacity: 0.92 },
  );
  const folds = [0.2, 0.4, 0.6, 0.8].map((share) => {
    const x = LEFT + (RIGHT - LEFT) * share;
    return line(x, top + 3, x + spread * (share - 0.5) * 2, hem, { stroke: 'faint', strokeWidth: 0.7 });
  });
  return [body, ...folds];
}

function fixingShapes(fixing: Fixing): Shape[] {
  const rod = { fill: 'rod' } as const;
  const places = [0.08, 0.36, 0.64, 0.92].map((share) => LEFT + (RIGHT - LEFT) * share);
  switch (fixing) {
    case 'ring':
      return [
        rect(LEFT - 10, FIX - 13, RIGHT - LEFT + 20, 4, rod, 2),
        ...places.map((x) => circle(x, FIX - 7, 6, { stroke: 'rod', strokeWidth: 1 })),
      ];
    case 'track':
      return [rect(LEFT - 10, FIX - 3, RIGHT - LEFT + 20, 3, rod)];
    case 'pole':
      return [
        rect(LEFT - 10, FIX, RIGHT - LEFT + 20, 4, rod, 2),
        ...places.map((x) => circle(x, FIX + 2, 4.5, { stroke: 'ink', strokeWidth: 0.9 })),
      ];
    case 'pocket':
      return [
        rect(LEFT - 10, FIX, 10, 4, rod, 2),
        rect(RIGHT, FIX, 10, 4, rod, 2),
        line(LEFT, FIX + 6, RIGHT, FIX + 6, { stroke: 'pencil', strokeWidth: 0.7, dash: [2, 1.5] }),
      ];
    case 'tab':
      return [
        rect(LEFT - 10, FIX, RIGHT - LEFT + 20, 4, rod, 2),
        ...places.map((x) => rect(x - 3, FIX - 1, 6, 13, { fill: 'wall', stroke: 'ink', strokeWidth: 0.8 })),
      ];
  }
}

/** The finished length as a dimension line. */
function brace(x: number, top: number, hem: number): Shape[] {
  const style = { stroke: 'ink', strokeWidth: 0.9 } as const;
  return [line(x, top, x, hem, style), line(x - 3, top, x + 3, top, style), line(x - 3, hem, x + 3, hem, style)];
}

function words(
  stands: HangSketch['stands'],
  middle: number,
  hem: number,
  to: HangSketch['to'],
  says: HangSketch['says'],
): Shape[] {
  const text = (y: number, words_: string, paint: 'pencil' | 'ink' | 'thread'): Shape => ({
    kind: 'text',
    x: 130,
    y,
    text: words_,
    size: 10.5,
    anchor: 'start',
    font: 'sans',
    weight: 'regular',
    paint,
  });
  const gap = (value: string): string => (value === '' ? '' : ` ${value}`);
  const heading = stands === 'level' ? 'heading level with it' : `heading ${stands}${gap(says.heading)}`;
  return [
    text(stands === 'above' ? FIX + 6 : FIX - 6, `fixing${gap(says.fixing)}`, 'thread'),
    text(stands === 'above' ? FIX - 9 : FIX + 10, heading, 'pencil'),
    text(middle + 8, says.length === '' ? 'finished length' : `length ${says.length}`, 'ink'),
    text(Math.min(hem + 4, HEIGHT - 4), `hem at ${END_WORDS[to].replace('the ', '')}${gap(says.by)}`, 'pencil'),
  ];
}

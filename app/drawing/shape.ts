/**
 * A drawing is a list of shapes, computed from the same numbers as the cut list. The screen shows it as SVG, the PDF as
 * vectors, from this one model. Units are points (1/72 in on paper, one CSS pixel at scale 1), y downwards.
 */

/** Named paints keep one palette for both colour schemes and for paper; cloth colours are given as `#rrggbb`. */
export const PAINTS = [
  'ink',
  'pencil',
  'faint',
  'rule',
  'paper',
  'card',
  'thread',
  'glass-top',
  'glass-bottom',
  'frame',
  'rod',
  'wall',
  'sun',
] as const;
export type NamedPaint = (typeof PAINTS)[number];
export type Paint = NamedPaint | `#${string}`;

/** A fill that runs evenly from one paint to another along a straight line given in drawing units; flat beyond its ends. */
export interface Gradient {
  readonly from: { readonly x: number; readonly y: number; readonly paint: Paint };
  readonly to: { readonly x: number; readonly y: number; readonly paint: Paint };
}

/** Without `fill` nothing is filled, without `stroke` nothing is stroked. Line joins are always round. */
export interface Style {
  readonly fill?: Paint | Gradient;
  readonly stroke?: Paint;
  readonly strokeWidth?: number;
  readonly dash?: readonly number[];
  /** 0 to 1, of fill and stroke alike. */
  readonly opacity?: number;
  readonly cap?: 'butt' | 'round';
}

export type PathStep =
  | { readonly to: 'move' | 'line'; readonly x: number; readonly y: number }
  | {
      readonly to: 'curve';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly x: number;
      readonly y: number;
    }
  | { readonly to: 'close' };

export interface Rect {
  readonly kind: 'rect';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly radius?: number;
  readonly style: Style;
}
export interface Line {
  readonly kind: 'line';
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly style: Style;
}
export interface Circle {
  readonly kind: 'circle';
  readonly x: number;
  readonly y: number;
  readonly r: number;
  readonly style: Style;
}
export interface Path {
  readonly kind: 'path';
  readonly steps: readonly PathStep[];
  readonly style: Style;
}
export interface Text {
  readonly kind: 'text';
  readonly x: number;
  /** The baseline. */
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly font: 'serif' | 'sans';
  readonly weight: 'regular' | 'semibold';
  readonly paint: Paint;
  /** Degrees, about the anchor point; -90 reads upwards. */
  readonly turn?: 0 | -90;
}
export interface Bounds {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
/** Shapes that belong together: `key` says what they stand for (an opening's key), so that a screen can make it a target. */
export interface Group {
  readonly kind: 'group';
  readonly key?: string;
  /** What a target is called: always there with `key`. */
  readonly label?: string;
  /** The area that a screen makes the target; always there with `key`. Never painted on paper. */
  readonly bounds?: Bounds;
  /** Of the group as one picture: what lies behind one of its shapes does not show through it. Screen only. */
  readonly opacity?: number;
  readonly shapes: readonly Shape[];
}
export type Shape = Rect | Line | Circle | Path | Text | Group;

export interface Drawing {
  readonly width: number;
  readonly height: number;
  /** What the drawing shows, in words, for those who cannot see it. */
  readonly title: string;
  readonly shapes: readonly Shape[];
}

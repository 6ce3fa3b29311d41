/** Short makers of shapes, so that a drawing reads as what it draws. All in points, y downwards. */
import type { Circle, Line, Path, PathStep, Rect, Style, Text } from './shape.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export function rect(x: number, y: number, width: number, height: number, style: Style, radius?: number): Rect {
  const size = { width: Math.max(0, width), height: Math.max(0, height) };
  return radius === undefined ? { kind: 'rect', x, y, ...size, style } : { kind: 'rect', x, y, ...size, radius, style };
}

export function line(x1: number, y1: number, x2: number, y2: number, style: Style): Line {
  return { kind: 'line', x1, y1, x2, y2, style };
}

export function circle(x: number, y: number, r: number, style: Style): Circle {
  return { kind: 'circle', x, y, r: Math.max(0, r), style };
}

export function path(steps: readonly PathStep[], style: Style): Path {
  return { kind: 'path', steps, style };
}

export function move(x: number, y: number): PathStep {
  return { to: 'move', x, y };
}

export function lineTo(x: number, y: number): PathStep {
  return { to: 'line', x, y };
}

export function curveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): PathStep {
  return { to: 'curve', x1, y1, x2, y2, x, y };
}

export const CLOSE: PathStep = { to: 'close' };

/** A closed outline through the points. */
export function outline(points: readonly Point[]): PathStep[] {
  return [...points.map((point, place) => (place === 0 ? move(point.x, point.y) : lineTo(point.x, point.y))), CLOSE];
}

/** Many separate strokes as one shape. */
export function strokes(segments: readonly (readonly [number, number, number, number])[], style: Style): Path {
  return path(
    segments.flatMap(([x1, y1, x2, y2]) => [move(x1, y1), lineTo(x2, y2)]),
    style,
  );
}

type TextLook = Pick<Text, 'size' | 'paint'> & Partial<Pick<Text, 'anchor' | 'font' | 'weight' | 'turn'>>;

export function text(x: number, y: number, words: string, look: TextLook): Text {
  const { size, paint, anchor = 'start', font = 'sans', weight = 'regular', turn = 0 } = look;
  return { kind: 'text', x, y, text: words, size, anchor, font, weight, paint, turn };
}

/** From the middle of a line of figures down to its baseline, as a share of the type size (figures are about 0.66 high). */
export const MIDDLE_TO_BASELINE = 0.33;

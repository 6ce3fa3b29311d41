/**
 * Paints a drawing's shapes as vectors: the same list that the screen shows as SVG. Gradients become axial shadings
 * (ISO 32000-1, 8.7.4.5.3) clipped to their shape; nothing is ever a picture of a drawing.
 */
import {
  appendBezierCurve,
  clip,
  closePath,
  endPath,
  fill,
  LineCapStyle,
  lineTo,
  LineJoinStyle,
  moveTo,
  PDFOperator,
  PDFOperatorNames,
  popGraphicsState,
  pushGraphicsState,
  rectangle,
  setDashPattern,
  setFillingRgbColor,
  setGraphicsState,
  setLineCap,
  setLineJoin,
  setLineWidth,
  setStrokingRgbColor,
  stroke,
} from 'pdf-lib';
import { exhaustive } from '#shared/fault.ts';
import type { Gradient, Paint, Rect, Shape, Style } from '#app/drawing/shape.ts';
import type { Painter } from './painter.ts';
import { paintText } from './paint-text.ts';
import { rgbOf } from './paint-colour.ts';
import { roundPoints } from './round-points.ts';

/** Where shapes are painted: their own origin lies `x` from the left and `y` from the top of a page `height` high. */
export interface PaintPlace {
  readonly x: number;
  readonly y: number;
  readonly height: number;
}

/** A circle's quarter as a cubic curve: error below 0.03 % of the radius (common constant). */
const QUARTER = 0.5523;

type Coordinate = (value: number) => number;
interface Axes {
  readonly x: Coordinate;
  readonly y: Coordinate;
}

/** Paints shapes in their order. `field` names the text that a missing letter stands in. Throws `MissingLetter`. */
export function paintShapes(painter: Painter, shapes: readonly Shape[], place: PaintPlace, field: string): void {
  const axes: Axes = {
    x: (value) => roundPoints(place.x + value),
    y: (value) => roundPoints(place.height - place.y - value),
  };
  shapes.forEach((shape) => paintShape(painter, shape, axes, field));
}

function paintShape(painter: Painter, shape: Shape, axes: Axes, field: string): void {
  switch (shape.kind) {
    case 'group':
      shape.shapes.forEach((inner) => paintShape(painter, inner, axes, field));
      return;
    case 'text':
      paintText(painter, shape, axes.x(shape.x), axes.y(shape.y), field);
      return;
    case 'line':
      paintOutline(painter, shape.style, axes, [
        moveTo(axes.x(shape.x1), axes.y(shape.y1)),
        lineTo(axes.x(shape.x2), axes.y(shape.y2)),
      ]);
      return;
    case 'rect':
      if (shape.width <= 0 || shape.height <= 0) return;
      paintOutline(painter, shape.style, axes, outlineOfRect(shape, axes));
      return;
    case 'circle':
      paintOutline(painter, shape.style, axes, outlineOfCircle(shape.x, shape.y, shape.r, axes));
      return;
    case 'path':
      paintOutline(
        painter,
        shape.style,
        axes,
        shape.steps.map((step) => {
          switch (step.to) {
            case 'move':
              return moveTo(axes.x(step.x), axes.y(step.y));
            case 'line':
              return lineTo(axes.x(step.x), axes.y(step.y));
            case 'curve':
              return appendBezierCurve(
                axes.x(step.x1),
                axes.y(step.y1),
                axes.x(step.x2),
                axes.y(step.y2),
                axes.x(step.x),
                axes.y(step.y),
              );
            case 'close':
              return closePath();
            default:
              return exhaustive(step);
          }
        }),
      );
      return;
    default:
      exhaustive(shape);
  }
}

/** Fills, then strokes: an opacity acts on each alike. */
function paintOutline(painter: Painter, style: Style, axes: Axes, outline: readonly PDFOperator[]): void {
  if (outline.length === 0 || (style.fill === undefined && style.stroke === undefined)) return;
  const { opacity = 1 } = style;
  if (opacity <= 0) return;
  painter.write(pushGraphicsState());
  if (opacity < 1) painter.write(setGraphicsState(painter.resources.opacity(roundPoints(opacity))));
  if (style.fill !== undefined) paintFill(painter, style.fill, axes, outline);
  if (style.stroke !== undefined) {
    const [r, g, b] = rgbOf(style.stroke);
    painter.write(
      setStrokingRgbColor(r, g, b),
      setLineWidth(roundPoints(style.strokeWidth ?? 1)),
      setLineJoin(LineJoinStyle.Round),
      setLineCap(style.cap === 'round' ? LineCapStyle.Round : LineCapStyle.Butt),
    );
    if (style.dash !== undefined) painter.write(setDashPattern([...style.dash], 0));
    painter.write(...outline, stroke());
  }
  painter.write(popGraphicsState());
}

function paintFill(painter: Painter, paint: Paint | Gradient, axes: Axes, outline: readonly PDFOperator[]): void {
  if (typeof paint === 'string') {
    const [r, g, b] = rgbOf(paint);
    painter.write(setFillingRgbColor(r, g, b), ...outline, fill());
    return;
  }
  const { from, to } = paint;
  if (from.x === to.x && from.y === to.y) return paintFill(painter, to.paint, axes, outline);
  const shading = painter.resources.gradient({
    x1: axes.x(from.x),
    y1: axes.y(from.y),
    x2: axes.x(to.x),
    y2: axes.y(to.y),
    from: rgbOf(from.paint),
    to: rgbOf(to.paint),
  });
  painter.write(
    pushGraphicsState(),
    ...outline,
    clip(),
    endPath(),
    PDFOperator.of(PDFOperatorNames.ShadingFill, [shading]),
    popGraphicsState(),
  );
}

function outlineOfRect(rect: Rect, axes: Axes): readonly PDFOperator[] {
  const { x, y, width, height } = rect;
  const r = Math.min(rect.radius ?? 0, width / 2, height / 2);
  if (r <= 0) {
    return [rectangle(axes.x(x), axes.y(y + height), roundPoints(width), roundPoints(height))];
  }
  const [right, bottom, k] = [x + width, y + height, r * (1 - QUARTER)];
  const curve = (x1: number, y1: number, x2: number, y2: number, x3: number, y3: number) =>
    appendBezierCurve(axes.x(x1), axes.y(y1), axes.x(x2), axes.y(y2), axes.x(x3), axes.y(y3));
  return [
    moveTo(axes.x(x + r), axes.y(y)),
    lineTo(axes.x(right - r), axes.y(y)),
    curve(right - k, y, right, y + k, right, y + r),
    lineTo(axes.x(right), axes.y(bottom - r)),
    curve(right, bottom - k, right - k, bottom, right - r, bottom),
    lineTo(axes.x(x + r), axes.y(bottom)),
    curve(x + k, bottom, x, bottom - k, x, bottom - r),
    lineTo(axes.x(x), axes.y(y + r)),
    curve(x, y + k, x + k, y, x + r, y),
    closePath(),
  ];
}

function outlineOfCircle(x: number, y: number, r: number, axes: Axes): readonly PDFOperator[] {
  const k = r * QUARTER;
  const curve = (x1: number, y1: number, x2: number, y2: number, x3: number, y3: number) =>
    appendBezierCurve(axes.x(x1), axes.y(y1), axes.x(x2), axes.y(y2), axes.x(x3), axes.y(y3));
  return [
    moveTo(axes.x(x + r), axes.y(y)),
    curve(x + r, y + k, x + k, y + r, x, y + r),
    curve(x - k, y + r, x - r, y + k, x - r, y),
    curve(x - r, y - k, x - k, y - r, x, y - r),
    curve(x + k, y - r, x + r, y - k, x + r, y),
    closePath(),
  ];
}

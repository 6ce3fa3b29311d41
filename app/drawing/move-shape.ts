/** A shape further down, its gradients with it. */
import { exhaustive } from '#shared/fault.ts';
import type { Gradient, Paint, Shape, Style } from './shape.ts';

export function moveDown(shape: Shape, by: number): Shape {
  switch (shape.kind) {
    case 'rect':
    case 'circle':
      return { ...shape, y: shape.y + by, style: moveStyle(shape.style, by) };
    case 'text':
      return { ...shape, y: shape.y + by };
    case 'line':
      return { ...shape, y1: shape.y1 + by, y2: shape.y2 + by, style: moveStyle(shape.style, by) };
    case 'path':
      return {
        ...shape,
        style: moveStyle(shape.style, by),
        steps: shape.steps.map((step) => {
          if (step.to === 'close') return step;
          if (step.to === 'curve') return { ...step, y1: step.y1 + by, y2: step.y2 + by, y: step.y + by };
          return { ...step, y: step.y + by };
        }),
      };
    case 'group':
      return {
        ...shape,
        ...(shape.bounds === undefined ? {} : { bounds: { ...shape.bounds, y: shape.bounds.y + by } }),
        shapes: shape.shapes.map((inner) => moveDown(inner, by)),
      };
    default:
      return exhaustive(shape);
  }
}

function moveStyle(style: Style, by: number): Style {
  const { fill } = style;
  return fill === undefined || !isGradient(fill)
    ? style
    : { ...style, fill: { from: { ...fill.from, y: fill.from.y + by }, to: { ...fill.to, y: fill.to.y + by } } };
}

function isGradient(fill: Paint | Gradient): fill is Gradient {
  return typeof fill === 'object';
}

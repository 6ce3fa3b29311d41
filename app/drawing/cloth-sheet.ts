/** Where cloth lies on the sheet, and how its lengths are said. */
import { formatLength } from '#shared/format-length.ts';
import type { LengthStyle } from '#shared/format-length.ts';
import type { ClothLine, CutPlanInput, PlanStyle } from './drawn-cut-plan.ts';
import { fitText } from './label-field.ts';
import { MIDDLE_TO_BASELINE, text } from './make-shapes.ts';
import type { Bounds, Shape } from './shape.ts';
import { textWidth } from './text-widths.ts';

export interface Sheet {
  readonly input: CutPlanInput;
  readonly style: PlanStyle;
  readonly line: ClothLine;
}

/** A rectangle of cloth on the sheet; no width where it lies on another line. */
export function boxOf(sheet: Sheet, cloth: { from: number; to: number; x: number; across: number }): Bounds {
  const { from, to, x, y, scale } = sheet.line;
  const start = Math.max(from, cloth.from);
  const end = Math.max(start, Math.min(to, cloth.to));
  return {
    x: x + (start - from) * scale,
    y: y + cloth.x * scale,
    width: (end - start) * scale,
    height: cloth.across * scale,
  };
}

export function sayLength(sheet: Sheet, length: number): string {
  return formatLength(length, sheet.input.wording.units, writing(sheet));
}

export function writing(sheet: Sheet): LengthStyle {
  return { fractions: 'set', decimal: sheet.input.wording.decimal };
}

/** Which part of a line from selvage to selvage, as shares of the width, lies between `from` and `to`. */
export function clipAlong(left: number, right: number, from: number, to: number): readonly [number, number] | null {
  if (left === right) return left >= from && left <= to ? [0, 1] : null;
  const a = Math.max(0, (from - left) / (right - left));
  const b = Math.min(1, (to - left) / (right - left));
  return a < b ? [a, b] : null;
}

interface Label {
  readonly name: string;
  /** What is set where there is no room for the name. */
  readonly short: string;
  readonly size: string;
  readonly paint: 'ink' | 'pencil';
  /** Points to leave free at each side. */
  readonly air: number;
}

/** Name over length in the middle of a box, as much of both as there is room for. */
export function setLabel(sheet: Sheet, box: Bounds, label: Label): readonly Shape[] {
  const { style } = sheet;
  const { paint, short, name } = label;
  const look = { font: 'sans', weight: 'regular', size: style.name } as const;
  const room = box.width - 2 * label.air;
  const shown = fitName(name, short, look, room, box.width - 3);
  const turned = shown === name ? null : turnName(box, name, style, paint);
  if (turned !== null) return [turned];
  const figures = fitText(label.size, { ...look, size: style.figure }, room) === label.size ? label.size : '';
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  if (box.height >= style.name + style.figure * 1.5 && figures !== '')
    return [
      ...(shown === '' ? [] : [text(x, y - style.name * 0.12, shown, { ...look, paint, anchor: 'middle' })]),
      text(x, y + style.figure * 1.05, figures, { size: style.figure, paint: 'pencil', anchor: 'middle' }),
    ];
  const both = `${shown}  ${figures}`;
  const all = figures !== '' && shown === name && fitText(both, look, room) === both ? both : shown;
  const isTall = box.height >= style.name * 0.9;
  return all === '' || !isTall
    ? []
    : [text(x, y + style.name * MIDDLE_TO_BASELINE, all, { ...look, paint, anchor: 'middle' })];
}

/** The whole name upwards, where a narrow cut has no room for it across but for it along; null where neither. */
function turnName(box: Bounds, name: string, style: PlanStyle, paint: Label['paint']): Shape | null {
  const look = { font: 'sans', weight: 'regular', size: style.name } as const;
  const room = box.height - style.name;
  if (box.width < style.name * 1.5 || fitText(name, look, room) !== name) return null;
  const x = box.x + box.width / 2 + style.name * MIDDLE_TO_BASELINE;
  return text(x, box.y + box.height / 2, name, { ...look, paint, anchor: 'middle', turn: -90 });
}

/** The whole name; else its beginning and its last word, which tells cuts of a set apart; else the short one alone. */
function fitName(
  name: string,
  short: string,
  look: { font: 'sans'; weight: 'regular'; size: number },
  room: number,
  most: number,
): string {
  if (fitText(name, look, room) === name) return name;
  const ending = ` ${short}`;
  const head = name.endsWith(ending) ? name.slice(0, -ending.length) : '';
  const cut = fitText(head, look, room - textWidth(ending, look.font, look.weight, look.size));
  return [...cut].length > 3 ? `${cut}${ending}` : fitText(short, look, most);
}

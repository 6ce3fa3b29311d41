/**
 * Usual measurements for what is still empty on the sheet of a kind other than panels (common practice; what is from
 * memory says so). Only what can be told from the window and from what hangs beside it.
 */
import { TICKS_PER_INCH, TICKS_PER_MM, lengthFrom, ticks } from '#shared/length.ts';
import type { LengthUnit, Ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import type { OpeningDocument, TreatmentRecord } from '#shared/records/records.ts';
import type { OtherMake, TicksForm } from '#shared/records/treatment-make.ts';
import { readAt, writeAt } from './form-path.ts';
import { standsOut, underneath } from './layered.ts';

interface Fill {
  readonly path: string;
  readonly value: unknown;
}

interface Given {
  readonly opening: OpeningDocument;
  readonly treatment: TreatmentRecord;
  readonly form: TicksForm;
  readonly practice: Practice;
  readonly unit: LengthUnit;
}

/** Lengths by path that would be filled in; what is written, or cannot be told yet, is not among them. */
export function usualFills(
  opening: OpeningDocument,
  treatment: TreatmentRecord,
  practice: Practice,
  unit: LengthUnit,
): readonly Fill[] {
  const { make } = treatment;
  if (make.kind === 'panels') return [];
  const given = { opening, treatment, form: make.form, practice, unit };
  return fillsOf(make.kind, given).filter(({ path, value }) => {
    const kept = readAt(make.form, path);
    return value !== null && (kept === undefined || kept === null);
  });
}

export function fillForm(form: TicksForm, fills: readonly Fill[]): TicksForm {
  return fills.reduce((filled, { path, value }) => writeAt(filled, path, value), form);
}

function fillsOf(kind: OtherMake['kind'], given: Given): readonly Fill[] {
  switch (kind) {
    case 'valance':
    case 'cornice':
    case 'swags':
      return topFills(kind, given);
    case 'roman-shade':
      return shadeFills(given);
    case 'shower-curtain': {
      // The usual curtain of a standard bath.
      const inch = given.unit === 'in';
      return [
        { path: 'finishedWidth', value: inch ? lengthFrom(72, 'in') : lengthFrom(180, 'cm') },
        { path: 'finishedLength', value: inch ? lengthFrom(72, 'in') : lengthFrom(200, 'cm') },
      ];
    }
    case 'bed-skirt':
      return [];
  }
}

function length({ unit }: Given, inch: number, centimetres: number): Ticks {
  return unit === 'in' ? lengthFrom(inch, 'in') : lengthFrom(centimetres, 'cm');
}

function numberAt(form: TicksForm, path: string): number | null {
  const value = readAt(form, path);
  return typeof value === 'number' ? value : null;
}

/** Over panels: 2 in past them on each side and above them (from memory); over the bare window: 2 in past it. */
function topFills(kind: 'valance' | 'cornice' | 'swags', given: Given): readonly Fill[] {
  const { opening, treatment, form, practice } = given;
  const where = readAt(form, 'mount.where') ?? 'wall';
  const under = underneath(opening, treatment)
    .map(({ make }) => make)
    .find((make) => make.kind === 'panels');
  const clear = length(given, 2, 5);
  const above =
    numberAt(form, 'mount.above') ??
    (under?.mountAbove === null || under === undefined ? length(given, 4, 10) : under.mountAbove + clear);
  const inside = where === 'inside';
  const face = inside ? opening.width : (under?.rodWidth ?? opening.width);
  const out = under ? standsOut(under, practice) : null;
  const drop =
    opening.sill === null || opening.height === null ? null : opening.sill + opening.height + (inside ? 0 : above);
  const whole = numberAt(form, 'dropOf') ?? drop;
  return [
    ...(where === 'wall' ? [{ path: 'mount.above', value: above }] : []),
    { path: 'width', value: face === null ? null : ticks(face + (inside ? 0 : 2 * clear)) },
    ...(inside ? [] : [{ path: 'over', value: out }]),
    // A cornice takes its board's depth by itself.
    ...(inside || out !== null || kind === 'cornice' ? [] : [{ path: 'return', value: practice[kind].boardDepth }]),
    { path: 'dropOf', value: drop },
    { path: 'finishedLength', value: whole === null ? null : partOf(whole, practice[kind].deepestPart, given.unit) },
  ];
}

/** A fifth of the whole drop unless the practice says otherwise, down to whole inches or centimetres. */
function partOf(whole: number, part: number, unit: LengthUnit): Ticks {
  const step = unit === 'in' ? TICKS_PER_INCH : 10 * TICKS_PER_MM;
  return ticks(Math.max(step, Math.floor(whole / part / step) * step));
}

/** Inside a frame: the opening itself, to be read again at three heights. In front of it: 2 in past it (from memory). */
function shadeFills(given: Given): readonly Fill[] {
  const { opening, form } = given;
  const where = readAt(form, 'mount.where');
  const { width, height } = opening;
  const inside = where === 'inside';
  if (readAt(form, 'size.basis') === 'opening')
    return [
      { path: 'size.widths', value: width === null ? null : [width] },
      { path: 'size.lengths', value: height === null ? null : [height] },
      ...(where === 'wall' ? [{ path: 'mount.above', value: length(given, 2, 5) }] : []),
    ];
  const above = numberAt(form, 'mount.above') ?? length(given, 2, 5);
  const past = inside ? 0 : 2 * length(given, 2, 5);
  return [
    ...(where === 'wall' ? [{ path: 'mount.above', value: above }] : []),
    { path: 'size.width', value: width === null ? null : ticks(width + past) },
    { path: 'size.length', value: height === null ? null : ticks(height + (where === 'wall' ? above : 0)) },
  ];
}

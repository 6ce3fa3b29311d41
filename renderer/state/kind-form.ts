/** The kept form of a treatment, whatever its kind, as the generic sheet reads and changes it. */
import type { LengthUnit } from '#shared/length.ts';
import { NEW_PANELS } from '#shared/records/new-panels.ts';
import type { OtherMake, TicksForm, TreatmentMake } from '#shared/records/treatment-make.ts';
import type { TreatmentKind } from '#shared/treatments/treatment.ts';
import { KIND_SHEETS } from '../words/kind-sheets/kind-sheet-of.ts';
import type { Asked, SheetGroup, SheetLine } from '../words/kind-sheets/sheet.ts';
import { readAt, writeAt } from './form-path.ts';

/** Of panels: what only some have. */
export function formOf(make: TreatmentMake): TicksForm {
  return make.kind === 'panels' ? make.extras : make.form;
}

export function withForm(make: TreatmentMake, form: TicksForm): TreatmentMake {
  return make.kind === 'panels' ? { ...make, extras: form } : { ...make, form };
}

export function newMake(kind: TreatmentKind, unit: LengthUnit): TreatmentMake {
  if (kind === 'panels') return NEW_PANELS;
  return { kind, form: KIND_SHEETS[kind].start(unit) } satisfies OtherMake;
}

/** Made alike: without what is measured at each window anew. */
export function makeAlike(make: TreatmentMake): TreatmentMake {
  const { measured } = KIND_SHEETS[make.kind];
  const form = measured.reduce((left, path) => writeAt(left, path, undefined), formOf(make));
  const alike = withForm(make, form);
  return alike.kind === 'panels' ? { ...alike, rodWidth: null, finishedLength: null, halfWidths: null } : alike;
}

export function isThere(group: SheetGroup, form: TicksForm): boolean {
  if (!group.optional) return true;
  const found = readAt(form, group.optional.path);
  return found !== undefined && found !== null;
}

/** Lines that do not belong to a style are taken out of the form, or the style's own check would refuse it. */
export function withoutStrangers(asked: Asked): TicksForm {
  const lines = KIND_SHEETS[asked.make.kind].groups.flatMap((group) => (group.list ? [] : group.lines));
  const paths = (list: readonly SheetLine[]): Set<string> => new Set(list.map(({ path }) => path));
  const belongs = paths(lines.filter((line) => line.applies?.(asked) ?? true));
  return [...paths(lines)]
    .filter((path) => !belongs.has(path) && readAt(asked.form, path) !== undefined)
    .reduce((form, path) => writeAt(form, path, undefined), asked.form);
}

/** Readings with an empty one between them close up when the field is left; none at all is not measured yet. */
export function closeUp(form: TicksForm, path: string): TicksForm {
  const list = readAt(form, path);
  if (!Array.isArray(list)) return form;
  const written: unknown[] = list.filter((each) => each !== null && each !== undefined);
  if (written.length === list.length && written.length > 0) return form;
  return writeAt(form, path, written.length === 0 ? undefined : written);
}

/** The label of a line of that kind, by the path that something missing or wrong names; null: none of its lines. */
export function labelAt(kind: TreatmentKind, path: string): string | null {
  for (const group of KIND_SHEETS[kind].groups)
    for (const line of group.lines) {
      const label = labelOfLine(line, group.list ? path.replace(/^\w+\.\d+\./, '') : path);
      // Cascades and jabots have the same lines.
      if (label !== null) return group.optional && group.title ? `${group.title.toLowerCase()}: ${label}` : label;
    }
  const group = KIND_SHEETS[kind].groups.find(({ optional, list }) => optional?.path === path || list?.path === path);
  return group?.title?.toLowerCase() ?? null;
}

function labelOfLine(line: SheetLine, path: string): string | null {
  if (line.path === path) return line.label;
  if (line.type === 'sides' && path.startsWith(`${line.path}.`))
    return `${line.label}, ${path.split('.').at(-1) ?? ''}`;
  if (line.type === 'readings' && path.startsWith(`${line.path}.`))
    return line.names[Number(path.slice(line.path.length + 1))] ?? line.label;
  return null;
}

/** Values that left the form because their style does not have them: they are back when the style is. By treatment. */
const aside = new Map<string, Map<string, unknown>>();

/** After a choice: what the form has no line for any more is put aside, what it has one for again comes back. */
export function fitForm(asked: Asked, treatmentId: string): TicksForm {
  const kept = aside.get(treatmentId) ?? new Map<string, unknown>();
  aside.set(treatmentId, kept);
  const fitted = withoutStrangers(asked);
  for (const path of linePaths(asked))
    if (readAt(fitted, path) === undefined && readAt(asked.form, path) !== undefined)
      kept.set(path, readAt(asked.form, path));
  let form = fitted;
  for (const [path, value] of kept) {
    const back = writeAt(form, path, value);
    if (readAt(form, path) === undefined && readAt(withoutStrangers({ ...asked, form: back }), path) !== undefined) {
      form = back;
      kept.delete(path);
    }
  }
  return form;
}

function linePaths({ make }: Asked): readonly string[] {
  return KIND_SHEETS[make.kind].groups.flatMap((group) => (group.list ? [] : group.lines.map(({ path }) => path)));
}

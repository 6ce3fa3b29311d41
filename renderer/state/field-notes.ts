/** What is said under a field of the worksheet: its draft that cannot be read, and what the job file finds there. */
import type { LengthUnit } from '#shared/length.ts';
import { lineOfFault } from './form-path.ts';
import type { PricedDocument } from './price-document.ts';
import { readCountField, readFullnessField, readLengthField, readWidthsField } from './read-field.ts';
import type { FieldReading } from './read-field.ts';

export interface Note {
  readonly level: 'fault' | 'warning' | 'hint';
  readonly says: string;
}

/** Where the job file's path calls a field otherwise: `return.left` is the left return. */
const NAMES: Readonly<Record<string, readonly string[]>> = {
  returnLeft: ['return', 'return.left'],
  returnRight: ['return.right'],
  halfWidths: ['widths'],
  mountAbove: ['mount.above'],
};
const PANEL_LINES = ['rodWidth', 'finishedLength', 'overlap', 'fullness', 'quantity', ...Object.values(NAMES).flat()];
const MOST_ALIKE = 500;

/** True for a field that panels have a line for besides those of their table. */
export function isLineNote(field: string): boolean {
  return PANEL_LINES.includes(field);
}

/** Reads a field's text again as its field does. */
export function readMeasure(field: string, text: string, unit: LengthUnit): FieldReading<number> {
  if (field === 'fullness') return readFullnessField(text);
  if (field === 'quantity') return readCountField(text, MOST_ALIKE);
  if (field === 'halfWidths') return readWidthsField(text);
  return readLengthField(text, unit);
}

/** `kept` is the last value that could be read, as shown: it still counts, and that is said. */
export function noteDraft(reading: FieldReading<number>, kept: string): Note[] {
  if (reading.is !== 'fault') return [];
  const still = kept === '' ? '' : ` ${kept} still counts.`;
  return [{ level: 'fault', says: `${reading.wrong}: ${reading.right}.${still}` }];
}

/** Faults and warnings of the job file at one field of the record with that id. */
export function noteJob(priced: Pick<PricedDocument, 'faults' | 'warnings'>, id: string, field: string): Note[] {
  const names = NAMES[field] ?? (field === 'return' ? ['return', 'return.left'] : [field]);
  const isHere = (each: { readonly id: string | null; readonly field: string }): boolean =>
    each.id === id && names.includes(lineOfFault(each.field));
  return [
    ...priced.faults.filter(isHere).map((fault): Note => ({ level: 'fault', says: `${fault.wrong}: ${fault.right}.` })),
    ...priced.warnings.filter(isHere).map((warning): Note => ({ level: 'warning', says: warning.says })),
  ];
}

export function uniqueNotes(notes: readonly Note[]): Note[] {
  return notes.filter((note, index) => notes.findIndex((each) => each.says === note.says) === index);
}

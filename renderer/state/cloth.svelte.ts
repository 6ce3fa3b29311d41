/** The decorator's own cloth, as the place "Cloth" and the worksheet edit it. */
import type { LengthUnit } from '#shared/length.ts';
import type { ClothRecord, SettingsRecord } from '#shared/records/records.ts';
import type { ClothRole } from '#shared/words.ts';
import { client } from './client.ts';
import { codeFor } from './code-for.ts';
import { tellDeskFault } from './desk-fault.ts';
import type { DeskFault } from './desk-fault.ts';
import { reverseEdit } from './edit.ts';
import type { Edit } from './edit.ts';
import type { Edits } from './edits.svelte.ts';
import type { FieldReading } from './read-field.ts';
import { usualClothWidth } from './usual-cloth-width.ts';

const USUAL_FAMILY = { face: 'plain', lining: 'standard', interlining: 'medium' } as const;

export async function addCloth(
  edits: Edits,
  given: {
    readonly name: string;
    readonly role: ClothRole;
    readonly unit: LengthUnit;
    readonly taken: readonly string[];
  },
): Promise<ClothRecord> {
  return edits.add(`${given.name} added`, async (added) => {
    const cloth = await client.cloth.addCloth({
      projectId: null,
      fields: {
        code: codeFor(given.name, given.taken),
        name: given.name,
        role: given.role,
        family: USUAL_FAMILY[given.role],
        width: usualClothWidth(given.unit),
        match: 'none',
      },
    });
    added('cloth', cloth.id);
    return cloth;
  });
}

export function editCloth(
  edits: Edits,
  cloth: ClothRecord,
  changes: Partial<ClothRecord>,
  label: string,
  whole = true,
): void {
  const edit: Edit = { entity: 'cloth', id: cloth.id, changes };
  edits.change(edit, reverseEdit(edit, { ...cloth }), `${cloth.name}, ${label}`, whole);
}

/** Text that cannot be read stays with the cloth as a draft; the last value that could be read stays in force. */
export function typeCloth<F extends keyof ClothRecord & string>(
  edits: Edits,
  cloth: ClothRecord,
  field: F,
  reading: FieldReading<NonNullable<ClothRecord[F]>>,
  text: string,
  label: string,
): void {
  const changesOf = (value: ClothRecord[F] | null): Partial<ClothRecord> => ({ [field]: value });
  typeLine(edits, cloth, field, reading, text, changesOf, label);
}

/** The same for a line that is part of a field, or more than one: `changesOf` says what its value changes. */
export function typeLine<T>(
  edits: Edits,
  cloth: ClothRecord,
  line: string,
  reading: FieldReading<T>,
  text: string,
  changesOf: (value: T | null) => Partial<ClothRecord>,
  label: string,
): void {
  const drafts = Object.fromEntries(Object.entries(cloth.drafts).filter(([name]) => name !== line));
  const changes: Partial<ClothRecord> =
    reading.is === 'fault'
      ? { drafts: { ...drafts, [line]: text } }
      : { drafts, ...changesOf(reading.is === 'value' ? reading.value : null) };
  editCloth(edits, cloth, changes, label, false);
}

export class ClothStore {
  list: readonly ClothRecord[] | null = $state.raw(null);
  settings: SettingsRecord | null = $state.raw(null);
  fault: DeskFault | null = $state.raw(null);
  readonly #edits: Edits;

  constructor(edits: Edits) {
    this.#edits = edits;
  }

  open(): () => void {
    void this.reload();
    return this.#edits.follow({
      apply: (edit) => {
        if (edit.entity === 'cloth')
          this.list = this.list?.map((cloth) => (cloth.id === edit.id ? { ...cloth, ...edit.changes } : cloth)) ?? null;
      },
      reload: () => this.reload(),
    });
  }

  async reload(): Promise<void> {
    try {
      const [list, settings] = await Promise.all([client.cloth.listCloth({}), client.settings.readSettings({})]);
      const pending = this.#edits.pendingEdits();
      this.list = list.map((cloth) =>
        pending.reduce(
          (record, edit) =>
            edit.entity === 'cloth' && edit.id === record.id ? { ...record, ...edit.changes } : record,
          cloth,
        ),
      );
      this.settings = settings;
      this.fault = null;
    } catch (error) {
      this.fault = tellDeskFault(error);
    }
  }
}

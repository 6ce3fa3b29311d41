/** The decorator's own: practice, price book, letterhead, words. Text that cannot be read is kept in this browser. */
import { defaultPractice } from '#shared/practice-defaults.ts';
import type { WirePractice, WirePriceBook } from '#shared/job-file/wire-practice.ts';
import type { SettingsRecord } from '#shared/records/records.ts';
import type { Heading } from '#shared/words.ts';
import type { KindSettings } from '../words/kind-settings.ts';
import type { LengthGroup, STACKBACK_WORDS } from '../words/practice-words.ts';
import { client } from './client.ts';
import { tellDeskFault } from './desk-fault.ts';
import type { DeskFault } from './desk-fault.ts';
import { SETTINGS_ID, reverseEdit } from './edit.ts';
import type { Edit } from './edit.ts';
import type { Edits } from './edits.svelte.ts';
import type { FieldReading } from './read-field.ts';

const DRAFTS_KEY = 'linenfold:settings-drafts';

export class SettingsStore {
  settings: SettingsRecord | null = $state.raw(null);
  fault: DeskFault | null = $state.raw(null);
  drafts: Readonly<Record<string, string>> = $state.raw(readDrafts());
  readonly defaults = $derived(defaultPractice(this.settings?.units ?? 'in'));
  readonly book: WirePriceBook = $derived(
    this.settings === null || this.settings.priceBook === 'example' ? {} : this.settings.priceBook,
  );
  readonly #edits: Edits;

  constructor(edits: Edits) {
    this.#edits = edits;
  }

  open(): () => void {
    void this.reload();
    return this.#edits.follow({
      apply: (edit) => {
        if (edit.entity === 'settings' && this.settings) this.settings = { ...this.settings, ...edit.changes };
      },
      reload: () => this.reload(),
    });
  }

  async reload(): Promise<void> {
    try {
      const read = await client.settings.readSettings({});
      this.settings = this.#edits
        .pendingEdits()
        .reduce((record, edit) => (edit.entity === 'settings' ? { ...record, ...edit.changes } : record), read);
      this.fault = null;
    } catch (error) {
      this.fault = tellDeskFault(error);
    }
  }

  change(changes: Partial<SettingsRecord>, label: string, whole = true): void {
    if (!this.settings) return;
    const edit: Edit = { entity: 'settings', id: SETTINGS_ID, changes };
    this.#edits.change(edit, reverseEdit(edit, { ...this.settings }), `practice, ${label}`, whole);
  }

  leaveField(): void {
    this.#edits.leaveField();
  }

  /** Takes what a field read: a value is written by `write`, nothing takes the setting back to its default. */
  take<T>(field: string, reading: FieldReading<T>, text: string, write: (value: T | undefined) => void): void {
    const left = Object.fromEntries(Object.entries(this.drafts).filter(([name]) => name !== field));
    this.drafts = reading.is === 'fault' ? { ...left, [field]: text } : left;
    keepDrafts(this.drafts);
    if (reading.is !== 'fault') write(reading.is === 'value' ? reading.value : undefined);
  }

  changePractice(changes: Partial<WirePractice>, label: string, whole = false): void {
    this.change({ practice: without({ ...this.settings?.practice, ...changes }) }, label, whole);
  }

  changeHeading(
    setting: 'fullness' | 'leastFullness',
    heading: Heading,
    value: number | undefined,
    label: string,
  ): void {
    const before = this.settings?.practice[setting] ?? {};
    this.changePractice({ [setting]: without({ ...before, [heading]: value }) }, label);
  }

  /** One setting of a group of the practice: `changeGroup('spacing', 'grommet', '6.5 in', …)`. */
  changeGroup(
    group: LengthGroup | KindSettings['section'],
    field: string,
    value: string | number | undefined,
    label: string,
    whole = false,
  ): void {
    const before: Readonly<Record<string, unknown>> = this.settings?.practice[group] ?? {};
    this.changePractice({ [group]: without({ ...before, [field]: value }) }, label, whole);
  }

  changeStackback(
    behind: keyof typeof STACKBACK_WORDS,
    end: 'least' | 'most',
    value: string | undefined,
    label: string,
  ): void {
    const before = this.settings?.practice.stackback ?? {};
    const range = without({ ...before[behind], [end]: value });
    this.changePractice({ stackback: without({ ...before, [behind]: range }) }, label);
  }

  changeBook(changes: Partial<WirePriceBook>, label: string, whole = false): void {
    this.change({ priceBook: without({ ...this.book, ...changes }) }, label, whole);
  }

  /** One entry of a part of the price book: `changeRate('hardware', 'ring', '1.50', …)`. */
  changeRate(
    part: 'labour' | 'hardware' | 'notions' | 'markup' | 'cloth',
    name: string,
    value: unknown,
    label: string,
  ): void {
    const before: Readonly<Record<string, unknown>> = this.book[part] ?? {};
    this.changeBook({ [part]: without({ ...before, [name]: value }) }, label);
  }
}

/** What is not set any more is taken out, so that the default shows again. */
function without<T extends object>(given: T): T {
  return Object.fromEntries(
    Object.entries(given as Readonly<Record<string, unknown>>).filter(
      ([, value]) =>
        value !== undefined &&
        !(typeof value === 'object' && value !== null && !Array.isArray(value) && Object.keys(value).length === 0),
    ),
  ) as T;
}

function readDrafts(): Record<string, string> {
  try {
    const given: unknown = JSON.parse(window.localStorage.getItem(DRAFTS_KEY) ?? '{}');
    return typeof given === 'object' && given !== null
      ? Object.fromEntries(
          Object.entries(given as Record<string, unknown>).filter(
            (entry): entry is [string, string] => typeof entry[1] === 'string',
          ),
        )
      : {};
  } catch {
    // Nothing is kept where the window forbids it.
    return {};
  }
}

function keepDrafts(drafts: Readonly<Record<string, string>>): void {
  try {
    window.localStorage.setItem(DRAFTS_KEY, JSON.stringify(drafts));
  } catch {
    // The draft then lives as long as the window.
    return;
  }
}

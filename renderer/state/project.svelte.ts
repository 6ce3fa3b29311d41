/**
 * One project as its screens hold it: the document with whatever is typed laid over it, priced as one types, and the
 * edits that change it.
 */
import type { Ticks } from '#shared/length.ts';
import { readPractice } from '#shared/job-file/read-practice.ts';
import { defaultPractice } from '#shared/practice-defaults.ts';
import type { Practice } from '#shared/practice.ts';
import type {
  OpeningDocument,
  OpeningRecord,
  ProjectDocument,
  RoomDocument,
  RoomRecord,
  TreatmentRecord,
} from '#shared/records/records.ts';
import type { PanelsMake, TicksForm, TreatmentMake } from '#shared/records/treatment-make.ts';
import type { TreatmentKind } from '#shared/treatments/treatment.ts';
import { client } from './client.ts';
import { tellDeskFault } from './desk-fault.ts';
import type { DeskFault } from './desk-fault.ts';
import { drawnRooms } from './draw-document.ts';
import { editDocument, findOpening, lastTreatment, listOpenings } from './edit-document.ts';
import type { Edit } from './edit.ts';
import { reverseEdit } from './edit.ts';
import type { Edits } from './edits.svelte.ts';
import { priceDocument } from './price-document.ts';
import type { PriceMemo } from './price-document.ts';
import { readLengthField } from './read-field.ts';
import type { FieldReading } from './read-field.ts';
import { moveBy, placeAfter } from './move-order.ts';
import type { Placed } from './move-order.ts';
import { NEW_NAMES } from '../words/project-words.ts';
import { withForm } from './kind-form.ts';
import { addedTreatment, newTreatment, turnedInto } from './new-treatment.ts';
import { fillForm, usualFills } from './suggest-form.ts';
import { suggestMake } from './suggest-make.ts';

export type MakeLength = 'mountAbove' | 'rodWidth' | 'finishedLength' | 'returnLeft' | 'returnRight' | 'overlap';
export type OpeningLength = 'width' | 'height' | 'sill' | 'at';

export class ProjectStore {
  document: ProjectDocument | null = $state.raw(null);
  fault: DeskFault | null = $state.raw(null);
  /** The light in which the windows are shown: the sky of the slider, and whether it is night. */
  sky = $state(1);
  night = $state(false);
  readonly #id: string;
  readonly #edits: Edits;
  readonly #readAsked: () => string | null;

  readonly #memo: PriceMemo = new WeakMap();

  readonly priced = $derived(this.document ? priceDocument(this.document, this.#memo) : null);
  readonly drawn = $derived(this.document ? drawnRooms(this.document, this.priced) : []);
  readonly chosen = $derived.by(() => {
    if (!this.document) return null;
    const asked = this.#readAsked();
    const found = asked === null ? null : findOpening(this.document, asked);
    return found ?? listOpenings(this.document)[0] ?? null;
  });
  /** The practice that rules here: defaults, the decorator's own, the project's. */
  readonly practice: Practice | null = $derived.by(() => {
    if (!this.document) return null;
    const { settings, project } = this.document;
    const written = { ...settings.practice, ...(project.practice ?? {}) };
    return readPractice(written, defaultPractice(project.units), project.units);
  });

  /** `readAsked` gives the id of the opening that the address names; it may be gone. */
  constructor(id: string, edits: Edits, readAsked: () => string | null = () => null) {
    this.#id = id;
    this.#edits = edits;
    this.#readAsked = readAsked;
  }

  /** Starts following the edits; steps of another project are forgotten. Returns the function that stops it. */
  open(): () => void {
    this.#edits.enterProject(this.#id);
    void this.reload();
    return this.#edits.follow({ apply: (edit) => this.#apply(edit), reload: () => this.reload() });
  }

  async reload(): Promise<void> {
    try {
      const read = await client.projects.readProject({ id: this.#id });
      this.document = this.#edits.pendingEdits().reduce(editDocument, read);
      this.fault = null;
    } catch (error) {
      this.fault = tellDeskFault(error);
    }
  }

  /** A new window is made like the last one, where there is one. */
  get hasTreatment(): boolean {
    return this.document !== null && lastTreatment(this.document) !== null;
  }

  /** The opening after this one in measuring order, for Enter on the last line. */
  nextOpening(id: string): OpeningDocument | null {
    if (!this.document) return null;
    const all = listOpenings(this.document).map(({ opening }) => opening);
    return all[all.findIndex((opening) => opening.id === id) + 1] ?? null;
  }

  #apply(edit: Edit): void {
    if (this.document) this.document = editDocument(this.document, edit);
  }

  #change(edit: Edit, record: Readonly<Record<string, unknown>>, label: string, whole: boolean): void {
    this.#edits.change(edit, reverseEdit(edit, record), label, whole);
  }

  editRoom(room: RoomDocument, changes: Partial<RoomRecord>, label: string, whole = true): void {
    this.#change({ entity: 'room', id: room.id, changes }, { ...room }, `${room.name}, ${label}`, whole);
  }

  editOpening(opening: OpeningDocument, changes: Partial<OpeningDocument>, label: string, whole = true): void {
    this.#change({ entity: 'opening', id: opening.id, changes }, { ...opening }, `${opening.name}, ${label}`, whole);
  }

  editTreatment(treatment: TreatmentRecord, changes: Partial<TreatmentRecord>, label: string, whole = true): void {
    this.#change({ entity: 'treatment', id: treatment.id, changes }, { ...treatment }, label, whole);
  }

  /** Of panels; what only some of them have is its form. */
  editMake(treatment: TreatmentRecord, changes: Partial<PanelsMake>, label: string, whole = true): void {
    const { make } = treatment;
    if (make.kind === 'panels') this.editTreatment(treatment, { make: { ...make, ...changes } }, label, whole);
  }

  editForm(treatment: TreatmentRecord, form: TicksForm, label: string, whole = true): void {
    this.editTreatment(treatment, { make: withForm(treatment.make, form) }, label, whole);
  }

  /** One line of a kind's sheet: `write` gives the form with the value that was read in it, null for nothing. */
  typeForm(
    treatment: TreatmentRecord,
    path: string,
    reading: FieldReading<number>,
    text: string,
    label: string,
    write: (value: number | null) => TicksForm,
  ): void {
    const typed = this.#typed(treatment.drafts, path, reading, text);
    const make = typed.keep ? treatment.make : withForm(treatment.make, write(typed.value));
    this.editTreatment(treatment, { drafts: typed.drafts, make }, label, false);
  }

  /** Another kind at the same place: name, cloth, quantity and stacks stay. */
  turnInto(treatment: TreatmentRecord, kind: TreatmentKind, label: string): void {
    const units = this.document?.project.units ?? 'in';
    this.editTreatment(treatment, turnedInto(treatment, kind, units), label);
  }

  editProject(changes: Partial<ProjectDocument['project']>, label: string, whole = true): void {
    if (!this.document) return;
    const { project } = this.document;
    this.#change({ entity: 'project', id: project.id, changes }, { ...project }, label, whole);
  }

  editSettings(changes: Partial<ProjectDocument['settings']>, label: string): void {
    if (!this.document) return;
    this.#change({ entity: 'settings', id: 'settings', changes }, { ...this.document.settings }, label, true);
  }

  /** What cannot be read is kept as a draft beside the last length that could. */
  typeRoomLength(room: RoomDocument, text: string, label: string): void {
    const typed = this.#typed(room.drafts, 'ceiling', this.#readLength(text), text);
    this.editRoom(room, { drafts: typed.drafts, ...(typed.keep ? {} : { ceiling: typed.value }) }, label, false);
  }

  typeOpeningLength(opening: OpeningDocument, field: OpeningLength, text: string, label: string): void {
    const typed = this.#typed(opening.drafts, field, this.#readLength(text), text);
    this.editOpening(opening, { drafts: typed.drafts, ...(typed.keep ? {} : { [field]: typed.value }) }, label, false);
  }

  typeMake<F extends MakeLength | 'fullness' | 'halfWidths'>(
    treatment: TreatmentRecord,
    field: F,
    reading: FieldReading<number>,
    text: string,
    label: string,
  ): void {
    const typed = this.#typed(treatment.drafts, field, reading, text);
    const make: TreatmentMake =
      typed.keep || treatment.make.kind !== 'panels' ? treatment.make : { ...treatment.make, [field]: typed.value };
    this.editTreatment(treatment, { drafts: typed.drafts, make }, label, false);
  }

  typeMakeLength(treatment: TreatmentRecord, field: MakeLength, text: string, label: string): void {
    this.typeMake(treatment, field, this.#readLength(text), text, label);
  }

  typeQuantity(treatment: TreatmentRecord, reading: FieldReading<number>, text: string, label: string): void {
    const typed = this.#typed(treatment.drafts, 'quantity', reading, text);
    const quantity = typed.keep ? treatment.quantity : (typed.value ?? 1);
    this.editTreatment(treatment, { drafts: typed.drafts, quantity }, label, false);
  }

  leaveField(): void {
    this.#edits.leaveField();
  }

  #readLength(text: string): FieldReading<Ticks> {
    return readLengthField(text, this.document?.project.units ?? 'in');
  }

  #typed<T>(drafts: Readonly<Record<string, string>>, field: string, reading: FieldReading<T>, text: string) {
    const left = Object.fromEntries(Object.entries(drafts).filter(([name]) => name !== field));
    if (reading.is === 'fault') return { keep: true, value: null, drafts: { ...left, [field]: text } } as const;
    return { keep: false, value: reading.is === 'value' ? reading.value : null, drafts: left } as const;
  }

  /** A room with its first opening, as one step. Gives the opening's id. */
  async addRoom(room: Partial<RoomRecord>, opening: Partial<OpeningRecord>): Promise<string> {
    const name = room.name ?? NEW_NAMES.room;
    const model = this.document ? lastTreatment(this.document) : null;
    const rooms = this.document?.rooms ?? [];
    return this.#edits.add(NEW_NAMES.addedRoom(name), async (added) => {
      const made = await client.rooms.addRoom({
        projectId: this.#id,
        fields: { position: placeAfter(rooms), climate: rooms.at(-1)?.climate ?? 'mixed', ...room, name },
      });
      added('room', made.id);
      return this.#addOpening(made.id, { position: 0, glazing: 'double', ...opening }, model, added);
    });
  }

  async #addOpening(
    roomId: string,
    fields: Partial<OpeningRecord>,
    model: TreatmentRecord | null,
    added: (entity: 'opening' | 'treatment', id: string) => void,
  ): Promise<string> {
    const opening = await client.openings.addOpening({ roomId, fields });
    added('opening', opening.id);
    const treatment = await client.treatments.addTreatment({ openingId: opening.id, fields: newTreatment(model) });
    added('treatment', treatment.id);
    return opening.id;
  }

  /** A new opening with panels in it, made like the last ones of the project: the usual case in one house. */
  async addOpening(room: RoomDocument): Promise<string> {
    const model = this.document ? lastTreatment(this.document) : null;
    const name = NEW_NAMES.opening(room.openings.length + 1);
    const fields = {
      name,
      position: placeAfter(room.openings),
      glazing: room.openings.at(-1)?.glazing ?? 'double',
    } as const;
    return this.#edits.add(NEW_NAMES.addedOpening(name), (added) => this.#addOpening(room.id, fields, model, added));
  }

  /** A bed or a bath, which stands in the room without a window: with its skirt, or with its curtain. */
  async addFurniture(room: RoomDocument): Promise<string> {
    const kind = room.use === 'bath' ? 'shower-curtain' : 'bed-skirt';
    const name = kind === 'bed-skirt' ? NEW_NAMES.bed : NEW_NAMES.bath;
    const units = this.document?.project.units ?? 'in';
    return this.#edits.add(NEW_NAMES.addedOpening(name), async (added) => {
      const opening = await client.openings.addOpening({
        roomId: room.id,
        fields: { name, position: placeAfter(room.openings) },
      });
      added('opening', opening.id);
      const fields = addedTreatment({ ...opening, treatments: [] }, kind, null, units);
      const treatment = await client.treatments.addTreatment({ openingId: opening.id, fields });
      added('treatment', treatment.id);
      return opening.id;
    });
  }

  /** Gives the id of what was added. */
  async addTreatment(opening: OpeningDocument, kind: TreatmentKind): Promise<string> {
    const units = this.document?.project.units ?? 'in';
    const model = this.document ? lastTreatment(this.document) : null;
    return this.#edits.add(NEW_NAMES.addedTreatment(opening.name), async (added) => {
      const fields = addedTreatment(opening, kind, model, units);
      const treatment = await client.treatments.addTreatment({ openingId: opening.id, fields });
      added('treatment', treatment.id);
      return treatment.id;
    });
  }

  /** Before its neighbour, or after it: one step, undone as one. */
  move(entity: 'room' | 'opening' | 'treatment', siblings: readonly Placed[], id: string, by: -1 | 1, label: string) {
    const pairs = moveBy(siblings, id, by).map((moved) => ({
      after: { entity, id: moved.id, changes: { position: moved.to } },
      before: { entity, id: moved.id, changes: { position: moved.from } },
    }));
    this.#edits.changeTogether(pairs, label);
  }

  remove(entity: 'room' | 'opening' | 'treatment', id: string, label: string): Promise<void> {
    return this.#edits.remove(entity, id, label);
  }

  /** Fills only what is still empty, as is common practice; one step, undone as one. */
  fillUsual(room: RoomRecord, opening: OpeningDocument, treatment: TreatmentRecord, label: string): void {
    const units = this.document?.project.units ?? 'in';
    const { make } = treatment;
    if (make.kind === 'panels')
      this.editMake(treatment, suggestMake(room, opening, treatment, units, this.practice), label);
    else if (this.practice)
      this.editForm(treatment, fillForm(make.form, usualFills(opening, treatment, this.practice, units)), label);
  }
}

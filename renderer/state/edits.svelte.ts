/**
 * Everything that is typed goes through here: shown at once, sent to the desk after a short pause or when a field is
 * left, kept in the browser's storage until acknowledged, and undone in the order in which it was done, across screens.
 */
import type { Edit, PlacedEntity } from './edit.ts';
import { isSameField, mergeEdits } from './edit.ts';
import { tellDeskFault } from './desk-fault.ts';
import type { DeskFault } from './desk-fault.ts';
import type { KeptEdits } from './kept-edits.ts';

/** A field commits when it is left or after this pause, in milliseconds. */
export const PAUSE = 600;
/** After a failure that may pass, in milliseconds. */
const RETRY = 4000;
const MOST_STEPS = 400;

type Act =
  | { readonly act: 'edit'; readonly before: Edit; readonly after: Edit }
  | { readonly act: 'add' | 'remove'; readonly entity: PlacedEntity; readonly id: string };

interface Step {
  readonly label: string;
  readonly acts: readonly Act[];
}

/** A screen that holds copies of records. */
export interface Follower {
  /** An edit was made, undone or redone: show it. */
  apply(edit: Edit): void;
  /** Something was added, removed or brought back: read again. */
  reload(): Promise<void>;
}

export interface Sender {
  sendEdit(edit: Edit): Promise<void>;
  sendRemoval(entity: PlacedEntity, id: string): Promise<void>;
  sendRestoring(entity: PlacedEntity, id: string): Promise<void>;
}

export type SaveState =
  | { readonly is: 'rest' }
  | { readonly is: 'saving' }
  | { readonly is: 'saved'; readonly at: Date }
  | { readonly is: 'failed'; readonly fault: DeskFault };

export class Edits {
  saving: SaveState = $state.raw({ is: 'rest' });
  /** What was undone or redone last, for the one line that says so. */
  told: string | null = $state(null);
  /** Grows with each undo and redo: a field that is being typed in then shows the record again. */
  turns = $state(0);
  #done: Step[] = $state.raw([]);
  #undone: Step[] = $state.raw([]);
  #project: string | null = null;
  /** True while the last step may still take in more of the same typing. */
  #open = false;
  #waiting: Edit[] = [];
  /** Refused by the desk: kept until the same record is edited again. */
  #refused: { readonly edit: Edit; readonly fault: DeskFault }[] = [];
  #inFlight: Edit | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #running: Promise<void> | null = null;
  readonly #followers = new Set<Follower>();
  readonly #sender: Sender;
  readonly #kept: KeptEdits;

  constructor(sender: Sender, kept: KeptEdits) {
    this.#sender = sender;
    this.#kept = kept;
  }

  get canUndo(): boolean {
    return this.#done.length > 0;
  }
  get canRedo(): boolean {
    return this.#undone.length > 0;
  }
  get nextUndo(): string {
    return this.#done.at(-1)?.label ?? '';
  }
  get nextRedo(): string {
    return this.#undone.at(-1)?.label ?? '';
  }

  /** Registers a screen. Returns the function that takes it back. */
  follow(follower: Follower): () => void {
    this.#followers.add(follower);
    return () => this.#followers.delete(follower);
  }

  /** Undo reaches across the screens of one project: steps of another are not undone from this one. */
  enterProject(id: string): void {
    if (this.#project !== null && this.#project !== id) this.forgetSteps();
    this.#project = id;
  }

  forgetSteps(): void {
    this.#done = [];
    this.#undone = [];
    this.#open = false;
  }

  /** `before` changes the same fields back. A choice (`whole`) is a step by itself; typing joins the step before it. */
  change(after: Edit, before: Edit, label: string, whole = false): void {
    const last = this.#done.at(-1);
    const act = last?.acts.length === 1 ? last.acts[0] : undefined;
    if (this.#open && !whole && act?.act === 'edit' && isSameField(act.after, after)) {
      const joined: Step = { label, acts: [{ ...act, after }] };
      this.#done = [...this.#done.slice(0, -1), joined];
    } else this.#remember({ label, acts: [{ act: 'edit', before, after }] });
    this.#open = !whole;
    this.#undone = [];
    this.told = null;
    this.#put(after);
    if (whole) void this.flush();
  }

  /** Several records in one step, such as two that change places: undone and done again together. */
  changeTogether(pairs: readonly { readonly after: Edit; readonly before: Edit }[], label: string): void {
    if (pairs.length === 0) return;
    this.#remember({ label, acts: pairs.map((pair): Act => ({ act: 'edit', ...pair })) });
    this.#open = false;
    this.#undone = [];
    this.told = null;
    for (const { after } of pairs) this.#put(after);
    void this.flush();
  }

  /** The field was left: what comes next is a step of its own, and what was typed is sent now. */
  leaveField(): void {
    this.#open = false;
    if (this.#waiting.length > 0) void this.flush();
  }

  /**
   * Adds records by asking the desk; all that `make` tells by `added` is one step. Rejects when the desk refuses.
   * Followers read again before it resolves.
   */
  async add<T>(label: string, make: (added: (entity: PlacedEntity, id: string) => void) => Promise<T>): Promise<T> {
    await this.flush();
    const acts: Act[] = [];
    try {
      return await make((entity, id) => acts.push({ act: 'add', entity, id }));
    } finally {
      if (acts.length > 0) {
        this.#remember({ label, acts });
        this.#undone = [];
        this.#open = false;
        this.saving = { is: 'saved', at: new Date() };
      }
      await this.#reload();
    }
  }

  async remove(entity: PlacedEntity, id: string, label: string): Promise<void> {
    await this.flush();
    await this.#sender.sendRemoval(entity, id);
    this.#remember({ label, acts: [{ act: 'remove', entity, id }] });
    this.#undone = [];
    this.#open = false;
    this.saving = { is: 'saved', at: new Date() };
    await this.#reload();
  }

  async undo(): Promise<void> {
    const step = this.#done.at(-1);
    if (!step) return;
    this.#done = this.#done.slice(0, -1);
    this.#open = false;
    for (const act of [...step.acts].reverse()) await this.#turn(act, 'back');
    this.#undone = [...this.#undone, step];
    this.turns += 1;
    this.told = `Undone: ${step.label}`;
    await this.flush();
  }

  async redo(): Promise<void> {
    const step = this.#undone.at(-1);
    if (!step) return;
    this.#undone = this.#undone.slice(0, -1);
    this.#open = false;
    for (const act of step.acts) await this.#turn(act, 'forth');
    this.#done = [...this.#done, step];
    this.turns += 1;
    this.told = `Done again: ${step.label}`;
    await this.flush();
  }

  /** Edits that the desk has not acknowledged yet: laid over whatever was read meanwhile. */
  pendingEdits(): readonly Edit[] {
    return [...(this.#inFlight ? [this.#inFlight] : []), ...this.#refused.map(({ edit }) => edit), ...this.#waiting];
  }

  /** Sends what a window that closed too early left behind. Called once, before the first screen reads anything. */
  async replayKept(): Promise<number> {
    const kept = this.#kept.read();
    for (const edit of kept) this.#queue(edit);
    if (kept.length > 0) await this.flush();
    return kept.length;
  }

  /** Sends all that waits, one after the other. Never rejects: `saving` says what failed. */
  flush(): Promise<void> {
    clearTimeout(this.#timer);
    this.#running ??= this.#sendAll().finally(() => {
      this.#running = null;
    });
    return this.#running;
  }

  /** For the closing window: rejects when something typed is still not saved. */
  async saveAll(): Promise<void> {
    await this.flush();
    if (this.#waiting.length > 0) await this.flush();
    if (this.#waiting.length > 0 || this.#refused.length > 0) throw new Error('not everything typed is saved');
  }

  async #sendAll(): Promise<void> {
    for (let edit = this.#waiting.shift(); edit !== undefined; edit = this.#waiting.shift()) {
      this.#inFlight = edit;
      this.saving = { is: 'saving' };
      try {
        await this.#sender.sendEdit(edit);
        this.#inFlight = null;
      } catch (error) {
        this.#inFlight = null;
        if (!this.#putAside(edit, tellDeskFault(error))) return;
      }
      this.#keep();
    }
    const refused = this.#refused.at(-1);
    if (refused) this.saving = { is: 'failed', fault: refused.fault };
    else if (this.saving.is === 'saving') this.saving = { is: 'saved', at: new Date() };
  }

  /** False when sending has to stop and be tried again. */
  #putAside(edit: Edit, fault: DeskFault): boolean {
    if (fault.code === 'NOT_FOUND') return true;
    if (fault.code === 'BAD_INPUT' || fault.code === 'REFUSED') {
      this.#refused = [...this.#refused, { edit, fault }];
      return true;
    }
    const next = this.#waiting.find((each) => each.entity === edit.entity && each.id === edit.id);
    const again = next ? mergeEdits(edit, next) : edit;
    this.#waiting = [...(again ? [again] : []), ...this.#waiting.filter((each) => each !== next)];
    this.#keep();
    this.saving = { is: 'failed', fault };
    this.#timer = setTimeout(() => void this.flush(), RETRY);
    return false;
  }

  #put(edit: Edit): void {
    for (const follower of this.#followers) follower.apply(edit);
    this.#queue(edit);
    if (this.saving.is !== 'failed') this.saving = { is: 'saving' };
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.flush(), PAUSE);
  }

  #queue(edit: Edit): void {
    const refused = this.#refused.find(({ edit: each }) => each.entity === edit.entity && each.id === edit.id);
    this.#refused = this.#refused.filter((each) => each !== refused);
    const whole = (refused && mergeEdits(refused.edit, edit)) ?? edit;
    const at = this.#waiting.findIndex((each) => each.entity === edit.entity && each.id === edit.id);
    const before = this.#waiting[at];
    if (before) this.#waiting[at] = mergeEdits(before, whole) ?? whole;
    else this.#waiting.push(whole);
    this.#keep();
  }

  #keep(): void {
    this.#kept.write(this.pendingEdits());
  }

  async #turn(act: Act, way: 'back' | 'forth'): Promise<void> {
    if (act.act === 'edit') return this.#put(way === 'back' ? act.before : act.after);
    await this.flush();
    const isRemoval = (act.act === 'add') === (way === 'back');
    if (isRemoval) await this.#sender.sendRemoval(act.entity, act.id);
    else await this.#sender.sendRestoring(act.entity, act.id);
    await this.#reload();
  }

  #remember(step: Step): void {
    this.#done = [...this.#done, step].slice(-MOST_STEPS);
  }

  async #reload(): Promise<void> {
    await Promise.all([...this.#followers].map((follower) => follower.reload()));
  }
}

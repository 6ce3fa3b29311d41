/** What the decorator settles of the cloth of a project before it is cut: bolts, flaws, cuts put down by hand, remnants. */
import { nameCut } from '#app/plan/planned-treatment.ts';
import type { KeptRemnant } from '#app/plan/cut-plan.ts';
import type { Ticks } from '#shared/length.ts';
import type { CuttingRecord, RemnantRecord } from '#shared/records/cutting-records.ts';
import type { ProjectDocument } from '#shared/records/records.ts';
import { client } from './client.ts';
import { reverseEdit } from './edit.ts';
import type { Edit } from './edit.ts';
import type { Edits } from './edits.svelte.ts';

export type Settled = Pick<CuttingRecord, 'bolts' | 'flaws' | 'fixed'>;
export type Flaw = Settled['flaws'][number];
export type ListedBolt = Settled['bolts'][number];

const NOTHING_SETTLED: Settled = { bolts: [], flaws: [], fixed: [] };

export class CuttingBench {
  readonly #edits: Edits;
  readonly #read: () => ProjectDocument | null;

  constructor(edits: Edits, read: () => ProjectDocument | null) {
    this.#edits = edits;
    this.#read = read;
  }

  settledOf(cloth: string): Settled {
    return this.#recordOf(cloth) ?? NOTHING_SETTLED;
  }

  /** One step, undone as one. Rejects when the desk refuses a first settling; later ones tell by the save status. */
  async settle(cloth: string, changes: Partial<Settled>, label: string): Promise<void> {
    const record = this.#recordOf(cloth);
    const project = this.#read()?.project;
    if (record) {
      const edit: Edit = { entity: 'cutting', id: record.id, changes };
      this.#edits.change(edit, reverseEdit(edit, { ...record }), label, true);
    } else if (project)
      await this.#edits.add(label, async (added) => {
        const made = await client.cuttings.addCutting({ projectId: project.id, cloth, fields: changes });
        added('cutting', made.id);
      });
  }

  /** `cut` is the plan's id of it; `x` null lets it lie along its own side. */
  async fixCut(
    cloth: string,
    cut: string,
    place: { readonly on: string; readonly at: Ticks; readonly x: Ticks | null },
    paths: ReadonlyMap<string, string>,
    label: string,
  ): Promise<void> {
    const found = readCut(cut, paths);
    if (found === null) return;
    const others = this.settledOf(cloth).fixed.filter((each) => !isCut(each, found));
    const fixed = [...others, { ...found, ...place, on: this.#idOf(cloth, place.on) }];
    await this.settle(cloth, { fixed }, label);
  }

  async freeCut(cloth: string, cut: string, paths: ReadonlyMap<string, string>, label: string): Promise<void> {
    const found = readCut(cut, paths);
    if (found === null) return;
    await this.settle(cloth, { fixed: this.settledOf(cloth).fixed.filter((each) => !isCut(each, found)) }, label);
  }

  /**
   * Cuts put down by hand that a plan does not hold: of work that is declined, taken away or of another cloth, or on a piece
   * that is gone. They are kept, and hold again when it comes back. `fixed`: ids of the cuts that the plan holds so.
   */
  listWaiting(cloth: string, fixed: readonly string[], paths: ReadonlyMap<string, string>): Settled['fixed'] {
    const held = fixed.flatMap((cut) => readCut(cut, paths) ?? []);
    return this.settledOf(cloth).fixed.filter((each) => !held.some((cut) => isCut(each, cut)));
  }

  /** `on` is a bolt's name or a remnant's, as the plan calls it. */
  async addFlaw(cloth: string, flaw: Flaw, label: string): Promise<void> {
    const { flaws } = this.settledOf(cloth);
    await this.settle(cloth, { flaws: [...flaws, { ...flaw, on: this.#idOf(cloth, flaw.on) }] }, label);
  }

  remnantsOf(cloth: string): readonly RemnantRecord[] {
    return this.#read()?.remnants.filter((each) => each.cloth === cloth) ?? [];
  }

  /** A project's own cloth keeps its remnants with it; of any other they are there for every project. */
  async addRemnant(cloth: string, fields: Partial<RemnantRecord>, label: string): Promise<void> {
    const document = this.#read();
    const own = document?.cloth.find((each) => each.code === cloth && each.projectId !== null);
    await this.#edits.add(label, async (added) => {
      const made = await client.remnants.addRemnant({
        projectId: own?.projectId ?? null,
        fields: { ...fields, cloth },
      });
      added('remnant', made.id);
    });
  }

  /** What a plan leaves over and is worth keeping goes on the shelf once it is cut. */
  async keepRemnant(cloth: string, kept: KeptRemnant, width: Ticks, label: string): Promise<void> {
    const length = (kept.to - kept.from) as Ticks;
    const narrow = kept.across < width ? kept.across : null;
    const { dyeLot, startPhase } = kept;
    await this.addRemnant(cloth, { length, width: narrow, dyeLot: dyeLot ?? '', startsAt: startPhase }, label);
  }

  async removeRemnant(id: string, label: string): Promise<void> {
    await this.#edits.remove('remnant', id, label);
  }

  #recordOf(cloth: string): CuttingRecord | undefined {
    return this.#read()?.cuttings.find((each) => each.cloth === cloth);
  }

  /** The plan calls a remnant by its name; what lies on it is kept by its id. */
  #idOf(cloth: string, on: string): string {
    const isBolt = this.settledOf(cloth).bolts.some(({ name }) => name === on);
    if (isBolt) return on;
    return this.remnantsOf(cloth).find(({ name }) => name === on)?.id ?? on;
  }
}

interface CutOf {
  readonly treatmentId: string;
  readonly cut: number;
}

function isCut(each: Settled['fixed'][number], cut: CutOf): boolean {
  return each.treatmentId === cut.treatmentId && each.cut === cut.cut;
}

/** The record that a cut of the plan belongs to; `paths` gives treatment ids by their path. */
function readCut(id: string, paths: ReadonlyMap<string, string>): CutOf | null {
  for (const [path, treatmentId] of paths) {
    const cut = Number(id.slice(path.length + 1));
    if (Number.isInteger(cut) && cut > 0 && id === nameCut(path, cut)) return { treatmentId, cut };
  }
  return null;
}

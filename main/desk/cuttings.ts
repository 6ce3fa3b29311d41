import { isUnlistedBolt } from '#shared/cutting.ts';
import { at } from '#shared/fault.ts';
import type { Fault } from '#shared/fault.ts';
import type { CuttingRecord } from '#shared/records/cutting-records.ts';
import type { ReadConnection } from '#main/portfolio/connection.ts';
import { cuttings, listCuttings } from '#main/portfolio/cuttings.ts';
import { projects } from '#main/portfolio/projects.ts';
import { listRemnants } from '#main/portfolio/remnants.ts';
import { badInput, mustFind, refused } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';
import { ALL_ACCEPTED, drawCutPlan, nameCutPaper } from './draw-cut-plan.ts';
import type { Implementer } from './implementer.ts';
import { newCutting, withGiven } from './new-records.ts';

export function makeCuttingRequests(os: Implementer['cuttings'], parts: DeskParts) {
  const { door, now, makeId, cutPapers } = parts;
  return {
    addCutting: os.addCutting.handler(({ input }) =>
      door.write((writing) => {
        mustFind(projects.read(writing, input.projectId), 'project', input.projectId);
        refuseTwice(writing, input);
        const blank = newCutting({ id: makeId(), at: now() }, input.projectId, input.cloth);
        const cutting = withGiven(blank, input.fields);
        refuseFaults(writing, cutting, 'fields');
        return cuttings.add(writing, cutting);
      }),
    ),

    editCutting: os.editCutting.handler(({ input }) =>
      door.write((writing) => {
        const before = mustFind(cuttings.read(writing, input.id), 'cutting', input.id);
        refuseFaults(writing, withGiven(before, input.changes), 'changes');
        return mustFind(cuttings.edit(writing, input.id, input.changes, now()), 'cutting', input.id);
      }),
    ),

    removeCutting: os.removeCutting.handler(({ input }) => {
      door.write((writing) => mustFind(cuttings.remove(writing, input.id, now()), 'cutting', input.id));
      return {};
    }),

    restoreCutting: os.restoreCutting.handler(({ input }) =>
      door.write((writing) => {
        const before = cuttings.read(writing, input.id);
        if (before !== null) return before;
        const cutting = mustFind(cuttings.restorable(writing, input.id), 'cutting', input.id);
        refuseTwice(writing, cutting);
        return mustFind(cuttings.restore(writing, input.id, now()), 'cutting', input.id);
      }),
    ),

    drawCutPlan: os.drawCutPlan.handler(async ({ input }) => {
      const plan = await drawCutPlan(parts, input.projectId ?? ALL_ACCEPTED);
      return { pages: plan?.drawn.pages ?? null };
    }),

    readDrawing: os.readDrawing.handler(({ input }) => ({ share: cutPapers.shareOf(nameOf(input)) })),

    leaveDrawing: os.leaveDrawing.handler(({ input }) => {
      cutPapers.leave(nameOf(input));
      return {};
    }),
  };
}

function nameOf({ projectId }: { readonly projectId: string | null }): string {
  return nameCutPaper(projectId ?? ALL_ACCEPTED);
}

function refuseTwice(reading: ReadConnection, { projectId, cloth }: Pick<CuttingRecord, 'projectId' | 'cloth'>): void {
  if (listCuttings(reading, projectId).some((each) => each.cloth === cloth))
    throw refused(`Bolts and flaws of "${cloth}" are settled already.`, 'Change those.');
}

/** What lies on nothing, or ends before it begins. Whether a fixed cut fits there is told by the plan. */
function refuseFaults(reading: ReadConnection, cutting: CuttingRecord, under: string): void {
  const { projectId, cloth, bolts, flaws, fixed } = cutting;
  const faults: Fault[] = [];
  const tell = (path: string, wrong: string, right: string) => faults.push({ path, wrong, right });
  const names = bolts.map(({ name }) => name);
  bolts.forEach(({ name, length }, index) => {
    const path = at('bolts', index);
    if (names.indexOf(name) !== index)
      tell(at(path, 'name'), `"${name}" is there twice`, 'give each bolt its own name');
    if (length === 0) tell(at(path, 'length'), 'is zero', 'give a length above 0, or none');
  });
  const shelf = listRemnants(reading, projectId).filter((each) => each.cloth === cloth);
  const isThere = (on: string): boolean =>
    names.includes(on) || shelf.some(({ id }) => id === on) || (bolts.length === 0 && isUnlistedBolt(on));
  const checkOn = (on: string, path: string): void => {
    if (!isThere(on)) tell(at(path, 'on'), `"${on}" is no bolt or remnant of it`, 'name a bolt, or give a remnant');
  };
  flaws.forEach(({ on, from, to }, index) => {
    const path = at('flaws', index);
    checkOn(on, path);
    if (to <= from) tell(at(path, 'to'), 'is where it begins or before', 'give where the bad stretch ends');
  });
  const seen = new Set<string>();
  fixed.forEach(({ treatmentId, cut, on }, index) => {
    const path = at('fixed', index);
    checkOn(on, path);
    const key = `${treatmentId} ${cut}`;
    if (seen.has(key)) tell(at(path, 'cut'), 'is fixed twice', 'fix it in one place');
    seen.add(key);
  });
  if (faults.length > 0) throw badInput(faults.map((fault) => ({ ...fault, path: `${under}.${fault.path}` })));
}

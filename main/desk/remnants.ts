import type { Fault } from '#shared/fault.ts';
import { GENERIC_CLOTH_IDS } from '#shared/words.ts';
import type { RemnantRecord } from '#shared/records/cutting-records.ts';
import { findClothByCode } from '#main/portfolio/cloths.ts';
import type { ReadConnection } from '#main/portfolio/connection.ts';
import { projects } from '#main/portfolio/projects.ts';
import { listRemnants, remnants } from '#main/portfolio/remnants.ts';
import { badInput, mustFind } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';
import type { Implementer } from './implementer.ts';
import { freeName, newRemnant, withGiven } from './new-records.ts';

export function makeRemnantRequests(os: Implementer['remnants'], { door, now, makeId }: DeskParts) {
  return {
    listRemnants: os.listRemnants.handler(({ input }) =>
      door.read((reading) => listRemnants(reading, input.projectId)),
    ),

    addRemnant: os.addRemnant.handler(({ input }) =>
      door.write((writing) => {
        const { projectId, fields } = input;
        if (projectId !== null) mustFind(projects.read(writing, projectId), 'project', projectId);
        const blank = newRemnant({ id: makeId(), at: now() }, projectId, fields.cloth);
        const taken = listRemnants(writing, projectId)
          .filter(({ cloth }) => cloth === fields.cloth)
          .map(({ name }) => name);
        const remnant = withGiven({ ...blank, name: freeName(blank.name, taken) }, fields);
        refuseFaults(writing, remnant, 'fields');
        return remnants.add(writing, remnant);
      }),
    ),

    editRemnant: os.editRemnant.handler(({ input }) =>
      door.write((writing) => {
        const before = mustFind(remnants.read(writing, input.id), 'remnant', input.id);
        refuseFaults(writing, withGiven(before, input.changes), 'changes');
        return mustFind(remnants.edit(writing, input.id, input.changes, now()), 'remnant', input.id);
      }),
    ),

    removeRemnant: os.removeRemnant.handler(({ input }) => {
      door.write((writing) => mustFind(remnants.remove(writing, input.id, now()), 'remnant', input.id));
      return {};
    }),

    restoreRemnant: os.restoreRemnant.handler(({ input }) =>
      door.write((writing) => mustFind(remnants.restore(writing, input.id, now()), 'remnant', input.id)),
    ),
  };
}

/** A remnant is of a cloth that is kept, or generic; and no wider than it. */
function refuseFaults(reading: ReadConnection, remnant: RemnantRecord, under: string): void {
  const { projectId, cloth: code, length, width } = remnant;
  const own = projectId === null ? null : findClothByCode(reading, projectId, code);
  const cloth = own ?? findClothByCode(reading, null, code);
  const faults: Fault[] = [];
  if (cloth === null && !GENERIC_CLOTH_IDS.some((id) => id === code))
    faults.push({ path: 'cloth', wrong: `no cloth goes by the code "${code}"`, right: 'give the code of a cloth' });
  if (length === 0) faults.push({ path: 'length', wrong: 'is zero', right: 'give a length above 0' });
  if (width === 0) faults.push({ path: 'width', wrong: 'is zero', right: 'give a width above 0, or none' });
  const most = cloth?.width ?? null;
  if (width !== null && most !== null && width > most)
    faults.push({ path: 'width', wrong: 'is more than the width of the cloth', right: 'give less, or none' });
  if (faults.length > 0) throw badInput(faults.map((fault) => ({ ...fault, path: `${under}.${fault.path}` })));
}

import * as z from 'zod';
import type { Fault } from '#shared/fault.ts';
import { checkOptics } from '#shared/job-file/check-optics.ts';
import { CheckTools } from '#shared/job-file/check-tools.ts';
import { wireCloth } from '#shared/job-file/wire-job.ts';
import { tellFaults } from '#shared/job-file/tell-faults.ts';
import { writeCloth } from '#shared/job-file/write-cloth.ts';
import { lengthFrom } from '#shared/length.ts';
import type { ClothRecord } from '#shared/records/records.ts';
import { FACE_FAMILIES, INTERLINING_FAMILIES, LINING_FAMILIES, TIERS } from '#shared/words.ts';
import type { ClothRole } from '#shared/words.ts';
import { cloths, findClothByCode, listCloths } from '#main/portfolio/cloths.ts';
import type { ReadConnection } from '#main/portfolio/connection.ts';
import { projects } from '#main/portfolio/projects.ts';
import { listRemnants } from '#main/portfolio/remnants.ts';
import { listAllTreatments } from '#main/portfolio/treatments.ts';
import { foldText } from '#main/portfolio/clients.ts';
import { badInput, mustFind, refused } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';
import type { Implementer } from './implementer.ts';
import { freeName, newCloth, PLAINEST, withGiven } from './new-records.ts';

export function makeClothRequests(os: Implementer['cloth'], { door, now, makeId }: DeskParts) {
  return {
    listCloth: os.listCloth.handler(() => door.read((reading) => listCloths(reading, null))),

    addCloth: os.addCloth.handler(({ input }) =>
      door.write((writing) => {
        const { projectId, fields } = input;
        if (projectId !== null) mustFind(projects.read(writing, projectId), 'project', projectId);
        const given = withGiven(newCloth({ id: makeId(), at: now() }, projectId, fields.role ?? 'face'), fields);
        const codes = listCloths(writing, projectId)
          .filter((each) => each.projectId === projectId)
          .map(({ code }) => code);
        const cloth = { ...given, code: given.code === '' ? makeCode(given.name, codes) : given.code };
        refuseFaults(writing, cloth, 'fields');
        return cloths.add(writing, cloth);
      }),
    ),

    editCloth: os.editCloth.handler(({ input }) =>
      door.write((writing) => {
        const { id, changes } = input;
        const before = mustFind(cloths.read(writing, id), 'cloth', id);
        const roleChanged = changes.role !== undefined && changes.role !== before.role && changes.family === undefined;
        const edits = roleChanged ? { ...changes, family: PLAINEST[changes.role ?? before.role] } : changes;
        const after = withGiven(before, edits);
        if (after.code !== before.code) {
          refuseUsed(writing, before, 'It goes by its code there.');
          refuseOnShelf(writing, before);
        }
        refuseFaults(writing, after, 'changes');
        return mustFind(cloths.edit(writing, id, edits, now()), 'cloth', id);
      }),
    ),

    removeCloth: os.removeCloth.handler(({ input }) => {
      door.write((writing) => {
        const cloth = mustFind(cloths.read(writing, input.id), 'cloth', input.id);
        refuseUsed(writing, cloth, 'It would have no cloth.');
        cloths.remove(writing, input.id, now());
      });
      return {};
    }),

    restoreCloth: os.restoreCloth.handler(({ input }) =>
      door.write((writing) => {
        const before = cloths.read(writing, input.id);
        if (before !== null) return before;
        const cloth = mustFind(cloths.restorable(writing, input.id), 'cloth', input.id);
        if (findClothByCode(writing, cloth.projectId, cloth.code) !== null)
          throw refused(`Another cloth goes by the code "${cloth.code}" now.`, 'Give that one another code first.');
        return mustFind(cloths.restore(writing, input.id, now()), 'cloth', input.id);
      }),
    ),
  };
}

/** A short code from the name, as job files use it: `larch-stripe`. */
function makeCode(name: string, taken: readonly string[]): string {
  const plain = foldText(name)
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60);
  return freeName(plain === '' ? 'cloth' : plain, taken).replace(/ (\d+)$/, '-$1');
}

const FAMILIES: Readonly<Record<ClothRole, readonly string[]>> = {
  face: FACE_FAMILIES,
  lining: LINING_FAMILIES,
  interlining: INTERLINING_FAMILIES,
};

function refuseFaults(reading: ReadConnection, cloth: ClothRecord, under: string): void {
  const faults: Fault[] = [];
  const families = FAMILIES[cloth.role];
  if (!families.includes(cloth.family))
    faults.push({
      path: 'family',
      wrong: `"${cloth.family}" is no family of ${cloth.role} cloth`,
      right: `give one of ${families.join(', ')}`,
    });
  const same = findClothByCode(reading, cloth.projectId, cloth.code);
  if (same !== null && same.id !== cloth.id)
    faults.push({
      path: 'code',
      wrong: `"${cloth.code}" is the code of another cloth`,
      right: 'give it a code of its own',
    });
  faults.push(...findWireFaults(cloth));
  if (faults.length > 0) throw badInput(faults.map((fault) => ({ ...fault, path: `${under}.${fault.path}` })));
}

/** What a job file would refuse: a price, weight or colour that cannot be read, more light than there is. */
function findWireFaults(cloth: ClothRecord): Fault[] {
  const wire = writeCloth({ ...cloth, width: cloth.width ?? lengthFrom(54, 'in') }, 'in');
  const checked = z.safeParse(wireCloth, wire);
  if (!checked.success) return tellFaults(checked.error, wireCloth, wire);
  const tools = new CheckTools('in');
  checkOptics(tools, checked.data, '');
  return tools.faults.map((fault) => (fault.path === 'transmittance' ? { ...fault, path: 'visible' } : fault));
}

/** A remnant names its cloth by code. */
function refuseOnShelf(reading: ReadConnection, cloth: ClothRecord): void {
  const [first] = listRemnants(reading, cloth.projectId).filter(
    (each) => each.projectId === cloth.projectId && each.cloth === cloth.code,
  );
  if (first !== undefined)
    throw refused(
      `A remnant of "${cloth.name || cloth.code}" lies on the shelf: "${first.name}".`,
      'Keep the code, or take the remnant away first.',
    );
}

/** A treatment names its cloth by code; the project's own comes before the decorator's. */
function refuseUsed(reading: ReadConnection, cloth: ClothRecord, consequence: string): void {
  const users = listAllTreatments(reading, cloth.projectId).filter(({ face, stacks }) => {
    const codes = TIERS.flatMap((tier) => [stacks[tier]?.face ?? null, ...(stacks[tier]?.behind ?? [])]);
    return face === cloth.code || codes.includes(cloth.code);
  });
  const [first] = users;
  if (first === undefined) return;
  const more = users.length > 1 ? ` and ${users.length - 1} more` : '';
  throw refused(
    `"${cloth.name || cloth.code}" is used in "${first.name}"${more}. ${consequence}`,
    'Choose another cloth there first.',
  );
}

import { practiceWithUnits } from '#shared/job-file/with-units.ts';
import type { TreatmentRecord } from '#shared/records/records.ts';
import type { ReadConnection, WriteConnection } from '#main/portfolio/connection.ts';
import type { EditsOf } from '#main/portfolio/kept-table.ts';
import { openings } from '#main/portfolio/openings.ts';
import { placeOfOpening } from '#main/portfolio/place.ts';
import { projects } from '#main/portfolio/projects.ts';
import { listTreatments, nextTreatmentPosition, treatments } from '#main/portfolio/treatments.ts';
import { mustFind } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';
import type { Implementer } from './implementer.ts';
import { freeName, newTreatment, withGiven } from './new-records.ts';

export function makeTreatmentRequests(os: Implementer['treatments'], { door, now, makeId }: DeskParts) {
  return {
    addTreatment: os.addTreatment.handler(({ input }) =>
      door.write((writing) => {
        const opening = mustFind(openings.read(writing, input.openingId), 'opening', input.openingId);
        const position = nextTreatmentPosition(writing, opening.id);
        const blank = newTreatment({ id: makeId(), at: now() }, opening.id, position);
        const others = listTreatments(writing, opening.id);
        const siblings = others.map(({ name }) => name);
        makeRoom(writing, others, input.fields.position, now());
        const fields = withUnits(writing, opening.id, input.fields);
        return treatments.add(writing, withGiven({ ...blank, name: freeName(blank.name, siblings) }, fields));
      }),
    ),

    editTreatment: os.editTreatment.handler(({ input }) =>
      door.write((writing) => {
        const before = mustFind(treatments.read(writing, input.id), 'treatment', input.id);
        const changes = withUnits(writing, before.openingId, input.changes);
        return mustFind(treatments.edit(writing, input.id, changes, now()), 'treatment', input.id);
      }),
    ),

    removeTreatment: os.removeTreatment.handler(({ input }) => {
      door.write((writing) => mustFind(treatments.remove(writing, input.id, now()), 'treatment', input.id));
      return {};
    }),

    restoreTreatment: os.restoreTreatment.handler(({ input }) =>
      door.write((writing) => mustFind(treatments.restore(writing, input.id, now()), 'treatment', input.id)),
    ),
  };
}

/** One that is added at a place where another hangs comes before it: that one and those after it go one further. */
function makeRoom(
  writing: WriteConnection,
  others: readonly TreatmentRecord[],
  position: number | undefined,
  at: string,
): void {
  const taken = position !== undefined && others.some((each) => each.position === position);
  if (!taken) return;
  for (const each of others)
    if (each.position >= position) treatments.edit(writing, each.id, { position: each.position + 1 }, at);
}

/** Bare lengths of a treatment's own practice are in its project's unit. */
function withUnits(
  reading: ReadConnection,
  openingId: string,
  changes: EditsOf<TreatmentRecord>,
): EditsOf<TreatmentRecord> {
  if (!changes.practice) return changes;
  const { projectId } = placeOfOpening(reading, openingId);
  const project = projectId === null ? null : projects.read(reading, projectId);
  return { ...changes, practice: practiceWithUnits(changes.practice, project?.units ?? 'in') };
}

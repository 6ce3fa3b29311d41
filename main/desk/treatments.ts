import { practiceWithUnits } from '#shared/job-file/with-units.ts';
import type { TreatmentRecord } from '#shared/records/records.ts';
import type { ReadConnection } from '#main/portfolio/connection.ts';
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
        const siblings = listTreatments(writing, opening.id).map(({ name }) => name);
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

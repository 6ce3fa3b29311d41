/** Lays one edit over a project's document: a new document, the old one untouched. */
import { exhaustive } from '#shared/fault.ts';
import type { OpeningDocument, ProjectDocument, RoomDocument, TreatmentRecord } from '#shared/records/records.ts';
import { hangsAway } from '#shared/treatments/away.ts';
import type { Edit } from './edit.ts';
import { byPosition } from './move-order.ts';
import type { Placed } from './move-order.ts';

export function editDocument(document: ProjectDocument, edit: Edit): ProjectDocument {
  const { id } = edit;
  switch (edit.entity) {
    case 'client':
      return document.client.id === id ? { ...document, client: { ...document.client, ...edit.changes } } : document;
    case 'project':
      return document.project.id === id ? { ...document, project: { ...document.project, ...edit.changes } } : document;
    case 'settings':
      return { ...document, settings: { ...document.settings, ...edit.changes } };
    case 'cloth':
      return {
        ...document,
        cloth: document.cloth.map((cloth) => (cloth.id === id ? { ...cloth, ...edit.changes } : cloth)),
      };
    case 'remnant':
      return {
        ...document,
        remnants: document.remnants.map((remnant) => (remnant.id === id ? { ...remnant, ...edit.changes } : remnant)),
      };
    case 'cutting':
      return {
        ...document,
        cuttings: document.cuttings.map((cutting) => (cutting.id === id ? { ...cutting, ...edit.changes } : cutting)),
      };
    case 'room':
      return { ...document, rooms: editOne(document.rooms, id, edit.changes) };
    case 'opening':
      return {
        ...document,
        rooms: document.rooms.map((room) =>
          room.openings.some((opening) => opening.id === id)
            ? { ...room, openings: editOne(room.openings, id, edit.changes) }
            : room,
        ),
      };
    case 'treatment':
      return editOpenings(document, (opening) =>
        opening.treatments.some((treatment) => treatment.id === id)
          ? { ...opening, treatments: editOne(opening.treatments, id, edit.changes) }
          : opening,
      );
    default:
      return exhaustive(edit);
  }
}

/** One of a list with its changes; the list in order again where a place was changed. */
function editOne<Kept extends Placed>(list: readonly Kept[], id: string, changes: Partial<NoInfer<Kept>>): Kept[] {
  const edited = list.map((each) => (each.id === id ? { ...each, ...changes } : each));
  return changes.position === undefined ? edited : edited.sort(byPosition);
}

function editOpenings(
  document: ProjectDocument,
  change: (opening: OpeningDocument) => OpeningDocument,
): ProjectDocument {
  return { ...document, rooms: document.rooms.map((room) => ({ ...room, openings: room.openings.map(change) })) };
}

export interface FoundOpening {
  readonly room: RoomDocument;
  readonly opening: OpeningDocument;
}

export function findOpening(document: ProjectDocument, id: string): FoundOpening | null {
  for (const room of document.rooms) {
    const opening = room.openings.find((each) => each.id === id);
    if (opening) return { room, opening };
  }
  return null;
}

/** All openings in the order in which they are measured: rooms left to right, windows left to right. */
export function listOpenings(document: ProjectDocument): FoundOpening[] {
  return document.rooms.flatMap((room) => room.openings.map((opening) => ({ room, opening })));
}

/** What hangs at the last window before a new one, its panels first: the next window is usually made like it. */
export function lastTreatment(document: ProjectDocument): TreatmentRecord | null {
  return (
    listOpenings(document)
      .flatMap(({ opening }) => {
        const hung = opening.treatments.filter(({ make }) => !hangsAway(make.kind));
        const model = hung.find(({ make }) => make.kind === 'panels') ?? hung[0];
        return model ? [model] : [];
      })
      .at(-1) ?? null
  );
}

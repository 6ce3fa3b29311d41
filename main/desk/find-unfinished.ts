/**
 * What keeps a project from being proposed: text that could not be read, and nothing that is finished. A window that is
 * not measured yet is left out, as the screen says before; where no window is left, each is named with what it lacks.
 */
import type { Fault } from '#shared/fault.ts';
import { at } from '#shared/fault.ts';
import type { WrittenJob } from '#shared/job-file/write-job.ts';
import type { OpeningDocument, ProjectDocument, RoomDocument, TreatmentRecord } from '#shared/records/records.ts';

const MISSING: Readonly<Record<string, readonly [wrong: string, right: string]>> = {
  width: ['the width of the opening is not measured yet', 'measure it, or take the treatment out'],
  height: ['the height of the opening is not measured yet', 'measure it, or take the treatment out'],
  rodWidth: ['the rod face is not given yet', 'give it bracket to bracket, or take the treatment out'],
  finishedLength: ['the finished length is not given yet', 'give it from the top of the heading to the hem'],
  face: ['no face cloth is chosen yet', 'choose one, or take the treatment out'],
};

const OF_OPENING = ['width', 'height'];

/** Every fault, in the order of the rooms. Paths count rooms, openings and treatments as the document lists them. */
export function findUnfinished(document: ProjectDocument, written: WrittenJob): Fault[] {
  const lacking: Fault[] = [];
  const unread: Fault[] = [];
  const missing = new Map(written.unfinished.map(({ treatmentId, fields }) => [treatmentId, fields]));
  let treatments = 0;
  walk(document, (step) => {
    if (step.treatment) treatments += 1;
    for (const field of step.treatment ? (missing.get(step.treatment.id) ?? []) : []) {
      const [wrong, right] = MISSING[field] ?? [`${field} is not given yet`, 'give it, or take the treatment out'];
      const path = OF_OPENING.includes(field) ? step.openingPath : step.path;
      lacking.push({ path: at(path, field), wrong: `${step.name}: ${wrong}`, right });
    }
    unread.push(...findDrafts(step.record.drafts, step.path, step.name));
  });
  document.cloth.forEach((cloth, index) => {
    if (written.wire.cloth?.some(({ id }) => id === cloth.code))
      unread.push(...findDrafts(cloth.drafts, at('cloth', index), cloth.name || cloth.code));
  });
  if (treatments === 0)
    return [
      ...unread,
      { path: 'rooms', wrong: 'no window has a treatment yet', right: 'add a window and what hangs there' },
    ];
  const finished = treatments - missing.size;
  return finished === 0 ? [...lacking, ...unread] : unread;
}

function findDrafts(drafts: Readonly<Record<string, string>>, path: string, name: string): Fault[] {
  return Object.entries(drafts)
    .filter(([, text]) => text.trim() !== '')
    .map(([field, text]) => ({
      path: at(path, field),
      wrong: `${name}: "${text}" could not be read`,
      right: 'write it again, or empty the field',
    }));
}

/** A fault of the written job with its path as the document counts: the job leaves out what is not measured. */
export function toDocumentPath(document: ProjectDocument, written: WrittenJob): (fault: Fault) => Fault {
  const places = new Map<string, string>();
  walk(document, ({ record, path }) => places.set(record.id, path));
  const known = Object.keys(written.ids).sort((a, b) => b.length - a.length);
  return (fault) => {
    const wirePath = known.find((path) => fault.path === path || fault.path.startsWith(`${path}.`));
    const place = wirePath === undefined ? undefined : places.get(written.ids[wirePath] ?? '');
    if (wirePath === undefined || place === undefined) return fault;
    return { ...fault, path: place + fault.path.slice(wirePath.length) };
  };
}

interface Step {
  readonly record: RoomDocument | OpeningDocument | TreatmentRecord;
  readonly treatment: TreatmentRecord | null;
  readonly path: string;
  readonly openingPath: string;
  /** `Nursery, East window, Panels`. */
  readonly name: string;
}

function walk(document: ProjectDocument, visit: (step: Step) => void): void {
  document.rooms.forEach((room, roomIndex) => {
    const roomPath = at('rooms', roomIndex);
    visit({ record: room, treatment: null, path: roomPath, openingPath: roomPath, name: room.name });
    room.openings.forEach((opening, openingIndex) => {
      const openingPath = at(at(roomPath, 'openings'), openingIndex);
      const openingName = `${room.name}, ${opening.name}`;
      visit({ record: opening, treatment: null, path: openingPath, openingPath, name: openingName });
      opening.treatments.forEach((treatment, index) => {
        const path = at(at(openingPath, 'treatments'), index);
        visit({ record: treatment, treatment, path, openingPath, name: `${openingName}, ${treatment.name}` });
      });
    });
  });
}

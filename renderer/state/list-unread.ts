/** Where a project cannot go on paper as it stands: texts nobody could read, and the desk's faults, each with its field. */
import type { Fault } from '#shared/fault.ts';
import type { ClothRecord, ProjectDocument, TreatmentRecord } from '#shared/records/records.ts';
import { TIERS } from '#shared/words.ts';
import { CLOTH_FIELDS } from '../words/cloth-words.ts';
import { KNOWN_LINES } from '../words/known-words.ts';
import { FIELD_WORDS } from '../words/project-words.ts';
import { lineOfFault } from './form-path.ts';
import { labelAt } from './kind-form.ts';
import { writeAddress } from './route.svelte.ts';
import type { Wanted } from './wanted-field.ts';

export interface Trouble {
  /** `Nursery, East window`. */
  readonly where: string;
  /** The field by its label; empty for the thing as a whole. */
  readonly label: string;
  readonly says: string;
  /** Address of the screen where it is mended; null where there is none. */
  readonly address: string | null;
  readonly wanted: Wanted;
}

const NOWHERE: Wanted = { treatment: null, fields: [] };

function fieldsAt(part: string, field: string): readonly string[] {
  return [`${part}[data-name="${field}"] :is(input, select, textarea)`, '.measures input'];
}

function treatmentLabel(treatment: TreatmentRecord, field: string): string {
  const { kind } = treatment.make;
  const label = labelAt(kind, lineOfFault(field));
  return (kind === 'panels' ? (FIELD_WORDS[field] ?? label) : (label ?? FIELD_WORDS[field])) ?? '';
}

function clothLabel(field: string): string {
  const labels: Readonly<Record<string, string>> = { ...KNOWN_LINES, ...CLOTH_FIELDS };
  return labels[field] ?? '';
}

type Placed = Pick<Trouble, 'where' | 'label' | 'address' | 'wanted'>;

function atRoom(document: ProjectDocument, index: number, field: string): Placed | null {
  const room = document.rooms[index];
  if (!room) return null;
  const opening = room.openings[0]?.id ?? null;
  return {
    where: room.name,
    label: FIELD_WORDS[field] ?? '',
    address: writeAddress({ place: 'project', id: document.project.id, sheet: 'worksheet', opening }),
    wanted: { treatment: null, fields: fieldsAt('', field) },
  };
}

function atOpening(document: ProjectDocument, index: number, at: number, field: string): Placed | null {
  const room = document.rooms[index];
  const opening = room?.openings[at];
  if (!room || !opening) return null;
  return {
    where: `${room.name}, ${opening.name}`,
    label: FIELD_WORDS[field] ?? '',
    address: writeAddress({ place: 'project', id: document.project.id, sheet: 'worksheet', opening: opening.id }),
    wanted: { treatment: null, fields: fieldsAt('.measures ', field) },
  };
}

function atTreatment(document: ProjectDocument, index: number, at: number, of: number, field: string): Placed | null {
  const placed = atOpening(document, index, at, field);
  const treatments = document.rooms[index]?.openings[at]?.treatments ?? [];
  const treatment = treatments[of];
  if (!placed || !treatment) return placed;
  return {
    ...placed,
    where: treatments.length > 1 ? `${placed.where}, ${treatment.name}` : placed.where,
    label: treatmentLabel(treatment, field),
    wanted: { treatment: treatment.id, fields: fieldsAt('.measures [data-make] ', lineOfFault(field)) },
  };
}

function atCloth(cloth: ClothRecord, field: string): Placed {
  return {
    where: cloth.name,
    label: clothLabel(field),
    address: writeAddress({ place: 'cloth', id: cloth.id }),
    wanted: { treatment: null, fields: fieldsAt('dialog ', field) },
  };
}

export function hasUnread(cloth: Pick<ClothRecord, 'drafts'>): boolean {
  return Object.keys(cloth.drafts).length > 0;
}

/** Codes of every cloth that hangs somewhere in the project, as far as the decorator chose it. */
function usedCodes(document: ProjectDocument): ReadonlySet<string> {
  const treatments = document.rooms.flatMap((room) => room.openings.flatMap((opening) => opening.treatments));
  return new Set(
    treatments
      .flatMap((treatment) => [
        treatment.face,
        ...TIERS.flatMap((tier) => [treatment.stacks[tier]?.face ?? null, ...(treatment.stacks[tier]?.behind ?? [])]),
      ])
      .filter((code) => code !== null),
  );
}

/** Texts that could not be read, in the order of the rooms and then the cloth that hangs there. */
export function listUnread(document: ProjectDocument): Trouble[] {
  const say = (drafts: Readonly<Record<string, string>>, place: (field: string) => Placed | null): Trouble[] =>
    Object.entries(drafts).flatMap(([field, text]) => {
      const placed = text.trim() === '' ? null : place(field);
      return placed ? [{ ...placed, says: `"${text}" cannot be read` }] : [];
    });
  const used = usedCodes(document);
  return [
    ...document.rooms.flatMap((room, index) => [
      ...say(room.drafts, (field) => atRoom(document, index, field)),
      ...room.openings.flatMap((opening, at) => [
        ...say(opening.drafts, (field) => atOpening(document, index, at, field)),
        ...opening.treatments.flatMap((treatment, of) =>
          say(treatment.drafts, (field) => atTreatment(document, index, at, of, field)),
        ),
      ]),
    ]),
    ...document.cloth
      .filter((cloth) => used.has(cloth.code))
      .flatMap((cloth) => say(cloth.drafts, (field) => atCloth(cloth, field))),
  ];
}

/** A fault of the desk in words of the screen: its path is one of the document, and is not shown. */
export function placeDeskFault(fault: Fault, document: ProjectDocument): Trouble {
  const found = /^rooms\[(\d+)\](?:\.openings\[(\d+)\](?:\.treatments\[(\d+)\])?)?\.?(.*)$/.exec(fault.path);
  const placed = found ? atPath(document, found) : clothAt(document, fault.path);
  // The desk names the place in words too: once is enough.
  const wrong = placed && fault.wrong.startsWith(placed.where) ? fault.wrong.replace(/^[^:]*: /, '') : fault.wrong;
  return { ...(placed ?? { where: '', label: '', address: null, wanted: NOWHERE }), says: `${wrong}: ${fault.right}` };
}

function atPath(document: ProjectDocument, found: RegExpExecArray): Placed | null {
  const [, room, opening, treatment, field = ''] = found;
  if (opening === undefined) return atRoom(document, Number(room), field);
  if (treatment === undefined) return atOpening(document, Number(room), Number(opening), field);
  return atTreatment(document, Number(room), Number(opening), Number(treatment), field);
}

function clothAt(document: ProjectDocument, path: string): Placed | null {
  const found = /^cloth\[(\d+)\]\.?(.*)$/.exec(path);
  const cloth = found ? document.cloth[Number(found[1])] : undefined;
  return cloth ? atCloth(cloth, found?.[2] ?? '') : null;
}

import type * as z from 'zod';
import { knownOfCloth, NOTHING_KNOWN } from '#shared/records/known-of-cloth.ts';
import { drafts } from '#shared/records/record-fields.ts';
import { clothRecord } from '#shared/records/records.ts';
import type { ClothRecord } from '#shared/records/records.ts';
import { sql } from './compile.ts';
import type { ReadConnection } from './connection.ts';
import { readJson, readMaybeJson, writeMaybeJson } from './json-column.ts';
import { keepTable } from './kept-table.ts';
import { NOWHERE, placeOfProject } from './place.ts';
import type { ClothRow } from './tables.ts';

export const cloths = keepTable<ClothRecord, ClothRow>({
  entity: 'cloth',
  select: (id) => sql.selectFrom('cloths').selectAll().where('id', '=', id).compile(),
  insert: (row) => sql.insertInto('cloths').values(row).compile(),
  update: (id, row) => sql.updateTable('cloths').set(row).where('id', '=', id).compile(),
  toRecord: toCloth,
  toRow: (record, removedAt) => ({
    id: record.id,
    project_id: record.projectId,
    code: record.code,
    name: record.name,
    role: record.role,
    family: record.family,
    width: record.width,
    usable_width: record.usableWidth,
    match: record.match,
    repeat_vertical: record.repeatVertical,
    repeat_horizontal: record.repeatHorizontal,
    cut_on_repeat: record.cutOnRepeat ? 1 : 0,
    one_way: record.oneWay ? 1 : 0,
    bolt: record.bolt,
    order_step: record.orderStep,
    least_order: record.leastOrder,
    railroad: record.railroad ? 1 : 0,
    content: writeMaybeJson(record.content),
    weight: record.weight,
    colour: record.colour,
    shade: record.shade,
    visible: writeMaybeJson(record.visible),
    uv: writeMaybeJson(record.uv),
    solar: writeMaybeJson(record.solar),
    known: writeKnown(record),
    price: record.price,
    supplier: record.supplier,
    notes: record.notes,
    drafts: JSON.stringify(record.drafts),
    created_at: record.createdAt,
    updated_at: record.updatedAt,
    removed_at: removedAt,
  }),
  placeOf: (reading, record) => (record.projectId === null ? NOWHERE : placeOfProject(reading, record.projectId)),
});

const { content, visible, uv, solar } = clothRecord.shape;

/** What one column keeps together; the pairs of the first form have columns of their own. */
const known = knownOfCloth.omit({ visible: true, uv: true, solar: true });
type Known = z.infer<typeof known>;

/** Only what somebody said: null when that is nothing. */
function writeKnown(record: ClothRecord): string | null {
  const said = Object.entries(known.parse(record)).filter(([, value]) => value !== null);
  return said.length === 0 ? null : JSON.stringify(Object.fromEntries(said));
}

function readKnown(text: string | null): Known {
  return { ...known.parse(NOTHING_KNOWN), ...(text === null ? {} : readJson(known.partial(), text)) };
}

function toCloth(row: ClothRow): ClothRecord {
  return {
    id: row.id,
    projectId: row.project_id,
    code: row.code,
    name: row.name,
    role: row.role,
    family: row.family,
    width: row.width,
    usableWidth: row.usable_width,
    match: row.match,
    repeatVertical: row.repeat_vertical,
    repeatHorizontal: row.repeat_horizontal,
    cutOnRepeat: row.cut_on_repeat === 1,
    oneWay: row.one_way === 1,
    bolt: row.bolt,
    orderStep: row.order_step,
    leastOrder: row.least_order,
    railroad: row.railroad === 1,
    content: readMaybeJson(content, row.content),
    weight: row.weight,
    colour: row.colour,
    shade: row.shade,
    visible: readMaybeJson(visible, row.visible),
    uv: readMaybeJson(uv, row.uv),
    solar: readMaybeJson(solar, row.solar),
    ...readKnown(row.known),
    price: row.price,
    supplier: row.supplier,
    notes: row.notes,
    drafts: readJson(drafts, row.drafts),
    createdAt: row.created_at,
    updatedAt: row.updated_at,
  };
}

/** The decorator's own cloth that is kept, and with a project the project's too (before hers), each oldest first. */
export function listCloths(reading: ReadConnection, projectId: string | null): ClothRecord[] {
  const query = sql
    .selectFrom('cloths')
    .selectAll()
    .where('removed_at', 'is', null)
    .where((row) =>
      projectId === null
        ? row('project_id', 'is', null)
        : row.or([row('project_id', 'is', null), row('project_id', '=', projectId)]),
    )
    .orderBy('project_id', (order) => order.desc().nullsLast())
    .orderBy('created_at')
    .orderBy('id');
  return reading.all(query.compile()).map(toCloth);
}

/** The cloth that goes by a code in a project (null: in the decorator's own list), or null. */
export function findClothByCode(reading: ReadConnection, projectId: string | null, code: string): ClothRecord | null {
  const query = sql
    .selectFrom('cloths')
    .selectAll()
    .where('removed_at', 'is', null)
    .where('code', '=', code)
    .where('project_id', 'is', projectId);
  const row = reading.first(query.compile());
  return row === null ? null : toCloth(row);
}

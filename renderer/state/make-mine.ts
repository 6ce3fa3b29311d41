import type { ClothRecord } from '#shared/records/records.ts';
import { client } from './client.ts';
import type { Edits } from './edits.svelte.ts';
import { fieldsOfPage } from './fields-of-page.ts';
import type { MakeMineGiven } from './fields-of-page.ts';

export async function makeMine(edits: Edits, given: MakeMineGiven): Promise<ClothRecord> {
  return edits.add(`${given.page.cloth.name} made yours`, async (added) => {
    const cloth = await client.cloth.addCloth({ projectId: null, fields: fieldsOfPage(given) });
    added('cloth', cloth.id);
    return cloth;
  });
}

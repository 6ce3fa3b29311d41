/** A page of the starter book becomes a cloth of her own: every value comes along as a guess that she can write over. */
import type { StarterPage } from '#app/lining/cloth/starter-book.ts';
import type { Optics, SourcedValue } from '#shared/cloth.ts';
import type { ClothRecord } from '#shared/records/records.ts';
import { codeFor } from './code-for.ts';

export interface MakeMineGiven {
  readonly page: StarterPage;
  /** She takes the generic cloth's place: hers is meant wherever that one is named. */
  readonly inPlace: boolean;
  readonly taken: readonly string[];
  /** Its price in her own book; null where she has none. */
  readonly price: string | null;
}

const COPIED: readonly SourcedValue[] = [
  'transmittance',
  'reflectance',
  'uv',
  'solar',
  'weight',
  'thickness',
  'content',
  'needle',
  'care',
  'hand',
];

export function fieldsOfPage({ page, inPlace, taken, price }: MakeMineGiven): Partial<ClothRecord> {
  const { cloth, id } = page;
  const unsaid = (['content', 'needle', 'care'] as const).filter((value) => (cloth[value] ?? null) === null);
  const sources = COPIED.filter((value) => !unsaid.some((each) => each === value));
  return {
    code: inPlace && id !== null ? id : codeFor(cloth.name, taken),
    name: cloth.name,
    role: cloth.role,
    family: cloth.family,
    width: cloth.width,
    match: 'none',
    content: cloth.content,
    weight: cloth.weight === null ? null : `${cloth.weight} g/m2`,
    shade: cloth.shade,
    visible: pair(cloth.visible),
    uv: pair(cloth.uv),
    solar: pair(cloth.solar),
    thickness: cloth.thickness,
    needle: cloth.needle ?? null,
    care: cloth.care ?? null,
    hand: cloth.hand,
    sources: Object.fromEntries(sources.map((value) => [value, 'assumed'])),
    // In its place the price book's line by that name goes on counting.
    price: inPlace ? null : price,
  };
}

function pair(optics: Optics | null): ClothRecord['visible'] {
  return optics === null ? null : { ...optics };
}

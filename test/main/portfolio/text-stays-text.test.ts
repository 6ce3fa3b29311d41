import fc from 'fast-check';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { CARE_WAYS, HANDS, NEEDLE_WAYS, SOURCED_VALUES, VALUE_SOURCES } from '#shared/cloth.ts';
import type { ClientRecord, ClothRecord } from '#shared/records/records.ts';
import { newCloth } from '#main/desk/new-records.ts';
import { clients, listClients } from '#main/portfolio/clients.ts';
import { cloths, findClothByCode } from '#main/portfolio/cloths.ts';
import { sql } from '#main/portfolio/compile.ts';
import { listHistory } from '#main/portfolio/history.ts';
import type { Portfolio } from '#main/portfolio/open-portfolio.ts';
import { makeTestFolder, NOON, testClient } from './test-portfolio.ts';
import type { TestFolder } from './test-portfolio.ts';

let place: TestFolder;
let portfolio: Portfolio;
beforeEach(() => {
  place = makeTestFolder();
  portfolio = place.open();
});
afterEach(() => {
  portfolio.close();
  place.remove();
});

const NAMES = [
  `Robert'); DROP TABLE clients; --`,
  `100 % "linen"`,
  `a_b%c`,
  `O'Fenn; and 'sons'`,
  `back\\slash`,
  `? ?1 :name @name $name`,
  `[brackets] \`ticks\``,
  `"; DELETE FROM history; --`,
  `Zoë Świątek ½ ″ 窓`,
];

test.each(NAMES)('a name stays a name: %s', (name) => {
  portfolio.write((writing) => {
    clients.add(writing, testClient('a', name));
    cloths.add(writing, { ...newCloth({ id: 'b', at: NOON }, null, 'face'), code: name, name });
    clients.edit(writing, 'a', { notes: name }, NOON);
  });
  portfolio.read((reading) => {
    expect(clients.read(reading, 'a')).toMatchObject({ name, notes: name });
    expect(findClothByCode(reading, null, name)?.name).toBe(name);
    expect(listClients(reading).map((client) => client.name)).toEqual([name]);
    expect(listHistory(reading, { most: 10 })[0]?.changes['notes']).toEqual({ before: '', after: name });
    expect(reading.all(sql.selectFrom('clients').select('id').compile())).toEqual([{ id: 'a' }]);
  });
});

test('an id stays an id', () => {
  portfolio.write((writing) => clients.add(writing, testClient('a')));
  for (const id of NAMES) expect(portfolio.read((reading) => clients.read(reading, id))).toBeNull();
});

// NUL and lone surrogates are no text that SQLite keeps; the JSON of the contract has neither.
const text = fc.string({ unit: 'grapheme', maxLength: 60 }).filter((value) => !value.includes('\0'));

test('whatever is written is read back, and each change is told once', () => {
  let count = 0;
  fc.assert(
    fc.property(text, text, fc.boolean(), (before, after, twice) => {
      const id = `client-${(count += 1)}`;
      const record: ClientRecord = testClient(id, before);
      portfolio.write((writing) => clients.add(writing, record));
      const edited = portfolio.write((writing) => clients.edit(writing, id, { name: after }, NOON));
      if (twice) portfolio.write((writing) => clients.edit(writing, id, { name: after }, NOON));
      expect(edited?.name).toBe(after);
      const told = portfolio.read((reading) => listHistory(reading, { clientId: id, most: 10 }));
      const expected = before === after ? [] : [{ name: { before, after } }];
      expect(told.filter(({ verb }) => verb === 'edited').map(({ changes }) => changes)).toEqual(expected);
    }),
    { numRuns: 100 },
  );
});

test('a cloth is read back as it was written, field by field', () => {
  const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
  const ticks = fc.integer({ min: 0, max: 32_000_000 }).map((value) => value as ClothRecord['width']);
  const share = fc.double({ min: 0, max: 1, noNaN: true }).map((value) => value + 0);
  const optics = fc.record({ transmittance: maybe(share), reflectance: maybe(share) });
  const loss = fc.double({ min: 0, max: 0.99, noNaN: true }).map((value) => value + 0);
  const bands = fc.array(share, { minLength: 16, maxLength: 16 });
  const partly = <T>(values: Record<string, fc.Arbitrary<T>>) =>
    fc.record(values, { requiredKeys: [] }).map((each) => ({ ...each }));
  let count = 0;
  fc.assert(
    fc.property(
      fc.record({
        name: text,
        width: maybe(ticks),
        usableWidth: maybe(ticks),
        repeatVertical: maybe(ticks),
        match: fc.constantFrom('none' as const, 'straight' as const, 'half-drop' as const),
        cutOnRepeat: fc.boolean(),
        railroad: fc.boolean(),
        content: maybe(fc.constant({ linen: 55, cotton: 45 })),
        price: maybe(text),
        visible: maybe(optics),
        uv: maybe(optics),
        streetReflectance: maybe(partly({ visible: share, uv: share, solar: share })),
        spectra: maybe(fc.record({ transmittance: maybe(bands), reflectance: maybe(bands) })),
        transmittanceWithin: maybe(loss),
        thickness: maybe(fc.double({ min: 0.01, max: 50, noNaN: true })),
        shrinkage: maybe(fc.record({ length: maybe(loss), width: maybe(loss) })),
        needle: maybe(fc.constantFrom(...NEEDLE_WAYS)),
        care: maybe(fc.constantFrom(...CARE_WAYS)),
        flame: maybe(fc.record({ test: text, certificate: text })),
        hand: maybe(fc.constantFrom(...HANDS)),
        sources: maybe(
          fc
            .dictionary(fc.constantFrom(...SOURCED_VALUES), fc.constantFrom(...VALUE_SOURCES))
            .map((value): ClothRecord['sources'] => ({ ...value })),
        ),
        drafts: fc.dictionary(fc.constantFrom('width', 'price'), text).map((value) => ({ ...value })),
      }),
      (fields) => {
        const id = `cloth-${(count += 1)}`;
        const cloth: ClothRecord = { ...newCloth({ id, at: NOON }, null, 'face'), ...fields, code: id };
        portfolio.write((writing) => cloths.add(writing, cloth));
        expect(portfolio.read((reading) => cloths.read(reading, id))).toEqual(cloth);
      },
    ),
    { numRuns: 60 },
  );
});

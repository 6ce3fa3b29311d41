/** Laws of valances, cornices and swags over random cases (seeded): what must hold whatever was measured. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TopEstimate } from '#app/estimating/top-treatment/top-estimate.ts';
import { TICKS_PER_INCH } from '#shared/length.ts';
import { CORNICE_LENGTHS } from '#shared/treatments/cornice-practice.ts';
import type { LengthTable } from '#shared/treatments/length-settings.ts';
import { SWAGS_LENGTHS } from '#shared/treatments/swags-practice.ts';
import { VALANCE_LENGTHS } from '#shared/treatments/valance-practice.ts';
import { BARE_VALANCE, corniceCase, lineOf, swagsCase, valanceCase } from './top-case.ts';
import type { TopCase } from './top-case.ts';

type Fields = Readonly<Record<string, unknown>>;
const quarter = (min: number, max: number) => fc.integer({ min: min * 4, max: max * 4 }).map((value) => value / 4);
const ratio = (min: number, max: number) =>
  fc.integer({ min: min * 1000, max: max * 1000 }).map((value) => value / 1000);
const returns = fc.record({ left: quarter(0, 8), right: quarter(0, 8) });
const hung = fc.constantFrom<Fields>({ board: { depth: 3.5 } }, { rod: { diameter: 1, header: 1.5 } });
const sizes = {
  width: quarter(20, 200),
  finishedLength: quarter(10, 30),
  return: returns,
  quantity: fc.integer({ min: 1, max: 3 }),
};

const valances: fc.Arbitrary<Fields> = fc.oneof(
  fc.record({ ...sizes, style: fc.constant('tailored') }),
  fc.record({ ...sizes, style: fc.constant('box-pleated'), pleats: fc.integer({ min: 1, max: 3 }) }),
  fc.tuple(fc.record({ ...sizes, style: fc.constant('gathered'), fullness: ratio(1.5, 3) }), hung).map(join),
  fc.tuple(fc.record({ ...sizes, style: fc.constant('balloon'), fullness: ratio(2, 3) }), hung).map(join),
  fc.record({ ...sizes, style: fc.constant('scalloped'), scallopDepth: quarter(1, 4) }),
);
const cornices: fc.Arbitrary<Fields> = fc.record({ ...sizes, return: quarter(2, 8) });
const tail = fc.record({ longest: quarter(24, 60), shortest: quarter(6, 20), width: quarter(6, 16) });
const swags: fc.Arbitrary<Fields> = fc.record({
  ...sizes,
  style: fc.constantFrom('overlapped', 'separate'),
  swags: fc.integer({ min: 1, max: 5 }),
  cascades: fc.option(tail),
  onBias: fc.boolean(),
});

function join([one, other]: readonly [Fields, Fields]): Fields {
  return { ...one, ...other };
}

const surroundings = fc.record({
  cloth: fc.record({
    width: quarter(40, 60),
    railroad: fc.boolean(),
    repeat: fc.option(fc.record({ vertical: quarter(2, 30), match: fc.constantFrom('straight', 'half-drop') }), {
      nil: undefined,
    }),
  }),
  behind: fc.constantFrom<readonly string[]>([], ['std-white'], ['inter-med', 'std-white']),
  practice: fc.record({
    widthRounding: fc.constantFrom('up', 'half-up'),
    fullnessOver: fc.constantFrom('whole', 'face'),
    hemsInWidth: fc.boolean(),
    seam: fc.constantFrom(0, 0.5),
    shrinkage: fc.constantFrom(0, 0.03),
    repeatRule: fc.constantFrom('whole', 'add-one'),
    orderStep: fc.constant('0.25 yd'),
    orderFrom: fc.constantFrom('plan', 'handbook'),
  }),
});

type Make = (given: TopCase) => TopEstimate<unknown>;
const KINDS: readonly [string, fc.Arbitrary<Fields>, Make, LengthTable][] = [
  ['valances', valances, valanceCase, VALANCE_LENGTHS],
  ['cornices', cornices, corniceCase, CORNICE_LENGTHS],
  ['swags', swags, swagsCase, SWAGS_LENGTHS],
];
const runs = { seed: 31, numRuns: 150 };

describe.each(KINDS)('laws of %s', (kind, fields, make, table) => {
  const cases = fc.tuple(fields, surroundings).map(([own, around]): TopCase => ({ ...around, fields: own }));

  it('never less cloth than the pieces cover, nor less order than layout', () => {
    fc.assert(
      fc.property(cases, (given) => {
        const made = make(given);
        for (const line of made.takeoff) {
          const groups = made.cuts.filter(({ cloth, layer }) => cloth === line.cloth && layer === line.layer);
          const covered = groups.reduce((sum, { count, length }) => sum + count * length, 0);
          expect(line.plan).toBeGreaterThanOrEqual(covered);
          expect(line.order).toBeGreaterThanOrEqual(line.plan);
          expect(line.handbook).toBeGreaterThanOrEqual(line.plan);
          expect(groups.reduce((sum, { count }) => sum + count, 0)).toBe(line.cuts);
        }
        expect(made.grams).toBeGreaterThan(0);
      }),
      runs,
    );
  });

  it('the cloth of the face covers what it is finished to', () => {
    fc.assert(
      fc.property(cases, (given) => {
        const made = make(given);
        const line = lineOf(made);
        const usable = Number(given.cloth?.['width']) * TICKS_PER_INCH;
        const quantity = Number(given.fields?.['quantity']);
        const across = line.railroaded ? line.plainCut : usable;
        const depth =
          kind === 'swags' ? Number(given.fields?.['finishedLength']) * TICKS_PER_INCH : made.finished.length;
        const width = Number(given.fields?.['width']) * TICKS_PER_INCH;
        expect(line.plan * across).toBeGreaterThanOrEqual(width * depth * quantity);
      }),
      runs,
    );
  });

  it('wider or longer never takes less', () => {
    fc.assert(
      fc.property(
        cases,
        fc.constantFrom('width', 'finishedLength'),
        fc.integer({ min: 1, max: 40 }),
        (given, field, more) => {
          const upright = { ...given, cloth: { ...given.cloth, railroad: false } };
          const bigger = { ...upright, fields: { ...given.fields, [field]: Number(given.fields?.[field]) + more / 4 } };
          const [small, large] = [make(upright), make(bigger)];
          expect(large.takeoff.map(({ cloth }) => cloth)).toEqual(small.takeoff.map(({ cloth }) => cloth));
          large.takeoff.forEach((line, index) => {
            expect(line.handbook).toBeGreaterThanOrEqual(small.takeoff[index]?.handbook ?? 0);
          });
        },
      ),
      runs,
    );
  });

  it('mirrored returns change nothing of the cloth', () => {
    fc.assert(
      fc.property(cases, quarter(2, 8), quarter(2, 8), (given, left, right) => {
        const of = (ends: Fields) => make({ ...given, fields: { ...given.fields, return: ends } });
        expect(of({ left: right, right: left }).takeoff).toEqual(of({ left, right }).takeoff);
      }),
      runs,
    );
  });

  it('an inch job and its twin in millimetres agree to the tick', () => {
    const own = Object.fromEntries(Object.entries(table).map(([name, { inch }]) => [name, `${inch} in`]));
    const inText = (value: unknown): unknown => {
      if (typeof value === 'number') return `${value} in`;
      if (typeof value !== 'object' || value === null) return value;
      return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, inText(each)]));
    };
    const counted = ['quantity', 'fullness', 'pleats', 'swags'];
    fc.assert(
      fc.property(cases, (given) => {
        const making = { ...own, ...(kind === 'valances' ? { boardTurnFrom: 'board-depth' } : {}) };
        const practice = {
          ...given.practice,
          seam: inText(given.practice?.['seam']),
          pocket: { turn: '0.5 in', ease: '0.5 in' },
          bracketSpacing: '48 in',
        };
        const inch = make({ ...given, practice, making });
        const metric = make({
          ...given,
          units: 'mm',
          practice,
          making,
          fields: Object.fromEntries(
            Object.entries(given.fields ?? {}).map(([key, value]) => [
              key,
              counted.includes(key) ? value : inText(value),
            ]),
          ),
          cloth: {
            ...given.cloth,
            width: inText(given.cloth?.['width']),
            ...(given.cloth?.['repeat'] ? { repeat: inText(given.cloth['repeat']) } : {}),
          },
        });
        expect(metric.takeoff).toEqual(inch.takeoff);
        expect(metric.cuts).toEqual(inch.cuts);
        expect(metric.parts).toEqual(inch.parts);
      }),
      runs,
    );
  });

  it('upright, two of it never take more than twice the cloth of one', () => {
    fc.assert(
      fc.property(cases, (given) => {
        const upright = { ...given, cloth: { ...given.cloth, railroad: false } };
        const of = (quantity: number) => lineOf(make({ ...upright, fields: { ...given.fields, quantity } }));
        expect(of(2).handbook).toBeLessThanOrEqual(2 * of(1).handbook);
      }),
      runs,
    );
  });
});

describe('laws of one kind', () => {
  it('fuller never takes less', () => {
    fc.assert(
      fc.property(
        quarter(20, 200),
        ratio(1.5, 3),
        fc.integer({ min: 1, max: 900 }),
        hung,
        (width, fullness, more, hang) => {
          const of = (full: number) =>
            lineOf(valanceCase({ fields: { ...hang, style: 'gathered', width, fullness: full, return: 3.5 } }))
              .handbook;
          expect(of(Math.round(fullness * 1000 + more) / 1000)).toBeGreaterThanOrEqual(of(fullness));
        },
      ),
      runs,
    );
  });

  it('more box pleats never take less', () => {
    fc.assert(
      fc.property(quarter(60, 200), fc.integer({ min: 1, max: 5 }), (width, pleats) => {
        const of = (count: number) =>
          lineOf(valanceCase({ fields: { style: 'box-pleated', width, pleats: count } })).handbook;
        expect(of(pleats + 1)).toBeGreaterThanOrEqual(of(pleats));
      }),
      runs,
    );
  });

  it('more swags on a board never take less, while none is wider than the bias lets it', () => {
    fc.assert(
      fc.property(
        quarter(40, 200),
        fc.integer({ min: 1, max: 5 }),
        fc.constantFrom('overlapped', 'separate'),
        (width, count, style) => {
          const of = (number: number) =>
            lineOf(swagsCase({ fields: { style, width, swags: number, onBias: true }, making: { widthStep: 0 } }))
              .handbook;
          // Wider ones are pieced from strips of the cloth, whose last one is partly waste.
          const widest = style === 'separate' ? width / count : (2 * width) / (count + 1);
          fc.pre(widest <= 54);
          expect(of(count + 1)).toBeGreaterThanOrEqual(of(count));
        },
      ),
      runs,
    );
  });

  it('widths that are exactly whole add none', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 4 }), (widths, repeats) => {
        const made = valanceCase({
          fields: { width: 54 * widths, finishedLength: 9 * repeats },
          cloth: { repeat: { vertical: 9 } },
          making: BARE_VALANCE,
        });
        expect(lineOf(made)).toMatchObject({ halfWidths: 2 * widths, repeatsPerCut: repeats });
      }),
      runs,
    );
  });

  it('a row of swags is as long as its board', () => {
    fc.assert(
      fc.property(swags, (fields) => {
        const { row } = swagsCase({ fields }).sheet;
        expect((row.lefts.at(-1) ?? 0) + row.width).toBeCloseTo(Number(fields['width']) * TICKS_PER_INCH, -1);
      }),
      runs,
    );
  });
});

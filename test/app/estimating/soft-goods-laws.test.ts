/** Laws of Roman shades, bed skirts and shower curtains over random ones (seeded): what must hold whatever was measured. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Estimate } from '#app/estimating/estimate.ts';
import type { CutGroup } from '#app/estimating/cut-group.ts';
import { TICKS_PER_INCH } from '#shared/length.ts';
import { BED_SKIRT_LENGTHS } from '#shared/treatments/bed-skirt.ts';
import type { LengthTable } from '#shared/treatments/length-settings.ts';
import { ROMAN_LENGTHS } from '#shared/treatments/roman-shade.ts';
import { SHOWER_LENGTHS } from '#shared/treatments/shower-curtain.ts';
import { estimateSkirt, readSkirt, skirtFaults } from './bed-skirt-case.ts';
import type { SkirtCase } from './bed-skirt-case.ts';
import { estimateShade, readShade, shadeFaults } from './roman-shade-case.ts';
import type { ShadeCase } from './roman-shade-case.ts';
import { estimateShower, readShower, showerFaults } from './shower-curtain-case.ts';
import type { ShowerCase } from './shower-curtain-case.ts';
import type { ClothCase } from './soft-goods-case.ts';

const runs = { seed: 30, numRuns: 300 };
const quarter = (min: number, max: number) => fc.integer({ min: min * 4, max: max * 4 }).map((value) => value / 4);

/** Lengths are written with their unit, so that a twin reads them by another path. */
const inches = (value: number): string => `${value} in`;
const millimetres = (value: number): string => `${value * 25.4} mm`;
type Write = (value: number) => string;

interface Sizes {
  readonly width: number;
  readonly length: number;
  readonly extra: number;
  readonly cloth: number;
  readonly vertical: number | null;
  readonly horizontal: number | null;
  readonly halfDrop: boolean;
  readonly railroad: boolean;
  readonly quantity: number;
  readonly style: number;
  readonly behind: readonly string[];
  readonly flag: boolean;
}
const anySizes: fc.Arbitrary<Sizes> = fc.record({
  width: quarter(16, 200),
  length: quarter(12, 130),
  extra: quarter(1, 8),
  cloth: quarter(40, 70),
  vertical: fc.option(quarter(2, 36)),
  horizontal: fc.option(quarter(2, 54)),
  halfDrop: fc.boolean(),
  railroad: fc.boolean(),
  quantity: fc.integer({ min: 1, max: 4 }),
  style: fc.integer({ min: 0, max: 2 }),
  behind: fc.constantFrom([], ['std-white'], ['inter-med', 'std-white'], ['blackout-3-pass']),
  flag: fc.boolean(),
});

/** Every allowance is written out, so that inch and metric households have the same practice. */
function stock(sizes: Sizes, write: Write, units: ClothCase['units']): ClothCase {
  return {
    units,
    cloth: {
      width: write(sizes.cloth),
      railroad: sizes.railroad,
      ...(sizes.vertical === null
        ? {}
        : {
            repeat: {
              vertical: write(sizes.vertical),
              ...(sizes.horizontal === null ? {} : { horizontal: write(sizes.horizontal) }),
              match: sizes.halfDrop ? 'half-drop' : 'straight',
            },
          }),
    },
    behind: sizes.behind,
    quantity: sizes.quantity,
    practice: { orderStep: '0.25 yd', seam: write(0.5), squaring: write(0) },
  };
}

function shadeOf(sizes: Sizes, write: Write = inches, units: ClothCase['units'] = 'in'): ShadeCase {
  const { practice } = readShade({}).shade;
  const making = Object.fromEntries(
    Object.entries(practice.romanShade)
      .filter(([name, value]) => typeof value === 'number' && name !== 'softFoldFullness')
      .map(([name, value]) => [name, write((value as number) / TICKS_PER_INCH)]),
  );
  return {
    ...stock(sizes, write, units),
    making,
    shade: {
      style: (['flat', 'soft-fold', 'relaxed'] as const)[sizes.style]!,
      size: { basis: 'finished', width: write(sizes.width), length: write(sizes.length) },
      return: write(sizes.flag ? sizes.extra : 0),
      valance: sizes.flag ? { depth: write(sizes.extra) } : null,
    },
  };
}

function skirtOf(sizes: Sizes, write: Write = inches, units: ClothCase['units'] = 'in'): SkirtCase {
  const { practice } = readSkirt({}).skirt;
  const making = Object.fromEntries(
    Object.entries(practice.bedSkirt)
      .filter(([name]) => !name.endsWith('Fullness'))
      .map(([name, value]) => [name, write(value / TICKS_PER_INCH)]),
  );
  return {
    ...stock(sizes, write, units),
    making,
    skirt: {
      style: (['gathered', 'tailored', 'box-pleated'] as const)[sizes.style]!,
      bed: { width: write(sizes.width), length: write(sizes.length) },
      drop: write(sizes.extra + 6),
      splitCorners: sizes.flag,
      deck: sizes.flag ? 'face' : 'std-ivory',
    },
  };
}

function showerOf(sizes: Sizes, write: Write = inches, units: ClothCase['units'] = 'in'): ShowerCase {
  const { practice } = readShower({}).curtain;
  const making = Object.fromEntries(
    Object.entries(practice.showerCurtain).map(([name, value]) => [name, write(value / TICKS_PER_INCH)]),
  );
  return {
    ...stock(sizes, write, units),
    making,
    curtain: {
      finishedWidth: write(sizes.width),
      finishedLength: write(sizes.length),
      arrangement: sizes.style === 0 ? 'pair' : 'one-piece',
      liner: sizes.flag ? { cloth: 'std-ivory' } : null,
    },
  };
}

type Made = Estimate & { readonly cuts: readonly CutGroup[] };
const KINDS: readonly {
  readonly name: string;
  readonly make: (sizes: Sizes, write?: Write, units?: ClothCase['units']) => Made;
}[] = [
  { name: 'Roman shade', make: (...given) => estimateShade(shadeOf(...given)) },
  { name: 'bed skirt', make: (...given) => estimateSkirt(skirtOf(...given)) },
  { name: 'shower curtain', make: (...given) => estimateShower(showerOf(...given)) },
];

/** Area in square ticks of the pieces of one layer. */
function areaOfCuts(made: Made, layer: number, usable: number): number {
  return made.cuts
    .filter((cut) => cut.layer === layer)
    .reduce((sum, cut) => sum + cut.count * cut.length * (cut.width ?? usable), 0);
}

describe.each(KINDS)('laws of a $name', ({ make }) => {
  it('never less cloth than its pieces, never less order than layout, never more layout than the chart', () => {
    fc.assert(
      fc.property(anySizes, (sizes) => {
        const made = make(sizes);
        for (const line of made.takeoff) {
          const usable = line.cloth === 'face' ? Math.round(sizes.cloth * TICKS_PER_INCH) : 54 * TICKS_PER_INCH;
          expect(line.plan).toBeLessThanOrEqual(line.handbook);
          expect(line.order).toBeGreaterThanOrEqual(line.plan);
          expect(line.cutLength).toBeGreaterThanOrEqual(line.railroaded ? 1 : line.plainCut);
          expect(Number.isFinite(line.grams) && line.grams > 0).toBe(true);
          const finished = made.finished.width * made.finished.length * sizes.quantity;
          if (line.layer === 0) expect(line.plan * usable).toBeGreaterThanOrEqual(finished);
          // What lies beside another piece in one width is no cut of its own: pieces never exceed the cloth.
          expect(areaOfCuts(made, line.layer, usable)).toBeLessThanOrEqual(line.plan * usable + usable);
        }
      }),
      runs,
    );
  });

  it('wider, longer or more of them never takes less', () => {
    fc.assert(
      fc.property(
        anySizes,
        fc.constantFrom('width' as const, 'length' as const, 'quantity' as const),
        fc.integer({ min: 1, max: 60 }),
        (sizes, field, more) => {
          const bigger = { ...sizes, [field]: sizes[field] + (field === 'quantity' ? 1 : more / 4) };
          const [small, large] = [make(sizes), make(bigger)];
          small.takeoff.forEach((line, index) => expect(large.takeoff[index]!.plan).toBeGreaterThanOrEqual(line.plan));
        },
      ),
      runs,
    );
  });

  it('an inch job and its twin in millimetres agree to the tick', () => {
    fc.assert(
      fc.property(anySizes, (sizes) => {
        const [inch, metric] = [make(sizes), make(sizes, millimetres, 'mm')];
        expect(metric.takeoff).toEqual(inch.takeoff);
        expect(metric.cuts).toEqual(inch.cuts);
        expect(metric.parts).toEqual(inch.parts);
      }),
      runs,
    );
  });

  it('every step of the working has its figures, its value and what it rests on; ids are unique', () => {
    fc.assert(
      fc.property(anySizes, (sizes) => {
        const { working } = make(sizes);
        expect(new Set(working.map((step) => step.id)).size).toBe(working.length);
        for (const step of working) {
          expect(step.formula).not.toMatch(/NaN|undefined|Infinity/);
          expect([step.label, step.formula, step.value, step.rests]).not.toContain('');
        }
      }),
      { seed: 31, numRuns: 100 },
    );
  });
});

describe('a quotient that is exactly whole adds nothing', () => {
  const none = { hem: 0, topSeam: 0, endHem: 0 };
  it.each([1, 2, 7])('%i widths of a bed skirt', (widths) => {
    const made = estimateSkirt({
      making: none,
      cloth: { repeat: { vertical: 7, match: 'straight' } },
      skirt: { style: 'gathered', fullness: 1, bed: { width: 54 * widths - 20, length: 10 }, drop: 14 },
    });
    expect(made.takeoff[0]).toMatchObject({ cuts: widths, repeatsPerCut: 2 });
  });
  it.each([1, 2, 5])('%i widths of a shower curtain', (widths) => {
    const made = estimateShower({
      making: { topHem: 0, bottomHem: 0, sideHem: 0 },
      cloth: { repeat: { vertical: 24, match: 'straight' } },
      curtain: { finishedWidth: 54 * widths, finishedLength: 72 },
    });
    expect(made.takeoff[0]).toMatchObject({ cuts: widths, repeatsPerCut: 3 });
  });
  it('a Roman shade', () => {
    const made = estimateShade({
      cloth: { repeat: { vertical: 21, match: 'straight' } },
      shade: { size: { basis: 'finished', width: 48, length: 58 } },
    });
    expect(made.takeoff[0]).toMatchObject({ cuts: 1, repeatsPerCut: 3 });
  });
});

describe('defaults', () => {
  it.each([
    ['Roman shade', ROMAN_LENGTHS],
    ['bed skirt', BED_SKIRT_LENGTHS],
    ['shower curtain', SHOWER_LENGTHS],
  ])('of a %s are near one another in inches and centimetres', (_, table: LengthTable) => {
    for (const { inch, centimetre } of Object.values(table)) {
      expect(centimetre).toBeGreaterThanOrEqual(inch * 2.54 * 0.9);
      expect(centimetre).toBeLessThanOrEqual(inch * 2.54 * 1.2);
    }
  });
});

describe('a mirrored room', () => {
  it('takes the same cloth for a shade, its returns and control the other way round', () => {
    fc.assert(
      fc.property(anySizes, quarter(1, 6), quarter(1, 6), (sizes, left, right) => {
        const of = (a: number, b: number, control: 'left' | 'right') => {
          const given = shadeOf(sizes);
          return estimateShade({
            ...given,
            shade: { ...given.shade, lift: 'cords', control, return: { left: inches(a), right: inches(b) } },
          });
        };
        const [one, two] = [of(left, right, 'left'), of(right, left, 'right')];
        expect(two.takeoff).toEqual(one.takeoff);
        const { columns } = one.sheet.rings;
        const mirrored = columns.map((column) => one.finished.width - column).reverse();
        // A half tick goes up on both sides of the middle.
        two.sheet.rings.columns.forEach((column, index) =>
          expect(Math.abs(column - mirrored[index]!)).toBeLessThanOrEqual(columns.length),
        );
      }),
      { seed: 32, numRuns: 150 },
    );
  });
});

describe('absurd numbers', () => {
  it('are either refused or made, within a bounded number of steps', () => {
    const absurd = fc.oneof(
      fc.constantFrom(0, 0.0001, 0.01, 1, 3937, 3900),
      fc.double({ min: 0, max: 3937, noNaN: true }).map((value) => Math.round(value * 1e4) / 1e4),
    );
    const wild = fc.record({ a: absurd, b: absurd, c: absurd, d: absurd, cloth: absurd.filter((value) => value > 0) });
    let priced = 0;
    fc.assert(
      fc.property(wild, fc.integer({ min: 0, max: 2 }), ({ a, b, c, d, cloth }, style) => {
        const common: ClothCase = { cloth: { width: cloth }, behind: ['std-white'], practice: { seam: d } };
        const shade: ShadeCase = {
          ...common,
          making: { rowSpacing: c, columnSpacing: d, edgeInset: c / 4, leastSide: d / 3, seam: c / 9 },
          shade: {
            style: (['flat', 'soft-fold', 'relaxed'] as const)[style]!,
            size: { basis: 'finished', width: a, length: b },
            valance: { depth: c },
            return: d,
          },
        };
        const skirt: SkirtCase = {
          ...common,
          making: { boxPleat: c, endHem: d, liningShorter: c },
          skirt: {
            style: (['gathered', 'tailored', 'box-pleated'] as const)[style]!,
            bed: { width: a, length: b },
            drop: d,
            deck: 'std-white',
          },
        };
        const shower: ShowerCase = {
          ...common,
          making: { eyeletSpacing: c, eyeletInset: d / 5, sideHem: d },
          curtain: { finishedWidth: a, finishedLength: b, liner: { cloth: 'face' } },
        };
        const cases = [
          [shadeFaults(shade), () => estimateShade(shade)],
          [skirtFaults(skirt), () => estimateSkirt(skirt)],
          [showerFaults(shower), () => estimateShower(shower)],
        ] as const;
        for (const [faults, make] of cases) {
          if (faults.length > 0) continue;
          const made = make();
          priced += 1;
          made.takeoff.forEach((line) => expect(Number.isSafeInteger(line.order)).toBe(true));
        }
      }),
      { seed: 33, numRuns: 1500 },
    );
    expect(priced).toBeGreaterThan(50);
  });
});

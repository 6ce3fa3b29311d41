/** Cuts against whole pieces of cloth, and strips against its width. Rules are common practice; cuts are worked by hand. */
import { describe, expect, it } from 'vitest';
import { priceJob } from '#app/pricing/price-job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { sayFault } from '#shared/fault.ts';
import type { JobResult } from '#shared/result.ts';

type Fields = Readonly<Record<string, unknown>>;

const bare = { behind: [] };
const STACKS = { good: bare, better: bare, best: bare };
const PANELS: Fields = {
  kind: 'panels',
  heading: 'pinch-pleat',
  arrangement: 'pair',
  rodWidth: 72,
  finishedLength: 84,
  return: 3.5,
  overlap: 3.5,
};

function priced(treatment: Fields, cloth: Fields = {}, more: readonly Fields[] = []): JobResult {
  const made = { name: 'T', face: 'f', stacks: STACKS, ...treatment };
  const opening = { name: 'Window', width: 60, height: 60, sill: 20, treatments: [made] };
  const read = readJob({
    linenfold: 1,
    units: 'in',
    currency: 'USD',
    client: { name: 'Invented client' },
    priceBook: 'example',
    cloth: [{ id: 'f', role: 'face', width: 54, price: '10/yd', ...cloth }, ...more],
    rooms: [{ name: 'Room', use: 'living', openings: [opening] }],
  });
  if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
  return priceJob(read.job, read.warnings);
}
const faultsOf = (result: JobResult): string[] =>
  result.faults.map(({ path, wrong }) => `${path.replace(/^.*treatments\[0\]\./, '')}: ${wrong}`);

describe('a cut longer than a whole piece was priced', () => {
  const SHADE = { kind: 'roman-shade', style: 'flat', mount: { where: 'wall' } };
  it.each([
    // 60 and 5 unlined; 75 with 4½ top and 4½ hem; 60 with ½ seam and 2 hem.
    ['a Roman shade', { ...SHADE, size: { basis: 'finished', width: 36, length: 60 } }, 'face: a cut of 65 in'],
    ['a shower curtain', { kind: 'shower-curtain', finishedWidth: 72, finishedLength: 75 }, 'face: a cut of 84 in'],
    [
      'a bed skirt',
      { kind: 'bed-skirt', style: 'gathered', bed: { width: 60, length: 80 }, drop: 60 },
      'face: a cut of 62½ in',
    ],
    ['panels', PANELS, 'finishedLength: a cut of 100 in'],
  ])('%s from a piece of 1 yd', (_, treatment, wanted) => {
    expect(faultsOf(priced(treatment, { bolt: '1 yd' }))).toEqual([
      `${wanted} is longer than a whole piece of f (36 in)`,
    ]);
    expect(faultsOf(priced(treatment, { bolt: '3 yd' }))).toEqual([]);
  });
  it('a band of 100 in from a piece of 1 yd', () => {
    const band = { id: 'b', role: 'face', width: 54, price: '3/yd' };
    const panels = { ...PANELS, bands: [{ edge: 'leading', cloth: 'b', width: 3 }] };
    expect(faultsOf(priced(panels, {}, [{ ...band, bolt: '1 yd' }]))).toEqual([
      'bands[0].cloth: a cut of 100 in is longer than a whole piece of b (36 in)',
    ]);
    expect(faultsOf(priced(panels, {}, [{ ...band, bolt: '3 yd' }]))).toEqual([]);
  });
  it('washed before cutting: 100 / 0.97 = 103.1 from a piece of 101', () => {
    const found = faultsOf(priced({ ...PANELS, practice: { shrinkage: 0.03 } }, { bolt: 101 }));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/^finishedLength: a cut of .*103.*in is longer than a whole piece of f \(101 in\)$/);
  });
  it('a lining is asked for its own cut, 90 in, not for that of the face', () => {
    const lining = { id: 'l', role: 'lining', family: 'standard', width: 54, price: '5/yd' };
    const lined = { ...PANELS, stacks: { good: { behind: ['l'] }, better: bare, best: bare } };
    expect(faultsOf(priced(lined, {}, [{ ...lining, bolt: 95 }]))).toEqual([]);
    expect(faultsOf(priced(lined, {}, [{ ...lining, bolt: 89 }]))).toEqual([
      'finishedLength: a cut of 90 in is longer than a whole piece of l (89 in)',
    ]);
  });
  it('cloth run sideways has one run for each panel: 131⅝ in from a piece of 131', () => {
    const wide = { width: 118, railroad: true };
    const panels = { ...PANELS, rodWidth: 90 };
    // 251¼ and 4 × 3 is 263¼, 131⅝ each.
    expect(faultsOf(priced(panels, { ...wide, bolt: 132 }))).toEqual([]);
    expect(faultsOf(priced(panels, { ...wide, bolt: 131 }))).toEqual([
      'finishedLength: a cut of 131⅝ in is longer than a whole piece of f (131 in)',
    ]);
  });
});

describe('bands', () => {
  const contrast = { id: 'b', role: 'face', width: 54, price: '3/yd', weight: '200 g/m2' };
  const banded = (edge: string, width: number) =>
    priced({ ...PANELS, bands: [{ edge, cloth: 'b', width }] }, {}, [contrast]);
  it.each([
    [
      'strips 81 in wide from 54 in cloth',
      'leading',
      40,
      'bands[0].width: a strip cut 81 in wide is wider than b (54 in)',
    ],
    ['a hem band of 90 in on a panel of 84', 'hem', 90, 'bands[0].width: 90 in leaves nothing of 84 in'],
    // Each panel is (216 - 12) / 2 = 102 flat.
    ['side bands that meet in the middle', 'both-sides', 51, 'bands[0].width: 51 in leaves nothing of 51 in'],
  ])('%s were priced', (_, edge, width, wanted) => {
    expect(faultsOf(banded(edge, width))).toEqual([wanted]);
  });
  it('26½ in finished is 54 in cut: it fits, and ½ in more does not', () => {
    expect(faultsOf(banded('leading', 26.5))).toEqual([]);
    expect(faultsOf(banded('leading', 27))).toHaveLength(1);
  });
  it('a band weighed nothing: 2 strips of 7 × 100 in, and 204 × 7 in along the hem, at 200 g/m²', () => {
    const grams = (edge: string) => {
      const tier = banded(edge, 3).treatments[0]?.tiers.good;
      const line = tier?.takeoff.find(({ cloth }) => cloth === 'b');
      expect(tier?.grams).toBeCloseTo(tier?.takeoff.reduce((sum, each) => sum + each.grams, 0) ?? 0, 9);
      return line?.grams;
    };
    const squareInch = 0.0254 ** 2;
    expect(grams('leading')).toBeCloseTo(2 * 7 * 100 * squareInch * 200, 6);
    expect(grams('both-sides')).toBeCloseTo(4 * 7 * 100 * squareInch * 200, 6);
    expect(grams('hem')).toBeCloseTo(204 * 7 * squareInch * 200, 6);
  });
  it('the working of the weight names the band', () => {
    const tier = banded('leading', 3).treatments[0]?.tiers.good;
    expect(tier?.working.find(({ id }) => id === 'weight')?.formula).toContain('b 181 g at 200 g/m²');
  });
});

/** Whatever the lining engine refuses, a job file is refused for beforehand, by path, fault and remedy. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sayFault } from '#shared/fault.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { fillCloth } from '#app/lining/cloth/resolve-cloth.ts';
import type { StackFaultCode } from '#app/lining/stack-fault.ts';

const flat = (share: number, count = 16): number[] => Array.from({ length: count }, () => share);

function jobWith(over: { cloth?: object; opening?: object; treatment?: object }): object {
  const panels = {
    name: 'Panels',
    kind: 'panels',
    heading: 'pinch-pleat',
    arrangement: 'pair',
    face: 'own',
    rodWidth: 60,
    finishedLength: 84,
    return: 3,
    overlap: 3,
    ...over.treatment,
  };
  const opening = { name: 'Window', width: 48, height: 60, treatments: [panels], ...over.opening };
  return {
    linenfold: 1,
    units: 'in',
    currency: 'USD',
    client: { name: 'Invented client' },
    cloth: [{ id: 'own', role: 'face', width: 54, ...over.cloth }],
    rooms: [{ name: 'Room', use: 'living', openings: [opening] }],
  };
}

const faults = (job: object): string => {
  const found = readJob(job);
  return found.ok ? '' : found.faults.map(sayFault).join('\n');
};

/** Null: no job file can bring it about, for it belongs to the meter's dialog or to two windows at once. */
const CASES: Readonly<
  Record<StackFaultCode, readonly (readonly [over: Parameters<typeof jobWith>[0], told: RegExp])[] | null>
> = {
  'no-face': [
    [{ treatment: { face: 'std-white' } }, /treatments\[0\]\.face: "std-white" is a lining; give a face cloth here/],
    [
      { treatment: { stacks: { good: { face: 'inter-med', behind: [] } } } },
      /good\.face: "inter-med" is an interlining/,
    ],
  ],
  'two-faces': [
    [{ treatment: { stacks: { good: { behind: ['own'] } } } }, /behind\[0\]: "own" is a face; give linings/],
  ],
  'impossible-optics': [
    [{ cloth: { transmittance: 0.6, reflectance: 0.5 } }, /cloth\[0\]\.transmittance: .*more than 1; .*sum to 1/],
    [{ cloth: { transmittance: 1.2 } }, /cloth\[0\]\.transmittance: is above 1/],
    [{ cloth: { uv: { transmittance: 0.6, reflectance: 0.5 } } }, /cloth\[0\]\.uv: .*more than 1/],
    [{ cloth: { solar: { reflectance: -0.1 } } }, /cloth\[0\]\.solar\.reflectance: is below 0/],
    [{ cloth: { spectra: { transmittance: flat(0.7), reflectance: flat(0.5) } } }, /cloth\[0\]\.spectra: .* at 400 nm/],
    [
      { cloth: { transmittance: 0.6, reflectance: 0.1, streetReflectance: { visible: 0.5 } } },
      /streetReflectance\.visible/,
    ],
  ],
  'unknown-glass': [
    [{ opening: { glazing: 'quadruple' } }, /glazing: "quadruple" is not known here; give one of single/],
  ],
  'missing-spectrum': [
    [
      { cloth: { spectra: { transmittance: flat(0.3, 15), reflectance: flat(0.5) } } },
      /spectra\.transmittance: does not have 16 bands/,
    ],
    [{ cloth: { spectra: { transmittance: flat(0.3) } } }, /spectra\.reflectance: is missing/],
  ],
  'impossible-colour': [
    [{ cloth: { colour: 'beige' } }, /cloth\[0\]\.colour: is not a colour; give it as "#c9b79a"/],
    [{ cloth: { shade: 'cream' } }, /cloth\[0\]\.shade: is not a shade/],
  ],
  'impossible-number': [
    [{ cloth: { thickness: 0 } }, /cloth\[0\]\.thickness: is not above 0/],
    [
      { cloth: { shrinkage: { length: 1, width: 0 } } },
      /cloth\[0\]\.shrinkage\.length: is all of it; give a share below 1/,
    ],
    [{ cloth: { transmittance: 0.2, reflectance: 0.3, transmittanceWithin: 1 } }, /transmittanceWithin: is all of it/],
  ],
  'impossible-reading': null,
  'other-window': null,
};

describe('a job file that the lining engine would refuse', () => {
  it.each(
    Object.entries(CASES).flatMap(([code, cases]) => (cases ?? []).map(([over, told]) => [code, over, told] as const)),
  )('%s: %j', (_code, over, told) => {
    expect(faults(jobWith({}))).toBe('');
    expect(faults(jobWith(over))).toMatch(told);
  });

  it('and a cloth that the file is not refused for is never refused by the engine', () => {
    const share = fc.integer({ min: 0, max: 100 }).map((value) => value / 100);
    const some = (shape: Record<string, fc.Arbitrary<number>>) => fc.record(shape, { requiredKeys: [] });
    const told = fc.record(
      {
        family: fc.constantFrom('sheer', 'silk', 'velvet'),
        transmittance: share,
        reflectance: share,
        uv: some({ transmittance: share, reflectance: share }),
        solar: some({ transmittance: share, reflectance: share }),
        streetReflectance: some({ visible: share, uv: share, solar: share }),
        transmittanceWithin: share,
        shrinkage: fc.record({ length: share, width: share }),
        colour: fc.constantFrom('#ffffff', '#000000', '#c9b79a'),
      },
      { requiredKeys: [] },
    );
    let kept = 0;
    fc.assert(
      fc.property(told, (cloth) => {
        const read = readJob(jobWith({ cloth }));
        if (!read.ok) return;
        kept += 1;
        const filled = fillCloth(read.job.cloth[0]!);
        for (const band of ['visible', 'uv', 'solar'] as const) {
          const { transmittance, reflectance } = filled[band];
          expect(transmittance + Math.max(reflectance, filled.street[band])).toBeLessThanOrEqual(1 + 1e-9);
        }
      }),
      { seed: 41, numRuns: 400 },
    );
    expect(kept).toBeGreaterThan(40);
  });

  it('one share of a pair counts, and the other is typical of the family as far as light is left', () => {
    const read = readJob(jobWith({ cloth: { family: 'sheer', transmittance: 0.9 } }));
    if (!read.ok) throw new Error('it is read');
    const { visible, assumed } = fillCloth(read.job.cloth[0]!);
    expect(visible.transmittance).toBe(0.9);
    expect(visible.reflectance).toBeCloseTo(0.1, 9);
    expect(assumed).toContain('reflectance');
    expect(assumed).not.toContain('transmittance');
    expect(read.warnings.map(({ path }) => path)).toContain('cloth[0].reflectance');
  });
});

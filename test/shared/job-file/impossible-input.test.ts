/** Input that cannot be, told by field: what does not fit inside its frame, and half a repeat. Common practice. */
import { describe, expect, it } from 'vitest';
import { readJob } from '#shared/job-file/read-job.ts';

type Fields = Readonly<Record<string, unknown>>;

function jobOf(treatment: Fields, cloth: Fields = {}): unknown {
  const opening = {
    name: 'Window',
    width: 60,
    height: 60,
    sill: 20,
    treatments: [{ name: 'T', face: 'f', ...treatment }],
  };
  return {
    linenfold: 1,
    units: 'in',
    currency: 'USD',
    client: { name: 'Invented client' },
    priceBook: 'example',
    cloth: [{ id: 'f', role: 'face', width: 54, price: '10/yd', ...cloth }],
    rooms: [{ name: 'Room', use: 'living', openings: [opening] }],
  };
}

function told(given: unknown): { faults: string[]; warnings: string[] } {
  const read = readJob(given);
  const say = ({ path }: { path: string }, words: string) => `${path.replace(/^.*treatments\[0\]\./, '')}: ${words}`;
  return {
    faults: read.ok ? [] : read.faults.map((fault) => say(fault, fault.wrong)),
    warnings: read.ok ? read.warnings.map((warning) => say(warning, warning.says)) : [],
  };
}

const PANELS = { kind: 'panels', heading: 'pinch-pleat', arrangement: 'pair', finishedLength: 58, overlap: 3.5 };
const INSIDE = { mount: { where: 'inside' } };

describe('inside a frame', () => {
  it('a rod of 90 in with returns inside 60 was priced', () => {
    expect(told(jobOf({ ...PANELS, ...INSIDE, rodWidth: 90, return: 3.5 })).faults).toEqual([
      'rodWidth: 90 in does not fit inside an opening of 60 in',
      'return: is given inside a frame',
    ]);
  });
  it('one side of a return is a return too', () => {
    const given = { ...PANELS, ...INSIDE, rodWidth: 60, return: { left: 0, right: 2 } };
    expect(told(jobOf(given)).faults).toEqual(['return: is given inside a frame']);
  });
  it('a finished shade of 66 in inside 60 was priced', () => {
    const shade = { kind: 'roman-shade', style: 'flat', ...INSIDE };
    expect(told(jobOf({ ...shade, size: { basis: 'finished', width: 66, length: 60 } })).faults).toEqual([
      'size.width: 66 in does not fit inside an opening of 60 in',
    ]);
    expect(told(jobOf({ ...shade, size: { basis: 'finished', width: '151 cm', length: 60 } })).faults).toEqual([]);
  });
  it('readings decide over the opening, and are told where even the narrowest is wider', () => {
    const shade = (widths: readonly number[]) =>
      told(jobOf({ kind: 'roman-shade', style: 'flat', ...INSIDE, size: { basis: 'opening', widths, lengths: [60] } }));
    expect(shade([60, 60.25])).toEqual({ faults: [], warnings: [] });
    expect(shade([62, 62.25]).warnings).toEqual([
      'size.widths: The narrowest reading, 62 in, is wider than the opening (60 in): measure again.',
    ]);
  });
  it.each(['valance', 'cornice'])('a %s of 66 in inside 60', (kind) => {
    const found = told(jobOf({ kind, style: 'tailored', shape: 'straight', ...INSIDE, width: 66, finishedLength: 14 }));
    expect(found.faults).toContain('width: 66 in does not fit inside an opening of 60 in');
  });
  it('in front of the wall it may be as wide as it likes', () => {
    expect(told(jobOf({ ...PANELS, rodWidth: 90, return: 3.5 })).faults).toEqual([]);
    expect(told(jobOf({ ...PANELS, ...INSIDE, rodWidth: 60 })).faults).toEqual([]);
  });
});

describe('half a repeat', () => {
  const panels = { ...PANELS, rodWidth: 72, return: 3.5 };
  it('a horizontal repeat alone was taken for plain cloth', () => {
    expect(told(jobOf(panels, { repeat: { horizontal: 27 } })).faults).toEqual([
      'cloth[0].repeat.vertical: is missing, yet the pattern repeats across',
    ]);
  });
  it('a stripe along the cloth says that nothing matches up and down', () => {
    expect(told(jobOf(panels, { repeat: { horizontal: 27, match: 'none' } })).faults).toEqual([]);
    expect(told(jobOf(panels, { repeat: { horizontal: 27, vertical: 27 } })).faults).toEqual([]);
  });
});

/** Panels against their room, and what they hang on: told by field, priced all the same. Common practice. */
import { describe, expect, it } from 'vitest';
import { readJob } from '#shared/job-file/read-job.ts';

type Fields = Readonly<Record<string, unknown>>;
const PAIR = { heading: 'pinch-pleat', arrangement: 'pair', rodWidth: 72, finishedLength: 84, return: 3.5, overlap: 0 };

function told(treatment: Fields, room: Fields = {}): { faults: string[]; warnings: string[] } {
  const treatments = [
    { name: 'T', face: 'f', kind: 'panels', mount: { where: 'wall', above: 4 }, ...PAIR, ...treatment },
  ];
  const read = readJob({
    linenfold: 1,
    units: 'in',
    currency: 'USD',
    client: { name: 'Invented client' },
    priceBook: 'example',
    cloth: [{ id: 'f', role: 'face', width: 54, price: '10/yd' }],
    rooms: [
      {
        name: 'Room',
        use: 'living',
        ...room,
        openings: [{ name: 'Window', width: 60, height: 60, sill: 20, treatments }],
      },
    ],
  });
  const say = ({ path }: { path: string }, words: string) => `${path.replace(/^.*treatments\[0\]\./, '')}: ${words}`;
  return {
    faults: read.ok ? [] : read.faults.map((fault) => say(fault, fault.wrong)),
    warnings: read.ok ? read.warnings.map((warning) => say(warning, warning.says)) : [],
  };
}

describe('panels in their room', () => {
  it('a hem 26 in below the floor was priced without a word', () => {
    expect(told({ finishedLength: 110 }).warnings).toEqual([
      'finishedLength: The hem would come 26 in below the floor: where it is to lie there, find the length from the fixing, to a puddle.',
    ]);
    expect(told({ finishedLength: 91 }).warnings).toEqual([]);
    expect(told({ finishedLength: undefined, hang: { fixing: 90, to: 'full-puddle' } }).warnings).toEqual([]);
  });
  it('a rod above the ceiling was priced without a word', () => {
    expect(told({ mount: { where: 'wall', above: 20 } }, { ceiling: 96 }).warnings).toEqual([
      'mount.above: The rod would stand at 100 in, above the ceiling at 96 in.',
    ]);
    expect(told({}, { ceiling: 96 }).warnings).toEqual([]);
  });
  it('a café tier to the floor was priced without a word', () => {
    const floor = { cafe: true, finishedLength: undefined, hang: { fixing: 50, to: 'floor' } };
    expect(told(floor).warnings).toEqual([
      'cafe: A café tier covers the lower part of the window: it ends at the sill or just below it, not at the floor.',
    ]);
    expect(told({ cafe: true, finishedLength: 66 }).warnings).toEqual([
      'cafe: A café tier covers the lower part of the window: 66 in is as long as the window is high.',
    ]);
    expect(told({ cafe: true, finishedLength: 32 }).warnings).toEqual([]);
  });
});

describe('what they hang on', () => {
  it('an overlap of 3 1/2 in on rings was priced without a word: rings butt', () => {
    expect(told({ rod: 'rings', overlap: 3.5 }).warnings).toEqual([
      'overlap: Panels on rings butt, with no more than an inch of overlap: 3 1/2 in needs a track with a master arm.',
    ]);
    expect(told({ rod: 'rings', overlap: 1 }).warnings).toEqual([]);
    expect(told({ rod: 'track', overlap: 3.5 }).warnings).toEqual([]);
  });
  it('an overlap on a rod pocket was priced without a word', () => {
    expect(told({ heading: 'rod-pocket', overlap: 3.5 }).warnings).toEqual([
      'overlap: Panels on a rod pocket do not overlap: 3 1/2 in is taken as written.',
    ]);
  });
  it('rings are for headings that have hooks, and a motor for a track', () => {
    expect(told({ heading: 'grommet', rod: 'rings' }).faults).toEqual(['rod: is given for a grommet heading']);
    expect(told({ heading: 'grommet', motor: { at: 'left' } }).faults).toEqual(['motor: is given where no track is']);
    expect(told({ rod: 'rings', motor: { at: 'left' } }).faults).toEqual(['motor: is given where no track is']);
    expect(told({ rod: 'track', motor: { at: 'left' } }).faults).toEqual([]);
    expect(told({ heading: 'wave', motor: { at: 'right' } }).faults).toEqual([]);
  });
});

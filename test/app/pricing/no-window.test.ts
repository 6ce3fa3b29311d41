/** A bed or a bath stands in a room without a window: no size of an opening is asked, and none would change a figure. */
import { describe, expect, it } from 'vitest';
import { priceJob } from '#app/pricing/price-job.ts';
import { writeResult } from '#app/pricing/write-result.ts';
import { drawRoom } from '#app/drawing/draw-room.ts';
import { describeDrawn } from '#app/drawing/describe-drawn.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { sayFault } from '#shared/fault.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { wordsOf } from '../drawing/read-drawing.ts';

const SKIRT = {
  name: 'Skirt',
  kind: 'bed-skirt',
  style: 'gathered',
  face: 'reed',
  bed: { width: 60, length: 80 },
  drop: 16,
} as const;
const CURTAIN = {
  name: 'Curtain',
  kind: 'shower-curtain',
  face: 'reed',
  finishedWidth: 72,
  finishedLength: 75,
} as const;

function read(treatments: readonly object[], sizes: object) {
  const job = readJob({
    linenfold: 1,
    units: 'in',
    currency: 'USD',
    client: { name: 'Invented' },
    priceBook: 'example',
    cloth: [{ id: 'reed', role: 'face', width: 54, colour: '#a9a58f', price: '58.50/yd' }],
    rooms: [{ name: 'Room', use: 'bedroom', ceiling: 96, openings: [{ name: 'Place', ...sizes, treatments }] }],
  });
  if (!job.ok) throw new Error(job.faults.map(sayFault).join('\n'));
  return job.job;
}

describe.each([
  ['a bed skirt', [SKIRT]],
  ['a shower curtain', [CURTAIN]],
  ['both', [SKIRT, CURTAIN]],
] as const)('%s', (_name, treatments) => {
  it('is priced without sizes as with any', () => {
    const without = read(treatments, {});
    const withSizes = read(treatments, { width: 60, height: 54, sill: 30 });
    expect(writeResult(without, priceJob(without))).toEqual(writeResult(withSizes, priceJob(withSizes)));
  });

  it('is drawn without a window', () => {
    const job = read(treatments, {});
    const result = priceJob(job);
    const opening = job.rooms[0]!.openings[0]!;
    const drawing = drawRoom({
      room: {
        ...job.rooms[0]!,
        openings: [
          {
            ...opening,
            treatments: opening.treatments.map((treatment, index) =>
              describeDrawn(treatment, result.treatments[index]!.tiers.good, (id) => resolveCloth(id, job.cloth)),
            ),
          },
        ],
      },
      width: 700,
      height: 250,
      units: 'in',
      selected: opening.key,
      detail: 'screen',
    });
    expect(JSON.stringify(drawing.shapes)).not.toContain('"glass-');
    expect(wordsOf(drawing)).toContain('Place');
  });
});

/** Hours that the decorator enters for her work: told, and priced by the hour where a rate is not set. Worked by hand. */
import { describe, expect, it } from 'vitest';
import { priceJob } from '#app/pricing/price-job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { jobOf } from '../estimating/panels-case.ts';

function priced(labour: object) {
  const job = { ...jobOf({ panels: { return: 3.5, overlap: 3.5 } }), priceBook: { labour } };
  const [room] = job.rooms;
  const treatment = { ...room!.openings[0]!.treatments[0]!, stacks: { good: { behind: [] } } };
  const rooms = [{ ...room!, openings: [{ ...room!.openings[0]!, treatments: [treatment] }] }];
  const read = readJob({ ...job, rooms });
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const result = priceJob(read.job);
  const { good } = result.treatments[0]!.tiers;
  return {
    hours: good.working.find(({ id }) => id === 'hours'),
    making: good.price?.lines.find(({ label }) => label.startsWith('Making')),
    missing: result.missingRates.map(({ rate }) => rate),
  };
}

const HOURS = { perWidth: { 'pinch-pleat': 1.5 }, installPerRod: '0.75' };

describe('hours', () => {
  it('were accepted and read by nothing: 4 × 1.5 + 1 × 0.75 = 6.75', () => {
    const { hours } = priced({ hour: '50.00', hours: HOURS });
    expect([hours?.formula, hours?.value]).toEqual(['making 4 × 1.5 + putting up 1 × 0.75', '6.75 h']);
  });
  it('price what has no rate of its own: 4 × 1.5 × 50 = 300', () => {
    const { making, missing } = priced({ hour: '50.00', hours: HOURS });
    expect(making?.amount).toBe(30000);
    expect(missing).not.toContain('labour.installPerRod');
  });
  it('a rate of its own stands over them', () => {
    const book = { hour: '50.00', hours: HOURS, perWidth: { 'pinch-pleat': '38.00' } };
    expect(priced(book).making?.amount).toBe(15200);
    expect(priced(book).hours?.value).toBe('6.75 h');
  });
  it('without the price of an hour a rate is still missing', () => {
    expect(priced({ hours: HOURS }).missing).toContain('labour.perWidth.pinch-pleat');
  });
  it('none entered, none told', () => {
    expect(priced({ hour: '50.00' }).hours).toBeUndefined();
  });
  it('names the work that has none', () => {
    const { hours } = priced({ hour: '50.00', hours: { perWidth: HOURS.perWidth } });
    expect([hours?.value, hours?.rests]).toEqual([
      '6.0 h',
      'price book: hours of each piece of work; none are entered for putting up',
    ]);
  });
});

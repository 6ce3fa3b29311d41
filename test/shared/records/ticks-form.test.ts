/** Treatments are kept in ticks in the shape of their wire schema: nothing is lost either way. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wirePanels } from '#shared/job-file/wire-panels.ts';
import { LONGEST } from '#shared/length.ts';
import { findUnfit, ticksFormOf, wireFormOf } from '#shared/records/ticks-form.ts';

const panels = {
  name: 'Panels',
  kind: 'panels',
  heading: 'rod-pocket',
  arrangement: 'pair-stationary',
  mount: { where: 'wall', above: 4 },
  face: 'face',
  bay: { runs: [24, '5 ft', 24.5], turns: [45, 45], projection: '3 1/2' },
  hang: { fixing: [92, 91.75], headingBelow: 0.5, to: 'floor' },
  return: { left: 3.5, right: 0 },
  bands: [{ edge: 'hem', cloth: 'band', width: 3 }],
  fullness: 2.25,
  quantity: 2,
};

describe('the ticks form', () => {
  const kept = ticksFormOf(wirePanels, panels, 'in') as Record<string, unknown>;

  it('turns every length into ticks, however deep, and nothing else', () => {
    expect(kept).toMatchObject({
      mount: { where: 'wall', above: 4 * 8128 },
      bay: { runs: [24 * 8128, 60 * 8128, 24.5 * 8128], turns: [45, 45], projection: 3.5 * 8128 },
      hang: { fixing: [92 * 8128, 91.75 * 8128], headingBelow: 4064, to: 'floor' },
      return: { left: 3.5 * 8128, right: 0 },
      bands: [{ edge: 'hem', cloth: 'band', width: 3 * 8128 }],
      fullness: 2.25,
      quantity: 2,
    });
    expect(findUnfit(wirePanels, kept)).toEqual([]);
  });

  it('one number for a return stays one number', () => {
    expect(ticksFormOf(wirePanels, { return: 3.5 }, 'in')).toEqual({ return: 28448 });
  });

  it('comes back as the same measures in any unit', () => {
    for (const unit of ['in', 'cm', 'mm'] as const)
      expect(ticksFormOf(wirePanels, wireFormOf(wirePanels, kept, unit), unit)).toEqual(kept);
  });

  it('what is not measured yet is left out of the wire form', () => {
    expect(
      wireFormOf(wirePanels, { rodWidth: null, finishedLength: 8128, mount: { where: 'wall', above: null } }, 'in'),
    ).toEqual({
      finishedLength: 1,
      mount: { where: 'wall' },
    });
  });

  it.each([
    ['a fraction of a tick', { rodWidth: 1.5 }, ['rodWidth']],
    ['a length as text', { rodWidth: '84 1/2' }, ['rodWidth']],
    ['below zero, deep down', { bands: [{ width: -1 }] }, ['bands[0].width']],
    ['beyond 100 m', { rodWidth: LONGEST + 1 }, ['rodWidth']],
    ['an unknown key', { colour: 'red' }, ['colour']],
    ['an unknown heading', { heading: 'velcro' }, ['heading']],
    ['a list where one thing belongs', { mount: [] }, ['mount']],
  ])('refuses %s', (_, wrong, paths) => {
    expect(findUnfit(wirePanels, wrong)).toEqual(paths);
  });

  it('any length in ticks survives the way through any unit', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: LONGEST }),
        fc.constantFrom('in' as const, 'cm' as const, 'mm' as const),
        (ticks, unit) => {
          const form = { rodWidth: ticks, bay: { runs: [ticks, ticks], turns: [90], projection: ticks } };
          expect(ticksFormOf(wirePanels, wireFormOf(wirePanels, form, unit), unit)).toEqual(form);
        },
      ),
      { seed: 4, numRuns: 500 },
    );
  });
});

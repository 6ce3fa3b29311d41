import { describe, expect, it } from 'vitest';
import { checkOpening, checkTreatment, clearanceOf } from '../../../renderer/state/check-measures.ts';
import { suggestMake } from '../../../renderer/state/suggest-make.ts';
import { inches, sampleMake, sampleOpening, sampleRoom, sampleTreatment } from './sample-document.ts';

const NONE = {
  mountAbove: null,
  rodWidth: null,
  finishedLength: null,
  returnLeft: null,
  returnRight: null,
  overlap: null,
} as const;

describe('floor clearance', () => {
  it.each([
    ['wall', sampleMake(), 0.5],
    ['inside, down to the sill', sampleMake({ mountWhere: 'inside', finishedLength: inches(54) }), 26.5],
    ['ceiling', sampleMake({ mountWhere: 'ceiling', finishedLength: inches(107) }), 1],
    ['trailing', sampleMake({ finishedLength: inches(86.5) }), -2],
  ])('%s', (_name, make, clearance) => {
    const found = clearanceOf(sampleRoom(), sampleOpening(), sampleTreatment({ make })) ?? Number.NaN;
    expect(found / inches(1)).toBe(clearance);
  });
});

describe('unlikely and impossible measures', () => {
  it.each([
    [
      'a drop of 24 in to the floor',
      sampleMake({ finishedLength: inches(24) }),
      'finishedLength',
      /window shows below/,
    ],
    [
      'a trail of a foot and a half',
      sampleMake({ finishedLength: inches(102.5) }),
      'finishedLength',
      /would trail 18 in/,
    ],
    ['neither sill nor floor', sampleMake({ finishedLength: inches(70) }), 'finishedLength', /neither sill nor floor/],
    [
      'a rod narrower than the opening',
      sampleMake({ rodWidth: inches(48) }),
      'rodWidth',
      /Narrower than the opening by 12 in/,
    ],
    [
      'a rod that does not fit inside',
      sampleMake({ mountWhere: 'inside', rodWidth: inches(61) }),
      'rodWidth',
      /does not fit/,
    ],
    ['a rod above the ceiling', sampleMake({ mountAbove: inches(30) }), 'mountAbove', /above the ceiling/],
  ])('%s', (_name, make, field, words) => {
    const notes = checkTreatment(sampleRoom(), sampleOpening(), sampleTreatment({ make }), 'in');
    expect(notes.find((note) => note.field === field)?.says).toMatch(words);
  });

  it('says nothing of panels as they should be', () => {
    expect(checkTreatment(sampleRoom(), sampleOpening(), sampleTreatment(), 'in')).toEqual([]);
    expect(checkOpening(sampleRoom(), sampleOpening(), 'in')).toEqual([]);
  });

  it('calls a window above the ceiling a fault', () => {
    const notes = checkOpening(sampleRoom(), sampleOpening({ height: inches(90) }), 'in');
    expect(notes).toMatchObject([{ field: 'height', level: 'fault' }]);
  });
});

describe('what is usual (common practice)', () => {
  it('fills in rod, length, returns and overlap from the window', () => {
    const make = suggestMake(sampleRoom(), sampleOpening(), sampleTreatment({ make: sampleMake(NONE) }), 'in');
    expect(make).toEqual({
      mountAbove: inches(4),
      rodWidth: inches(72),
      finishedLength: inches(84),
      returnLeft: inches(3.5),
      returnRight: inches(3.5),
      overlap: inches(3.5),
    });
  });

  it('leaves alone whatever is written', () => {
    const make = sampleMake({ rodWidth: inches(80) });
    expect(suggestMake(sampleRoom(), sampleOpening(), sampleTreatment({ make }), 'in')).toMatchObject({
      rodWidth: inches(80),
      finishedLength: make.finishedLength,
    });
  });

  it('gives an inside mount no returns and the height of the opening', () => {
    const make = sampleMake({ ...NONE, mountWhere: 'inside', arrangement: 'one-way' });
    expect(suggestMake(sampleRoom(), sampleOpening(), sampleTreatment({ make }), 'in')).toEqual({
      mountAbove: 0,
      rodWidth: inches(60),
      finishedLength: inches(54),
      returnLeft: 0,
      returnRight: 0,
    });
  });
});

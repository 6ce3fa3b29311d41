import { describe, expect, test } from 'vitest';
import { completePractice } from '#main/desk/complete-practice.ts';
import { readPractice } from '#shared/job-file/read-practice.ts';
import { wirePractice } from '#shared/job-file/wire-practice.ts';
import { defaultPractice } from '#shared/practice-defaults.ts';

describe.each(['in', 'cm', 'mm'] as const)('the practice of an imported job in %s', (unit) => {
  test('says every setting itself, so that no other practice shows through', () => {
    expect(Object.keys(completePractice({}, unit)).sort()).toEqual(Object.keys(wirePractice.shape).sort());
  });

  test('is the default where the file says nothing, in any unit that the project may get', () => {
    const complete = wirePractice.parse(completePractice({}, unit));
    expect(readPractice(complete, defaultPractice(unit), unit)).toEqual(defaultPractice(unit));
  });

  test('keeps what the file says', () => {
    expect(completePractice({ bottomHem: 16, repeatRule: 'add-one' }, unit)).toMatchObject({
      bottomHem: `16 ${unit}`,
      repeatRule: 'add-one',
    });
  });
});

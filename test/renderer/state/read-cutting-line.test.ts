import { describe, expect, it } from 'vitest';
import { lengthFrom } from '#shared/length.ts';
import { readFlawLine, readPieceLine } from '../../../renderer/state/read-cutting-line.ts';

const yard = (value: number) => lengthFrom(value, 'yd');

describe('a bad stretch as it is typed', () => {
  it('"20 to 21 1/2" is in yards where cloth is bought by the yard', () => {
    expect(readFlawLine('20', '21 1/2', 'in')).toEqual({ ok: true, line: { from: yard(20), to: yard(21.5) } });
  });
  it('takes inches where they are written, and metres elsewhere', () => {
    expect(readFlawLine('14 in', '1 yd', 'in')).toEqual({
      ok: true,
      line: { from: lengthFrom(14, 'in'), to: yard(1) },
    });
    expect(readFlawLine('18,5', '19,9', 'cm')).toEqual({
      ok: true,
      line: { from: lengthFrom(18.5, 'm'), to: lengthFrom(19.9, 'm') },
    });
  });
  it.each([
    ['nothing written', '', '', ['from', 'to']],
    ['no number', 'twenty', '21', ['from']],
    ['it ends before it begins', '21', '20', ['to']],
    ['negative', '-2', '20', ['from']],
  ])('%s: told at its field, with what would be right', (_, from, to, fields) => {
    const read = readFlawLine(from, to, 'in');
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(Object.keys(read.wrong)).toEqual(fields);
    for (const says of Object.values(read.wrong)) expect(says.length).toBeGreaterThan(20);
  });
});

describe('a piece of cloth as it is typed', () => {
  const given = { unit: 'in', needed: true, most: lengthFrom(54, 'in'), repeat: lengthFrom(27, 'in') } as const;
  it('a remnant with all that is known of it', () => {
    expect(readPieceLine({ length: '2 1/4', width: '30', startsAt: '10' }, given)).toEqual({
      ok: true,
      line: { length: yard(2.25), width: lengthFrom(30, 'in'), startsAt: lengthFrom(10, 'in') },
    });
  });
  it.each([
    ['no length', { length: '', width: '', startsAt: '' }, 'length'],
    ['no cloth at all', { length: '0', width: '', startsAt: '' }, 'length'],
    ['wider than its cloth', { length: '2', width: '60', startsAt: '' }, 'width'],
    ['a start beyond the repeat', { length: '2', width: '', startsAt: '27' }, 'startsAt'],
  ])('%s', (_, written, field) => {
    const read = readPieceLine(written, given);
    expect(read.ok ? [] : Object.keys(read.wrong)).toEqual([field]);
  });
  it('a bolt may be as long as it takes', () => {
    const read = readPieceLine({ length: '', width: '', startsAt: '' }, { ...given, needed: false });
    expect(read).toEqual({ ok: true, line: { length: null, width: null, startsAt: null } });
  });
});

import { describe, expect, it } from 'vitest';
import { codeFor } from '../../../renderer/state/code-for.ts';
import { tellDeskFault } from '../../../renderer/state/desk-fault.ts';
import { editDocument } from '../../../renderer/state/edit-document.ts';
import { numbersOf } from '../../../renderer/state/marks.svelte.ts';
import { readAddress, writeAddress } from '../../../renderer/state/route.svelte.ts';
import { sayCount, sayDay } from '../../../renderer/words/count-words.ts';
import { sampleDocument } from './sample-document.ts';

describe('addresses', () => {
  it.each([
    ['', { place: 'clients', id: null }],
    ['#/cloth', { place: 'cloth', id: null }],
    ['#/practice/rates', { place: 'practice', id: 'rates' }],
    ['#/project/p', { place: 'project', id: 'p', sheet: 'worksheet', opening: null }],
    ['#/project/p/o', { place: 'project', id: 'p', sheet: 'worksheet', opening: 'o' }],
    ['#/project/p/proposal', { place: 'project', id: 'p', sheet: 'proposal', opening: null }],
    ['#/nowhere', { place: 'clients', id: null }],
  ] as const)('"%s" names a place and back', (hash, spot) => {
    expect(readAddress(hash)).toEqual(spot);
    if (hash !== '' && hash !== '#/nowhere') expect(writeAddress(spot)).toBe(hash);
  });
});

describe('an edit laid over a document', () => {
  it.each([
    ['room', { entity: 'room', id: 'room', changes: { name: 'Study' } }, 'rooms'],
    ['opening', { entity: 'opening', id: 'opening', changes: { notes: 'a handle' } }, 'rooms'],
    ['treatment', { entity: 'treatment', id: 'treatment', changes: { quantity: 2 } }, 'rooms'],
    ['cloth', { entity: 'cloth', id: 'cloth', changes: { price: '40.00/yd' } }, 'cloth'],
  ] as const)('changes the %s alone', (_name, edit, part) => {
    const before = sampleDocument();
    const after = editDocument(before, edit);
    expect(after[part]).not.toEqual(before[part]);
    expect({ ...after, [part]: null }).toEqual({ ...before, [part]: null });
    expect(before).toEqual(sampleDocument());
  });

  it('of another record changes nothing', () => {
    const before = sampleDocument();
    expect(editDocument(before, { entity: 'treatment', id: 'gone', changes: { quantity: 2 } })).toEqual(before);
  });
});

describe('codes of new cloth', () => {
  it.each([
    ['Larch stripe', [], 'larch-stripe'],
    ['Larch stripe', ['larch-stripe'], 'larch-stripe-2'],
    ['Édredon  No. 5', [], 'edredon-no-5'],
    ['***', [], 'cloth'],
  ])('%s', (name, taken, code) => {
    expect(codeFor(name, taken)).toBe(code);
  });
});

describe('which number a step of the working explains', () => {
  it.each([
    ['flat-width', ['fullness', 'rodWidth']],
    ['layer-2-cut', ['order-2']],
    ['price-3', ['price']],
    ['something new', []],
  ])('%s', (step, numbers) => {
    expect(numbersOf(step)).toEqual(numbers);
  });
});

describe('faults of the desk in words', () => {
  it('says field, fault and remedy', () => {
    const fault = tellDeskFault({
      code: 'BAD_INPUT',
      data: { faults: [{ path: 'name', wrong: 'is empty', right: 'give it a name' }] },
    });
    expect([fault.says, fault.remedy]).toEqual(['name is empty.', 'Give it a name.']);
  });
  it('knows a portfolio that cannot be opened', () => {
    const data = { trouble: 'newer', file: '/p', says: 'It is newer.', remedy: 'Update.' };
    expect(tellDeskFault({ code: 'PORTFOLIO_UNAVAILABLE', data }).trouble).toEqual(data);
  });
  it('never shows what our own errors say', () => {
    const fault = tellDeskFault(new Error('undefined is not a function'));
    expect(fault.says).not.toContain('undefined');
    expect(fault.details).toContain('undefined is not a function');
  });
});

describe('counts and days in words', () => {
  it('says them as people do', () => {
    expect([0, 1, 4].map((count) => sayCount(count, 'room', 'rooms'))).toEqual(['no rooms', 'one room', '4 rooms']);
    const now = new Date(2026, 10, 25, 10);
    expect(sayDay(new Date(2026, 10, 25, 1).toISOString(), now)).toBe('today');
    expect(sayDay(new Date(2026, 10, 24, 23).toISOString(), now)).toBe('yesterday');
  });
});

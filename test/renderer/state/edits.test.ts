import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Edit } from '../../../renderer/state/edit.ts';
import { Edits, PAUSE } from '../../../renderer/state/edits.svelte.ts';
import type { Sender } from '../../../renderer/state/edits.svelte.ts';
import { makeKeptEdits } from '../../../renderer/state/kept-edits.ts';

/** A desk that writes down what it is asked, and refuses when told to. */
class Desk implements Sender {
  readonly asked: string[] = [];
  refuse: Error | null = null;

  async sendEdit(edit: Edit): Promise<void> {
    if (this.refuse !== null) throw this.refuse;
    this.asked.push(`${edit.entity} ${edit.id} ${JSON.stringify(edit.changes)}`);
  }
  async sendRemoval(entity: string, id: string): Promise<void> {
    this.asked.push(`remove ${entity} ${id}`);
  }
  async sendRestoring(entity: string, id: string): Promise<void> {
    this.asked.push(`restore ${entity} ${id}`);
  }
}

class Shelf {
  readonly kept = new Map<string, string>();
  getItem(key: string): string | null {
    return this.kept.get(key) ?? null;
  }
  setItem(key: string, value: string): void {
    this.kept.set(key, value);
  }
  removeItem(key: string): void {
    this.kept.delete(key);
  }
}

function name(text: string): Edit {
  return { entity: 'room', id: 'r', changes: { name: text } };
}

describe('edits on their way to the desk', () => {
  let desk: Desk;
  let shelf: Shelf;
  let edits: Edits;
  let shown: string[];
  beforeEach(() => {
    vi.useFakeTimers();
    desk = new Desk();
    shelf = new Shelf();
    edits = new Edits(desk, makeKeptEdits(shelf));
    shown = [];
    edits.follow({
      apply: (edit) => shown.push(JSON.stringify(edit.changes)),
      reload: async () => void shown.push('read again'),
    });
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('two that change places are one step, undone and done again together', async () => {
    const place = (id: string, position: number): Edit => ({ entity: 'room', id, changes: { position } });
    edits.changeTogether(
      [
        { after: place('a', 1), before: place('a', 0) },
        { after: place('b', 0), before: place('b', 1) },
      ],
      'rooms moved',
    );
    await edits.flush();
    await edits.undo();
    await edits.redo();
    const there = ['room a {"position":1}', 'room b {"position":0}'];
    const back = ['room b {"position":1}', 'room a {"position":0}'];
    expect(desk.asked).toEqual([...there, ...back, ...there]);
    expect(edits.nextUndo).toBe('rooms moved');
  });

  it('shows each key at once and sends the last after a short pause', async () => {
    edits.change(name('N'), name(''), 'name');
    edits.change(name('Nu'), name('N'), 'name');
    expect(shown).toEqual(['{"name":"N"}', '{"name":"Nu"}']);
    expect(desk.asked).toEqual([]);
    await vi.advanceTimersByTimeAsync(PAUSE);
    expect(desk.asked).toEqual(['room r {"name":"Nu"}']);
    expect(edits.saving.is).toBe('saved');
  });

  it('sends at once when the field is left', async () => {
    edits.change(name('Nu'), name(''), 'name');
    edits.leaveField();
    await vi.advanceTimersByTimeAsync(0);
    expect(desk.asked).toHaveLength(1);
  });

  it('undoes the typing of one field as one step, and redoes it', async () => {
    edits.change(name('N'), name('old'), 'name');
    edits.change(name('Nu'), name('N'), 'name');
    edits.leaveField();
    edits.change(name('Nur'), name('Nu'), 'name');
    await edits.undo();
    expect(shown.at(-1)).toBe('{"name":"Nu"}');
    await edits.undo();
    expect(shown.at(-1)).toBe('{"name":"old"}');
    expect(edits.canUndo).toBe(false);
    await edits.redo();
    await edits.redo();
    expect(shown.at(-1)).toBe('{"name":"Nur"}');
    expect(desk.asked.at(-1)).toBe('room r {"name":"Nur"}');
  });

  it('undoes what was added as one step, in reverse order', async () => {
    await edits.add('Window added', async (added) => {
      added('opening', 'o');
      added('treatment', 't');
    });
    await edits.undo();
    expect(desk.asked).toEqual(['remove treatment t', 'remove opening o']);
    await edits.redo();
    expect(desk.asked.slice(2)).toEqual(['restore opening o', 'restore treatment t']);
  });

  it('brings back what was removed', async () => {
    await edits.remove('room', 'r', 'Nursery removed');
    await edits.undo();
    expect(desk.asked).toEqual(['remove room r', 'restore room r']);
    expect(shown).toEqual(['read again', 'read again']);
  });

  it('keeps what is not acknowledged, and sends it at the next start', async () => {
    edits.change(name('Nu'), name(''), 'name');
    expect(shelf.kept.size).toBe(1);
    const next = new Edits(desk, makeKeptEdits(shelf));
    expect(await next.replayKept()).toBe(1);
    expect(desk.asked).toEqual(['room r {"name":"Nu"}']);
    expect(shelf.kept.size).toBe(0);
  });

  it('tries again by itself when the desk does not answer', async () => {
    desk.refuse = new TypeError('no answer');
    edits.change(name('Nu'), name(''), 'name');
    await edits.flush();
    expect(edits.saving.is).toBe('failed');
    await expect(edits.saveAll()).rejects.toThrow('not everything typed is saved');
    desk.refuse = null;
    await vi.advanceTimersByTimeAsync(10_000);
    expect(desk.asked).toEqual(['room r {"name":"Nu"}']);
    expect(edits.saving.is).toBe('saved');
  });

  it('keeps a refused edit aside, says why, and sends it with the next one of the same record', async () => {
    desk.refuse = Object.assign(new Error('no'), {
      code: 'BAD_INPUT',
      data: { faults: [{ path: 'changes.name', wrong: 'is too long', right: 'give at most 400 letters' }] },
    });
    edits.change(name('x'.repeat(500)), name(''), 'name');
    await edits.flush();
    expect(edits.saving.is === 'failed' ? edits.saving.fault.says : '').toContain('is too long');
    desk.refuse = null;
    edits.change(
      { entity: 'opening', id: 'o', changes: { name: 'Other' } },
      { entity: 'opening', id: 'o', changes: { name: '' } },
      'name',
    );
    await edits.flush();
    expect(desk.asked).toEqual(['opening o {"name":"Other"}']);
    expect(shelf.kept.size).toBe(1);
    edits.change(name('short'), name(''), 'name');
    await edits.flush();
    expect(desk.asked.at(-1)).toBe('room r {"name":"short"}');
    expect(shelf.kept.size).toBe(0);
    expect(edits.saving.is).toBe('saved');
  });

  it('forgets its steps when another project is opened', () => {
    edits.enterProject('one');
    edits.change(name('Nu'), name(''), 'name');
    edits.enterProject('one');
    expect(edits.canUndo).toBe(true);
    edits.enterProject('two');
    expect(edits.canUndo).toBe(false);
  });
});

describe('the kept copy', () => {
  it.each([
    ['nothing', null],
    ['text that is no JSON', '{'],
    ['a list of something else', '[{"entity":"moon","id":"1","changes":{}}]'],
  ])('of %s is no edits', (_name, text) => {
    const shelf = new Shelf();
    if (text !== null) shelf.setItem('linenfold:unsaved-edits', text);
    expect(makeKeptEdits(shelf).read()).toEqual([]);
  });

  it('does without storage', () => {
    expect(makeKeptEdits(null).read()).toEqual([]);
    expect(() => makeKeptEdits(null).write([name('a')])).not.toThrow();
  });
});

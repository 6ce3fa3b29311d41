import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { KeptDraft } from '../../../renderer/state/kept-draft.svelte.ts';

const FIELDS = ['to', 'text'] as const;

describe('a form that is not sent yet', () => {
  const stored = new Map<string, string>();
  beforeEach(() => {
    stored.clear();
    vi.stubGlobal('window', {
      localStorage: {
        getItem: (key: string) => stored.get(key) ?? null,
        setItem: (key: string, text: string) => stored.set(key, text),
        removeItem: (key: string) => stored.delete(key),
      },
    });
  });
  afterEach(() => vi.unstubAllGlobals());

  it('is there again when it is opened anew, and only under its own name', () => {
    new KeptDraft('mail:1', FIELDS).write({ text: 'Dear Ada' });
    const again = new KeptDraft('mail:1', FIELDS);
    expect([again.isBegun, again.fields]).toEqual([true, { text: 'Dear Ada' }]);
    expect(new KeptDraft('mail:2', FIELDS).isBegun).toBe(false);
  });

  it('is gone once it is sent or given up', () => {
    const draft = new KeptDraft('mail:1', FIELDS);
    draft.write({ to: 'ada@example.com' });
    draft.forget();
    expect(new KeptDraft('mail:1', FIELDS).fields).toEqual({});
    expect(stored.size).toBe(0);
  });

  it.each(['not json', '[]', 'null', '{"text":7,"more":"x"}'])('begins empty where %s is stored', (text) => {
    stored.set('linenfold:draft:mail:1', text);
    expect(new KeptDraft('mail:1', FIELDS).fields).toEqual({});
  });

  it('lives on in the window where nothing may be stored', () => {
    vi.stubGlobal('window', {});
    const draft = new KeptDraft('mail:1', FIELDS);
    draft.write({ text: 'Dear Ada' });
    expect(draft.fields).toEqual({ text: 'Dear Ada' });
  });
});

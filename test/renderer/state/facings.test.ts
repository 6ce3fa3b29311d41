import { describe, expect, it } from 'vitest';
import { FACINGS } from '#shared/words.ts';
import { FACING_CHOICES } from '../../../renderer/words/choices.ts';

/** What a list of the page picks when this is typed into it: the first that begins so (HTML select, type-ahead). */
function typed(text: string): string | undefined {
  return FACING_CHOICES.find(({ name }) => name.startsWith(text))?.name;
}

describe('the list of facings', () => {
  it('holds every facing once, and "not known"', () => {
    expect(FACING_CHOICES.map(({ value }) => value).sort()).toEqual(['', ...FACINGS].sort());
  });
  it.each(['north', 'east', 'south', 'west', 'south-west'])('typing %s picks it', (name) => {
    expect(typed(name)).toBe(name);
  });
});

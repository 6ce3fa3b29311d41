/**
 * Words written for the next proposal of a project and not yet used: kept in this browser until the proposal is made,
 * so that a look at the windows or a closed window loses nothing.
 */
import type { Tier } from '#shared/words.ts';

interface Words {
  readonly terms?: string;
  readonly cancellation?: string;
  readonly names?: Readonly<Partial<Record<Tier, string>>>;
}

export class ProposalDraft {
  words: Words = $state.raw({});
  readonly #key: string;

  constructor(projectId: string) {
    this.#key = `linenfold:proposal-draft:${projectId}`;
    this.words = this.#read();
  }

  write(changes: Words): void {
    this.words = { ...this.words, ...changes };
    try {
      window.localStorage.setItem(this.#key, JSON.stringify(this.words));
    } catch {
      // Where the window forbids it the words live as long as the window.
      return;
    }
  }

  forget(): void {
    this.words = {};
    try {
      window.localStorage.removeItem(this.#key);
    } catch {
      return;
    }
  }

  #read(): Words {
    try {
      const given: unknown = JSON.parse(window.localStorage.getItem(this.#key) ?? '{}');
      return typeof given === 'object' && given !== null ? given : {};
    } catch {
      // Nothing that can be read: the words of the practice stand.
      return {};
    }
  }
}

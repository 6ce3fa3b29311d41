/** What is typed into a form and not sent yet: kept in this browser until it is sent or given up. */
export class KeptDraft<F extends string> {
  /** Only what somebody typed, by field. */
  fields: Partial<Record<F, string>> = $state.raw({});
  readonly #key: string;
  readonly #names: readonly F[];

  /** `name` tells drafts apart: `new-client`, or `mail:` with the id of its proposal. */
  constructor(name: string, names: readonly F[]) {
    this.#key = `linenfold:draft:${name}`;
    this.#names = names;
    this.fields = this.#read();
  }

  get isBegun(): boolean {
    return this.#names.some((name) => (this.fields[name] ?? '') !== '');
  }

  write(changes: Readonly<Partial<Record<F, string>>>): void {
    this.fields = { ...this.fields, ...changes };
    try {
      window.localStorage.setItem(this.#key, JSON.stringify(this.fields));
    } catch {
      // Where the window forbids it the draft lives as long as the form.
      return;
    }
  }

  forget(): void {
    this.fields = {};
    try {
      window.localStorage.removeItem(this.#key);
    } catch {
      return;
    }
  }

  #read(): Partial<Record<F, string>> {
    try {
      const given: unknown = JSON.parse(window.localStorage.getItem(this.#key) ?? '{}');
      if (typeof given !== 'object' || given === null) return {};
      const kept: Partial<Record<F, string>> = {};
      for (const name of this.#names) {
        const text: unknown = (given as Readonly<Record<string, unknown>>)[name];
        if (typeof text === 'string') kept[name] = text;
      }
      return kept;
    } catch {
      // Nothing that can be read: the form begins empty.
      return {};
    }
  }
}

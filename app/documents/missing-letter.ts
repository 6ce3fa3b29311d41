/** A letter that none of the embedded typefaces has: it would print as an empty box, so nothing is printed at all. */
export class MissingLetter extends Error {
  readonly letter: string;
  /** Which text of the paper holds it: `client.name`, `windows[0].words`. */
  readonly field: string;

  constructor(letter: string, field: string) {
    const code = (letter.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
    super(
      `${field}: the letter "${letter}" (U+${code}) is in none of the paper's typefaces; write it in Latin letters`,
    );
    this.name = 'MissingLetter';
    this.letter = letter;
    this.field = field;
  }
}

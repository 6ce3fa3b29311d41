/** Text as it may be set: composed letters, no control characters, no invisible ones. Spaces that must not break stay. */

/** Zero-width letters, soft hyphens and marks of direction, which no typeface draws. */
const INVISIBLE = new RegExp('[\\u00ad\\u200b-\\u200f\\u2028\\u2029\\u2060\\ufeff\\ufe0e\\ufe0f]', 'gu');
const CONTROL = new RegExp('[\\u0000-\\u0008\\u000b\\u000c\\u000e-\\u001f\\u007f-\\u009f]', 'gu');
const OTHER_SPACES = new RegExp('[\\t\\u2000-\\u200a\\u3000]', 'gu');
const NON_BREAKING = new RegExp('[\\u00a0\\u202f]', 'gu');

/** One paragraph a line of the given text. */
export function cleanParagraphs(text: string): readonly string[] {
  return text
    .normalize('NFC')
    .replace(/\r\n?/gu, '\n')
    .replace(INVISIBLE, '')
    .replace(CONTROL, '')
    .replace(OTHER_SPACES, ' ')
    .split('\n')
    .map((line) => line.replace(/ {2,}/gu, ' ').trim());
}

/** Everything on one line. */
export function cleanLine(text: string): string {
  return cleanParagraphs(text)
    .filter((line) => line !== '')
    .join(' ');
}

/** Non-breaking spaces share their glyph with the space: printed as one, they extract as one. */
export function plainSpaces(text: string): string {
  return text.replace(NON_BREAKING, ' ');
}

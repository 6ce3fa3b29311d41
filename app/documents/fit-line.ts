import type { FontSet } from './font-set.ts';
import type { TextStyle } from './paper-style.ts';
import { cleanLine, plainSpaces } from './clean-text.ts';
import { breakLines } from './set-text.ts';

/** As much of a text as one line of `width` points holds, with an ellipsis where it was cut. */
export function fitLine(text: string, style: TextStyle, width: number, fonts: FontSet): string {
  const line = plainSpaces(cleanLine(text));
  const [whole = '', ...more] = breakLines(line, style, width, fonts);
  if (more.length === 0) return whole;
  const [cut = ''] = breakLines(line, style, width - fonts.measure('…', style, style.size), fonts);
  return `${cut.replace(/[\s,;:&·]+$/u, '')}…`;
}

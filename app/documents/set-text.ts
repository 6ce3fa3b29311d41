/** Sets text in lines of a given width. Words break only where they are wider than the line. */
import type { Text } from '#app/drawing/shape.ts';
import { cleanParagraphs, plainSpaces } from './clean-text.ts';
import type { FontSet } from './font-set.ts';
import type { TextStyle } from './paper-style.ts';

/** Lines of one paragraph, no wider than `width`; the first may start further in (`firstIndent`). */
export function breakLines(
  text: string,
  style: TextStyle,
  width: number,
  fonts: FontSet,
  firstIndent = 0,
): readonly string[] {
  const measure = (candidate: string) => fonts.measure(plainSpaces(candidate), style, style.size);
  const lines: string[] = [];
  let line = '';
  const room = () => (lines.length === 0 ? width - firstIndent : width);
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (measure(longer) <= room()) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = word;
    while (measure(line) > room()) {
      const head = headThatFits(line, room(), measure);
      lines.push(head);
      line = line.slice(head.length);
    }
  }
  if (line !== '' || lines.length === 0) lines.push(line);
  return lines.map(plainSpaces);
}

/** The longest beginning of a word that fits, at least one letter. */
function headThatFits(word: string, room: number, measure: (text: string) => number): string {
  const letters = [...word];
  let head = letters[0] ?? '';
  for (const letter of letters.slice(1)) {
    if (measure(head + letter) > room) break;
    head += letter;
  }
  return head;
}

/** Paragraphs of a longer text, empty lines dropped. */
export function paragraphsOf(text: string): readonly string[] {
  return cleanParagraphs(text).filter((line) => line !== '');
}

/** How far below the top of its line a baseline lies: the type sits in the middle of its leading. */
export function baselineIn(style: TextStyle): number {
  return (style.leading - style.size) / 2 + style.size * 0.79;
}

export function lineShape(
  text: string,
  style: TextStyle,
  x: number,
  top: number,
  anchor: Text['anchor'] = 'start',
): Text {
  return {
    kind: 'text',
    x,
    y: top + baselineIn(style),
    text,
    size: style.size,
    anchor,
    font: style.font,
    weight: style.weight,
    paint: style.paint,
  };
}

// Writes app/drawing/text-widths.ts: advance widths of the two families that drawings are set in, read from the very
// font files that screen and PDF use, so that a pure drawing knows how wide its words are.
//
//   node build/text-widths.mjs
import { createRequire } from 'node:module';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import * as fontkit from 'fontkit';
import { format } from 'prettier';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));
const require = createRequire(import.meta.url);
const FACES = [
  ['serif', 'regular', '@expo-google-fonts/fraunces/400Regular/Fraunces_400Regular.ttf'],
  ['serif', 'semibold', '@expo-google-fonts/fraunces/600SemiBold/Fraunces_600SemiBold.ttf'],
  ['sans', 'regular', '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf'],
  ['sans', 'semibold', '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf'],
];
// Latin letters of the languages of `shared/locale.ts`, typeset fractions, dimension signs and quotation marks.
const RANGES = [
  [0x20, 0x7e],
  [0xa0, 0x17f],
];
const SINGLES = [...'⅛⅜⅝⅞⅓⅔–‘’“”„…′″≈−×·•€'];

const characters = [
  ...RANGES.flatMap(([from, to]) =>
    Array.from({ length: to - from + 1 }, (_, step) => String.fromCodePoint(from + step)),
  ),
  ...SINGLES,
].filter((character, place, all) => all.indexOf(character) === place);

/** Advance widths in thousandths of the type size, in the order of the letters; 0 where the face lacks the letter. */
function readWidths(file) {
  const font = fontkit.create(readFileSync(require.resolve(file)));
  return characters.map((character) => {
    const code = character.codePointAt(0);
    if (!font.hasGlyphForCodePoint(code)) return 0;
    return Math.round((font.glyphForCodePoint(code).advanceWidth * 1000) / font.unitsPerEm);
  });
}

const rows = FACES.map(([font, weight, file]) => `  '${font} ${weight}': [${readWidths(file).join(', ')}],`);
const lines = [];
for (let start = 0; start < characters.length; start += 64) {
  lines.push(`  ${JSON.stringify(characters.slice(start, start + 64).join(''))},`);
}

const text = `/**
 * Advance widths of the letters that drawings use. Written by build/text-widths.mjs from the TrueType files of Fraunces
 * and Source Sans 3: change that script, not this file. Kerning is left out.
 */
type Face = \`\${'serif' | 'sans'} \${'regular' | 'semibold'}\`;

const LETTERS = [...[
${lines.join('\n')}
].join('')];

/** In thousandths of the type size, in the order of the letters; 0 where the face lacks the letter. */
const WIDTHS: Readonly<Record<Face, readonly number[]>> = {
${rows.join('\n')}
};

/** For a letter that is not in the table: about a wide capital, so that room is rather left than wanting. */
const UNKNOWN = 750;

const PLACES: ReadonlyMap<string, number> = new Map(LETTERS.map((letter, place) => [letter, place]));

/** How wide a line of text is set, in the unit of \`size\` (points). Exact but for kerning. */
export function textWidth(text: string, font: 'serif' | 'sans', weight: 'regular' | 'semibold', size: number): number {
  const widths = WIDTHS[\`\${font} \${weight}\`];
  let sum = 0;
  for (const letter of text) sum += widths[PLACES.get(letter) ?? -1] || UNKNOWN;
  return (sum * size) / 1000;
}
`;

const style = JSON.parse(readFileSync(path.join(root, 'build', 'prettier.json'), 'utf8'));
const target = path.join(root, 'app', 'drawing', 'text-widths.ts');
writeFileSync(target, await format(text, { ...style, plugins: [], overrides: [], parser: 'typescript' }));
process.stderr.write(`${characters.length} letters in ${FACES.length} faces: ${path.relative(root, target)}\n`);

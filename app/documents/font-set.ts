/**
 * The typefaces of a paper: what they measure, which of them has a letter, and how they are embedded. A letter that its
 * own family lacks is set in the other family; one that both lack fails by name (`MissingLetter`).
 */
import * as fontkit from 'fontkit';
import type { Font } from 'fontkit';
import { PDFHexString } from 'pdf-lib';
import type { PDFDocument, PDFFont } from 'pdf-lib';
import type { Text } from '#app/drawing/shape.ts';
import type { PaperFonts } from './document-given.ts';
import { MissingLetter } from './missing-letter.ts';

export type FaceName = keyof PaperFonts;
export type Look = Pick<Text, 'font' | 'weight'>;

/** A stretch of text in one face. */
export interface Run {
  readonly face: FaceName;
  readonly text: string;
}

export interface FontSet {
  /** Width in points, with kerning, of text as `split` sets it. A letter nobody has counts as an empty box. */
  readonly measure: (text: string, look: Look, size: number) => number;
  /** The text in runs of one face each. Throws `MissingLetter` naming `field`. */
  readonly split: (text: string, look: Look, field: string) => readonly Run[];
  /** Kerning after each glyph of a run, in thousandths of the type size; as many as the run has glyphs. */
  readonly kern: (run: Run) => readonly number[];
  readonly widthOf: (run: Run, size: number) => number;
  readonly bytes: PaperFonts;
}

/** Joined letters would extract as one sign in some readers; kerning stays on. */
export const FEATURES = { liga: false, clig: false, dlig: false, calt: false };
/** The same for fontkit's typings, which know a list alone; its code takes both. */
const SHAPING = FEATURES as unknown as string[];

const FACES: Readonly<Record<Text['font'], Readonly<Record<Text['weight'], FaceName>>>> = {
  sans: { regular: 'text', semibold: 'textSemiBold' },
  serif: { regular: 'display', semibold: 'displaySemiBold' },
};
const OTHER: Readonly<Record<Text['font'], Text['font']>> = { sans: 'serif', serif: 'sans' };

/** Words, and the spaces between them. */
const PIECES = / +|[^ ]+/g;

interface Shaped {
  readonly advance: number;
  readonly kern: readonly number[];
}

/** Read once for the same bytes: a typeface is large, and the words of one paper are the words of the next. */
const sets = new WeakMap<PaperFonts, FontSet>();
/** Words remembered by one set, some megabytes; beyond that they are forgotten and shaped again. */
const MOST_SHAPES = 20_000;

export function readFontSet(bytes: PaperFonts): FontSet {
  const known = sets.get(bytes);
  if (known !== undefined) return known;
  const set = makeFontSet(bytes);
  sets.set(bytes, set);
  return set;
}

function makeFontSet(bytes: PaperFonts): FontSet {
  const fonts = new Map<FaceName, Font>();
  const shapes = new Map<string, Shaped>();
  const letters = new Map<string, boolean>();

  const fontOf = (face: FaceName): Font => {
    const known = fonts.get(face);
    if (known !== undefined) return known;
    const font = openFont(bytes[face], face);
    fonts.set(face, font);
    return font;
  };
  const has = (face: FaceName, letter: string): boolean => {
    const key = `${face}\n${letter}`;
    const known = letters.get(key);
    if (known !== undefined) return known;
    const found = fontOf(face).hasGlyphForCodePoint(letter.codePointAt(0) ?? 0);
    letters.set(key, found);
    return found;
  };

  const shapePiece = (face: FaceName, text: string): Shaped => {
    const key = `${face}\n${text}`;
    const known = shapes.get(key);
    if (known !== undefined) return known;
    const font = fontOf(face);
    const { glyphs, positions } = font.layout(text, SHAPING);
    const scale = 1000 / font.unitsPerEm;
    const kern = glyphs.map(
      (glyph, i) => ((positions[i]?.xAdvance ?? glyph.advanceWidth) - glyph.advanceWidth) * scale,
    );
    const advance = positions.reduce((sum, position) => sum + position.xAdvance, 0) * scale;
    const shaped = { advance, kern };
    if (shapes.size >= MOST_SHAPES) shapes.clear();
    shapes.set(key, shaped);
    return shaped;
  };
  /**
   * Word by word, so that a line that grows is not shaped anew. Kerning looks at two neighbours: what a word has with
   * the space beside it is looked up as that pair.
   */
  const shape = (run: Run): Shaped => {
    const pieces = run.text.match(PIECES) ?? [];
    if (pieces.length < 2) return shapePiece(run.face, run.text);
    const kern: number[] = [];
    let advance = 0;
    for (const [place, text] of pieces.entries()) {
      const before = pieces[place - 1];
      if (before !== undefined) {
        const pair = shapePiece(run.face, `${lastLetter(before)}${firstLetter(text)}`).kern[0] ?? 0;
        kern[kern.length - 1] = (kern.at(-1) ?? 0) + pair;
        advance += pair;
      }
      const piece = shapePiece(run.face, text);
      kern.push(...piece.kern);
      advance += piece.advance;
    }
    return { advance, kern };
  };

  const divide = (text: string, look: Look, missing: (letter: string) => void): readonly Run[] => {
    const own = FACES[look.font][look.weight];
    const other = FACES[OTHER[look.font]][look.weight];
    const runs: { face: FaceName; text: string }[] = [];
    for (const letter of text) {
      const inOther = !has(own, letter) && has(other, letter);
      if (!inOther && !has(own, letter)) missing(letter);
      const face = inOther ? other : own;
      const last = runs.at(-1);
      if (last?.face === face) last.text += letter;
      else runs.push({ face, text: letter });
    }
    return runs;
  };

  const widthOf = (run: Run, size: number) => (shape(run).advance * size) / 1000;
  return {
    bytes,
    measure: (text, look, size) =>
      divide(text, look, () => undefined).reduce((sum, run) => sum + widthOf(run, size), 0),
    split: (text, look, field) =>
      divide(text, look, (letter) => {
        throw new MissingLetter(letter, field);
      }),
    kern: (run) => shape(run).kern,
    widthOf,
  };
}

function firstLetter(text: string): string {
  return /^./u.exec(text)?.[0] ?? '';
}

function lastLetter(text: string): string {
  return /.$/u.exec(text)?.[0] ?? '';
}

function openFont(bytes: Uint8Array, face: FaceName): Font {
  const opened = fontkit.create(bytes as Parameters<typeof fontkit.create>[0]);
  if ('fonts' in opened) throw new Error(`the typeface ${face} is a collection; one TrueType face is needed`);
  return opened;
}

export interface EmbeddedFonts {
  readonly font: (face: FaceName) => PDFFont;
  readonly encode: (run: Run) => PDFHexString;
}

/** Embeds the faces that the paper uses, each as the subset of the letters it prints. */
export async function embedFonts(
  document: PDFDocument,
  set: FontSet,
  used: readonly FaceName[],
): Promise<EmbeddedFonts> {
  document.registerFontkit(fontkit);
  const fonts = new Map<FaceName, PDFFont>();
  for (const face of used) {
    fonts.set(face, await document.embedFont(set.bytes[face], { subset: true, features: FEATURES }));
  }
  const font = (face: FaceName): PDFFont => {
    const found = fonts.get(face);
    if (found === undefined) throw new Error(`the typeface ${face} was not embedded`);
    return found;
  };
  const words = new Map<string, string>();
  const encodeWord = (face: FaceName, text: string): string => {
    const key = `${face}\n${text}`;
    const known = words.get(key);
    if (known !== undefined) return known;
    const encoded = font(face).encodeText(text).asString();
    words.set(key, encoded);
    return encoded;
  };
  // Word by word as they were shaped: without joined letters a glyph does not depend on the word before.
  const encode = ({ face, text }: Run) =>
    PDFHexString.of((text.match(PIECES) ?? []).map((piece) => encodeWord(face, piece)).join(''));
  return { font, encode };
}

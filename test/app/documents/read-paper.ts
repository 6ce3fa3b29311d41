/** Ways of looking at laid-out pages and at PDFs that several tests share. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { getDocumentProxy } from 'unpdf';
import { plainSpaces } from '#app/documents/clean-text.ts';
import type { DocumentGiven } from '#app/documents/document-given.ts';
import { readFontSet } from '#app/documents/font-set.ts';
import type { FontSet } from '#app/documents/font-set.ts';
import type { LaidPage, PageItem } from '#app/documents/page-item.ts';
import type { Bounds, Shape, Text } from '#app/drawing/shape.ts';
import { readFonts } from '#main/host/fonts.ts';
import { flatten } from '../drawing/read-drawing.ts';

export const FONTS = await readFonts(null);

export function fontSet(): FontSet {
  return readFontSet(FONTS);
}

export function givenOf(change: Partial<DocumentGiven> = {}): DocumentGiven {
  return { fonts: FONTS, id: 'a paper', programVersion: '1.2.3', page: 'letter', ...change };
}

export interface PlacedText {
  readonly text: string;
  readonly field: string;
  readonly box: Bounds;
}

function textsOfItem(item: PageItem): Text[] {
  return flatten(item.shapes).filter((shape): shape is Text => shape.kind === 'text');
}

/** Texts of a page with the boxes of their letters (x-height to baseline and a little more). */
export function placedTexts(page: LaidPage, fonts: FontSet): PlacedText[] {
  return page.items.flatMap((item) =>
    textsOfItem(item).map((text) => {
      const width = fonts.measure(plainSpaces(text.text), text, text.size);
      const before = { start: 0, middle: width / 2, end: width }[text.anchor];
      const [up, down] = [0.68 * text.size, 0.2 * text.size];
      const [x, y] = [item.x + text.x, item.y + text.y];
      const box =
        text.turn === -90
          ? { x: x - up, y: y - width + before, width: up + down, height: width }
          : { x: x - before, y: y - up, width, height: up + down };
      return { text: text.text, field: item.field, box };
    }),
  );
}

/** Everything that a page asks to be written, in the order of painting, without spaces. */
export function askedLetters(page: LaidPage): string {
  return page.items
    .flatMap(textsOfItem)
    .map((text) => text.text)
    .join('')
    .replace(/\s/gu, '');
}

/** The box of a shape's geometry, in page coordinates; texts are left out (`placedTexts`). */
export function boundsOf(shape: Shape): Bounds | null {
  switch (shape.kind) {
    case 'rect':
      return shape;
    case 'line':
      return span([shape.x1, shape.x2], [shape.y1, shape.y2]);
    case 'circle':
      return { x: shape.x - shape.r, y: shape.y - shape.r, width: 2 * shape.r, height: 2 * shape.r };
    case 'path':
      return span(
        shape.steps.flatMap((step) => (step.to === 'close' ? [] : [step.x])),
        shape.steps.flatMap((step) => (step.to === 'close' ? [] : [step.y])),
      );
    case 'text':
    case 'group':
      return null;
  }
}

function span(xs: number[], ys: number[]): Bounds {
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

/** The text of each page in the order in which it was written. */
export async function extractPages(bytes: Uint8Array): Promise<string[]> {
  const document = await getDocumentProxy(bytes.slice());
  const pages: string[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const content = await page.getTextContent();
    pages.push(content.items.map((item) => ('str' in item ? item.str : '')).join(' '));
  }
  return pages;
}

export function lettersOf(text: string): string {
  return text.replace(/\s/gu, '');
}

export const hasPdfToText = spawnSync('pdftotext', ['-v']).error === undefined;

/** What another program reads from the same bytes. */
export function readWithPdfToText(bytes: Uint8Array): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'paper-'));
  try {
    const file = path.join(folder, 'paper.pdf');
    writeFileSync(file, bytes);
    return spawnSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).stdout;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

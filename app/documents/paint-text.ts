/** Paints one line of text: runs of one face each, kerned, so that it extracts letter for letter as it was asked for. */
import {
  beginText,
  endText,
  PDFOperator,
  PDFOperatorNames,
  setFillingRgbColor,
  setFontAndSize,
  setTextMatrix,
} from 'pdf-lib';
import type { Text } from '#app/drawing/shape.ts';
import { plainSpaces } from './clean-text.ts';
import type { Run } from './font-set.ts';
import type { Painter } from './painter.ts';
import { rgbOf } from './paint-colour.ts';
import { roundPoints } from './round-points.ts';

/** `x`, `y`: the anchor on the baseline, in page coordinates (y upwards). Throws `MissingLetter`. */
export function paintText(painter: Painter, text: Text, x: number, y: number, field: string): void {
  const words = plainSpaces(text.text);
  if (words.trim() === '') return;
  const runs = painter.fonts.split(words, text, field);
  const length = runs.reduce((sum, run) => sum + painter.fonts.widthOf(run, text.size), 0);
  let along = -{ start: 0, middle: length / 2, end: length }[text.anchor];
  const [r, g, b] = rgbOf(text.paint);
  painter.write(beginText(), setFillingRgbColor(r, g, b));
  for (const run of runs) {
    const font = painter.embedded.font(run.face);
    painter.write(
      setFontAndSize(painter.resources.font(font), text.size),
      text.turn === -90
        ? setTextMatrix(0, 1, -1, 0, roundPoints(x), roundPoints(y + along))
        : setTextMatrix(1, 0, 0, 1, roundPoints(x + along), roundPoints(y)),
      showKerned(painter, run),
    );
    along += painter.fonts.widthOf(run, text.size);
  }
  painter.write(endText());
}

function showKerned(painter: Painter, run: Run): PDFOperator {
  const glyphs = painter.embedded.encode(run).asString().match(/.{4}/gu) ?? [];
  const kern = painter.fonts.kern(run);
  if (glyphs.length !== kern.length) throw new Error(`"${run.text}" was shaped in two ways`);
  let parts = '[<';
  glyphs.forEach((glyph, i) => {
    const after = roundPoints(-(kern[i] ?? 0));
    parts += after === 0 || i === glyphs.length - 1 ? glyph : `${glyph}> ${after} <`;
  });
  return PDFOperator.of(PDFOperatorNames.ShowTextAdjusted, [`${parts}>]`]);
}

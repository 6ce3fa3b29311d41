/** The blank measure sheet as a PDF. */
import type { LengthUnit } from '#shared/length.ts';
import type { DocumentGiven, DrawnDocument } from './document-given.ts';
import { readFontSet } from './font-set.ts';
import { layOutMeasureSheet } from './lay-out-measure-sheet.ts';
import { FRAMES } from './paper-style.ts';
import { writeDocument } from './write-document.ts';

export interface MeasureSheetGiven extends DocumentGiven {
  readonly letterhead: { readonly name: string; readonly lines: readonly string[] };
  /** Null leaves a line to write on. */
  readonly client: string | null;
  /** ISO date of the file; it is not printed: the sheet asks for the day of the measuring. */
  readonly date: string;
  /** The unit ticked beforehand. */
  readonly units: LengthUnit;
  /** One page a room (more when it has more windows than columns); empty gives one blank page. */
  readonly rooms: readonly { readonly name: string; readonly windows: readonly string[] }[];
}

/** Throws `MissingLetter`, naming letter and field, when a name holds a letter that no typeface has. */
export async function drawMeasureSheet(given: MeasureSheetGiven): Promise<DrawnDocument> {
  const fonts = readFontSet(given.fonts);
  const pages = layOutMeasureSheet(given, FRAMES[given.page], fonts);
  const title = given.client === null ? 'Measure sheet' : `Measure sheet for ${given.client}`;
  return writeDocument(
    pages,
    {
      title,
      author: given.letterhead.name,
      subject: 'Blank measure sheet',
      language: 'en',
      date: given.date,
      id: given.id,
      programVersion: given.programVersion,
    },
    fonts,
  );
}

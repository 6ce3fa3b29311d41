/** The cut plans of a job as a PDF: the same paper, fonts and id always give the same bytes. */
import type { CutPlanPaper } from '#app/proposal/cut-plan-paper.ts';
import type { DocumentGiven, DrawnDocument } from './document-given.ts';
import { readFontSet } from './font-set.ts';
import { identify } from './identify.ts';
import { layOutCutPages } from './lay-out-cut-pages.ts';
import { FRAMES } from './paper-style.ts';
import { writeDocument } from './write-document.ts';

/** Throws `MissingLetter`, naming letter and field, when a text holds a letter that no typeface has. */
export async function drawCutPages(paper: CutPlanPaper, given: DocumentGiven): Promise<DrawnDocument> {
  const fonts = readFontSet(given.fonts);
  const pages = layOutCutPages(paper, FRAMES[given.page], fonts);
  return writeDocument(pages, identify(paper, given), fonts);
}

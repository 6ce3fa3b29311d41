/** The proposal as a PDF: the same paper, fonts and id always give the same bytes. */
import type { ProposalPaper } from '#app/proposal/proposal-paper.ts';
import type { DocumentGiven, DrawnDocument } from './document-given.ts';
import { readFontSet } from './font-set.ts';
import { identify } from './identify.ts';
import { layOutProposal } from './lay-out-proposal.ts';
import { FRAMES } from './paper-style.ts';
import { writeDocument } from './write-document.ts';

/** Throws `MissingLetter`, naming letter and field, when a text holds a letter that no typeface has. */
export async function drawProposal(paper: ProposalPaper, given: DocumentGiven): Promise<DrawnDocument> {
  const fonts = readFontSet(given.fonts);
  const pages = layOutProposal(paper, FRAMES[given.page], fonts);
  return writeDocument(pages, identify(paper, given), fonts);
}

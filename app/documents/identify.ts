import type { DocumentGiven } from './document-given.ts';
import type { DocumentMeta } from './write-document.ts';

interface NamedPaper {
  readonly title: string;
  readonly letterhead: { readonly name: string };
  readonly reference: string;
  readonly language: string;
  readonly date: string;
}

/** What a PDF says of itself: the paper's own words, and the name given to this file for good. */
export function identify(paper: NamedPaper, given: DocumentGiven): DocumentMeta {
  return {
    title: paper.title,
    author: paper.letterhead.name,
    subject: paper.reference,
    language: paper.language,
    date: paper.date,
    id: given.id,
    programVersion: given.programVersion,
  };
}

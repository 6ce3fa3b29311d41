/**
 * The tags by which somebody who cannot see the paper hears it in order: headings, paragraphs, figures with their words
 * (ISO 32000-1, 14.7 and 14.8). Rules and page numbers are marked as artifacts.
 */
import { PDFHexString, PDFName, PDFNumber, PDFOperator, PDFOperatorNames } from 'pdf-lib';
import type { PDFCatalog, PDFContext, PDFDict, PDFPage, PDFRef } from 'pdf-lib';
import type { PageItem, Paragraph } from './page-item.ts';

export interface PageTags {
  /** Opens an item's mark; the function returned closes it. */
  readonly begin: (item: PageItem) => () => void;
  readonly finish: () => void;
}

export interface Structure {
  readonly startPage: (page: PDFPage) => PageTags;
  readonly finish: (catalog: PDFCatalog) => void;
}

interface Element {
  readonly ref: PDFRef;
  readonly dict: PDFDict;
  readonly kids: PDFDict[];
}

export function makeStructure(context: PDFContext): Structure {
  const root = context.nextRef();
  const main = context.nextRef();
  const elements: Element[] = [];
  const byParagraph = new Map<Paragraph, Element>();
  const parents: { readonly page: number; readonly refs: readonly PDFRef[] }[] = [];

  const makeElement = (item: PageItem): Element => {
    const dict = context.obj({ Type: 'StructElem', S: item.role, P: main });
    if (item.alt !== undefined) dict.set(PDFName.of('Alt'), PDFHexString.fromText(item.alt));
    const element: Element = { ref: context.register(dict), dict, kids: [] };
    elements.push(element);
    return element;
  };
  const elementFor = (item: PageItem): Element => {
    if (item.paragraph === undefined) return makeElement(item);
    const known = byParagraph.get(item.paragraph);
    if (known !== undefined) return known;
    const made = makeElement(item);
    byParagraph.set(item.paragraph, made);
    return made;
  };

  return {
    startPage: (page) => {
      const index = parents.length;
      const refs: PDFRef[] = [];
      page.node.set(PDFName.of('StructParents'), PDFNumber.of(index));
      page.node.set(PDFName.of('Tabs'), PDFName.of('S'));
      const end = () => page.pushOperators(PDFOperator.of(PDFOperatorNames.EndMarkedContent));
      return {
        begin: (item) => {
          if (item.role === 'Artifact') {
            page.pushOperators(PDFOperator.of(PDFOperatorNames.BeginMarkedContent, [PDFName.of('Artifact')]));
            return end;
          }
          const mark = refs.length;
          const element = elementFor(item);
          element.kids.push(context.obj({ Type: 'MCR', Pg: page.ref, MCID: mark }));
          refs.push(element.ref);
          page.pushOperators(
            PDFOperator.of(PDFOperatorNames.BeginMarkedContentSequence, [PDFName.of(item.role), `<</MCID ${mark}>>`]),
          );
          return end;
        },
        finish: () => {
          parents.push({ page: index, refs });
        },
      };
    },
    finish: (catalog) => {
      for (const element of elements) element.dict.set(PDFName.of('K'), context.obj(element.kids));
      const numbers = parents.flatMap(({ page, refs }) => [PDFNumber.of(page), context.obj([...refs])]);
      context.assign(
        main,
        context.obj({ Type: 'StructElem', S: 'Document', P: root, K: elements.map((element) => element.ref) }),
      );
      context.assign(
        root,
        context.obj({
          Type: 'StructTreeRoot',
          K: main,
          ParentTree: { Nums: numbers },
          ParentTreeNextKey: parents.length,
        }),
      );
      catalog.set(PDFName.of('StructTreeRoot'), root);
      catalog.set(PDFName.of('MarkInfo'), context.obj({ Marked: true }));
    },
  };
}

/** Writes laid-out pages as a tagged PDF whose bytes depend on nothing but what is given. */
import { PDFDocument, PDFHexString, PDFName, PDFString } from 'pdf-lib';
import type { Shape } from '#app/drawing/shape.ts';
import { plainSpaces } from './clean-text.ts';
import type { DrawnDocument } from './document-given.ts';
import { embedFonts } from './font-set.ts';
import type { FaceName, FontSet } from './font-set.ts';
import { hashId } from './hash-id.ts';
import type { LaidPage } from './page-item.ts';
import { makeResources } from './page-resources.ts';
import { paintShapes } from './paint-drawing.ts';
import { makeStructure } from './tag-structure.ts';

export interface DocumentMeta {
  readonly title: string;
  readonly author: string;
  readonly subject: string;
  /** BCP 47. */
  readonly language: string;
  /** ISO date; the file is dated noon UTC of that day. */
  readonly date: string;
  readonly id: string;
  readonly programVersion: string;
}

export async function writeDocument(
  pages: readonly LaidPage[],
  meta: DocumentMeta,
  fonts: FontSet,
): Promise<DrawnDocument> {
  const document = await PDFDocument.create({ updateMetadata: false });
  const { context } = document;
  const program = `Linenfold ${meta.programVersion}`;
  const dated = new Date(`${meta.date}T12:00:00Z`);
  if (Number.isNaN(dated.getTime())) throw new Error(`not an ISO date: ${meta.date}`);
  document.setTitle(meta.title, { showInWindowTitleBar: true });
  document.setAuthor(meta.author);
  document.setSubject(meta.subject);
  document.setLanguage(meta.language);
  document.setCreator(program);
  document.setProducer(program);
  document.setCreationDate(dated);
  document.setModificationDate(dated);

  const embedded = await embedFonts(document, fonts, facesOf(pages, fonts));
  const structure = makeStructure(context);
  for (const laid of pages) {
    const page = document.addPage([laid.width, laid.height]);
    const resources = makeResources(page, context);
    const painter = { resources, fonts, embedded, write: page.pushOperators.bind(page) };
    const tags = structure.startPage(page);
    for (const item of laid.items) {
      const end = tags.begin(item);
      paintShapes(painter, item.shapes, { x: item.x, y: item.y, height: laid.height }, item.field);
      end();
    }
    tags.finish();
  }
  structure.finish(document.catalog);
  const id = PDFHexString.of(hashId(meta.id));
  context.trailerInfo.ID = context.obj([id, id]);
  document.catalog.set(PDFName.of('PageLayout'), PDFName.of('OneColumn'));
  document.catalog.set(PDFName.of('Lang'), PDFString.of(meta.language));
  return { bytes: await document.save({ addDefaultPage: false }), pages: pages.length };
}

/** The faces that the pages' texts are set in. Throws `MissingLetter` for the first letter that no face has. */
function facesOf(pages: readonly LaidPage[], fonts: FontSet): readonly FaceName[] {
  const faces = new Set<FaceName>();
  const look = (shapes: readonly Shape[], field: string): void => {
    for (const shape of shapes) {
      if (shape.kind === 'group') look(shape.shapes, field);
      if (shape.kind === 'text') {
        for (const run of fonts.split(plainSpaces(shape.text), shape, field)) faces.add(run.face);
      }
    }
  };
  for (const page of pages) page.items.forEach((item) => look(item.shapes, item.field));
  return [...faces].sort();
}

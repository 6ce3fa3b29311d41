import type { PDFOperator } from 'pdf-lib';
import type { EmbeddedFonts, FontSet } from './font-set.ts';
import type { PageResources } from './page-resources.ts';

/** What paints onto one page. */
export interface Painter {
  readonly write: (...operators: readonly PDFOperator[]) => void;
  readonly resources: PageResources;
  readonly fonts: FontSet;
  readonly embedded: EmbeddedFonts;
}

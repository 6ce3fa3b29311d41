/** What every paper needs besides what it says: the documents have no disk, no clock and no chance of their own. */

/** TrueType files (WOFF2 cannot be embedded). `main/host/fonts.ts` reads them. */
export interface PaperFonts {
  /** Source Sans 3, regular. */
  readonly text: Uint8Array;
  /** Source Sans 3, semibold. */
  readonly textSemiBold: Uint8Array;
  /** Fraunces, regular. */
  readonly display: Uint8Array;
  /** Fraunces, semibold. */
  readonly displaySemiBold: Uint8Array;
}

export type PageSize = 'letter' | 'a4';

export interface DocumentGiven {
  readonly fonts: PaperFonts;
  /** Names this file for good: the same id, date and content give the same bytes. Any text; hashed into the PDF's ID. */
  readonly id: string;
  readonly programVersion: string;
  readonly page: PageSize;
}

export interface DrawnDocument {
  readonly bytes: Uint8Array;
  readonly pages: number;
}

/** Type sizes and line widths of an elevation, in points: on screen, and on paper where it is printed finer. */
export interface SheetStyle {
  readonly figure: number;
  readonly name: number;
  readonly room: number;
  /** Thin lines: dimension lines, folds. */
  readonly hair: number;
  /** The floor. */
  readonly strong: number;
  readonly thread: number;
  /** From one dimension line to the next outwards. */
  readonly lane: number;
}

export const SHEET_STYLES: Readonly<Record<'screen' | 'paper', SheetStyle>> = {
  screen: { figure: 11, name: 12.5, room: 14.5, hair: 0.8, strong: 1.3, thread: 2.6, lane: 17 },
  paper: { figure: 7.5, name: 8, room: 10, hair: 0.5, strong: 0.9, thread: 1.8, lane: 12 },
};

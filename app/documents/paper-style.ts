/** The look of every paper: page sizes, margins, type sizes and the palette in which drawings are printed. */
import type { NamedPaint } from '#app/drawing/shape.ts';
import type { PageSize } from './document-given.ts';
import type { Look } from './font-set.ts';

export interface PageFrame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  /** Where content begins on the first page and on those that carry the running head. */
  readonly top: number;
  readonly bottom: number;
}

/** Content is 504 points wide on both sizes, so that one drawing fits either. Points are 1/72 in. */
export const CONTENT_WIDTH = 504;
export const COLUMN_GAP = 21;
export const COLUMN_WIDTH = (CONTENT_WIDTH - 2 * COLUMN_GAP) / 3;

const A4_WIDTH = (210 / 25.4) * 72;
const A4_HEIGHT = (297 / 25.4) * 72;
const A4_MARGIN = (A4_WIDTH - CONTENT_WIDTH) / 2;

export const FRAMES: Readonly<Record<PageSize, PageFrame>> = {
  letter: { width: 612, height: 792, left: 54, right: 558, top: 70, bottom: 738 },
  a4: {
    width: A4_WIDTH,
    height: A4_HEIGHT,
    left: A4_MARGIN,
    right: A4_WIDTH - A4_MARGIN,
    top: 70,
    bottom: A4_HEIGHT - 54,
  },
};

/** A way of setting text. `leading` is from baseline to baseline. */
export interface TextStyle extends Look {
  readonly size: number;
  readonly leading: number;
  readonly paint: NamedPaint;
}

export const STYLES = {
  client: { font: 'serif', weight: 'semibold', size: 26, leading: 31, paint: 'ink' },
  title: { font: 'serif', weight: 'semibold', size: 21, leading: 26, paint: 'ink' },
  heading: { font: 'serif', weight: 'semibold', size: 14, leading: 18, paint: 'ink' },
  option: { font: 'serif', weight: 'semibold', size: 12, leading: 15, paint: 'ink' },
  price: { font: 'serif', weight: 'semibold', size: 16, leading: 20, paint: 'ink' },
  letterhead: { font: 'serif', weight: 'semibold', size: 15, leading: 18.5, paint: 'ink' },
  running: { font: 'serif', weight: 'semibold', size: 10.5, leading: 14, paint: 'ink' },
  lead: { font: 'sans', weight: 'regular', size: 10.5, leading: 14, paint: 'pencil' },
  body: { font: 'sans', weight: 'regular', size: 9.5, leading: 13, paint: 'ink' },
  bodyQuiet: { font: 'sans', weight: 'regular', size: 9.5, leading: 13, paint: 'pencil' },
  strong: { font: 'sans', weight: 'semibold', size: 9.5, leading: 13, paint: 'ink' },
  reading: { font: 'sans', weight: 'regular', size: 9, leading: 12, paint: 'ink' },
  readingQuiet: { font: 'sans', weight: 'regular', size: 9, leading: 12, paint: 'pencil' },
  small: { font: 'sans', weight: 'regular', size: 8.25, leading: 11.25, paint: 'pencil' },
  smallInk: { font: 'sans', weight: 'regular', size: 8.25, leading: 11.25, paint: 'ink' },
  smallStrong: { font: 'sans', weight: 'semibold', size: 8.25, leading: 11.25, paint: 'ink' },
  mark: { font: 'sans', weight: 'semibold', size: 8.25, leading: 11.25, paint: 'thread' },
} as const satisfies Readonly<Record<string, TextStyle>>;

/** On white paper. Named paints that drawings use on screen have their print colours here. */
export const PAPER_PALETTE: Readonly<Record<NamedPaint, `#${string}`>> = {
  ink: '#2b2a27',
  pencil: '#6b675d',
  faint: '#a59f91',
  rule: '#d8d1c1',
  paper: '#ffffff',
  card: '#ffffff',
  thread: '#a3302a',
  'glass-top': '#d9e8ee',
  'glass-bottom': '#eff1ea',
  frame: '#fffdf8',
  rod: '#3b3a38',
  wall: '#ece6da',
  sun: '#eabf5e',
};

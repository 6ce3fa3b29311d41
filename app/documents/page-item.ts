/**
 * A laid-out page as data: items with their place, so that tests can look for what lies outside a margin or over
 * something else before anything is painted.
 */
import type { Shape } from '#app/drawing/shape.ts';

/** What an item is to somebody who listens to the paper; `Artifact` (rules, page numbers) is passed over. */
export type Role = 'H1' | 'H2' | 'H3' | 'P' | 'Figure' | 'Artifact';

/** Lines of one paragraph share one of these, and are read as one. */
export interface Paragraph {
  readonly role: Role;
}

export interface PageItem {
  readonly role: Role;
  /** Path of the text in the paper: named when a letter is missing. */
  readonly field: string;
  /** Top left of the item's own coordinates, in points from the top left of the block or page. */
  readonly x: number;
  readonly y: number;
  readonly shapes: readonly Shape[];
  /** What a figure shows, in words. */
  readonly alt?: string;
  readonly paragraph?: Paragraph;
}

export interface LaidPage {
  readonly width: number;
  readonly height: number;
  readonly items: readonly PageItem[];
}

export function moveItem(item: PageItem, dx: number, dy: number): PageItem {
  return { ...item, x: item.x + dx, y: item.y + dy };
}

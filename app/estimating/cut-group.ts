/** What a joint cut plan needs of the pieces of a treatment: alike ones in one group, of all quantity. */
import type { Ticks } from '#shared/length.ts';

export interface CutGroup {
  /** What the piece is, as on the work order: `valance, centre`, `board cover`. */
  readonly name: string;
  /** Cloth id. */
  readonly cloth: string;
  /** 0 is the face and other cloth that shows; then the layers behind it, room to street. */
  readonly layer: number;
  readonly count: number;
  /** Plain cut along the length of the bolt, before any repeat. */
  readonly length: Ticks;
  /** Across the cloth; null takes the full width. */
  readonly width: Ticks | null;
  /**
   * Where in the repeat a cut begins. `any`: each cut where it likes; null: all cuts of the group alike, wherever that
   * is; a number: ticks after the level line of the repeat.
   */
  readonly phase: 'any' | number | null;
  /** Half of the width, from a cut that is split down the middle: two of them lie beside one another. */
  readonly half?: boolean;
  /** The selvage that it must lie along, so that the pattern runs on; not given: either. */
  readonly side?: 'left' | 'right';
  /** May lie sideways or upside down. */
  readonly turnable: boolean;
}

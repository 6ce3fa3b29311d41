/** The deck: flat cloth over the platform that the skirt is sewn to. It is hidden, so plain cloth may lie either way. */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { BedSkirtTreatment } from '#shared/treatments/bed-skirt.ts';
import { countStripWidths } from './lay-strip.ts';

export interface DeckCut {
  /** Once joined: along the bed, and across it. */
  readonly long: Ticks;
  readonly wide: Ticks;
  /** Full-width cuts of one deck and the length of each. */
  readonly cuts: number;
  readonly length: Ticks;
  /** `along`: the cloth's length lies along the bed. */
  readonly lies: 'along' | 'across';
}

/** The deck's cut size: a seam at each skirted side, a hem at the other. */
export function deckSize(skirt: BedSkirtTreatment): { readonly long: Ticks; readonly wide: Ticks } {
  const { deckSeam, deckHem } = skirt.practice.bedSkirt;
  const { width, length } = skirt.bed;
  const open = deckSeam + deckHem;
  const both = 2 * deckSeam;
  const head = skirt.against === 'head';
  return { long: ticks(length + (head ? open : both)), wide: ticks(width + (head ? both : open)) };
}

/** The way that takes less cloth; patterned cloth always lies along. */
export function cutDeck(skirt: BedSkirtTreatment, cloth: Pick<Cloth, 'usableWidth' | 'repeat'>): DeckCut {
  const { deckSeam } = skirt.practice.bedSkirt;
  const { long, wide } = deckSize(skirt);
  const along = countStripWidths(wide, cloth.usableWidth, deckSeam);
  const across = countStripWidths(long, cloth.usableWidth, deckSeam);
  if (cloth.repeat === null && across * wide < along * long)
    return { long, wide, cuts: across, length: wide, lies: 'across' };
  return { long, wide, cuts: along, length: long, lies: 'along' };
}

/**
 * How many pleats one piece takes. The published table (1 width 5, 1 1/2 7, 2 10, 2 1/2 12-13, 3 15) is of cloth of
 * about the usual width, half widths rounding down. Wider or narrower cloth, and cloth used sideways, has its pleats by
 * its flat width instead, so that they come out as large and as far apart (common practice).
 */
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { halvesUpToTick, toNearestHalvesDown, upToWhole } from '../round.ts';

export interface PleatCount {
  /** In one piece. */
  readonly count: number;
  /** Cloth of one piece, selvage to selvage. */
  readonly cloth: Ticks;
  /** Widths of one piece in halves where they decide; null where the cloth does. */
  readonly halves: number | null;
}

/** `made2` is twice the flat width of all pieces as made, `halves` their widths in halves, null for cloth used sideways. */
export function countPleatsOf(panels: PanelsTreatment, made2: number, halves: number | null): PleatCount {
  const { pieces, practice } = panels;
  const cloth2 = clothOf2(panels, made2, halves);
  const cloth = halvesUpToTick(upToWhole(cloth2, pieces));
  if (halves !== null && isAboutUsual(panels, cloth2, halves)) {
    const count = toNearestHalvesDown(practice.pleatsPerWidth * halves, 2 * pieces);
    return { count, cloth, halves: halves / pieces };
  }
  const usual = pleatsCloth(panels);
  return { count: toNearestHalvesDown(practice.pleatsPerWidth * cloth2, 2 * pieces * usual), cloth, halves: null };
}

/** Within a tenth of the width that the practice counts pleats on: 48 5/8 to 59 3/8 in of 54. */
function isAboutUsual(panels: PanelsTreatment, cloth2: number, halves: number): boolean {
  const usual = pleatsCloth(panels);
  return 10 * cloth2 >= 9 * halves * usual && 10 * cloth2 <= 11 * halves * usual;
}

function pleatsCloth({ practice }: PanelsTreatment): Ticks {
  return ticks(Math.max(1, practice.pleatsClothWidth));
}

/** Twice the cloth of all pieces: the flat width as made with its side hems and its joins. */
function clothOf2(panels: PanelsTreatment, made2: number, halves: number | null): number {
  const { pieces, practice } = panels;
  const joins = halves === null ? 0 : pieces * (upToWhole(halves, 2 * pieces) - 1);
  return made2 + 2 * (2 * pieces * practice.sideHem + joins * 2 * practice.seam);
}

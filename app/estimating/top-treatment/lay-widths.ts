/** One layer of widths, upright or sideways: sideways where the cloth may be, it fits across, and it takes less. */
import type { Cloth } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import { countPhases } from '../cut-cloth.ts';
import { upToWhole } from '../round.ts';
import { halvesOf } from './laid-widths.ts';
import type { LaidWidths } from './laid-widths.ts';
import { layPieces, matchedPiece, sidewaysPiece } from './lay-pieces.ts';
import type { Parcel } from './lay-pieces.ts';

export interface LaidLayer {
  readonly parcel: Parcel;
  readonly plain: Ticks;
  readonly widths: LaidWidths;
}

export interface Widths {
  readonly name: string;
  readonly layer: number;
  readonly plain: Ticks;
  readonly upright: LaidWidths;
  /** Along the cloth, used sideways. */
  readonly run: Ticks;
  /** How many of it, all of the quantity. */
  readonly count: number;
  /** Where in the repeat it begins, where its pattern is placed. */
  readonly starts?: Ticks | null;
}

export function layWidths(cloth: Cloth, of: Widths, practice: Pick<Practice, 'repeatRule'>): LaidLayer {
  const halves = halvesOf(of.upright) ?? 0;
  const piece = matchedPiece(of.name, cloth, practice.repeatRule, {
    plain: of.plain,
    count: upToWhole(halves * of.count, 2),
    phases: countPhases(halves, 1, of.count),
    starts: of.starts ?? null,
  });
  const parcel: Parcel = {
    cloth,
    layer: of.layer,
    pieces: [piece],
    halfWidths: halves,
    fullnessMade: null,
    grams: 0,
  };
  const sideways = sidewaysPiece(`${of.name}, sideways`, of.plain, of.run, of.count);
  const fits = cloth.railroad && of.plain <= cloth.usableWidth;
  if (fits && layPieces(cloth, [sideways]).plan < layPieces(cloth, [piece]).plan)
    return {
      parcel: { ...parcel, pieces: [sideways], halfWidths: null },
      plain: of.plain,
      widths: { by: 'sideways', across: of.plain, run: of.run },
    };
  return { parcel, plain: of.plain, widths: of.upright };
}

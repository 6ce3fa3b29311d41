/**
 * A swag at 45 degrees across its cloth. Spread flat it is narrower at the top, so it spans less than the square that
 * its length is reckoned from; where it still spans more than the cloth is wide, its lower corner is pieced on from strips
 * of its own. They come out of what that length leaves, or the length grows by what it lacks (geometry of the trapezoid).
 */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import { upToTick, upToWhole } from '../round.ts';
import { biasCut } from './measure-swags.ts';
import type { FlatSwag } from './measure-swags.ts';

export interface PiecedSwag {
  /** Across the cloth, and as much along it. */
  readonly span: Ticks;
  /** Along the cloth, of the strips beyond the selvage; 0 for a swag in one. */
  readonly corner: Ticks;
  /** Length of cloth for one swag, its corner with it. */
  readonly length: Ticks;
}

/** Across 45 degrees, times √2: from the middle of the lower edge to the farthest corner on either side. */
export function biasReach(flat: FlatSwag): { readonly far: number; readonly near: number } {
  return {
    far: Math.max(flat.width / 2, flat.top / 2 + flat.depth),
    near: Math.max(flat.width / 2, flat.top / 2 - flat.depth),
  };
}

export function pieceOnBias(flat: FlatSwag, cloth: Pick<Cloth, 'usableWidth'>): PiecedSwag {
  const { far, near } = biasReach(flat);
  const span = slantUp(far + near);
  if (span <= cloth.usableWidth) return { span, corner: ticks(0), length: biasCut(flat) };
  // Times √2, like the corners: strips as wide as the cloth, from the far side to the lower corner.
  const wide = cloth.usableWidth * Math.SQRT2;
  const strips = upToWhole(span, cloth.usableWidth);
  const along = Array.from({ length: strips }, (_, strip) =>
    alongStrip(flat, far - (strip + 1) * wide, far - strip * wide),
  );
  const [first = 0, ...others] = along.map(slantUp);
  const corner = ticks(others.reduce((sum, each) => sum + each, 0));
  return { span, corner, length: ticks(Math.max(biasCut(flat), first + corner)) };
}

interface Corner {
  /** Across the cloth and along it, times √2. */
  readonly across: number;
  readonly along: number;
}

/** The trapezoid from the middle of its lower edge, turned by 45 degrees. */
function cornersOf({ width, top, depth }: FlatSwag): readonly Corner[] {
  const [half, upper] = [width / 2, top / 2];
  const turn = (x: number, y: number): Corner => ({ across: x + y, along: y - x });
  return [turn(0 - half, 0), turn(half, 0), turn(upper, depth), turn(0 - upper, depth)];
}

/** How far the swag reaches along the cloth within a strip of it. */
function alongStrip(flat: FlatSwag, from: number, to: number): number {
  const corners = cornersOf(flat);
  const within = corners.flatMap((start, index) => {
    const end = corners[(index + 1) % corners.length] ?? start;
    const at = (across: number): number[] => {
      const share = (across - start.across) / (end.across - start.across);
      return share >= 0 && share <= 1 ? [start.along + share * (end.along - start.along)] : [];
    };
    const own = start.across >= from && start.across <= to ? [start.along] : [];
    return [...own, ...at(from), ...at(to)];
  });
  return within.length === 0 ? 0 : Math.max(...within) - Math.min(...within);
}

/** Over √2, up. */
function slantUp(length: number): Ticks {
  return upToTick(length / Math.SQRT2);
}

/** Where the pattern stands, of the wire form as the engines take it. */
import { ticks } from '../length.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import type { PatternPlace } from '../treatments/pattern-place.ts';
import type { MountPlace } from '../words.ts';
import { readLength } from './read-length.ts';
import type { ReadPlace } from './read-place.ts';
import type { WirePattern } from './wire-pattern.ts';

type WireLength = number | string;

/** `top` is the finished top above the floor as mount or fixing give it; what the pattern itself says stands over it. */
export function readPattern(
  wire: WirePattern,
  unit: LengthUnit,
  top: Ticks | null,
  { patternLevel, ceiling }: Pick<ReadPlace, 'patternLevel' | 'ceiling'>,
): PatternPlace {
  const own = levelOf(wire, ceiling, (value) => readLength(value, unit));
  return {
    place: wire.place,
    motif: wire.motif === undefined ? null : readLength(wire.motif, unit),
    level: wire.place === 'level' ? (own ?? patternLevel) : null,
    top: wire.topAt === undefined ? top : readLength(wire.topAt, unit),
    centred: wire.centred ?? false,
    motifAcross: wire.motifAcross === undefined ? null : readLength(wire.motifAcross, unit),
  };
}

/** The level that a pattern gives itself, above the floor; null where it gives none, or the ceiling is not known. */
export function levelOf(
  wire: Pick<WirePattern, 'level' | 'belowCeiling'> | undefined,
  ceiling: Ticks | null,
  read: (value: WireLength) => Ticks | null,
): Ticks | null {
  if (wire?.level !== undefined) return read(wire.level);
  const below = wire?.belowCeiling === undefined ? null : read(wire.belowCeiling);
  return below === null || ceiling === null ? null : ticks(ceiling - below);
}

/** Top of what hangs from a board or a rod, above the floor: from the ceiling, or from over the frame. */
export function topOfMount(
  mount: { readonly where: MountPlace; readonly above?: WireLength | undefined } | undefined,
  unit: LengthUnit,
  { sill, height, ceiling }: Pick<ReadPlace, 'sill' | 'height' | 'ceiling'>,
): Ticks | null {
  if (mount?.where === 'ceiling' && ceiling !== null) return ceiling;
  if (sill === null || height === null) return null;
  const above = mount?.above === undefined || mount.where === 'inside' ? 0 : readLength(mount.above, unit);
  return ticks(sill + height + above);
}

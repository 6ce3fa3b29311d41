/** Cloth colours lighter and darker for folds. Mixed in sRGB as it stands: good enough for shading, never for readings. */
import type { Hex } from './drawn-room.ts';
import { nearestCount } from './round-shapes.ts';

/** Undyed linen, for cloth whose colour nobody has given or whose colour cannot be read yet. */
export const UNDYED: Hex = '#cdbb95';

type Channels = readonly [number, number, number];

/** `#abc` or `#aabbcc` as channels 0..255; anything else is undyed linen. */
export function readHex(colour: string | null): Channels {
  const long = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(colour ?? '');
  if (long) return [parseInt(long[1] ?? '0', 16), parseInt(long[2] ?? '0', 16), parseInt(long[3] ?? '0', 16)];
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i.exec(colour ?? '');
  if (short) return readHex(`#${short[1]}${short[1]}${short[2]}${short[2]}${short[3]}${short[3]}`);
  return readHex(UNDYED);
}

function writeHex(channels: Channels): Hex {
  const digits = channels.map((value) => nearestCount(value, 0, 255).toString(16).padStart(2, '0'));
  return `#${digits.join('')}`;
}

/** `share` 0 is all of `from`, 1 all of `to`. */
export function mixColours(from: string | null, to: string, share: number): Hex {
  const [a, b] = [readHex(from), readHex(to)];
  const part = Math.max(0, Math.min(1, share));
  return writeHex([a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part, a[2] + (b[2] - a[2]) * part]);
}

/** Relative luminance by WCAG 2.2, 0 (black) to 1 (white). */
export function luminanceOf(colour: string): number {
  const [r, g, b] = readHex(colour).map((value) => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

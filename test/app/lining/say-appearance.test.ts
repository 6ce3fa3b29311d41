/** The slider from overcast to noon, and lamplight: the same spectra, and words that follow what is seen. */
import { describe, expect, it } from 'vitest';
import type { GenericClothId } from '#shared/words.ts';
import { saySky, sayAppearance } from '#app/lining/say/say-appearance.ts';
import { faceAppearance, LIGHT_SETTINGS, lightUnder } from '#app/lining/light-and-heat/show-light.ts';
import { faceOf, starters } from './window-case.ts';

const face = faceOf({ colour: '#c9b79a' });
const seenAt = (ids: readonly GenericClothId[], sky: number | null) =>
  faceAppearance(face, starters(...ids), 'double', lightUnder(sky));
const SKIES = Array.from({ length: 21 }, (_, i) => i / 20);

describe('the light of the slider', () => {
  it('runs from overcast to noon, and is lamplight by night', () => {
    expect(lightUnder(0)).toEqual(LIGHT_SETTINGS.overcast);
    expect(lightUnder(1).outsideLux).toBeCloseTo(LIGHT_SETTINGS.noon.outsideLux, 6);
    expect(lightUnder(7)).toEqual(lightUnder(1));
    expect(lightUnder(null)).toEqual(LIGHT_SETTINGS.lamplight);
    expect([0, 0.3, 0.6, 1, null].map(saySky)).toEqual(['overcast', 'thin cloud', 'hazy sun', 'noon sun', 'lamplight']);
  });
  it('a brighter sky never shows less light through the face, and behind blackout none is shown', () => {
    const shown = SKIES.map((sky) => seenAt(['std-white'], sky).through);
    shown.slice(1).forEach((each, i) => expect(each).toBeGreaterThanOrEqual(shown[i] ?? 0));
    for (const sky of SKIES) expect(seenAt(['blackout-3-pass'], sky).through).toBeLessThan(0.04);
  });
});

describe('in words', () => {
  const says = (ids: readonly GenericClothId[], sky: number | null, closes: number | null = null) =>
    sayAppearance(seenAt(ids, sky), sky, closes);
  it('a lined face glows at noon; behind blackout it looks as by lamplight (common practice)', () => {
    expect(says(['std-white'], 1)).toMatch(/^lit mostly from behind, /);
    expect(says(['blackout-3-pass'], 1)).toBe('no light shows through, coloured as by lamplight');
  });
  it('ivory turns the face yellower by day than white does (common practice)', () => {
    const [white, ivory] = [seenAt(['std-white'], 1), seenAt(['std-ivory'], 1)];
    expect(ivory.shift).toBeGreaterThan(white.shift);
    expect(ivory.warmer).toBe(true);
  });
  it('by night three stacks look alike, but for what the street sees', () => {
    const [lined, dark] = [seenAt(['std-white'], null), seenAt(['blackout-3-pass'], null)];
    expect(lined.shift).toBeCloseTo(0, 9);
    expect(dark.through).toBe(0);
    expect(says(['std-white'], null)).toBe('lit from the room alone');
    expect(says(['std-white'], null, 0.1)).toBe('lit from the room alone; shadows alone seen by lamplight');
    expect(says([], null, 0.5)).toMatch(/silhouettes/);
  });
});

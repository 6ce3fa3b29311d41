/** Stitches through the layers behind, counted from real take-offs; worked by hand beside each. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readRoom, studyRoom } from './write-room.ts';

const INCH = 0.0254;

function sewnIn(room: string, opening = 0, treatment = 0) {
  const text = readFileSync(new URL(`../../reference/rooms/${room}.json`, import.meta.url), 'utf8');
  const studied = studyRoom(readRoom(text))[opening]?.treatments[treatment];
  const sewn = studied?.hung.input.made.sewn;
  if (!sewn) throw new Error('nothing was counted');
  return { ...sewn, of: (label: string) => sewn.lines.find((line) => line.label === label)?.metres ?? 0 };
}

describe('stitches counted from the take-off', () => {
  it('a pinch-pleated pair of 4 widths, 87½ in long: 4 sides, one seam in each panel, 20 pleats', () => {
    const sewn = sewnIn('01-nursery-east');
    // 4 widths of 54 in less 4 side hems of 3 in: 204 in flat.
    expect(sewn.of('side hems')).toBeCloseTo(4 * 87.5 * INCH, 6);
    expect(sewn.of('hem')).toBeCloseTo(204 * INCH, 6);
    expect(sewn.of('seams')).toBeCloseTo(2 * 87.5 * INCH, 6);
    // Two rows along the top, and 10 cm down each of 10 pleats a panel.
    expect(sewn.of('heading')).toBeCloseTo(2 * 204 * INCH + 20 * 0.1, 6);
    expect(sewn.area).toBeCloseTo(204 * 87.5 * INCH * INCH, 6);
  });
  it('a flat shade of 35¾ × 54 in: 9 rib tapes sewn on both edges, 36 rings', () => {
    const sewn = sewnIn('08-roman-childs-room');
    expect(sewn.of('rib tapes')).toBeCloseTo(2 * 9 * 35.75 * INCH, 3);
    expect(sewn.of('side hems')).toBeCloseTo(2 * 54 * INCH, 3);
    expect(sewn.points).toBe(36);
  });
  it('nothing is counted where no daylight, or only the top of the window, is behind it', () => {
    expect(() => sewnIn('06-listed-sash-pelmet', 0, 0)).toThrow('nothing was counted');
    expect(() => sewnIn('11-bedroom-in-one-cloth', 0, 2)).toThrow('nothing was counted');
  });
});

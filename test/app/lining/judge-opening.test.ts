/** All treatments at one opening together, drawn or open. */
import { describe, expect, it } from 'vitest';
import { lengthFrom } from '#shared/length.ts';
import { composeLayers, layerOf } from '#app/lining/light-and-heat/compose-layers.ts';
import { GLASS } from '#app/lining/light-and-heat/glass.ts';
import { judgeOpening } from '#app/lining/judge-opening.ts';
import type { HungTreatment } from '#app/lining/judge-opening.ts';
import type { JudgeInput } from '#app/lining/judge-input.ts';
import { StackFault } from '#app/lining/stack-fault.ts';
import { MOST_ADDED } from '#app/lining/light-and-heat/warmth.ts';
import { inputOf, starters } from './window-case.ts';

const SHEER = { transmittance: 0.6, reflectance: 0.28 };
const FACE = { transmittance: 0.2, reflectance: 0.5 };
const sheer = inputOf([], { face: { id: 'sheer', family: 'sheer', visible: SHEER } });
const drapery = inputOf(starters('std-white'), { face: { visible: FACE } });
const cornice: JudgeInput = {
  ...inputOf(starters('std-white')),
  treatment: {
    ...sheer.treatment,
    kind: 'cornice',
    heading: 'flat',
    make: 'flat',
    onBoard: true,
    arrangement: 'single',
    rodWidth: lengthFrom(80, 'in'),
    finishedLength: lengthFrom(14, 'in'),
    overlap: lengthFrom(0, 'in'),
  },
};
const { room, opening } = drapery;
const hang = (...list: readonly (readonly [string, JudgeInput, boolean])[]): HungTreatment[] =>
  list.map(([name, input, drawn]) => ({ name, input, drawn }));
const judged = (...list: readonly (readonly [string, JudgeInput, boolean])[]) =>
  judgeOpening(room, opening, hang(...list));

describe('one opening, all together', () => {
  it('sheer under drapery: glass, sheer, lining and face composed in their order (Stokes)', () => {
    const lining = layerOf({ transmittance: 0.35, reflectance: 0.58 });
    const pane = layerOf(GLASS.double.visible);
    const expected = composeLayers([pane, layerOf(SHEER), lining, layerOf(FACE)]).Tf;
    const found = judged(['Drapery', drapery, true], ['Sheer', sheer, true]);
    expect(found.lightWithGlass).toBeCloseTo(expected, 6);
  });
  it('drawn aside it lets the light in: the bare glass', () => {
    const open = judged(['Drapery', drapery, false], ['Sheer', sheer, false]);
    expect(open.lightInRoom).toBeCloseTo(GLASS.double.visible.transmittance, 6);
    expect(open.warmthRange).toEqual([0, 0]);
    expect(open.summerLeft).toBe(1);
  });
  it('nothing at all is the bare glass too', () => {
    expect(judged().lightInRoom).toBeCloseTo(GLASS.double.visible.transmittance, 6);
  });
  it('one alone reads as it reads by itself', () => {
    const alone = judged(['Drapery', drapery, true]);
    const a = alone.lightInRoom;
    const open = judged(['Drapery', drapery, true]).lightWithGlass;
    expect(a).toBeGreaterThan(open);
    expect(alone.warmth).toBeGreaterThan(0);
  });
  it('drawing one more never lets in more light, never warms less, never lets in more sun', () => {
    const steps = [
      judged(['Drapery', drapery, false], ['Sheer', sheer, false]),
      judged(['Drapery', drapery, false], ['Sheer', sheer, true]),
      judged(['Drapery', drapery, true], ['Sheer', sheer, true]),
    ];
    steps.slice(1).forEach((step, i) => {
      const before = steps[i];
      if (before === undefined) return;
      expect(step.lightInRoom).toBeLessThan(before.lightInRoom);
      expect(step.warmth).toBeGreaterThanOrEqual(before.warmth);
      expect(step.summerLeft).toBeLessThan(before.summerLeft);
      expect(step.warmthRange[1]).toBeLessThanOrEqual(MOST_ADDED);
    });
  });
  it('a drawn sheer keeps sun from the face of the drapery, not the other way about', () => {
    const kept = (drawn: boolean) =>
      judged(['Drapery', drapery, true], ['Sheer', sheer, drawn]).fade.map((each) => each.kept);
    expect(kept(true)[0]).toBeGreaterThan(kept(false)[0] ?? 1);
    expect(kept(true)[1]).toBe(kept(false)[1]);
  });
  it('a cornice closes the top over the panels: they keep more warmth under it', () => {
    const without = judged(['Panels', drapery, true]);
    const under = judged(['Cornice', cornice, false], ['Panels', drapery, true]);
    expect(under.warmth).toBeGreaterThan(without.warmth);
    expect(under.lightInRoom).toBeLessThanOrEqual(without.lightInRoom);
  });
  it('tells its working', () => {
    const { working } = judged(['Drapery', drapery, true], ['Sheer', sheer, false]);
    expect(working.map((step) => step.id)).toEqual([
      ...['opening-light', 'opening-warmth', 'opening-summer', 'opening-glass'],
    ]);
    expect(working[0]?.rests).toMatch(/drawn aside: Sheer/);
  });
  it('treatments of other glass are refused by name', () => {
    const other = { ...sheer, opening: { ...opening, glazing: 'triple' as const } };
    let code = 'none';
    try {
      judged(['Drapery', drapery, true], ['Sheer', other, true]);
    } catch (error) {
      if (error instanceof StackFault) code = error.code;
    }
    expect(code).toBe('other-window');
  });
});

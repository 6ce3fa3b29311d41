/** The third drawing: bolts to scale with every cut on them. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { overlap, textBox } from '#app/drawing/label-field.ts';
import { drawCutPlan } from '#app/drawing/draw-cut-plan.ts';
import { placeBolts, placeUnder } from '#app/drawing/place-bolts.ts';
import type { CutPlanInput } from '#app/drawing/draw-cut-plan.ts';
import type { Drawing, Rect } from '#app/drawing/shape.ts';
import type { PlanInput } from '#app/plan/plan-input.ts';
import type { PlanFile } from '../../../build/plan-oracle/plan-file.ts';
import { readPlanFile } from '../../../build/plan-oracle/plan-file.ts';
import { CM, cm, smallPlan } from '../../../build/plan-oracle/seeded-plans.ts';
import { brokenNumbers, flatten, groupsOf, pathsOf, textsOf, wordsOf } from '../drawing/read-drawing.ts';
import { planFor } from './check-layout.ts';

const { houses } = JSON.parse(readFileSync(new URL('../../reference/plan-houses.json', import.meta.url), 'utf8')) as {
  houses: PlanFile[];
};

function draw(input: PlanInput, more: Partial<CutPlanInput> = {}): Drawing {
  return drawCutPlan({
    plan: planFor(input),
    repeat: input.repeat,
    colour: '#c9b79a',
    wording: { units: 'cm', decimal: '.' },
    width: 720,
    detail: 'screen',
    selected: null,
    ...more,
  });
}

const largest = houses.at(-1);
const halfDrop = houses[4];
if (largest === undefined || halfDrop === undefined) throw new Error('no houses');

describe('the cut plan drawn', () => {
  it.each(houses)('$name: every cut once, to one scale, within the sheet', (house) => {
    const input = readPlanFile(house);
    const plan = planFor(input);
    for (const detail of ['screen', 'paper'] as const) {
      const width = detail === 'screen' ? 720 : 523;
      const drawing = draw(input, { detail, width });
      expect(brokenNumbers(drawing)).toEqual([]);
      const targets = groupsOf(drawing.shapes);
      expect(targets.map((group) => group.key).sort()).toEqual(input.cuts.map((cut) => cut.id).sort());
      const cuts = plan.bolts.flatMap((bolt) => bolt.cuts);
      const scales = targets.map((group) => {
        const cut = cuts.find((each) => each.id === group.key);
        return [(group.bounds?.width ?? 0) / (cut?.length ?? 1), (group.bounds?.height ?? 0) / (cut?.across ?? 1)];
      });
      const [first] = scales;
      for (const [along, across] of scales) {
        expect(along).toBeCloseTo(first?.[0] ?? 0, 12);
        expect(across).toBeCloseTo(first?.[0] ?? 0, 12);
      }
      const boxes = targets.flatMap((group) => group.bounds ?? []);
      boxes.forEach((box, index) => {
        expect(box.x >= 0 && box.x + box.width <= width && box.y + box.height <= drawing.height).toBe(true);
        for (const other of boxes.slice(index + 1)) {
          const inner = { x: box.x + 0.01, y: box.y + 0.01, width: box.width - 0.02, height: box.height - 0.02 };
          expect(overlap(inner, other)).toBe(false);
        }
      });
      const labels = textsOf(drawing).map(textBox);
      labels.forEach((box, index) => {
        expect(box.x >= -0.5 && box.x + box.width <= width + 0.5, 'words on the sheet').toBe(true);
        for (const other of labels.slice(index + 1)) expect(overlap(box, other), 'words on words').toBe(false);
      });
    }
  });

  it('the largest house is readable: each cut carries its number, none smaller than 6½ points on paper', () => {
    const drawing = draw(readPlanFile(largest), { detail: 'paper', width: 523 });
    const groups = groupsOf(drawing.shapes);
    for (const group of groups) {
      const number = group.key?.split('#').at(-1) ?? '';
      const words = flatten(group.shapes).flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
      expect(
        words.some((each) => each.split(' ').includes(number)),
        `${group.key} is named`,
      ).toBe(true);
    }
    expect(Math.min(...textsOf(drawing).map((label) => label.size))).toBeGreaterThanOrEqual(5.5);
  });

  it('shows half-drops: the line of a repeat runs on to the other selvage half a repeat further', () => {
    const input = readPlanFile(halfDrop);
    const drawing = draw(input);
    const scale = 62 / (137 * CM);
    const slant = (size: number) =>
      pathsOf(drawing.shapes).some((path) =>
        path.steps.some((step, index) => {
          const next = path.steps[index + 1];
          return (
            step.to === 'move' &&
            next?.to === 'line' &&
            Math.abs(next.x - step.x - size * scale) < 1e-6 &&
            Math.abs(next.y - step.y - 62) < 1e-6
          );
        }),
      );
    expect(slant(cm(32))).toBe(true);
    expect(wordsOf(drawing).filter((words) => words === '½').length).toBe(
      input.cuts.filter((cut) => cut.phase === cm(32)).length,
    );
  });

  it('names remnants and flaws, marks what is fixed, and lets the thread end the order', () => {
    const input = readPlanFile(halfDrop);
    const bolts = input.bolts.map((bolt) => ({ ...bolt, startPhase: cm(0) }));
    const [first] = input.cuts;
    if (first === undefined) throw new Error('no cuts');
    const drawing = draw({
      ...{ ...input, bolts },
      flaws: [{ on: 'bolt', from: cm(620), to: cm(655) }],
      fixed: [{ cut: first.id, on: 'bolt', at: cm(64) }],
    });
    expect(wordsOf(drawing)).toEqual(expect.arrayContaining(['flaw', 'remnant A', '274 · fixed', '0 m', '1']));
    const threads = flatten(drawing.shapes).filter((shape) => 'style' in shape && shape.style.stroke === 'thread');
    expect(threads.length).toBe(1);
    const chosen = draw(input, { selected: 'snug' });
    const along = flatten(chosen.shapes).filter((shape) => 'style' in shape && shape.style.stroke === 'thread');
    expect(along.length).toBe(1 + input.cuts.filter((cut) => cut.set === 'snug').length);
  });

  it('says in words what it shows, in yards for inches', () => {
    const drawing = draw(readPlanFile(halfDrop), { wording: { units: 'in', decimal: '.' } });
    expect(drawing.title).toMatch(/^Cut plan to scale\. Bolt: 18 cuts, [\d.]+ yd used\./u);
    expect(wordsOf(drawing)).toContain('0 yd');
    expect(groupsOf(drawing.shapes).every((group) => (group.label ?? '') !== '')).toBe(true);
  });

  it('draws whatever the plan may hold: odd widths, remnants, sideways cuts, nothing at all', () => {
    for (let seed = 0; seed < 40; seed += 1) {
      const drawing = draw(smallPlan(seed), { width: seed % 2 === 0 ? 720 : 300 });
      expect(brokenNumbers(drawing)).toEqual([]);
      const rects = flatten(drawing.shapes).filter((shape): shape is Rect => shape.kind === 'rect');
      expect(rects.every((shape) => shape.x >= -0.01 && shape.x + shape.width <= drawing.width + 0.01)).toBe(true);
    }
    const empty = drawCutPlan({
      ...{ plan: { bolts: [], remnants: [] }, repeat: null, colour: null, wording: { units: 'cm', decimal: ',' } },
      ...{ width: Number.NaN, detail: 'screen', selected: null },
    });
    expect(wordsOf(empty)).toEqual(['Nothing to cut yet']);
  });
});

describe('the cloth under the pointer', () => {
  it.each(houses)('$name: in the middle of a cut it is that cut, on its own bolt', (house) => {
    const input = readPlanFile(house);
    const plan = planFor(input);
    const placed = placeBolts({ plan, width: 720, detail: 'screen' });
    const bolts = plan.bolts.flatMap((bolt) => bolt.cuts.map((cut) => ({ bolt, cut })));
    for (const group of groupsOf(draw(input).shapes)) {
      const found = bolts.find(({ cut }) => cut.id === group.key);
      const { x, y, width, height } = group.bounds ?? { x: 0, y: 0, width: 0, height: 0 };
      const under = placeUnder(placed, x + width / 2, y + height / 2);
      expect(under?.on).toBe(found?.bolt.id);
      expect(under?.at).toBeGreaterThan(found?.cut.at ?? Infinity);
      expect(under?.at).toBeLessThan((found?.cut.at ?? 0) + (found?.cut.length ?? 0));
      expect(under?.x).toBeGreaterThan(found?.cut.x ?? Infinity);
      expect(under?.x).toBeLessThan((found?.cut.x ?? 0) + (found?.cut.across ?? 0));
    }
  });

  it('nothing is under the pointer where nothing is drawn', () => {
    expect(placeUnder(placeBolts({ plan: { bolts: [], remnants: [] }, width: 720, detail: 'screen' }), 5, 5)).toBe(
      null,
    );
  });
});

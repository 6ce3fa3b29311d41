/**
 * Sheers (hem 5 in doubled, sides 1 in doubled, three times; sideways when heading, length and hem fit across; a weighted
 * cord along the hem and no loose weights; a weighted edge is the hem) and puddles (break 1, puddle 6-8, full 12-16; hem
 * 4 in single): common practice, figures worked by hand.
 */
import { describe, expect, it } from 'vitest';
import { advisePanels } from '#app/estimating/panels/advise-panels.ts';
import { checkPanels } from '#app/estimating/panels/check-panels.ts';
import { ticks } from '#shared/length.ts';
import { estimateCase, faceLine, readPanels } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

const SHEER: PanelsCase = {
  cloth: { family: 'sheer', width: 118 },
  panels: { heading: 'rod-pocket', rodWidth: 100, finishedLength: 84 },
};
const cutOf = (given: PanelsCase): number => {
  const made = estimateCase(given);
  return made.in(faceLine(made).plainCut);
};
const partNames = (given: PanelsCase): string[] => estimateCase(given).parts.map(({ part }) => part);

describe('sheers', () => {
  it('had the hems and the fullness of drapery: 10 in of hem, 2 of sides, three times', () => {
    const { practice, fullness } = readPanels(SHEER).panels;
    expect([practice.bottomHem, practice.sideHem].map((each) => each / 8128)).toEqual([10, 2]);
    expect(fullness).toBe(3000);
    // 84 + 6 rod pocket + 10
    expect(cutOf(SHEER)).toBe(100);
  });
  it('in centimetres 25 and 5', () => {
    const { practice } = readPanels({ ...SHEER, units: 'cm', cloth: { family: 'sheer', width: 300 } }).panels;
    expect([practice.bottomHem, practice.sideHem].map((each) => each / 3200)).toEqual([25, 5]);
  });
  it('keep what the treatment writes', () => {
    const own = { practice: { bottomHem: 6, sideHem: 3, fullness: { 'rod-pocket': 2 } } };
    const { practice, fullness } = readPanels({ ...SHEER, panels: { ...SHEER.panels, ...own } }).panels;
    expect([practice.bottomHem / 8128, practice.sideHem / 8128, fullness]).toEqual([6, 3, 2000]);
    expect(readPanels({ ...SHEER, panels: { ...SHEER.panels, fullness: 2.5 } }).panels.fullness).toBe(2500);
  });
  it('keep what the job writes for all panels, until theirs is written', () => {
    const all = { ...SHEER, practice: { bottomHem: 6, fullness: { 'rod-pocket': 2 } } };
    expect([readPanels(all).panels.practice.bottomHem / 8128, readPanels(all).panels.fullness]).toEqual([6, 2000]);
    const theirs = { ...SHEER, practice: { ...all.practice, sheer: { bottomHem: 12, fullness: 4 } } };
    expect([readPanels(theirs).panels.practice.bottomHem / 8128, readPanels(theirs).panels.fullness]).toEqual([
      12, 4000,
    ]);
  });
  it.each(['grommet', 'tab', 'wave', 'flat'] as const)('under a %s heading are as full as any cloth', (heading) => {
    const sheer = readPanels({ ...SHEER, panels: { ...SHEER.panels, heading } }).panels;
    const plain = readPanels({ cloth: {}, panels: { ...SHEER.panels, heading } }).panels;
    expect(sheer.fullness).toBe(plain.fullness);
  });
  it('are the practice of the decorator', () => {
    const given = { ...SHEER, practice: { sheer: { fullness: 4, bottomHem: 12 } } };
    expect(readPanels(given).panels.fullness).toBe(4000);
    expect(cutOf(given)).toBe(102);
  });
  it('run sideways when they fit across, without being told that they may', () => {
    // 100 ≤ 118; the run is 3 × 100 + 4 × 2 = 308. Upright, 3 widths would take 300, with a seam in each panel.
    const made = estimateCase(SHEER);
    expect(faceLine(made).railroaded).toBe(true);
    expect(made.in(faceLine(made).cutLength)).toBe(308);
    expect(faceLine(estimateCase({ ...SHEER, cloth: { family: 'sheer', width: 99 } })).railroaded).toBe(false);
    expect(faceLine(estimateCase({ ...SHEER, cloth: { family: 'sheer', width: 118, oneWay: true } })).railroaded).toBe(
      false,
    );
  });
  it('stay upright where one width a panel has no seam and takes less', () => {
    // 3 × 70 = 210 of 118: 2 widths, 200 in; sideways 218.
    const small = { ...SHEER, panels: { ...SHEER.panels, rodWidth: 70 } };
    expect(faceLine(estimateCase(small)).railroaded).toBe(false);
  });
  it('had loose weights: a weighted cord runs along the hem', () => {
    const made = estimateCase(SHEER);
    expect(made.parts.find(({ part }) => part === 'weightedCord')).toEqual({
      part: 'weightedCord',
      length: 300 * 8128,
    });
    expect(partNames(SHEER)).not.toContain('weight');
    expect(partNames({ panels: SHEER.panels! })).toContain('weight');
  });
});

describe('a weighted edge', () => {
  const edge: PanelsCase = { ...SHEER, panels: { ...SHEER.panels, weightedEdge: true } };
  it('is the hem: no hem is cut, no cord and no weights are bought', () => {
    const made = estimateCase(edge);
    expect(cutOf(edge)).toBe(90);
    expect(faceLine(made).railroaded).toBe(true);
    expect(partNames(edge)).not.toContain('weightedCord');
    expect(partNames(edge)).not.toContain('weight');
    expect(made.working.find(({ id }) => id === 'plain-cut')?.rests).toContain('a weighted edge instead of a hem');
  });
  it('cannot be the hem of what does not fit across', () => {
    const { panels, face } = readPanels({ ...edge, panels: { ...edge.panels, finishedLength: 120 } });
    expect(checkPanels(panels, face, [], 'in').map(({ path, wrong }) => `${path.split('.').at(-1)} ${wrong}`)).toEqual([
      'weightedEdge a length of 126 in with its heading does not fit across face (118 in)',
    ]);
  });
});

describe('cloth on the floor', () => {
  const hung = (to: 'floor' | 'break' | 'puddle' | 'full-puddle'): PanelsCase => ({
    panels: { finishedLength: undefined, hang: { fixing: 92, to } },
  });
  it.each([
    ['floor', 91.5, 8],
    ['break', 93, 8],
    ['puddle', 99, 4],
    ['full-puddle', 106, 4],
  ] as const)('to the %s: %d in long, %d in of hem', (to, length, hem) => {
    const { finishedLength, practice } = readPanels(hung(to)).panels;
    expect([finishedLength / 8128, practice.bottomHem / 8128]).toEqual([length, hem]);
  });
  it.each([
    ['living', false, 'note'],
    ['nursery', false, 'caution'],
    ['child', false, 'caution'],
    ['living', true, 'caution'],
  ] as const)('in a %s room, heat below %s, small children, pets and vents are a %s', (use, heatSourceBelow, level) => {
    const told = advisePanels(readPanels(hung('full-puddle')).panels, { opening: ticks(0), use, heatSourceBelow });
    expect(told.map((each) => each.level)).toEqual([level]);
    expect(told[0]?.says).toMatch(/small children and pets.*floor vent/);
    expect(advisePanels(readPanels(hung('break')).panels, { opening: ticks(0), use, heatSourceBelow })).toEqual([]);
  });
  it('says which hem it is', () => {
    const { working } = estimateCase(hung('puddle'));
    expect(working.find(({ id }) => id === 'plain-cut')?.rests).toContain('bottom hem of what lies on the floor');
  });
});

/** What must hold of every plan, whatever was asked: the checks of a workroom that lays the pieces out and looks. */
import { expect } from 'vitest';
import { speaker } from '#app/estimating/say.ts';
import type { CutPlan } from '#app/plan/cut-plan.ts';
import type { PlanInput } from '#app/plan/plan-input.ts';
import { planCuts } from '#app/plan/plan-cuts.ts';
import { sayFault } from '#shared/fault.ts';

export const SAY = speaker('cm', 'en-US');

/** The plan of a question that is in order. */
export function planFor(input: PlanInput): CutPlan {
  const outcome = planCuts(input, SAY);
  if (!outcome.ok) throw new Error(outcome.faults.map(sayFault).join('\n'));
  return outcome.plan;
}

/** The faults of a question that is not, each as a job file tells it. */
export function faultsOf(input: PlanInput): string[] {
  const outcome = planCuts(input, SAY);
  return outcome.ok ? [] : outcome.faults.map(sayFault);
}

interface Box {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly left: number;
  readonly right: number;
}

export function expectSound(input: PlanInput, plan: CutPlan): void {
  const laid = plan.bolts.flatMap((bolt) => bolt.cuts.map((cut) => cut.id));
  expect([...laid, ...plan.unlaid].sort(), 'every cut once').toEqual(input.cuts.map((cut) => cut.id).sort());
  const repeat = input.repeat?.vertical ?? 0;
  const lots = new Map<string, string>();
  for (const bolt of plan.bolts) {
    const supply = [...input.remnants, ...input.bolts].find((each) => each.id === bolt.id);
    const boxes: Box[] = bolt.flaws.map((flaw) => ({ ...flaw, name: 'flaw', left: 0, right: bolt.width }));
    for (const cut of bolt.cuts) {
      const asked = input.cuts.find((each) => each.id === cut.id);
      const across = { whole: input.width, half: Math.floor(input.width / 2) }[String(asked?.across)] ?? asked?.across;
      const size = cut.laid === 'up' ? [asked?.length, across] : [across, asked?.length];
      expect([cut.length, cut.across], `${cut.id} has its size`).toEqual(size);
      if (cut.laid === 'sideways') expect(asked?.mayTurn, `${cut.id} may be turned`).toBe(true);
      if (repeat > 0 && asked?.phase !== null)
        expect(((bolt.startPhase ?? 0) + cut.at) % repeat, `${cut.id} at its place in the repeat`).toBe(asked?.phase);
      if (supply?.startPhase !== null && repeat > 0) expect(bolt.startPhase).toBe(supply?.startPhase);
      if (asked?.side === 'left') expect(cut.x, `${cut.id} along the left selvage`).toBe(0);
      if (asked?.side === 'right') expect(cut.x + cut.across, `${cut.id} along the right selvage`).toBe(input.width);
      const lot = bolt.dyeLot ?? `?${bolt.id}`;
      expect(lots.get(cut.set) ?? lot, `set ${cut.set} of one dye lot`).toBe(lot);
      lots.set(cut.set, lot);
      boxes.push({ name: cut.id, from: cut.at, to: cut.at + cut.length, left: cut.x, right: cut.x + cut.across });
    }
    for (const fixed of input.fixed.filter((each) => each.on === bolt.id))
      expect(bolt.cuts.find((cut) => cut.id === fixed.cut)?.at, `${fixed.cut} where it was fixed`).toBe(fixed.at);
    boxes.forEach((a, index) => {
      expect(a.from >= 0 && a.left >= 0 && a.right <= bolt.width, `${a.name} on the cloth`).toBe(true);
      if (bolt.length !== null) expect(a.to, `${a.name} before the end`).toBeLessThanOrEqual(bolt.length);
      for (const b of boxes.slice(index + 1))
        if (a.name !== 'flaw' || b.name !== 'flaw')
          expect(
            a.to <= b.from || b.to <= a.from || a.right <= b.left || b.right <= a.left,
            `${a.name} and ${b.name} apart`,
          ).toBe(true);
    });
    expect(bolt.used).toBe(Math.max(...bolt.cuts.map((cut) => cut.at + cut.length)));
    const step = supply !== undefined && 'step' in supply ? supply.step : null;
    const upTo = { null: 0, '0': bolt.used }[String(step)] ?? Math.ceil(bolt.used / (step ?? 1)) * (step ?? 1);
    expect(bolt.ordered, 'ordered in whole steps').toBe(Math.min(upTo, bolt.length ?? Infinity));
    if (step !== null) {
      const area = (list: readonly { readonly from: number; readonly to: number; readonly across: number }[]) =>
        list.reduce((sum, each) => sum + (each.to - each.from) * each.across, 0);
      const cuts = bolt.cuts.map((cut) => ({ from: cut.at, to: cut.at + cut.length, across: cut.across }));
      const flaws = bolt.flaws
        .filter((flaw) => flaw.from < bolt.ordered)
        .map((flaw) => ({ from: flaw.from, to: Math.min(flaw.to, bolt.ordered), across: bolt.width }));
      expect(area(cuts) + area(bolt.waste) + area(flaws), 'cuts, waste and flaws are the cloth').toBeGreaterThanOrEqual(
        bolt.ordered * bolt.width * (1 - 1e-12),
      );
      if (bolt.flaws.length < 2) expect(area(cuts) + area(bolt.waste) + area(flaws)).toBe(bolt.ordered * bolt.width);
    }
  }
  expect(plan.ordered).toBe(plan.bolts.reduce((sum, bolt) => sum + bolt.ordered, 0));
  expect(plan.bound).toBeLessThanOrEqual(plan.ordered);
  expect(plan.gap).toBe(plan.ordered - plan.bound);
}

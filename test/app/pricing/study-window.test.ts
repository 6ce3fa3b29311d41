/** What is asked of the lining engine after pricing: readings, why not another stack, and all that hangs together. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sayOpening } from '#app/lining/say/say-opening.ts';
import { liningSay } from '#app/lining/say/lining-say.ts';
import { sayTold } from '#app/lining/say/say-told.ts';
import { assembleProposal } from '#app/proposal/assemble-proposal.ts';
import { explainBehind, explainStacks, judgeTogether, readStack } from '#app/pricing/study-window.ts';
import { priceJob } from '#app/pricing/price-job.ts';
import type { Job } from '#shared/job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import type { JobResult, TreatmentResult } from '#shared/result.ts';
import { TIERS } from '#shared/words.ts';

function fileOf(name: string): WireJob {
  return JSON.parse(readFileSync(new URL(`../../reference/${name}.json`, import.meta.url), 'utf8')) as WireJob;
}
function priced(wire: unknown): { readonly job: Job; readonly result: JobResult } {
  const read = readJob(wire);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return { job: read.job, result: priceJob(read.job) };
}
const EVERY = priced(fileOf('every-kind.job'));
const PELMET = priced(fileOf('rooms/06-listed-sash-pelmet'));

describe('readings', () => {
  it('of every kind and option: the value within its range, what it rests on, and a step that the working has', () => {
    for (const treatment of EVERY.result.treatments)
      for (const tier of TIERS) {
        const { stack, judgement } = treatment.tiers[tier];
        const told = readStack(EVERY.job, treatment.key, stack);
        expect(told.length).toBeGreaterThan(1);
        const steps = new Set(judgement.working.map((step) => step.id));
        for (const each of told) {
          const where = `${treatment.path} ${tier} ${each.id}`;
          expect(each.value, where).toBeGreaterThanOrEqual(each.range[0] - 1e-9);
          expect(each.value, where).toBeLessThanOrEqual(each.range[1] + 1e-9);
          expect(each.rests, where).not.toBe('');
          expect(steps.has(each.step), where).toBe(true);
          expect(sayTold(each, liningSay('cm', 'de-DE')).value, where).not.toMatch(/NaN|undefined|\d\.\d/);
        }
      }
  });
  it('are those that the option was judged by', () => {
    const [treatment] = EVERY.result.treatments as [TreatmentResult];
    const told = readStack(EVERY.job, treatment.key, treatment.tiers.best.stack);
    const { readings } = treatment.tiers.best.judgement;
    for (const each of told.filter(({ id }) => id in readings))
      expect(each.value).toBe(readings[each.id as keyof typeof readings]);
  });
});

describe('why not another', () => {
  it('answers for every kind, each stack once, the three on the table among them', () => {
    for (const treatment of EVERY.result.treatments) {
      const answers = explainStacks(EVERY.job, treatment);
      const keys = answers.map(({ behind }) => behind.join('+'));
      expect(new Set(keys).size).toBe(keys.length);
      for (const { says, verdict, tier } of answers) {
        expect(says).toMatch(/^[A-Z].{15,}[.?]$/);
        expect(says).not.toMatch(/undefined|NaN/);
        expect(tier === null).toBe(verdict !== 'chosen');
      }
    }
  });
  it('no answer sets a stack against one of the same name', () => {
    for (const treatment of EVERY.result.treatments) {
      const names = TIERS.map((tier) => treatment.tiers[tier].title);
      for (const answer of explainStacks(EVERY.job, treatment))
        if (answer.verdict !== 'chosen') expect(names).not.toContain(answer.name);
    }
  });
});

describe('a stop that she insists on', () => {
  const wire = fileOf('sample.job');
  const [room, ...rest] = wire.rooms as [WireJob['rooms'][number], ...WireJob['rooms']];
  const [opening, ...others] = room.openings as [(typeof room.openings)[number], ...(typeof room.openings)[number][]];
  const panels = {
    ...opening.treatments[0],
    heading: 'grommet',
    stacks: { good: { behind: ['inter-med', 'std-white'] } },
  };
  const asked = {
    ...wire,
    practice: { ...wire.practice, fullness: { ...wire.practice?.fullness, grommet: 2 } },
    rooms: [{ ...room, openings: [{ ...opening, treatments: [panels] }, ...others] }, ...rest],
    priceBook: 'example',
  };
  const { job, result } = priced(asked);
  const treatment = result.treatments[0] as TreatmentResult;
  it('is made, says that it was asked for, and is never the advice', () => {
    const stop = treatment.tiers.good.judgement.advice.find((each) => each.level === 'stop');
    expect(stop?.says).toMatch(/asked for/);
    expect(treatment.advised.tier).not.toBe('good');
    expect(explainBehind(job, treatment, ['inter-med', 'std-white'])).toMatchObject({
      verdict: 'chosen',
      tier: 'good',
    });
  });
  it('is called stopped for another option', () => {
    const answer = explainBehind(job, treatment, ['inter-heavy', 'std-white']);
    expect(answer.verdict).toBe('stopped');
  });
  it('is written on the proposal, at its window and option', () => {
    const given = { number: '1', revision: 1, date: '2026-11-25', validUntil: null, audience: 'client' } as const;
    const paper = assembleProposal(job, result, given);
    const notes = [...paper.windows.flatMap((each) => each.notes), ...paper.notes];
    const told = notes.filter(({ says }) => says.includes('asked for'));
    expect(told).toHaveLength(1);
    expect(told[0]?.about.toLowerCase()).toContain('good');
  });
});

describe('all together', () => {
  const { job, result } = PELMET;
  const hung = (drawn: boolean) => result.treatments.map(({ key, tiers }) => ({ key, stack: tiers.good.stack, drawn }));
  const [drawn, open] = [judgeTogether(job, hung(true)), judgeTogether(job, hung(false))];
  it('drawn lets in less light and saves more than open', () => {
    expect(drawn!.lightInRoom).toBeLessThan(open!.lightInRoom);
    expect(drawn!.warmth).toBeGreaterThan(open!.warmth);
    expect(drawn!.summerLeft).toBeLessThanOrEqual(open!.summerLeft);
  });
  it('does not depend on the order in which they were listed', () => {
    const back = judgeTogether(job, [...hung(true)].reverse());
    expect(back!.lightInRoom).toBe(drawn!.lightInRoom);
    expect(new Set(back!.fade.map(({ name, kept }) => `${name} ${kept}`))).toEqual(
      new Set(drawn!.fade.map(({ name, kept }) => `${name} ${kept}`)),
    );
  });
  it('reads in words, figures and ranges; nothing where nothing hangs', () => {
    const said = sayOpening(drawn!, 'single', liningSay('cm', 'fr-FR'));
    expect(said.map(({ id }) => id)).toEqual(['light', 'warmth', 'summer', 'glass', 'fade', 'fade']);
    for (const { words, figure, range } of said) {
      expect(words).not.toBe('');
      expect(`${figure} ${range}`).not.toMatch(/NaN|undefined|\d\.\d/);
    }
    expect(sayOpening(open!, 'single', liningSay('cm'))[1]).toMatchObject({ words: 'nothing added', range: '' });
    expect(judgeTogether(job, [])).toBeNull();
  });
});

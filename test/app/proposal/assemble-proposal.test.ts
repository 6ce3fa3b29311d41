/** What the paper says: each number from the result, each caution once, nothing of costs for the client. */
import { describe, expect, it } from 'vitest';
import { priceJob } from '#app/pricing/price-job.ts';
import { assembleProposal, EXAMPLE_MARKS } from '#app/proposal/assemble-proposal.ts';
import { TIERS } from '#shared/words.ts';
import { brokenNumbers } from '../drawing/read-drawing.ts';
import { GIVEN, houseOf, paperOf } from './sample-house.ts';

describe('prices', () => {
  const { result, paper } = paperOf({ windows: 3 });
  const cents = (money: string) => Number(money.replace(/[^0-9-]/gu, ''));

  it('each window and option carries its price of the result, on every page that prints it', () => {
    result.treatments.forEach((treatment, i) => {
      TIERS.forEach((tier, k) => {
        const total = treatment.tiers[tier].price!.total;
        expect(cents(paper.windows[i]!.options[k]!.price)).toBe(total);
        expect(cents(paper.summary.rows[i]!.prices[k]!)).toBe(total);
        expect(cents(paper.closing.acceptance.lines[i]!.prices[k]!)).toBe(total);
      });
    });
  });

  it('what is printed adds up: windows to the net, net and taxes to the total', () => {
    const amounts = (kind: string, k: number) =>
      paper.summary.totals.filter((total) => total.kind === kind).map((total) => cents(total.amounts[k]!));
    TIERS.forEach((tier, k) => {
      const printed = paper.summary.rows.reduce((sum, row) => sum + cents(row.prices[k]!), 0);
      const [net] = amounts('net', k);
      const tax = amounts('tax', k).reduce((sum, amount) => sum + amount, 0);
      expect(net).toBe(printed);
      expect(amounts('total', k)).toEqual([printed + tax]);
      expect(amounts('deposit', k)).toEqual([result.totals![tier].deposit]);
    });
  });

  it('a tax is printed by its name, and what it is on is said', () => {
    expect(paper.summary.totals.map((total) => total.label)).toContain('Sales tax');
    expect(paper.summary.notes.join(' ')).toContain('Sales tax: 6.25\u00a0% on cloth and hardware.');
  });

  it('a missing rate leaves prices to follow, and nothing is added up', () => {
    const job = houseOf({ windows: 2, change: { priceBook: {} } });
    const open = assembleProposal(job, priceJob(job), GIVEN);
    expect(open.windows[0]!.options[0].price).toBe('to follow');
    expect(open.summary.totals).toEqual([]);
    expect(open.summary.notes.join(' ')).toContain('not settled yet');
  });
});

describe('audience', () => {
  it('the client reads no price line, no formula and no step of working', () => {
    const { result, paper } = paperOf({ windows: 2 });
    const printed = JSON.stringify(paper);
    expect(paper.working).toEqual([]);
    for (const treatment of result.treatments) {
      for (const tier of TIERS) {
        for (const line of treatment.tiers[tier].price!.lines) expect(printed).not.toContain(line.formula);
        for (const step of treatment.tiers[tier].working.filter((each) => each.formula.length > 6))
          expect(printed).not.toContain(step.formula);
      }
    }
  });

  it('the decorator’s copy holds each price line and each step once an option, or once for all', () => {
    const { result, paper } = paperOf({ windows: 2 }, { audience: 'decorator' });
    expect(paper.working).toHaveLength(2);
    result.treatments.forEach((treatment, i) => {
      const { options } = paper.working[i]!;
      TIERS.forEach((tier, k) => {
        const price = treatment.tiers[tier].price!;
        const option = options[k + 1]!;
        const table = option.tables[1]!;
        expect(table.rows.map((row) => row[0])).toEqual(price.lines.map((line) => line.label));
        const said = [...option.steps, ...options[0]!.steps].map((step) => step.formula);
        for (const step of treatment.tiers[tier].working) expect(said).toContain(step.formula);
      });
    });
  });

  it.each(['client', 'decorator'] as const)('example rates are marked on the copy of the %s', (audience) => {
    const { paper } = paperOf({ windows: 1, change: { priceBook: 'example' } }, { audience });
    expect(paper.mark).toBe(EXAMPLE_MARKS[audience]);
  });

  it('her own rates carry no mark', () => {
    expect(paperOf({ windows: 1 }).paper.mark).toBeNull();
  });
});

describe('words', () => {
  it('the decorator’s names for the options stand everywhere', () => {
    const tierNames = { good: 'Simple', better: 'Comfort', best: 'Finest' };
    const { paper } = paperOf({
      windows: 2,
      change: { proposal: { number: '1', date: '2026-11-25', validUntil: '2026-12-25', tierNames } },
    });
    const names = ['Simple', 'Comfort', 'Finest'];
    expect(paper.summary.tierNames).toEqual(names);
    expect(paper.windows[0]!.options.map((option) => option.tierName)).toEqual(names);
    expect(paper.closing.acceptance.tierNames).toEqual(names);
    expect(paper.closing.acceptance.deposit).toContain('for Finest');
  });

  it('exactly one option of a window is advised, the one of the result', () => {
    const { result, paper } = paperOf({ windows: 4 });
    paper.windows.forEach((window, i) => {
      const advised = window.options.filter((option) => option.advice !== null).map((option) => option.tier);
      expect(advised).toEqual([result.treatments[i]!.advised.tier]);
      expect(TIERS[paper.summary.rows[i]!.advised]).toBe(result.treatments[i]!.advised.tier);
    });
  });

  it('a treatment is told with typeset fractions', () => {
    const { paper } = paperOf({ windows: 1 });
    expect(paper.windows[0]!.words).toBe(
      'Pinch-pleated pair in Larch stripe, 72\u00a0in wide, 84½\u00a0in long, 2.47 times full.',
    );
  });

  it('the reference tells a revision from the second on', () => {
    expect(paperOf({ windows: 1 }).paper.reference).toBe('Proposal 2026-014, revision 2');
    expect(paperOf({ windows: 1 }, { revision: 1 }).paper.reference).toBe('Proposal 2026-014');
    expect(paperOf({ windows: 1 }, { revision: 1, number: null }).paper.reference).toBe('Proposal');
  });
});

describe('what to heed', () => {
  const { result, paper } = paperOf({ windows: 20 });
  const own = paper.windows.flatMap((window) => window.notes);
  const all = [...own, ...paper.notes].map((note) => note.says);

  it('every stop and caution of the result is said', () => {
    const said = all.join(' ').replace(/’/gu, "'");
    for (const treatment of result.treatments)
      for (const tier of TIERS)
        for (const advice of treatment.tiers[tier].judgement.advice)
          if (advice.level === 'stop' || advice.level === 'caution')
            expect(said).toContain(advice.says.replace(/’/gu, "'"));
  });

  it('every stop and caution stands at the window that it is about, beside its options', () => {
    for (const treatment of result.treatments) {
      const notes = paper.windows.find(({ key }) => key === treatment.key)?.notes ?? [];
      const said = notes
        .map(({ says }) => says)
        .join(' ')
        .replace(/’/gu, "'");
      for (const tier of TIERS)
        for (const advice of treatment.tiers[tier].judgement.advice)
          if (advice.level === 'stop' || advice.level === 'caution')
            expect(said).toContain(advice.says.replace(/’/gu, "'"));
    }
  });

  it('ladders, old paint, electric current and weight are always said (common practice)', () => {
    const said = paperOf({ windows: 1 })
      .paper.notes.map((note) => note.says)
      .join(' ');
    for (const word of ['ladders', 'lead', 'asbestos', 'electric', 'maker’s rating', 'exits stay free'])
      expect(said).toContain(word);
  });

  it('nothing is said twice to all', () => {
    const shared = paper.notes.map((note) => note.says);
    expect(new Set(shared).size).toBe(shared.length);
    for (const note of own) expect(shared).not.toContain(note.says);
  });

  it('cords, heat, and what "about" rests on are always said (common practice)', () => {
    const one = paperOf({ windows: 1 }).paper;
    const said = [...one.windows.flatMap((window) => window.notes), ...one.notes].map((note) => note.says).join(' ');
    expect(said).toMatch(/cord/iu);
    expect(said).toMatch(/heater/iu);
    expect(said).toMatch(/“about” is computed/u);
  });
});

describe('closing', () => {
  it('without words of her own the notice defers to local law and leaves blanks', () => {
    const { cancellation } = paperOf({ windows: 1 }).paper.closing;
    expect(cancellation.says.join(' ')).toContain('law of the place');
    expect(cancellation.says.join(' ')).not.toMatch(/\b\d+ days?\b/u);
    expect(cancellation.blanks).toHaveLength(2);
  });

  it('her own notice and terms are printed as she wrote them', () => {
    const { closing } = paperOf({
      windows: 1,
      change: {
        proposal: {
          number: '1',
          date: '2026-11-25',
          validUntil: '2026-12-25',
          terms: 'Half now, half when hung.',
          cancellation: 'You may cancel within the days that the law gives.',
        },
      },
    }).paper;
    expect(closing.terms).toEqual(['Half now, half when hung.']);
    expect(closing.cancellation).toEqual({ says: ['You may cancel within the days that the law gives.'], blanks: [] });
  });
});

describe('a frozen paper', () => {
  it('is plain JSON, and the same each time', () => {
    const { job, result, paper } = paperOf({ windows: 3 }, { audience: 'decorator' });
    expect(JSON.parse(JSON.stringify(paper))).toEqual(
      JSON.parse(JSON.stringify(assembleProposal(job, result, { ...GIVEN, audience: 'decorator' }))),
    );
    expect(brokenNumbers(paper, 'paper')).toEqual([]);
  });

  it('units and locale are the project’s: centimetres, euros, decimal commas', () => {
    const { paper } = paperOf({ windows: 1, change: { currency: 'EUR', locale: 'fr-FR' } });
    expect(paper.windows[0]!.options[0].price).toMatch(/^\d[\d\u00a0]*,\d\d\u00a0€$/u);
    expect(paper.dated).toBe('25\u00a0November\u00a02026');
  });
});

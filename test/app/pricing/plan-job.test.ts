/** The joint plan of whole jobs: against what is in print, by hand, and by what must hold whatever the house. */
import { describe, expect, it } from 'vitest';
import { marginalCloth } from '#app/plan/marginal-cloth.ts';
import { planJob } from '#app/pricing/plan-job.ts';
import { priceJob } from '#app/pricing/price-job.ts';
import { speaker } from '#app/estimating/say.ts';
import { lengthFrom, lengthIn } from '#shared/length.ts';
import { expectSound } from '../plan/check-layout.ts';
import { faultsOfHouse, houseOf, planHouse, readHouse } from './plan-house.ts';

const inches = (length: number): number => lengthIn(length, 'in');
const SAY = speaker('in', 'en-US');

describe('a house, by hand', () => {
  it('one treatment is the worked example: 4 cuts of 100 on 27, 3 × 108 + 100 = 424 in, one repeat extra, up to 12¾ yd', () => {
    const { plan, order, alone, handbook } = planHouse({ cloth: { repeat: { vertical: 27 } }, windows: [{}] });
    expect([plan.ordered, plan.bound, alone, handbook].map(inches)).toEqual([424, 424, 424, 432]);
    expect(lengthIn(order, 'yd')).toBe(12.75);
  });

  it('two windows share one extra repeat and one rounding, and the last cut alone ends short', () => {
    const { plan, order, orderAlone } = planHouse({ cloth: { repeat: { vertical: 27 } }, windows: [{}, {}] });
    // 7 × 108 + 100 = 856; and 27 is 883 in = 24.53 yd, up to 24.75; alone each 12.75.
    expect([inches(plan.ordered), lengthIn(order, 'yd'), lengthIn(orderAlone, 'yd')]).toEqual([856, 24.75, 25.5]);
  });

  it('laid together it may take more than the windows alone, and the working says why', () => {
    // Alone 424 in each from its own place; together the second waits from 424 to 432: 8 of a repeat of 27.
    const { plan, alone } = planHouse({ cloth: { repeat: { vertical: 27 } }, windows: [{}, {}] });
    expect([plan.ordered, alone]).toEqual([856, 848].map((inches) => inches * 8128));
    const step = plan.working.find(({ id }) => id === 'plan-alone');
    expect(step?.formula).toBe(
      '23.78 yd − 23.56 yd = 0.22 yd more laid together: on one piece each after the first waits for its place in the repeat, less than 1 × 27 in',
    );
    // On plain cloth nothing waits.
    const plain = planHouse({ windows: [{}, {}] });
    expect(plain.plan.working.find(({ id }) => id === 'plan-alone')?.formula).toMatch(/= 0 yd saved/);
  });

  it('two half widths of different windows lie beside one another', () => {
    const windows = [
      { arrangement: 'single', widths: 1.5 },
      { arrangement: 'single', widths: 1.5 },
    ];
    const { plan, alone } = planHouse({ windows });
    expect([inches(plan.ordered), inches(alone)]).toEqual([300, 400]);
    expect(plan.gap).toBe(0);
  });

  it('half widths of a pair in a pattern: the left panel takes a right half, the right panel a left one (common practice)', () => {
    const { plan, input } = planHouse({ cloth: { repeat: { vertical: 27 } }, windows: [{ widths: 1.5 }] });
    expectSound(input, plan);
    const halves = input.cuts.filter(({ across }) => across === 'half');
    expect(halves.map(({ side }) => side)).toEqual(['right', 'left']);
    expect(inches(plan.ordered)).toBe(2 * 108 + 100);
  });

  it('cuts are called by window and number', () => {
    const { plan } = planHouse({ windows: [{ widths: 1 }, { widths: 1 }] });
    const labels = plan.bolts.flatMap(({ cuts }) => cuts.map(({ label }) => label)).sort();
    expect(labels).toEqual(['Window 1 1', 'Window 1 2', 'Window 2 1', 'Window 2 2']);
  });
});

/**
 * Half-drop in print: the cut up to whole repeats and half a repeat more, one further repeat when the widths are odd
 * (record "half-drop repeat" of test/reference/estimating-examples.json names its source): never beaten upwards.
 */
describe('published half-drop rules are upper bounds', () => {
  const cases = [25.25, 18, 27, 36, 13.5].flatMap((repeat) =>
    [1, 2, 3, 4, 5, 7].flatMap((widths) => [63, 84, 96.5].map((length) => [repeat, widths, length] as const)),
  );
  it.each(cases)('repeat %d, %d widths, %d in long', (repeat, widths, length) => {
    const cloth = { repeat: { vertical: repeat, match: 'half-drop' } };
    const window = { arrangement: 'single', widths, finishedLength: length };
    const { plan, handbook, input, alone } = planHouse({ cloth, windows: [window] });
    const printed = widths * (Math.ceil((length + 16) / repeat) * repeat + repeat / 2) + (widths % 2) * repeat;
    expect(inches(handbook)).toBeCloseTo(printed, 3);
    expectSound(input, plan);
    expect(plan.ordered).toBeLessThanOrEqual(handbook);
    expect(plan.gap).toBe(0);
    // The take-off of the treatment alone rests on the best order there is.
    expect(plan.ordered).toBe(alone);
  });
});

describe('decisions', () => {
  const windows = [{ decision: 'good' }, { decision: 'declined', finishedLength: 200 }, { finishedLength: 60 }];
  const setsOf = (of: Parameters<typeof planHouse>[1]): string[] => [
    ...new Set(planHouse({ windows }, of).input.cuts.map(({ set }) => set)),
  ];

  it('declined work is on no plan, undecided work on none of what is accepted', () => {
    expect(setsOf('better')).toEqual(['Room/Window 1/Panels', 'Room/Window 3/Panels']);
    expect(setsOf('likely')).toEqual(['Room/Window 1/Panels', 'Room/Window 3/Panels']);
    expect(setsOf('accepted')).toEqual(['Room/Window 1/Panels']);
  });

  it('the result tells what is accepted once a decision is there, and prices stay as they were', () => {
    const [none, some] = [windows.map((each) => ({ ...each, decision: undefined })), windows].map((each) =>
      priceJob(readHouse(houseOf({ windows: each }))),
    );
    expect(none!.accepted).toBeNull();
    expect(some!.accepted?.map(({ cloth, plan }) => [cloth, inches(plan)])).toEqual([['face', 400]]);
    expect(some!.totals).toEqual(none!.totals);
  });

  it('each option accepted takes the cloth of that option', () => {
    const stacks = { good: { behind: [] }, better: { behind: ['std-white'] }, best: { behind: ['soft-blackout'] } };
    const { plans } = planJob(
      readHouse(
        houseOf({
          windows: [
            { stacks, decision: 'better' },
            { stacks, decision: 'best' },
          ],
        }),
      ),
      'accepted',
    );
    expect(plans.map(({ cloth, input }) => [cloth.id, input.cuts.length])).toEqual([
      ['face', 8],
      ['std-white', 4],
      ['soft-blackout', 4],
    ]);
  });
});

describe('cloth on hand, flaws and cuts placed by hand', () => {
  const windows = [{}, { finishedLength: 60 }];
  const plain = planHouse({ windows });

  it('a remnant is used first and adds nothing', () => {
    const remnants = [{ cloth: 'face', name: 'End of the hall', length: 310 }];
    const { plan, input } = planHouse({ windows, cutting: { remnants } });
    expectSound(input, plan);
    expect(plan.bolts.map(({ kind, id }) => [kind, id])).toEqual([
      ['remnant', 'End of the hall'],
      ['bolt', 'bolt 1'],
    ]);
    // All four cuts of 76 in come from it: a set is never split over two dye lots.
    expect(inches(plan.ordered)).toBe(400);
  });

  it('an uncoloured lining may be split over remnant and bolt, a face cloth may not (common practice)', () => {
    const stacks = { good: { behind: ['std-white'] } };
    const remnants = ['face', 'std-white'].map((cloth) => ({ cloth, name: 'end', length: 200 }));
    const job = readHouse(houseOf({ windows: [{ stacks }], cutting: { remnants } }));
    const { plans } = planJob(job, 'good');
    // Four of 100 and four of 90: no set of four fits 200 in, two linings do.
    expect(plans.map(({ plan }) => inches(plan.ordered))).toEqual([400, 180]);
  });

  it('a flaw lays the plan again: nothing lies on it, and what it costs shows', () => {
    const flaws = [{ cloth: 'face', on: 'bolt 1', from: '2 yd', to: '3 1/2 yd' }];
    const { plan, input } = planHouse({ windows, cutting: { flaws } });
    expectSound(input, plan);
    expect(plan.bolts[0]!.flaws.map(({ from, to }) => [inches(from), inches(to)])).toEqual([[72, 126]]);
    expect(plan.ordered).toBeGreaterThan(plain.plan.ordered);
    expect(plan.bolts[0]!.cuts.every(({ at, length }) => inches(at + length) <= 72 || inches(at) >= 126)).toBe(true);
  });

  it('a fixed cut lies where it was put, the plan works round it and says what it costs', () => {
    const fixed = [{ cloth: 'face', treatment: 'Room/Window 1/Panels', cut: 2, on: 'bolt 1', at: 30 }];
    const { plan, input } = planHouse({ windows, cutting: { fixed } });
    expectSound(input, plan);
    const cut = plan.bolts[0]!.cuts.find(({ fixed: isFixed }) => isFixed);
    expect([cut?.label, inches(cut?.at ?? -1)]).toEqual(['Window 1 2', 30]);
    expect(inches(plan.ordered)).toBe(inches(plain.plan.ordered) + 30);
    expect(plan.fixedCosts.map(({ cut: id, costs }) => [id, inches(costs)])).toEqual([
      ['Room/Window 1/Panels#0002', 30],
    ]);
  });

  it('a large house runs on: a cut may be put down, and a flaw lie, beyond 100 m of one bolt', () => {
    const windows = Array.from({ length: 40 }, () => ({}));
    const fixed = [{ cloth: 'face', treatment: 'Room/Window 1/Panels', cut: 1, on: 'bolt 1', at: '130 m' }];
    const flaws = [{ cloth: 'face', on: 'bolt 1', from: '140 yd', to: '141 yd' }];
    const { plan } = planHouse({ windows, cutting: { fixed, flaws } });
    const cut = plan.bolts[0]!.cuts.find((each) => each.fixed);
    expect(cut?.at).toBe(lengthFrom(130, 'm'));
    expect(plan.unlaid).toEqual([]);
  });

  it('a fixed cut of work that is not laid is left alone', () => {
    const fixed = [{ cloth: 'face', treatment: 'Room/Window 1/Panels', cut: 2, on: 'bolt 1', at: 30 }];
    const declined = [{ decision: 'declined' }, windows[1]!];
    expect(inches(planHouse({ windows: declined, cutting: { fixed } }).plan.ordered)).toBe(4 * 76);
  });

  it('a cut that is turned, a nap that forbids it', () => {
    const lining = { id: 'sheet', role: 'lining', family: 'standard', width: 120, price: '9/yd' };
    const wire = houseOf({ windows: [{ stacks: { good: { behind: ['sheet'] } } }] });
    const turned = (more: object) => {
      const job = readHouse({ ...wire, cloth: [...wire.cloth!, { ...lining, ...more } as never] });
      const { input } = planJob(job, 'good', { cloth: 'sheet' }).plans[0]!;
      return input.cuts.some(({ mayTurn }) => mayTurn);
    };
    expect([turned({}), turned({ oneWay: true }), turned({ family: 'combination' })]).toEqual([true, false, false]);
  });
});

describe('bolts as the supplier sells them', () => {
  it('more than a whole piece takes several, each with its repeat, and no set is split', () => {
    const cloth = { repeat: { vertical: 27 }, bolt: '40 yd' };
    const { plan, order, input, oneLot } = planHouse({ cloth, windows: [{ quantity: 2 }, { quantity: 2 }, {}] });
    expectSound(input, plan);
    expect([plan.bolts.length, plan.unlaid, oneLot]).toEqual([2, [], false]);
    // Eight, eight and four cuts of 108: eight and four on one piece, 11 × 108 + 100 = 1288 is more than 1080 less 27.
    expect(inches(plan.ordered)).toBe(1288 + 856);
    // Each with a repeat: 1315 in up to 36¾ yd, 883 in up to 24¾ yd.
    expect(lengthIn(order, 'yd')).toBe(61.5);
  });

  it('a treatment longer than a whole piece is asked for in one dye lot', () => {
    const { plan, oneLot, input } = planHouse({ cloth: { bolt: '10 yd' }, windows: [{ quantity: 3 }] });
    expectSound(input, { ...plan, bolts: plan.bolts.map((each) => ({ ...each, dyeLot: 'any' })) });
    expect([oneLot, plan.unlaid]).toEqual([true, []]);
    // Twelve cuts of 100 in, three on each piece of 360.
    expect(inches(plan.ordered)).toBe(1200);
  });

  it('the least order is never undercut, and nothing is ordered of what lies on hand', () => {
    const remnants = [{ cloth: 'face', name: 'end', length: 500 }];
    expect(lengthIn(planHouse({ cloth: { leastOrder: '20 yd' }, windows: [{}] }).order, 'yd')).toBe(20);
    expect(planHouse({ cloth: { leastOrder: '20 yd' }, windows: [{}], cutting: { remnants } }).order).toBe(0);
  });

  it('ordered by the handbook where she chooses so', () => {
    const given = {
      cloth: { repeat: { vertical: 27 } },
      windows: [{}, {}],
      practice: { orderFrom: 'handbook' },
    } as const;
    // 8 × 108 = 864, and 27: 891 in = 24.75 yd.
    expect(lengthIn(planHouse(given).order, 'yd')).toBe(24.75);
  });
});

describe('what is wrong is told by name, with the path of the job file', () => {
  const fixedAt = (fields: object) => ({
    windows: [{}],
    cloth: { repeat: { vertical: 27 } },
    cutting: { fixed: [{ cloth: 'face', treatment: 'Room/Window 1/Panels', cut: 1, on: 'bolt 1', at: 0, ...fields }] },
  });
  const bolt = { cloth: 'face', name: 'first' };
  it.each<[string, Parameters<typeof faultsOfHouse>[0], RegExp]>([
    [
      'a cut longer than every bolt',
      { windows: [{}], cutting: { bolts: [{ ...bolt, length: 90 }] } },
      /^rooms\[0\]\.openings\[0\]\.treatments\[0\]: the cut "Window 1 1" of 100 in and 3 more like it are longer than every bolt; /,
    ],
    [
      'a repeat longer than the bolt',
      { windows: [{}], cloth: { repeat: { vertical: 60 } }, cutting: { bolts: [{ ...bolt, length: 50 }] } },
      /^cloth\[0\]\.repeat\.vertical: .*longer than the longest bolt/,
    ],
    [
      'a bolt without length',
      { windows: [{}], cutting: { bolts: [{ ...bolt, length: 0 }] } },
      /^cutting\.bolts\[0\]\.length: is zero/,
    ],
    [
      'a negative remnant',
      { windows: [{}], cutting: { remnants: [{ ...bolt, length: -3 }] } },
      /^cutting\.remnants\[0\]\.length: -3 is negative/,
    ],
    [
      'a remnant wider than its cloth',
      { windows: [{}], cutting: { remnants: [{ ...bolt, length: 90, width: 60 }] } },
      /^cutting\.remnants\[0\]\.width: not a width of this cloth/,
    ],
    [
      'a flaw that ends before it begins',
      { windows: [{}], cutting: { flaws: [{ cloth: 'face', on: 'bolt 1', from: 20, to: 20 }] } },
      /^cutting\.flaws\[0\]\.to: is where it begins or before/,
    ],
    [
      'a flaw on no bolt',
      { windows: [{}], cutting: { flaws: [{ cloth: 'face', on: 'second', from: 0, to: 20 }] } },
      /^cutting\.flaws\[0\]\.on: "second" is no bolt or remnant of "face"/,
    ],
    [
      'a cut fixed off its place in the repeat',
      {
        ...fixedAt({}),
        cutting: { fixed: [...fixedAt({}).cutting.fixed, { ...fixedAt({}).cutting.fixed[0]!, cut: 2, at: 110 }] },
      },
      /^cutting\.fixed\[1\]\.at: "Window 1 2" does not start at its place in the repeat there; fix it at 135/,
    ],
    [
      'a cut fixed on another',
      {
        ...fixedAt({}),
        cutting: { fixed: [...fixedAt({}).cutting.fixed, { ...fixedAt({}).cutting.fixed[0]!, cut: 2, at: 54 }] },
      },
      /^cutting\.fixed\[1\]\.at: "Window 1 2" lies on/,
    ],
    [
      'a position that no bolt has',
      fixedAt({ at: '1100 m' }),
      /^cutting\.fixed\[0\]\.at: "1100 m" is longer than 1000 m/,
    ],
    [
      'a remnant longer than 100 m',
      { windows: [{}], cutting: { remnants: [{ ...bolt, length: 5000 }] } },
      /^cutting\.remnants\[0\]\.length: 5000 in cannot be a length here; give less than/,
    ],
    [
      'a cut that there is not',
      fixedAt({ cut: 5 }),
      /^cutting\.fixed\[0\]\.cut: cut 5 is placed by hand, but "Room\/Window 1\/Panels" has 4 cuts of this cloth; give 1 to 4/,
    ],
    [
      'a treatment that there is not',
      fixedAt({ treatment: 'Room/Window 1/Panel' }),
      /^cutting\.fixed\[0\]\.treatment: .*did you mean Room\/Window 1\/Panels\?/,
    ],
    ['a fixed cut beyond the cloth', fixedAt({ x: 10 }), /^cutting\.fixed\[0\]\.x: /],
    [
      'cloth that nobody listed',
      { windows: [{}], cutting: { flaws: [{ cloth: 'fac', on: 'bolt 1', from: 0, to: 20 }] } },
      /^cutting\.flaws\[0\]\.cloth: "fac" is not listed under cloth; did you mean face/,
    ],
  ])('%s', (_name, given, wanted) => {
    expect(faultsOfHouse(given)[0]).toMatch(wanted);
  });

  it('prices stand whatever is wrong with the cloth on hand', () => {
    const windows = [{}];
    const cutting = { bolts: [{ ...bolt, length: 90 }] };
    const [bare, wrong] = [{ windows }, { windows, cutting }].map((each) => priceJob(readHouse(houseOf(each))));
    expect(wrong!.totals).toEqual(bare!.totals);
    expect([wrong!.plan, wrong!.planFaults.length, bare!.planFaults]).toEqual([[], 1, []]);
  });

  it('cloth that runs out is told with the cuts that found no place', () => {
    const cutting = { bolts: [{ ...bolt, length: 250 }] };
    const given = { windows: [{ widths: 1 }, { widths: 1 }], cutting };
    expect(planHouse(given).plan.unlaid).toHaveLength(2);
    expect(priceJob(readHouse(houseOf(given))).plan[0]!.unlaid).toBe(2);
  });
});

describe('a thousand cuts', () => {
  const windows = Array.from({ length: 50 }, (_, index) => ({ quantity: 5, finishedLength: 60 + index }));
  const cloth = { repeat: { vertical: 25.25, match: 'half-drop' } };

  it('are laid within the budget, with the gap told', () => {
    const { plan, input } = planHouse({ cloth, windows });
    expect(input.cuts).toHaveLength(1000);
    expect(plan.unlaid).toEqual([]);
    expect(plan.steps).toBeLessThanOrEqual(300_000 + 50_000);
    expect(plan.gap / plan.ordered).toBeLessThan(0.03);
  });

  it('can be cancelled, and progress is told', () => {
    const shares: number[] = [];
    const bolts = Array.from({ length: 40 }, (_, index) => ({ cloth: 'face', name: `b${index}`, length: '60 yd' }));
    const options = { watch: { progress: (share: number) => void shares.push(share), cancelled: () => true } };
    const { plan } = planHouse({ cloth, windows, cutting: { bolts } }, 'good', options);
    expect(plan.cancelled).toBe(true);
    expect(shares.length).toBeGreaterThan(0);
  });
});

describe('what one treatment adds', () => {
  it('is the plan with it less the plan without it', () => {
    const windows = [
      { arrangement: 'single', widths: 1.5 },
      { arrangement: 'single', widths: 1.5 },
    ];
    const { input } = planHouse({ windows });
    const marginal = marginalCloth(input, 'Room/Window 2/Panels', SAY);
    // Two widths alone would be 200: the half beside the other's half costs nothing.
    expect(marginal.ok && inches(marginal.adds)).toBe(100);
  });
});

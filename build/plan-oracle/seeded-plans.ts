/** Invented questions for the plan, the same for the same seed: cuts of windows of one house, and cloth to lay them on. */
import type { Bolt, FixedCut, Flaw, PlanInput, PlannedCut, Remnant } from '#app/plan/plan-input.ts';
import type { PlanFile } from './plan-file.ts';
import { TICKS_PER_MM, ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';

export const CM = 10 * TICKS_PER_MM;

export function cm(length: number): Ticks {
  return ticks(Math.round(length * CM));
}

/** Mulberry32 (T. Ettinger, public domain): a small even stream, so that instances do not depend on a library's version. */
export function makeChance(seed: number) {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const whole = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1));
  return {
    next,
    whole,
    oneOf: <T>(list: readonly T[]): T => list[whole(0, list.length - 1)] as T,
    happens: (share: number): boolean => next() < share,
  };
}

export const PLAIN_SETTINGS = { keepLength: cm(30), keepWidth: cm(30) } as const;

export function cutOf(given: Partial<PlannedCut> & Pick<PlannedCut, 'id' | 'length'>): PlannedCut {
  return { set: given.id, across: 'whole', phase: null, direction: 'one-way', mayTurn: false, ...given };
}

export const ENDLESS: Bolt = { id: 'bolt', dyeLot: null, length: null, startPhase: null, step: ticks(0) };

export function planOf(given: Partial<PlanInput> & Pick<PlanInput, 'cuts'>): PlanInput {
  return {
    bolts: [ENDLESS],
    remnants: [],
    repeat: null,
    width: cm(144),
    settings: PLAIN_SETTINGS,
    fixed: [],
    flaws: [],
    handbook: null,
    ...given,
  };
}

/** Lengths, and widths that may be turned, of small questions lie on this grid, so that every place in the repeat can be tried. */
export const GRID = 4;

/** Narrower cuts can stand beside one another in so many ways that trying them all is only done with a few. */
const MOST_NARROW = 5;

/** Up to `most` cuts of up to four sets; now and then halves, thirds, several bolts, dye lots, remnants, flaws, a fixed cut. */
export function smallPlan(seed: number, most = 9): PlanInput {
  const chance = makeChance(seed);
  const repeat = chance.oneOf([0, 16, 32, 48, 64]);
  const wide = chance.oneOf([1, 1, 0.6, 0.3]);
  const count = chance.whole(1, most);
  const sets = chance.whole(1, Math.min(4, count));
  const make = Array.from({ length: sets }, () => ({
    length: GRID * chance.whole(8, 30),
    phase: repeat === 0 ? 0 : GRID * chance.whole(0, repeat / GRID - 1),
    drops: chance.happens(0.5) && repeat > 0,
  }));
  let narrow = 0;
  const cuts = Array.from({ length: count }, (_, index): PlannedCut => {
    const set = index % sets;
    const { length, phase, drops } = make[set] ?? { length: 40, phase: 0, drops: false };
    const isLoose = chance.happens(0.1);
    const isWhole = chance.happens(wide) || narrow >= MOST_NARROW;
    narrow += isWhole ? 0 : 1;
    const across = isWhole ? 'whole' : chance.oneOf(['half', 'half', cm(48), cm(32)] as const);
    const own = drops && chance.happens(0.5) ? (phase + repeat / 2) % repeat : phase;
    const side = across === 'half' && chance.happens(0.4) ? chance.oneOf(['left', 'right'] as const) : undefined;
    const placed = repeat > 0 && !isLoose ? cm(own) : null;
    const mayTurn = !isWhole && placed === null && side === undefined && chance.happens(0.25);
    return cutOf({
      id: `c${index}`,
      set: `s${set}`,
      length: cm(chance.happens(0.25) ? length + GRID : length),
      across,
      phase: placed,
      ...(side === undefined ? {} : { side }),
      direction: mayTurn ? 'either' : 'one-way',
      mayTurn,
    });
  });
  const place = (): Ticks | null =>
    repeat === 0 || chance.happens(0.3) ? null : cm(GRID * chance.whole(0, repeat / GRID - 1));
  const total = cuts.reduce((sum, cut) => sum + cut.length / CM, 0);
  const bolts: Bolt[] = chance.happens(0.4)
    ? [{ ...ENDLESS, startPhase: place(), step: cm(chance.oneOf([0, 0, 20, 50])) }]
    : Array.from({ length: chance.whole(1, 3) }, (_, index) => {
        const length = GRID * Math.ceil((total * (0.5 + chance.next())) / GRID) + 132 + repeat;
        return {
          id: `b${index}`,
          dyeLot: chance.oneOf(['A', 'A', 'B']),
          length: cm(length),
          startPhase: place(),
          step: cm(chance.oneOf([0, 0, 20, 50, length])),
        };
      });
  const remnants: Remnant[] = Array.from({ length: chance.oneOf([0, 0, 0, 1, 2]) }, (_, index) => ({
    id: `r${index}`,
    dyeLot: chance.oneOf(['A', 'B', null]),
    length: cm(GRID * chance.whole(10, 50)),
    width: chance.happens(0.3) ? cm(72) : null,
    startPhase: place(),
  }));
  const known = bolts.find((bolt) => repeat === 0 || bolt.startPhase !== null);
  const flaws: Flaw[] = [];
  const fixed: FixedCut[] = [];
  if (known && chance.happens(0.2)) {
    const from = GRID * chance.whole(5, 25);
    flaws.push({ on: known.id, from: cm(from), to: cm(from + GRID * chance.whole(1, 8)) });
  }
  const first = cuts.find((cut) => cut.across === 'whole' && !cut.mayTurn);
  if (known && first && flaws.length === 0 && chance.happens(0.2)) {
    const wait = repeat === 0 ? 0 : (((first.phase ?? 0) - (known.startPhase ?? 0)) / CM + repeat) % repeat;
    fixed.push({ cut: first.id, on: known.id, at: cm(wait + repeat * chance.whole(0, 2)) });
  }
  return planOf({
    cuts,
    bolts,
    remnants,
    repeat: repeat === 0 ? null : { vertical: cm(repeat), match: 'half-drop' },
    flaws,
    fixed,
  });
}

/** A house of whole widths, up to 60 cuts, on two to five bolts that are not endless; some with dye lots or a remnant. */
export function housePlan(seed: number): PlanFile {
  const chance = makeChance(seed * 31 + 5);
  const repeat = chance.oneOf([0, 32, 40, 48, 61, 64]);
  const match = repeat === 0 ? 'none' : chance.oneOf(['straight', 'half-drop'] as const);
  const count = chance.whole(2, 9);
  const sets: PlanFile['sets'][number][] = [];
  let cuts = 0;
  for (let set = 0; set < count; set += 1) {
    const widths = chance.oneOf([2, 2, 4, 4, 6, 8]);
    const quantity = chance.oneOf([1, 1, 2]);
    if (cuts + widths * quantity > 60) continue;
    cuts += widths * quantity;
    const phase = repeat > 0 && chance.happens(0.3) ? chance.whole(1, repeat - 1) : 0;
    sets.push({
      ...{ name: `window ${set + 1}`, cut: chance.whole(110, 320), widths, pieces: 2, quantity },
      ...(phase === 0 ? {} : { phase }),
    });
  }
  const need = sets.reduce((sum, set) => {
    const cut = repeat === 0 ? set.cut : Math.ceil(set.cut / repeat) * repeat;
    return sum + cut * set.widths * set.quantity;
  }, 0);
  const many = chance.whole(2, 5);
  const lots = chance.happens(0.35) ? ['A', 'B'] : ['A'];
  const step = chance.oneOf([0, 10, 25, 50, -1]);
  const bolts = Array.from({ length: many }, (_, index) => {
    const share = ((lots.length === 2 ? 1.5 : 1.1) + 0.5 * chance.next()) / many;
    const length = Math.ceil((need * share + 330) / 50) * 50;
    const start = repeat === 0 ? null : chance.whole(0, repeat - 1);
    return { id: `bolt ${index + 1}`, lot: chance.oneOf(lots), length, start, step: step < 0 ? length : step };
  });
  const remnants = chance.happens(0.3)
    ? [{ id: 'remnant 1', lot: 'A', length: chance.whole(150, 700), start: repeat === 0 ? null : 0 }]
    : [];
  return {
    name: `house ${seed}`,
    width: 140,
    repeat,
    match,
    sets,
    bolts,
    ...(remnants.length > 0 ? { remnants } : {}),
  };
}

/** The sizes and the cloth of the growth that `npm run bench` shows. */
export const GROWING = (['one bolt', 'bolts of 45 m'] as const).flatMap((on) =>
  [10, 100, 400].map((least) => ({ least, on })),
);

/** A house of `least` cuts or a few more, whole and half widths, for measuring growth: on one endless bolt, or on bolts of 45 m. */
export function growingPlan(least: number, on: 'one bolt' | 'bolts of 45 m'): PlanFile {
  const chance = makeChance(least);
  const repeat = 64;
  const sets: PlanFile['sets'][number][] = [];
  let cuts = 0;
  let need = 0;
  while (cuts < least) {
    const widths = chance.oneOf([2, 3, 4, 5, 6]);
    const quantity = chance.oneOf([1, 1, 2]);
    const cut = chance.whole(140, 320);
    cuts += (widths % 2 === 0 ? widths : widths + 1) * quantity;
    need += Math.ceil(cut / repeat) * repeat * widths * quantity;
    sets.push({ name: `window ${sets.length + 1}`, cut, widths, pieces: 2, quantity });
  }
  const endless = [{ id: 'bolt', lot: null, length: null, start: null, step: 0 }];
  const many = Array.from({ length: Math.ceil((need * 1.15) / 4500) + 1 }, (_, index) => ({
    ...{ id: `bolt ${index + 1}`, lot: 'A', length: 4500, start: chance.whole(0, repeat - 1), step: 10 },
  }));
  return {
    ...{ name: `${least} cuts on ${on}`, width: 140, repeat, match: 'half-drop', sets },
    bolts: on === 'one bolt' ? endless : many,
  };
}

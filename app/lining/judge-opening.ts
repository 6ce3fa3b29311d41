/**
 * Every treatment at one opening together, drawn or open: a sheer under drapery, a shade under a cornice. Light, warmth,
 * summer and fade of the window as it then is, with their working. Treatments run from the room to the street.
 */
import type { WorkingStep } from '#shared/result.ts';
import { draws } from './light-and-heat/closing.ts';
import { composeLayers, layerOf } from './light-and-heat/compose-layers.ts';
import type { Layer } from './light-and-heat/compose-layers.ts';
import { reckonCondensation } from './light-and-heat/condensation.ts';
import type { Condensation } from './light-and-heat/condensation.ts';
import { reckonFade } from './light-and-heat/fade.ts';
import { glassOf } from './light-and-heat/glass.ts';
import type { JudgedOpening, JudgedRoom, JudgeInput } from './judge-input.ts';
import { placeOf } from './place-of-kind.ts';
import { pleat } from './light-and-heat/pleated-cloth.ts';
import { isUnlit, reckonStack } from './reckon-stack.ts';
import type { Reckoned } from './reckon-stack.ts';
import { layerIn } from './cloth/resolve-cloth.ts';
import { roundReading } from './light-and-heat/round-reading.ts';
import { liningSay } from './say/lining-say.ts';
import type { LiningSay } from './say/lining-say.ts';
import { sayList } from './say/say-number.ts';
import { StackFault } from './stack-fault.ts';
import { partlyDrawn, reckonSummer } from './light-and-heat/summer.ts';
import { closedU, MOST_ADDED } from './light-and-heat/warmth.ts';
import type { Range } from './light-and-heat/warmth.ts';

export interface HungTreatment {
  readonly name: string;
  readonly input: JudgeInput;
  /** Drawn across or let down; what cannot be drawn stands as it is. */
  readonly drawn: boolean;
}

export interface OpeningJudgement {
  /** Visible light through glass and all that is drawn, edges and gaps left out. */
  readonly lightWithGlass: number;
  /** The same with every edge and gap. */
  readonly lightInRoom: number;
  readonly lightRange: Range;
  /** Added resistance of all together, m²K/W. */
  readonly warmth: number;
  readonly warmthRange: Range;
  /** W/m²K of glass and treatments. */
  readonly windowU: Range;
  /** Share of the bare window's sun that is left. */
  readonly summerLeft: number;
  readonly condensation: Condensation;
  /** For each treatment that was given: damage kept from the back of its face, against the same face bare at the glass. */
  readonly fade: readonly { readonly name: string; readonly kept: number }[];
  readonly working: readonly WorkingStep[];
}

interface Hung {
  readonly name: string;
  readonly drawn: boolean;
  readonly r: Reckoned;
  readonly pleats: number;
}

/**
 * Throws `StackFault`: `other-window` when the treatments are not of this opening's glass, and what `judgeStack` throws.
 * More than one treatment of a place is allowed; sixteen are the most.
 */
export function judgeOpening(
  room: JudgedRoom,
  opening: JudgedOpening,
  treatments: readonly HungTreatment[],
): OpeningJudgement {
  checkTogether(opening, treatments);
  const boards = treatments.map(
    ({ input }) => input.treatment.onBoard === true && placeOf(input.treatment.kind) !== 'window',
  );
  const all: readonly Hung[] = treatments.map(({ name, input, drawn }, i) => {
    const pelmet = input.pelmet === true || boards.some((board, j) => board && j !== i);
    return { name, drawn, r: reckonStack({ ...input, room, opening, pelmet }), pleats: input.made.fullnessMade - 1 };
  });
  const shut = all.filter((each) => each.r.place !== 'away' && (each.drawn || !draws(each.r.closing.class)));
  const pane = layerOf(glassOf(opening.glazing).visible);
  const light = lightThrough(pane, shut, (each) => each.r.edges.open);
  const range: Range = [
    lightThrough(pane, shut, (each) => each.r.edges.range[0]),
    lightThrough(pane, shut, (each) => each.r.edges.range[1]),
  ];
  const warmthRange = addWarmth(shut);
  const warmth = (warmthRange[0] + warmthRange[1]) / 2;
  const { U } = glassOf(opening.glazing);
  const through = composeLayers([pane, ...[...shut].reverse().map(flatOf)]).Tf;
  const told = {
    lightWithGlass: roundReading('lightWithGlass', through),
    lightInRoom: roundReading('lightInRoom', light),
    lightRange: [roundReading('lightInRoom', range[0]), roundReading('lightInRoom', range[1])] as const,
    warmth: roundReading('warmth', warmth),
    warmthRange: [roundReading('warmth', warmthRange[0]), roundReading('warmth', warmthRange[1])] as const,
    windowU: [closedU(U, warmthRange[1]), closedU(U, warmthRange[0])] as const,
    summerLeft: summerThrough(opening, shut),
    condensation: reckonCondensation(room.climate, room.use, U, warmth, warmthRange),
    fade: all.map((each, i) => ({ name: each.name, kept: keptFrom(each, all.slice(i + 1), opening) })),
  };
  return {
    ...told,
    working: showOpening(told, shut, all, liningSay(treatments[0]?.input.units, treatments[0]?.input.locale)),
  };
}

function flatOf(each: Hung): Layer {
  return each.r.cloth;
}

/**
 * Light in the room: each treatment is open over its own share of the glass, and where one is open another may be shut,
 * so the light is summed over every combination of open and shut, weighted by its share.
 */
function lightThrough(pane: Layer, shut: readonly Hung[], openOf: (each: Hung) => number): number {
  const streetFirst = [...shut].reverse();
  const sum = (rest: readonly Hung[], passed: Layer): number => {
    const [next, ...others] = rest;
    if (next === undefined) return passed.Tf;
    const open = openOf(next);
    const past = open > 0 ? open * sum(others, passed) : 0;
    return past + (1 - open) * sum(others, composeLayers([passed, flatOf(next)]));
  };
  return sum(streetFirst, pane);
}

/** At least what the best of them adds alone, at most what they add one after another, and never more than any source gives. */
function addWarmth(shut: readonly Hung[]): Range {
  const low = shut.reduce((most, { r }) => Math.max(most, r.warmth.range[0]), 0);
  const high = shut.reduce((sum, { r }) => sum + r.warmth.range[1], 0);
  return [low, Math.max(low, Math.min(MOST_ADDED, high))];
}

/** Stacks in their folds, one behind the other; what covers part of the glass counts for its part. */
function summerThrough(opening: JudgedOpening, shut: readonly Hung[]): number {
  const glass = glassOf(opening.glazing);
  const across = shut.filter(({ r }) => r.place === 'window');
  if (across.length === 0) return 1;
  const folded = across.map(({ r, pleats }): Layer => {
    const solar = composeLayers([...r.layers].reverse().map((layer) => layerIn(layer, 'solar')));
    const street = { transmittance: solar.Tf, reflectanceStreet: solar.Rf, reflectanceRoom: solar.Rb };
    const room = { transmittance: solar.Tb, reflectanceStreet: solar.Rb, reflectanceRoom: solar.Rf };
    const [f, b] = [pleat(street, Math.max(0, pleats)), pleat(room, Math.max(0, pleats))];
    return { Tf: f.transmittance, Rf: f.reflectance, Tb: b.transmittance, Rb: b.reflectance };
  });
  const all = composeLayers([...folded].reverse());
  const covered = across.reduce((most, { r }) => Math.max(most, r.covered), 0);
  return partlyDrawn(reckonSummer(glass, all.Tf, all.Rf).Fc, covered);
}

/** What keeps the sun from a face: its own layers, and whatever is shut between it and the glass over the whole window. */
function keptFrom(each: Hung, outer: readonly Hung[], opening: JudgedOpening): number {
  if (isUnlit(each.r.place)) return 0;
  const before = outer.filter(({ r, drawn }) => r.place === 'window' && drawn && draws(r.closing.class));
  const layers = [...each.r.behind, ...before.flatMap(({ r }) => r.layers)];
  return roundReading('fade', reckonFade(each.r.face, layers, opening.glazing).kept);
}

function showOpening(
  told: Omit<OpeningJudgement, 'working'>,
  shut: readonly Hung[],
  all: readonly Hung[],
  say: LiningSay,
): readonly WorkingStep[] {
  const c = told.condensation;
  const names = shut.map(({ name, r }) => `${name} ${say.figure(r.readings.light)}, open ${say.figure(r.edges.open)}`);
  const aside = all.filter((each) => !shut.includes(each)).map(({ name }) => name);
  return [
    {
      id: 'opening-light',
      label: 'light in the room, all together',
      formula:
        names.length === 0
          ? 'nothing is drawn: the bare glass'
          : `${sayList(names)}; summed over what is open and what is shut`,
      value: `${say.figure(told.lightInRoom)} (${say.figure(told.lightRange[0])} to ${say.figure(told.lightRange[1])})`,
      rests: `layers and glass composed with every reflection between them${aside.length === 0 ? '' : `; drawn aside: ${sayList(aside)}`}`,
    },
    {
      id: 'opening-warmth',
      label: 'added resistance, all together',
      formula: shut
        .map(({ name, r }) => `${name} ${say.figure(r.warmth.range[0])} to ${say.figure(r.warmth.range[1])}`)
        .join('; '),
      value: `${say.resistance(told.warmthRange[0])} to ${say.resistance(told.warmthRange[1])}; window ${say.fixed(told.windowU[0], 2)} to ${say.fixed(told.windowU[1], 2)} W/m²K`,
      rests: `from the best of them alone to all one after another, at most ${say.figure(MOST_ADDED)}`,
    },
    {
      id: 'opening-summer',
      label: 'sun let in, all together',
      formula: 'EN 13363-1 with the stacks in their folds, one behind the other',
      value: `${say.percent(told.summerLeft)} of the bare window's`,
      rests: `EN 13363-1, internal device; ${say.summerError()}`,
    },
    {
      id: 'opening-glass',
      label: 'glass on a winter night, all together',
      formula: `${c.inside} °C in, ${c.outside} °C out, ${say.percent(c.humidity)} humidity, added ${say.figure(told.warmth)}`,
      value: `${say.fixed(c.glass, 1)} °C, bare ${say.fixed(c.bareGlass, 1)} °C; dew point ${say.fixed(c.dewPoint, 1)} °C`,
      rests: 'ISO 13788 (from memory); night and humidity assumed',
    },
  ];
}

const MOST_TREATMENTS = 16;

function checkTogether(opening: JudgedOpening, treatments: readonly HungTreatment[]): void {
  const other = treatments.findIndex(({ input }) => input.opening.glazing !== opening.glazing);
  if (other >= 0)
    throw new StackFault('other-window', {
      path: `treatments[${other}]`,
      wrong: 'hangs before other glass',
      right: 'give the treatments of one opening',
    });
  if (treatments.length > MOST_TREATMENTS)
    throw new StackFault('impossible-number', {
      path: 'treatments',
      wrong: `${treatments.length} at one opening cannot be`,
      right: `give ${MOST_TREATMENTS} at the most`,
    });
}

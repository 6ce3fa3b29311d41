/** Every figure of one stack at its own window; words, rules and working read this and nothing else. */
import type { Readings, ReadingName } from '#shared/result.ts';
import { TICKS_PER_METRE } from '#shared/length.ts';
import { areaOf } from '#shared/weight.ts';
import { reckonBody } from './body.ts';
import { classifyClosing } from './closing.ts';
import type { Closing } from './closing.ts';
import { colourShift } from './colour-shift.ts';
import type { ColourShift } from './colour-shift.ts';
import { composeLayers, layerOf } from './compose-layers.ts';
import type { Layer } from './compose-layers.ts';
import { reckonCondensation } from './condensation.ts';
import type { Condensation } from './condensation.ts';
import { coveredShare, lightInRoom, reckonEdgeLight } from './edge-light.ts';
import type { EdgeLight } from './edge-light.ts';
import { reckonFade } from './fade.ts';
import type { Fade } from './fade.ts';
import { glassOf } from './glass.ts';
import type { Glass } from './glass.ts';
import type { JudgeInput } from './judge-input.ts';
import { pleat } from './pleated-cloth.ts';
import { fillStack } from './resolve-cloth.ts';
import type { FilledCloth } from './resolve-cloth.ts';
import { roundReading } from './round-reading.ts';
import { StackFault } from './stack-fault.ts';
import { partlyDrawn, reckonSummer } from './summer.ts';
import type { Summer } from './summer.ts';
import { reckonWarmth } from './warmth.ts';
import type { Range, Warmth } from './warmth.ts';

export interface Reckoned {
  readonly input: JudgeInput;
  readonly face: FilledCloth;
  readonly behind: readonly FilledCloth[];
  /** Face first. */
  readonly layers: readonly FilledCloth[];
  readonly glass: Glass;
  /** Visible light through the cloth alone, and with the glass. */
  readonly cloth: Layer;
  readonly withGlass: Layer;
  readonly closing: Closing;
  readonly covered: number;
  readonly edges: EdgeLight;
  readonly shift: ColourShift;
  /** The shift if every lining were white; null when every one is. */
  readonly shiftIfWhite: number | null;
  readonly fade: Fade;
  readonly warmth: Warmth;
  readonly condensation: Condensation;
  readonly summer: Summer;
  /** Solar properties of the stack in its folds, from the street. */
  readonly folded: { readonly transmittance: number; readonly reflectance: number };
  /** Share of the bare window's gain left when drawn, the cover of still panels considered. */
  readonly summerLeft: number;
  readonly body: number;
  /** Grams a square metre of all layers. */
  readonly gsm: number;
  /** About, before hems: the exact weight stands in the take-off. */
  readonly hangKg: number;
  readonly hangKgPerMetre: number;
  readonly readings: Readings;
  readonly ranges: Readonly<Partial<Record<ReadingName, Range>>>;
  readonly assumed: readonly string[];
}

/** A value that nobody measured may be this many times larger or smaller (assumed). */
const SPREAD = 1.5;
/** And a body of assumed weights this much softer or firmer. */
const BODY_SPREAD = 0.5;

/** Throws `StackFault` for what cannot be judged. */
export function reckonStack(input: JudgeInput): Reckoned {
  checkNumbers(input);
  const { face, behind } = fillStack(input.face, input.behind);
  const layers = [face, ...behind];
  const glass = glassOf(input.opening.glazing);
  const paneLayer = layerOf(glass.visible);
  const cloth = visibleOf(layers, 1);
  const withGlass = composeLayers([paneLayer, cloth]);
  const closing = classifyClosing(input.opening, input.treatment);
  const covered = coveredShare(input.treatment, input.made);
  const coated = layers.some((layer) => showsNeedleHoles(layer));
  const edges = reckonEdgeLight(input.opening, input.treatment, input.made, closing, coated);
  const shift = colourShift(face, behind, input.opening.glazing);
  const white = behind.map(whitened);
  const changed = white.some((layer, i) => layer !== behind[i]);
  const fade = reckonFade(face, behind, input.opening.glazing);
  const warmth = reckonWarmth(
    closing.class,
    layers.map((layer) => layer.thickness),
    glass.U,
    covered,
  );
  const solar = composeLayers([...layers].reverse().map((layer) => layerOf(layer.solar)));
  const folded = pleat(
    { transmittance: solar.Tf, reflectanceStreet: solar.Rf, reflectanceRoom: solar.Rb },
    Math.max(0, input.made.fullnessMade - 1),
  );
  const summer = reckonSummer(glass, folded.transmittance, folded.reflectance);
  const body = reckonBody(layers);
  const gsm = layers.reduce((sum, layer) => sum + layer.weight, 0);
  const hung = areaOf(input.made.finishedWidth * input.made.fullnessMade, input.treatment.finishedLength);
  const hangKg = (gsm * hung) / 1000;
  const gap = paneLayer.Tf;
  const raw: Readings = {
    light: cloth.Tf,
    lightWithGlass: withGlass.Tf,
    lightInRoom: lightInRoom(withGlass.Tf, gap, edges.open),
    colourShift: shift.shift,
    warmth: warmth.middle,
    fade: fade.kept,
    body,
  };
  const readings = roundReadings(raw);
  const assumed = layers.flatMap((layer) => layer.assumed.map((value) => `${layer.cloth.id}.${value}`));
  return {
    input,
    face,
    behind,
    layers,
    glass,
    cloth,
    withGlass,
    closing,
    covered,
    edges,
    shift,
    shiftIfWhite: changed ? colourShift(face, white, input.opening.glazing).shift : null,
    fade,
    warmth,
    condensation: reckonCondensation(input.room.climate, input.room.use, glass.U, warmth.middle),
    summer,
    folded,
    summerLeft: partlyDrawn(summer.Fc, covered),
    body,
    gsm,
    hangKg,
    hangKgPerMetre: hangKg / (input.treatment.rodWidth / TICKS_PER_METRE),
    readings,
    ranges: reckonRanges(raw, layers, input, paneLayer, edges, warmth),
    assumed: assumed.filter((value, i) => assumed.indexOf(value) === i),
  };
}

/** A coated cloth keeps the hole that a needle made (common practice). */
export function showsNeedleHoles(layer: FilledCloth): boolean {
  const { cloth } = layer;
  return cloth.role === 'lining' && (cloth.family === 'blackout-3-pass' || cloth.family === 'blackout-napped');
}

/** Visible light through layers, face first; values that nobody measured are taken `factor` times. */
function visibleOf(layers: readonly FilledCloth[], factor: number): Layer {
  return composeLayers([...layers].reverse().map((layer) => layerOf(spread(layer, factor).visible)));
}

function spread(layer: FilledCloth, factor: number): FilledCloth {
  if (factor === 1 || !layer.assumed.includes('transmittance')) return layer;
  const visible = {
    reflectance: layer.visible.reflectance,
    transmittance: Math.min(factor * layer.visible.transmittance, 1 - layer.visible.reflectance),
  };
  const uv = {
    reflectance: layer.uv.reflectance,
    transmittance: Math.min(factor * layer.uv.transmittance, 1 - layer.uv.reflectance),
  };
  return { ...layer, visible, uv };
}

function whitened(layer: FilledCloth): FilledCloth {
  if (layer.cloth.role !== 'lining' || layer.shade === 'white') return layer;
  return { ...layer, shade: 'white' };
}

function roundReadings(raw: Readings): Readings {
  return {
    light: roundReading('light', raw.light),
    lightWithGlass: roundReading('lightWithGlass', raw.lightWithGlass),
    lightInRoom: roundReading('lightInRoom', raw.lightInRoom),
    colourShift: roundReading('colourShift', raw.colourShift),
    warmth: roundReading('warmth', raw.warmth),
    fade: roundReading('fade', raw.fade),
    body: roundReading('body', raw.body),
  };
}

function reckonRanges(
  raw: Readings,
  layers: readonly FilledCloth[],
  input: JudgeInput,
  pane: Layer,
  edges: EdgeLight,
  warmth: Warmth,
): Partial<Record<ReadingName, Range>> {
  const guessed = layers.filter((layer) => layer.assumed.includes('transmittance')).length;
  // Guesses of several cloths are not all wrong the same way: each is spread so that together they make SPREAD^sqrt(n).
  const each = guessed === 0 ? 1 : SPREAD ** (1 / Math.sqrt(guessed));
  const low = visibleOf(layers, 1 / each);
  const high = visibleOf(layers, each);
  const lowGlass = composeLayers([pane, low]).Tf;
  const highGlass = composeLayers([pane, high]).Tf;
  const ranges: Partial<Record<ReadingName, Range>> = {
    lightInRoom: rounded('lightInRoom', [
      lightInRoom(lowGlass, pane.Tf, edges.range[0]),
      lightInRoom(highGlass, pane.Tf, edges.range[1]),
    ]),
    warmth: rounded('warmth', warmth.range),
  };
  const anyOf = (value: FilledCloth['assumed'][number]): boolean => layers.some((l) => l.assumed.includes(value));
  if (anyOf('transmittance')) {
    ranges.light = rounded('light', [low.Tf, high.Tf]);
    ranges.lightWithGlass = rounded('lightWithGlass', [lowGlass, highGlass]);
  }
  const [face, ...behind] = layers;
  if (face !== undefined && behind.some((l) => l.assumed.includes('transmittance'))) {
    const keptAt = (factor: number): number =>
      reckonFade(
        face,
        behind.map((layer) => spread(layer, factor)),
        input.opening.glazing,
      ).kept;
    ranges.fade = rounded('fade', [keptAt(each), keptAt(1 / each)]);
  }
  if (anyOf('colour') || anyOf('shade')) {
    ranges.colourShift = rounded('colourShift', [raw.colourShift / SPREAD, raw.colourShift * SPREAD]);
  }
  if (anyOf('weight')) {
    ranges.body = rounded('body', [Math.max(1, raw.body - BODY_SPREAD), Math.min(5, raw.body + BODY_SPREAD)]);
  }
  return ranges;
}

function rounded(name: ReadingName, range: Range): Range {
  return [roundReading(name, range[0]), roundReading(name, range[1])];
}

function checkNumbers(input: JudgeInput): void {
  const above: readonly (readonly [string, number])[] = [
    ['opening.width', input.opening.width],
    ['opening.height', input.opening.height],
    ['treatment.rodWidth', input.treatment.rodWidth],
    ['treatment.finishedLength', input.treatment.finishedLength],
    ['made.finishedWidth', input.made.finishedWidth],
    ['made.fullnessMade', input.made.fullnessMade],
  ];
  for (const [path, value] of above) {
    if (value > 0 && Number.isFinite(value)) continue;
    throw new StackFault('impossible-number', { path, wrong: `${value} cannot be`, right: 'give a number above 0' });
  }
}

/** Every figure of one stack at its own window; words, rules and working read this and nothing else. */
import { isBlackout } from '#shared/cloth.ts';
import type { Cloth, Optics } from '#shared/cloth.ts';
import type { Readings, ReadingName } from '#shared/result.ts';
import { TICKS_PER_METRE } from '#shared/length.ts';
import { areaOf } from '#shared/weight.ts';
import { reckonBody } from './body.ts';
import { classifyClosing } from './light-and-heat/closing.ts';
import type { Closing } from './light-and-heat/closing.ts';
import { colourShift } from './light-and-heat/colour-shift.ts';
import type { ColourShift } from './light-and-heat/colour-shift.ts';
import { composeLayers, layerOf } from './light-and-heat/compose-layers.ts';
import type { Layer } from './light-and-heat/compose-layers.ts';
import { reckonCondensation } from './light-and-heat/condensation.ts';
import type { Condensation } from './light-and-heat/condensation.ts';
import { coveredShare, lightInRoom, reckonEdgeLight } from './light-and-heat/edge-light.ts';
import type { EdgeLight } from './light-and-heat/edge-light.ts';
import { reckonFade } from './light-and-heat/fade.ts';
import type { Fade } from './light-and-heat/fade.ts';
import { glassOf } from './light-and-heat/glass.ts';
import type { Glass } from './light-and-heat/glass.ts';
import type { JudgeInput } from './judge-input.ts';
import { liningSay } from './say/lining-say.ts';
import type { LiningSay } from './say/lining-say.ts';
import { pleat } from './light-and-heat/pleated-cloth.ts';
import { placeOf } from './place-of-kind.ts';
import type { Place } from './place-of-kind.ts';
import { fillCloth, fillStack, layerIn } from './cloth/resolve-cloth.ts';
import type { FilledCloth } from './cloth/resolve-cloth.ts';
import { roundReading } from './light-and-heat/round-reading.ts';
import { StackFault } from './stack-fault.ts';
import { partlyDrawn, reckonSummer } from './light-and-heat/summer.ts';
import type { Summer } from './light-and-heat/summer.ts';
import { reckonWarmth } from './light-and-heat/warmth.ts';
import type { Range, Warmth } from './light-and-heat/warmth.ts';

export interface Reckoned {
  readonly input: JudgeInput;
  /** In the units and the locale of the job. */
  readonly say: LiningSay;
  readonly place: Place;
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
  /** Share of the bare window's gain left when drawn, by the share of the window that is covered. */
  readonly summerLeft: number;
  /** Of all the sun that falls on the window, what then comes in. */
  readonly sunGain: number;
  readonly body: number;
  /** Grams a square metre of all layers. */
  readonly gsm: number;
  /** As the take-off weighs it; where it did not, about, before hems. */
  readonly hangKg: number;
  readonly hangKgPerMetre: number;
  /** What a contrast lining of its own does to the face of cascades by day; null where there is none. */
  readonly tailShift: ColourShift | null;
  readonly readings: Readings;
  readonly ranges: Readonly<Partial<Record<ReadingName, Range>>>;
  readonly assumed: readonly string[];
}

/** A box of board before the glass: no light passes, and its back is pale enough to matter to nothing. */
const BOARD: Layer = { Tf: 0, Rf: 0.5, Tb: 0, Rb: 0.5 };

/** No daylight comes from behind it. */
export function isUnlit(place: Place): boolean {
  return place === 'away' || place === 'board';
}

/** A value that nobody measured may be this many times larger or smaller (assumed). */
const SPREAD = 1.5;
/** Cloth that passes less than this shows no tint by day. */
const SHOWS_TINT = 0.025;
/** A spectrum estimated from a colour (assumed). */
const SPECTRUM_SPREAD = 1.25;
/** And a body of assumed weights this much softer or firmer. */
const BODY_SPREAD = 0.5;
const HAND_SPREAD = 0.3;

/** Throws `StackFault` for what cannot be judged. */
export function reckonStack(input: JudgeInput): Reckoned {
  checkNumbers(input);
  const { face, behind } = fillStack(input.face, input.behind);
  const layers = [face, ...behind];
  const glass = glassOf(input.opening.glazing);
  const paneLayer = layerOf(glass.visible);
  const place = placeOf(input.treatment.kind);
  const cloth = place === 'board' ? composeLayers([BOARD, visibleOf(layers, null)]) : visibleOf(layers, null);
  const withGlass = composeLayers([paneLayer, cloth]);
  const closing = classifyClosing(input.opening, input.treatment, input.pelmet);
  const covered = coveredShare(input.opening, input.treatment, input.made);
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
  const solar = composeLayers([...layers].reverse().map((layer) => layerIn(layer, 'solar')));
  const folded = pleat(
    { transmittance: solar.Tf, reflectanceStreet: solar.Rf, reflectanceRoom: solar.Rb },
    Math.max(0, input.made.fullnessMade - 1),
  );
  const summer = reckonSummer(glass, folded.transmittance, folded.reflectance);
  const body = reckonBody(layers);
  const gsm = layers.reduce((sum, layer) => sum + layer.weight, 0);
  const hung = areaOf(input.made.finishedWidth * input.made.fullnessMade, input.treatment.finishedLength);
  const hangKg = (input.made.grams ?? gsm * hung) / 1000;
  const gap = paneLayer.Tf;
  const unlit = isUnlit(place);
  const raw: Readings = {
    light: cloth.Tf,
    lightWithGlass: withGlass.Tf,
    lightInRoom: lightInRoom(withGlass.Tf, gap, edges.open),
    colourShift: unlit ? 0 : shift.shift,
    warmth: warmth.middle,
    fade: unlit ? 0 : fade.kept,
    body,
  };
  const readings = roundReadings(raw);
  const assumed = layers.flatMap((layer) => layer.assumed.map((value) => `${layer.cloth.id}.${value}`));
  return {
    input,
    say: liningSay(input.units, input.locale),
    place,
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
    condensation: reckonCondensation(input.room.climate, input.room.use, glass.U, warmth.middle, warmth.range),
    summer,
    folded,
    summerLeft: partlyDrawn(summer.Fc, covered),
    sunGain: glass.g * partlyDrawn(summer.Fc, covered),
    body,
    gsm,
    hangKg,
    hangKgPerMetre: hangKg / (input.treatment.rodWidth / TICKS_PER_METRE),
    tailShift: shiftOfTails(input, face),
    readings,
    ranges: reckonRanges(raw, layers, input, paneLayer, edges, warmth),
    assumed: assumed.filter((value, i) => assumed.indexOf(value) === i),
  };
}

/** A coated cloth keeps the hole that a needle made (common practice), unless she says what hers does. */
export function showsNeedleHoles({ cloth }: FilledCloth): boolean {
  if (cloth.role !== 'lining') return false;
  if (cloth.needle !== undefined && isBlackout(cloth)) return cloth.needle !== 'closes';
  return isCoated(cloth);
}

/** A cloth with a coating: stiff, cracking, apt to keep needle holes. */
export function isCoated(cloth: Cloth): boolean {
  return cloth.role === 'lining' && (cloth.family === 'blackout-3-pass' || cloth.family === 'blackout-napped');
}

function shiftOfTails(input: JudgeInput, face: FilledCloth): ColourShift | null {
  const lining = input.treatment.tails?.lining ?? null;
  if (lining === null) return null;
  const filled = fillCloth(lining);
  const shift = colourShift(face, [filled], input.opening.glazing);
  // Where no daylight comes through the tails, it tints nothing.
  return visibleOf([face, filled], null).Tf < SHOWS_TINT ? { ...shift, shift: 0 } : shift;
}

/** Visible light through layers, face first; values that nobody measured are taken at the `end` of their range. */
function visibleOf(layers: readonly FilledCloth[], end: 'low' | 'high' | null, each = 1): Layer {
  return composeLayers(
    [...layers].reverse().map((layer) => layerIn(end === null ? layer : spread(layer, end, each), 'visible')),
  );
}

/** A guess is taken `each` times larger or smaller; a measured value moves by the error that came with it. */
function spread(layer: FilledCloth, end: 'low' | 'high', each: number): FilledCloth {
  const guessed = layer.assumed.includes('transmittance');
  if (!guessed && layer.within === null) return layer;
  const factor = end === 'high' ? each : 1 / each;
  const by = end === 'high' ? (layer.within ?? 0) : -(layer.within ?? 0);
  const moved = (optics: Optics, band: 'visible' | 'uv'): Optics => {
    const most = 1 - Math.max(optics.reflectance, layer.street[band]);
    const wanted = guessed ? factor * optics.transmittance : optics.transmittance + (band === 'visible' ? by : 0);
    return { reflectance: optics.reflectance, transmittance: Math.max(0, Math.min(wanted, most)) };
  };
  return { ...layer, visible: moved(layer.visible, 'visible'), uv: moved(layer.uv, 'uv') };
}

function whitened(layer: FilledCloth): FilledCloth {
  if (layer.cloth.role !== 'lining' || layer.shade === 'white') return layer;
  return { ...layer, shade: 'white', spectra: null };
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
  const low = visibleOf(layers, 'low', each);
  const high = visibleOf(layers, 'high', each);
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
  const uncertain = (layer: FilledCloth): boolean => layer.assumed.includes('transmittance') || layer.within !== null;
  if (layers.some(uncertain)) {
    ranges.light = rounded('light', [low.Tf, high.Tf]);
    ranges.lightWithGlass = rounded('lightWithGlass', [lowGlass, highGlass]);
  }
  if (isUnlit(placeOf(input.treatment.kind)))
    return {
      lightInRoom: rounded('lightInRoom', [raw.lightInRoom, raw.lightInRoom]),
      warmth: rounded('warmth', warmth.range),
      ...bodyRange(raw, layers),
    };
  const [face, ...behind] = layers;
  if (face !== undefined && behind.some(uncertain)) {
    const keptAt = (end: 'low' | 'high'): number =>
      reckonFade(
        face,
        behind.map((layer) => spread(layer, end, each)),
        input.opening.glazing,
      ).kept;
    ranges.fade = rounded('fade', [keptAt('high'), keptAt('low')]);
  }
  if (layers.some((layer) => layer.spectra === null)) {
    const by = anyOf('colour') || anyOf('shade') ? SPREAD : SPECTRUM_SPREAD;
    ranges.colourShift = rounded('colourShift', [raw.colourShift / by, raw.colourShift * by]);
  }
  return { ...ranges, ...bodyRange(raw, layers) };
}

/** Weights that nobody weighed widen it, and so does a hand that nobody felt. */
function bodyRange({ body }: Readings, layers: readonly FilledCloth[]): { readonly body?: Range } {
  const weighed = layers.every((layer) => !layer.assumed.includes('weight'));
  const felt = layers.every((layer) => layer.cloth.hand !== undefined);
  const by = (weighed ? 0 : BODY_SPREAD) + (felt ? 0 : HAND_SPREAD);
  if (by === 0) return {};
  return { body: rounded('body', [Math.max(1, body - by), Math.min(5, body + by)]) };
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

/** The arithmetic of a judgement, step by step, as a person would write it. */
import type { WorkingStep } from '#shared/result.ts';
import type { Optics } from '#shared/cloth.ts';
import { BAND_WHITE, moveWhite, SRGB_WHITE, xyzOf } from '../light-and-heat/colour.ts';
import { nameLiningWeight } from '../cloth/lining-weight.ts';
import { isUnlit } from '../reckon-stack.ts';
import type { Reckoned } from '../reckon-stack.ts';
import type { FilledCloth } from '../cloth/resolve-cloth.ts';
import type { LiningSay } from './lining-say.ts';
import { sayList } from './say-number.ts';
import { spectraOf } from '../light-and-heat/spectra.ts';
import { SUMMER_ERROR } from '../light-and-heat/summer.ts';
import { MOST_ADDED } from '../light-and-heat/warmth.ts';
import { reckonWhiteness, reckonYellowness } from '../cloth/whiteness.ts';

export function showWorking(r: Reckoned): readonly WorkingStep[] {
  const { readings, glass, edges, warmth, condensation: c, summer, fade } = r;
  const { say } = r;
  const absorbed = 1 - r.folded.transmittance - r.folded.reflectance;
  const G = 1 / (1 / glass.U + 1 / 30);
  const pair = (o: Optics): string => `${say.figure(o.transmittance)} / ${say.figure(o.reflectance)}`;
  const named = r.layers.map((layer) => `${layer.cloth.name} ${pair(layer.visible)}`).join(say.apart);
  const parts = edges.parts.map((part) => `${part.label} ${say.figure(part.share)}`);
  return [
    {
      id: 'light',
      label: 'light through the cloth',
      formula: `passed / sent back: ${named}; composed with D = 1 − Rb × Rf`,
      value: say.figure(readings.light),
      rests: 'layer composition (Stokes), visible light, flat cloth',
    },
    {
      id: 'light-with-glass',
      label: 'with the glass',
      formula: `glass ${pair(glass.visible)} before ${say.figure(readings.light)} / ${say.figure(r.cloth.Rf)}`,
      value: say.figure(readings.lightWithGlass),
      rests: glass.rests.visible,
    },
    {
      id: 'open-share',
      label: 'open share round the cloth',
      formula: parts.length === 0 ? 'none' : sayList(parts),
      value: say.figure(edges.open),
      rests: `gaps typical, assumed: half to double${sayStitches(r)}`,
    },
    {
      id: 'light-in-room',
      label: 'light in the room',
      formula: `(1 − ${say.figure(edges.open)}) × ${say.figure(readings.lightWithGlass)} + ${say.figure(edges.open)} × ${say.figure(glass.visible.transmittance)}`,
      value: say.figure(readings.lightInRoom),
      rests: 'edges and needle holes added to the cloth',
    },
    {
      id: 'colour-shift',
      label: 'colour by day against lamplight',
      formula: `CIEDE2000 of Lab ${sayLab(r.shift.byRoomLight, say)} and ${sayLab(r.shift.byDay, say)}`,
      value: say.fixed(readings.colourShift, 1),
      rests: 'D65, 2 degrees, 400 to 700 nm by 20 nm, both at Y = 50 (Sharma, Wu, Dalal 2005)',
    },
    ...whiteStep(r),
    {
      id: 'warmth',
      label: 'added resistance when drawn',
      formula: `${r.closing.class}: ${say.figure(warmth.range[0])} to ${say.figure(warmth.range[1])}, cloth itself ${say.figure(warmth.cloth)}`,
      value: say.resistance(readings.warmth),
      rests: `range over public sources by how it closes, at most ${say.figure(MOST_ADDED)}`,
    },
    {
      id: 'u-value',
      label: 'window with it',
      formula: `1 ÷ (1 ÷ ${say.figure(warmth.U)} + ${say.figure(warmth.range[0])} to ${say.figure(warmth.range[1])})`,
      value: `${say.fixed(warmth.withDrapery[0], 2)} to ${say.fixed(warmth.withDrapery[1], 2)} W/m²K`,
      rests: glass.rests.gAndU,
    },
    {
      id: 'heat-saved',
      label: 'heat loss saved',
      formula: `1 − ${say.fixed(warmth.withDrapery[1], 2)} ÷ ${say.figure(warmth.U)} to 1 − ${say.fixed(warmth.withDrapery[0], 2)} ÷ ${say.figure(warmth.U)}`,
      value: `${say.percent(warmth.saved[0])} to ${say.percent(warmth.saved[1])}`,
      rests: 'of the loss through the glass, while drawn',
    },
    {
      id: 'glass-temperature',
      label: 'glass on a winter night',
      formula: `${c.inside} − (${say.figure(0.13)} + ${say.figure(readings.warmth)}) ÷ (1 ÷ ${say.figure(warmth.U)} + ${say.figure(readings.warmth)}) × (${c.inside} − (${c.outside}))`,
      value: `${say.fixed(c.glass, 1)} °C (${say.fixed(c.glassRange[0], 1)} to ${say.fixed(c.glassRange[1], 1)}), bare ${say.fixed(c.bareGlass, 1)} °C; dew point ${say.fixed(c.dewPoint, 1)} °C at ${say.percent(c.humidity)}: ${sayWet(r)}`,
      rests: 'ISO 13788 (from memory); night and humidity assumed',
    },
    {
      id: 'summer',
      label: 'sun let in when drawn',
      formula: `g ${say.figure(glass.g)} × (1 − ${say.figure(glass.g)} × ${say.figure(r.folded.reflectance)} − ${say.figure(absorbed)} × ${say.fixed(G, 2)} ÷ 30) = ${say.fixed(summer.gTot, 2)}; ÷ ${say.figure(glass.g)}, over ${say.percent(r.covered)} of the window, folds counted`,
      value: `${say.percent(r.summerLeft)} of the bare window's, of all sun ${say.percent(Math.max(0, r.sunGain - SUMMER_ERROR.high))} to ${say.percent(Math.min(1, r.sunGain + SUMMER_ERROR.low))}${summer.outOfScope ? ', outside the scope of the method' : ''}`,
      rests: `EN 13363-1, internal device, G = 1 ÷ (1 ÷ U + 1 ÷ 30); the street side of the stack; ${say.summerError()}`,
    },
    {
      id: 'fade',
      label: 'fading kept off',
      formula:
        r.behind.length === 0
          ? 'unlined: the measure itself'
          : `1 − ${say.figure(fade.reaching)} ÷ ${say.figure(fade.reachingUnlined)}`,
      value: say.percent(readings.fade),
      rests: `CIE 89/3 over 300 to 700 nm; ultraviolet is ${say.percent(fade.uvShareUnlined)} of it behind this glass`,
    },
    {
      id: 'body',
      label: 'body',
      formula: r.layers.map((layer) => sayHeld(layer, say)).join(' + '),
      value: `${say.fixed(readings.body, 1)} of 5`,
      rests: 'a judgement from weight and family or hand, not a test',
    },
    hangStep(r),
  ].filter((step) => !isUnlit(r.place) || STEPS_AWAY.includes(step.id));
}

/** What is worked out for a treatment that no daylight is behind. */
const STEPS_AWAY: readonly string[] = ['body', 'hang-weight'];

/** `4.1 oz/yd² (light) × 0.45`: weight of a layer, of a lining with the trade's word for it, and how firmly it holds. */
function sayHeld({ cloth, weight, stiffness }: FilledCloth, say: LiningSay): string {
  const word = cloth.role === 'lining' ? ` (${nameLiningWeight(weight)})` : '';
  return `${say.areaWeight(weight)}${word} × ${say.figure(stiffness)}`;
}

/** `; stitched 31 m: side hems 8.9, hem 5.3 m ...` where the take-off counted them and a coated cloth keeps the holes. */
function sayStitches(r: Reckoned): string {
  const { sewn } = r.input.made;
  const { say } = r;
  if (!sewn || !edgesHaveHoles(r)) return '';
  const lines = sewn.lines
    .filter((line) => line.metres > 0)
    .map((line) => `${line.label} ${say.fixed(line.metres, 1)} m`);
  const rings = sewn.points > 0 ? [`${sewn.points} rings`] : [];
  return `; stitches counted: ${sayList([...lines, ...rings])}, 330 holes a metre of ${say.figure(0.05)} mm² each`;
}

function edgesHaveHoles(r: Reckoned): boolean {
  return r.edges.parts.some((part) => part.label === 'needle holes');
}

function hangStep(r: Reckoned): WorkingStep {
  const { brackets, grams } = r.input.made;
  const { say } = r;
  const held =
    brackets === undefined || brackets === 0
      ? ''
      : `; ${brackets} brackets, about ${say.weight(r.hangKg / brackets)} each`;
  return {
    id: 'hang-weight',
    label: 'weight as it hangs',
    formula:
      grams === undefined
        ? `${say.areaWeight(r.gsm)} over the flat cloth, before hems`
        : 'the layers as the take-off weighs them, hems with them',
    value: `${say.weight(r.hangKg)}${held}`,
    rests: "guidance: the rod maker's rating and a competent installer decide",
  };
}

/** The layer next to the glass as a finisher would grade it: the yellower, the more daylight through it shifts the face. */
function whiteStep({ behind, say }: Reckoned): readonly WorkingStep[] {
  const lining = behind[behind.length - 1];
  if (lining?.cloth.role !== 'lining' || lining.visible.reflectance === 0) return [];
  const seen = moveWhite(xyzOf(spectraOf(lining).reflectance), BAND_WHITE, SRGB_WHITE);
  const { white, tint } = reckonWhiteness(seen, SRGB_WHITE);
  return [
    {
      id: 'lining-white',
      label: 'whiteness of the lining',
      formula: `${lining.cloth.name}: X ${say.fixed(seen.X, 1)}, Y ${say.fixed(seen.Y, 1)}, Z ${say.fixed(seen.Z, 1)}`,
      value: `whiteness ${say.fixed(white, 0)}, tint ${say.fixed(tint, 0)}, yellowness ${say.fixed(reckonYellowness(seen), 0)}`,
      rests:
        'CIE whiteness and tint, yellowness of ASTM E313 (second-hand), D65, 2 degrees; shown, and nothing is chosen by it',
    },
  ];
}

function sayWet(r: Reckoned): string {
  if (r.condensation.wetBare) return 'wet even bare';
  return r.condensation.wet ? 'wet behind the cloth' : 'dry';
}

function sayLab(lab: { readonly L: number; readonly a: number; readonly b: number }, say: LiningSay): string {
  return `(${[lab.L, lab.a, lab.b].map((each) => say.fixed(each, 1)).join(say.apart)})`;
}

/** The arithmetic of a judgement, step by step, as a person would write it. */
import type { WorkingStep } from '#shared/result.ts';
import type { Optics } from '#shared/cloth.ts';
import type { LengthUnit } from '#shared/length.ts';
import { nameLiningWeight } from './lining-weight.ts';
import type { Reckoned } from './reckon-stack.ts';
import type { FilledCloth } from './resolve-cloth.ts';
import { sayFigure, sayList, sayPercent } from './say-number.ts';
import { sayAreaWeight, sayResistance, sayWeight } from './say-weight.ts';

export function showWorking(r: Reckoned): readonly WorkingStep[] {
  const { readings, glass, edges, warmth, condensation: c, summer, fade } = r;
  const { units } = r.input;
  const absorbed = 1 - r.folded.transmittance - r.folded.reflectance;
  const G = 1 / (1 / glass.U + 1 / 30);
  const pair = (o: Optics): string => `${sayFigure(o.transmittance)} / ${sayFigure(o.reflectance)}`;
  const named = r.layers.map((layer) => `${layer.cloth.name} ${pair(layer.visible)}`).join(', ');
  const parts = edges.parts.map((part) => `${part.label} ${sayFigure(part.share)}`);
  return [
    {
      id: 'light',
      label: 'light through the cloth',
      formula: `passed / sent back: ${named}; composed with D = 1 − Rb × Rf`,
      value: sayFigure(readings.light),
      rests: 'layer composition (Stokes), visible light, flat cloth',
    },
    {
      id: 'light-with-glass',
      label: 'with the glass',
      formula: `glass ${pair(glass.visible)} before ${sayFigure(readings.light)} / ${sayFigure(r.cloth.Rf)}`,
      value: sayFigure(readings.lightWithGlass),
      rests: glass.rests.visible,
    },
    {
      id: 'open-share',
      label: 'open share round the cloth',
      formula: parts.length === 0 ? 'none' : sayList(parts),
      value: sayFigure(edges.open),
      rests: `gaps typical, assumed: half to double${sayStitches(r)}`,
    },
    {
      id: 'light-in-room',
      label: 'light in the room',
      formula: `(1 − ${sayFigure(edges.open)}) × ${sayFigure(readings.lightWithGlass)} + ${sayFigure(edges.open)} × ${sayFigure(glass.visible.transmittance)}`,
      value: sayFigure(readings.lightInRoom),
      rests: 'edges and needle holes added to the cloth',
    },
    {
      id: 'colour-shift',
      label: 'colour by day against lamplight',
      formula: `CIEDE2000 of Lab ${sayLab(r.shift.byRoomLight)} and ${sayLab(r.shift.byDay)}`,
      value: readings.colourShift.toFixed(1),
      rests: 'D65, 2 degrees, 400 to 700 nm by 20 nm, both at Y = 50 (Sharma, Wu, Dalal 2005)',
    },
    {
      id: 'warmth',
      label: 'added resistance when drawn',
      formula: `${r.closing.class}: ${sayFigure(warmth.range[0])} to ${sayFigure(warmth.range[1])}, cloth itself ${sayFigure(warmth.cloth)}`,
      value: sayResistance(readings.warmth, units),
      rests: 'range over public sources by how it closes, at most 0.33',
    },
    {
      id: 'u-value',
      label: 'window with it',
      formula: `1 ÷ (1 ÷ ${sayFigure(warmth.U)} + ${sayFigure(warmth.range[0])} to ${sayFigure(warmth.range[1])})`,
      value: `${warmth.withDrapery[0].toFixed(2)} to ${warmth.withDrapery[1].toFixed(2)} W/m²K`,
      rests: glass.rests.gAndU,
    },
    {
      id: 'heat-saved',
      label: 'heat loss saved',
      formula: `1 − ${warmth.withDrapery[1].toFixed(2)} ÷ ${sayFigure(warmth.U)} to 1 − ${warmth.withDrapery[0].toFixed(2)} ÷ ${sayFigure(warmth.U)}`,
      value: `${sayPercent(warmth.saved[0])} to ${sayPercent(warmth.saved[1])}`,
      rests: 'of the loss through the glass, while drawn',
    },
    {
      id: 'glass-temperature',
      label: 'glass on a winter night',
      formula: `${c.inside} − (0.13 + ${sayFigure(readings.warmth)}) ÷ (1 ÷ ${sayFigure(warmth.U)} + ${sayFigure(readings.warmth)}) × (${c.inside} − (${c.outside}))`,
      value: `${c.glass.toFixed(1)} °C (${c.glassRange[0].toFixed(1)} to ${c.glassRange[1].toFixed(1)}), bare ${c.bareGlass.toFixed(1)} °C; dew point ${c.dewPoint.toFixed(1)} °C at ${sayPercent(c.humidity)}: ${sayWet(r)}`,
      rests: 'ISO 13788 (from memory); night and humidity assumed',
    },
    {
      id: 'summer',
      label: 'sun let in when drawn',
      formula: `g ${sayFigure(glass.g)} × (1 − ${sayFigure(glass.g)} × ${sayFigure(r.folded.reflectance)} − ${sayFigure(absorbed)} × ${G.toFixed(2)} ÷ 30) = ${summer.gTot.toFixed(2)}; ÷ ${sayFigure(glass.g)}, over ${sayPercent(r.covered)} of the window, folds counted`,
      value: `${sayPercent(r.summerLeft)} of the bare window's, of all sun ${sayPercent(Math.max(0, r.sunGain - 0.1))} to ${sayPercent(Math.min(1, r.sunGain + 0.02))}${summer.outOfScope ? ', outside the scope of the method' : ''}`,
      rests:
        'EN 13363-1, internal device, G = 1 ÷ (1 ÷ U + 1 ÷ 30); the street side of the stack; it reads from 0.02 low to 0.10 high',
    },
    {
      id: 'fade',
      label: 'fading kept off',
      formula:
        r.behind.length === 0
          ? 'unlined: the measure itself'
          : `1 − ${sayFigure(fade.reaching)} ÷ ${sayFigure(fade.reachingUnlined)}`,
      value: sayPercent(readings.fade),
      rests: `CIE 89/3 over 300 to 700 nm; ultraviolet is ${sayPercent(fade.uvShareUnlined)} of it behind this glass`,
    },
    {
      id: 'body',
      label: 'body',
      formula: r.layers.map((layer) => sayHeld(layer, units)).join(' + '),
      value: `${readings.body.toFixed(1)} of 5`,
      rests: 'a judgement from weight and family or hand, not a test',
    },
    hangStep(r),
  ].filter((step) => r.place !== 'away' || STEPS_AWAY.includes(step.id));
}

/** What is worked out for a treatment that no daylight is behind. */
const STEPS_AWAY: readonly string[] = ['body', 'hang-weight'];

/** `4.1 oz/yd² (light) × 0.45`: weight of a layer, of a lining with the trade's word for it, and how firmly it holds. */
function sayHeld({ cloth, weight, stiffness }: FilledCloth, units: LengthUnit | undefined): string {
  const word = cloth.role === 'lining' ? ` (${nameLiningWeight(weight)})` : '';
  return `${sayAreaWeight(weight, units)}${word} × ${sayFigure(stiffness)}`;
}

/** `; stitched 31 m: side hems 8.9, hem 5.3 m ...` where the take-off counted them and a coated cloth keeps the holes. */
function sayStitches(r: Reckoned): string {
  const { sewn } = r.input.made;
  if (!sewn || !edgesHaveHoles(r)) return '';
  const lines = sewn.lines.filter((line) => line.metres > 0).map((line) => `${line.label} ${line.metres.toFixed(1)} m`);
  const rings = sewn.points > 0 ? [`${sewn.points} rings`] : [];
  return `; stitches counted: ${sayList([...lines, ...rings])}, 330 holes a metre of 0.05 mm² each`;
}

function edgesHaveHoles(r: Reckoned): boolean {
  return r.edges.parts.some((part) => part.label === 'needle holes');
}

function hangStep(r: Reckoned): WorkingStep {
  const { brackets, grams } = r.input.made;
  const { units } = r.input;
  const held =
    brackets === undefined || brackets === 0
      ? ''
      : `; ${brackets} brackets, about ${sayWeight(r.hangKg / brackets, units)} each`;
  return {
    id: 'hang-weight',
    label: 'weight as it hangs',
    formula:
      grams === undefined
        ? `${sayAreaWeight(r.gsm, units)} over the flat cloth, before hems`
        : 'the layers as the take-off weighs them, hems with them',
    value: `${sayWeight(r.hangKg, units)}${held}`,
    rests: "guidance: the rod maker's rating and a competent installer decide",
  };
}

function sayWet(r: Reckoned): string {
  if (r.condensation.wetBare) return 'wet even bare';
  return r.condensation.wet ? 'wet behind the cloth' : 'dry';
}

function sayLab(lab: { readonly L: number; readonly a: number; readonly b: number }): string {
  return `(${lab.L.toFixed(1)}, ${lab.a.toFixed(1)}, ${lab.b.toFixed(1)})`;
}

/** The arithmetic of a judgement, step by step, as a person would write it. */
import type { WorkingStep } from '#shared/result.ts';
import type { Optics } from '#shared/cloth.ts';
import type { Reckoned } from './reckon-stack.ts';
import { sayFigure, sayList, sayPercent } from './say-number.ts';

export function showWorking(r: Reckoned): readonly WorkingStep[] {
  const { readings, glass, edges, warmth, condensation: c, summer, fade } = r;
  const pair = (o: Optics): string => `${sayFigure(o.transmittance)} / ${sayFigure(o.reflectance)}`;
  const named = r.layers.map((layer) => `${layer.cloth.name} ${pair(layer.visible)}`).join(', ');
  const parts = edges.parts.map((part) => `${part.label} ${sayFigure(part.share)}`);
  return [
    {
      id: 'light',
      label: 'light through the cloth',
      formula: `passed / sent back: ${named}; composed D = 1 - Rb Rf`,
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
      rests: 'gaps typical, assumed: half to double',
    },
    {
      id: 'light-in-room',
      label: 'light in the room',
      formula: `(1 - ${sayFigure(edges.open)}) x ${sayFigure(readings.lightWithGlass)} + ${sayFigure(edges.open)} x ${sayFigure(glass.visible.transmittance)}`,
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
      value: `${sayFigure(readings.warmth)} m2K/W`,
      rests: 'range over public sources by how it closes, at most 0.33',
    },
    {
      id: 'u-value',
      label: 'window with it',
      formula: `1 / (1/${sayFigure(warmth.U)} + ${sayFigure(warmth.range[0])} to ${sayFigure(warmth.range[1])})`,
      value: `${warmth.withDrapery[0].toFixed(2)} to ${warmth.withDrapery[1].toFixed(2)} W/m2K`,
      rests: glass.rests.gAndU,
    },
    {
      id: 'heat-saved',
      label: 'heat loss saved',
      formula: `1 - ${warmth.withDrapery[1].toFixed(2)}/${sayFigure(warmth.U)} to 1 - ${warmth.withDrapery[0].toFixed(2)}/${sayFigure(warmth.U)}`,
      value: `${sayPercent(warmth.saved[0])} to ${sayPercent(warmth.saved[1])}`,
      rests: 'of the loss through the glass, while drawn',
    },
    {
      id: 'glass-temperature',
      label: 'glass on a winter night',
      formula: `${c.inside} - (0.13 + ${sayFigure(readings.warmth)}) / (1/${sayFigure(warmth.U)} + ${sayFigure(readings.warmth)}) x (${c.inside} - (${c.outside}))`,
      value: `${c.glass.toFixed(1)} C, dew point ${c.dewPoint.toFixed(1)} C at ${sayPercent(c.humidity)}`,
      rests: 'ISO 13788 (from memory); night and humidity assumed',
    },
    {
      id: 'summer',
      label: 'sun let in when drawn',
      formula: `g ${sayFigure(glass.g)} x (1 - g x ${sayFigure(r.folded.reflectance)} - absorbed x G/30), folds counted`,
      value: `${sayPercent(r.summerLeft)} of the bare window's${summer.outOfScope ? ', outside the scope of the method' : ''}`,
      rests: 'EN 13363-1, internal device, the lining faces the glass; declared -0.02 to +0.10',
    },
    {
      id: 'fade',
      label: 'fading kept off',
      formula:
        r.behind.length === 0
          ? 'unlined: the measure itself'
          : `1 - ${sayFigure(fade.reaching)} / ${sayFigure(fade.reachingUnlined)}`,
      value: sayPercent(readings.fade),
      rests: `CIE 89/3 over 300 to 700 nm; ultraviolet is ${sayPercent(fade.uvShareUnlined)} of it behind this glass`,
    },
    {
      id: 'body',
      label: 'body',
      formula: r.layers.map((l) => `${sayFigure(l.weight)} g/m2 x ${sayFigure(l.stiffness)}`).join(' + '),
      value: `${readings.body.toFixed(1)} of 5`,
      rests: 'a judgement from weight and family, not a test',
    },
  ];
}

function sayLab(lab: { readonly L: number; readonly a: number; readonly b: number }): string {
  return `(${lab.L.toFixed(1)}, ${lab.a.toFixed(1)}, ${lab.b.toFixed(1)})`;
}

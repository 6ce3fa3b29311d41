/**
 * The stack strip: a cross-section from the room (left) to the street (right). A beam of noon light enters from the street
 * and is paler behind every layer, by the computed share of daylight that each one leaves; by night the lamps light the face.
 */
import type { Glazing } from '#shared/words.ts';
import { drawLayer, thicknessOf } from './draw-layer.ts';
import type { DrawnLayer, StripInput } from './drawn-stack.ts';
import { fitText } from './label-field.ts';
import { circle, line, outline, path, rect, strokes, text } from './make-shapes.ts';
import type { Bounds, Drawing, Paint, Shape } from './shape.ts';
import { sayLight, shownLight } from './show-light.ts';
import { textWidth } from './text-widths.ts';
import { roundOpacity } from './round-shapes.ts';

export type * from './drawn-stack.ts';

interface StripStyle {
  readonly figure: number;
  readonly hair: number;
}
const STYLES: Readonly<Record<'screen' | 'paper', StripStyle>> = {
  screen: { figure: 10, hair: 0.75 },
  paper: { figure: 7, hair: 0.5 },
};

/** True of every window: to the north no sun stands at noon. */
const NOON = 'noon light';

const PANES: Readonly<Record<Glazing, number>> = { single: 1, double: 2, 'double-low-e': 2, triple: 3 };

/** Something that stands in the beam, room to street, and the light that is left on its room side. */
interface Standing {
  readonly name: string;
  readonly box: Bounds;
  readonly light: number;
  readonly draw: (box: Bounds) => readonly Shape[];
}

/** Points; as wide as asked (at least 120), its height follows. */
export function drawStackStrip(input: StripInput): Drawing {
  const style = STYLES[input.detail];
  const width = Math.max(120, Number.isFinite(input.width) ? input.width : 200);
  const tall = Math.max(38, Math.min(78, width * 0.21));
  const ground = input.ground ?? 'card';
  const standing = standInBeam(input, width, tall, style);
  const names = setNames(standing, width, tall, style);
  const room = input.layers[0]?.light ?? input.lightBehindGlass;
  const night = input.night === true;
  const daylight = [
    ...drawBeam(standing, width, tall, ground),
    ...drawSun(width, tall, style),
    ...standing.flatMap((one) => one.draw(one.box)),
    ...(input.needleHoles ? drawNeedleHoles(standing, tall, ground, style) : []),
  ];
  const lamplight = [
    ...drawLamplight(standing, tall, ground),
    ...drawMoon(width, tall, style),
    ...standing.flatMap((one) => one.draw(one.box)),
  ];
  return {
    width,
    height: tall + style.figure * (0.55 + 1.25 * names.rows),
    title:
      `From the room to the street: ${standing.map((one) => one.name).join(', ')}. ` +
      (night
        ? 'By night: lamplight on the face, no daylight.'
        : `Noon light that reaches the room: ${sayLight(room)}.`),
    shapes: [...(night ? lamplight : daylight), ...names.shapes, ...setEnds(width, tall, style, night)],
  };
}

/** The beam falls towards the room and opens a little; its corners leave room for a word each. */
function beamAt(x: number, width: number, tall: number, corner: number): { top: number; bottom: number } {
  const inwards = 1 - x / width;
  return { top: 1 + inwards * corner, bottom: tall - corner * 1.15 + inwards * corner * 1.15 };
}

function cornerOf(tall: number): number {
  return tall * 0.3;
}

function standInBeam(input: StripInput, width: number, tall: number, style: StripStyle): readonly Standing[] {
  const grow = Math.max(0.8, Math.min(1.7, width / 220));
  const panes = PANES[input.glazing];
  const thick = input.layers.map((layer) => thicknessOf(layer) * grow);
  const glass = (3 + (panes - 1) * 4.5) * grow;
  const sunward = Math.max(textWidth(NOON, 'sans', 'regular', style.figure) + 10, tall * 0.72);
  const roomward = Math.max(width * 0.2, 34);
  const free = width - sunward - roomward - glass - thick.reduce((sum, each) => sum + each, 0);
  const squeeze = free < input.layers.length * 4 ? 0.72 : 1;
  const gap = Math.max(3, Math.min(16 * grow, free / squeeze / (input.layers.length + 0.5)));
  let x = width - sunward - glass;
  const window: Standing = {
    name: 'glass',
    light: input.lightBehindGlass,
    box: { x, y: 1, width: glass, height: tall - 2 },
    draw: (box) => drawPanes(box, panes, input.glazing === 'double-low-e', style),
  };
  const cloths: Standing[] = [];
  for (let place = input.layers.length - 1; place >= 0; place -= 1) {
    const layer = input.layers[place] as DrawnLayer;
    const breadth = (thick[place] ?? 8) * squeeze;
    x -= breadth + gap * (place === input.layers.length - 1 ? 1.5 : 1);
    cloths.unshift({
      name: layer.name,
      light: layer.light,
      box: { x, y: 1, width: breadth, height: tall - 2 },
      draw: (box) => drawLayer(layer, box, style.hair),
    });
  }
  return [...cloths, window];
}

function drawBeam(standing: readonly Standing[], width: number, tall: number, ground: Paint): readonly Shape[] {
  const corner = cornerOf(tall);
  const slice = (from: number, to: number) => {
    const [a, b] = [beamAt(from, width, tall, corner), beamAt(to, width, tall, corner)];
    return outline([
      { x: from, y: a.top },
      { x: to, y: b.top },
      { x: to, y: b.bottom },
      { x: from, y: a.bottom },
    ]);
  };
  const shapes: Shape[] = [];
  let right = width;
  let light = 1;
  for (const one of [...standing].reverse()) {
    const middle = one.box.x + one.box.width / 2;
    shapes.push(path(slice(middle, right), { fill: 'sun', opacity: opacityOf(light) }));
    right = middle;
    light = one.light;
  }
  const fade = { from: { x: right, y: 0, paint: 'sun' }, to: { x: 0, y: 0, paint: ground } } as const;
  if (light > 0) shapes.push(path(slice(0, right), { fill: fade, opacity: opacityOf(light) }));
  return shapes;
}

function opacityOf(light: number): number {
  return roundOpacity(shownLight(light) * 0.95);
}

function drawSun(width: number, tall: number, style: StripStyle): readonly Shape[] {
  const r = tall * 0.13;
  const [x, y] = [width - r * 2.6, tall * 0.33];
  const rays = Array.from({ length: 12 }, (_, ray): readonly [number, number, number, number] => {
    const turn = (ray * Math.PI) / 6;
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const reach = ray % 2 === 0 ? 1.95 : 1.65;
    return [x + cos * r * 1.35, y + sin * r * 1.35, x + cos * r * reach, y + sin * r * reach];
  });
  const pen = { stroke: '#6d5312', strokeWidth: style.hair } as const;
  return [circle(x, y, r, { fill: '#fbe7a8', ...pen }), strokes(rays, { ...pen, cap: 'round' })];
}

/** From the lamps of the room to the face, which sends it back. */
function drawLamplight(standing: readonly Standing[], tall: number, ground: Paint): readonly Shape[] {
  const face = standing[0];
  if (face === undefined) return [];
  const to = face.box.x + face.box.width / 2;
  const fill = { from: { x: to, y: 0, paint: 'sun' }, to: { x: 0, y: 0, paint: ground } } as const;
  return [rect(0, tall * 0.3, to, tall * 0.5, { fill, opacity: roundOpacity(0.5) })];
}

function drawMoon(width: number, tall: number, style: StripStyle): readonly Shape[] {
  const r = tall * 0.16;
  const [x, y] = [width - r * 2.2, tall * 0.33];
  const limb = Array.from({ length: 25 }, (_, step) => {
    const turn = -Math.PI / 2 + (step * Math.PI) / 24;
    return { x: x + r * Math.cos(turn), y: y + r * Math.sin(turn) };
  });
  const inner = [...limb].reverse().map((at) => ({ x: x + (at.x - x) * 0.45, y: at.y }));
  return [path(outline([...limb, ...inner]), { fill: 'faint', stroke: 'pencil', strokeWidth: style.hair })];
}

function drawPanes(box: Bounds, panes: number, lowE: boolean, style: StripStyle): readonly Shape[] {
  const breadth = box.width / (panes + (panes - 1) * 0.8);
  const step = panes === 1 ? 0 : (box.width - breadth) / (panes - 1);
  const fill = {
    from: { x: 0, y: box.y, paint: 'glass-top' },
    to: { x: 0, y: box.y + box.height, paint: 'glass-bottom' },
  } as const;
  const glass = Array.from({ length: panes }, (_, pane) =>
    rect(box.x + pane * step, box.y, breadth, box.height, { fill, stroke: 'pencil', strokeWidth: style.hair }),
  );
  // The coating lies in the gap, on the room pane's outer side.
  const at = box.x + breadth + style.hair * 1.6;
  const film = line(at, box.y + 2, at, box.y + box.height - 2, {
    stroke: 'pencil',
    strokeWidth: style.hair,
    dash: [1.5, 2],
  });
  return lowE && panes > 1 ? [...glass, film] : glass;
}

/** Stitching lets points of daylight through: bright pricks across the cloth, each with its own thin ray into the room. */
function drawNeedleHoles(
  standing: readonly Standing[],
  tall: number,
  ground: Paint,
  style: StripStyle,
): readonly Shape[] {
  const cloths = standing.slice(0, -1);
  const [first, last] = [cloths[0], cloths.at(-1)];
  if (first === undefined || last === undefined) return [];
  const [from, to] = [first.box.x, last.box.x + last.box.width];
  const reach = Math.max(4, from * 0.72);
  return [0.42, 0.6, 0.78].flatMap((share): Shape[] => {
    const y = tall * share;
    const fill = { from: { x: from, y: 0, paint: 'sun' }, to: { x: from - reach, y: 0, paint: ground } } as const;
    const ray = outline([
      { x: from, y: y - style.hair * 0.7 },
      { x: from, y: y + style.hair * 0.7 },
      { x: from - reach, y: y + reach * 0.11 },
      { x: from - reach, y: y + reach * 0.03 },
    ]);
    return [
      path(ray, { fill }),
      rect(from - 0.5, y - style.hair, to - from + 1, style.hair * 2, {
        fill: '#ffe9a6',
        stroke: '#6d5312',
        strokeWidth: style.hair * 0.4,
      }),
    ];
  });
}

function setEnds(width: number, tall: number, style: StripStyle, night: boolean): readonly Shape[] {
  const look = { size: style.figure, paint: 'pencil' } as const;
  return [
    text(0, style.figure * 0.85, 'room', look),
    text(width, tall - style.figure * 0.12, night ? 'night' : NOON, { ...look, anchor: 'end' }),
  ];
}

/** Names under their layers, moved apart where they would touch, with a fine leader to the layer; in two rows if one is too short. */
function setNames(
  standing: readonly Standing[],
  width: number,
  tall: number,
  style: StripStyle,
): { rows: number; shapes: readonly Shape[] } {
  const look = { font: 'sans', weight: 'regular', size: style.figure } as const;
  const measure = (words: string) => textWidth(words, look.font, look.weight, look.size);
  const air = style.figure * 0.7;
  const needed = standing.reduce((sum, one) => sum + measure(one.name) + air, -air);
  const rows = needed <= width ? 1 : 2;
  const shapes: Shape[] = [];
  for (let row = 0; row < rows; row += 1) {
    const own = standing.filter((_, place) => place % rows === row);
    const share = (width - air * (own.length - 1)) / Math.max(1, own.length);
    const tight = own.reduce((sum, one) => sum + measure(one.name) + air, -air) > width;
    const words = own.map((one) => (tight ? fitText(one.name, look, share) : one.name));
    const middles = spread(
      own.map((one) => one.box.x + one.box.width / 2),
      words.map(measure),
      air,
      width,
    );
    own.forEach((one, place) => {
      const middle = middles[place] ?? 0;
      const foot = one.box.x + one.box.width / 2;
      const y = tall + style.figure * (1.3 + row * 1.2);
      const head = y - style.figure * 0.78;
      shapes.push(line(foot, tall, middle, head, { stroke: 'faint', strokeWidth: style.hair * 0.9 }));
      shapes.push(text(middle, y, words[place] ?? '', { ...look, paint: 'pencil', anchor: 'middle' }));
    });
  }
  return { rows, shapes };
}

/**
 * Middles as near to the wished ones as they can be without touching (least squares): with every label's due distance
 * taken off, the middles must only not fall back, and neighbours that would are pooled at their mean.
 */
function spread(wished: readonly number[], lengths: readonly number[], air: number, width: number): readonly number[] {
  const due: number[] = [];
  lengths.forEach((length, place) =>
    due.push(place === 0 ? 0 : (due[place - 1] ?? 0) + ((lengths[place - 1] ?? 0) + length) / 2 + air),
  );
  const pools: { sum: number; count: number }[] = [];
  wished.forEach((middle, place) => {
    pools.push({ sum: middle - (due[place] ?? 0), count: 1 });
    for (
      let last = pools.at(-1), before = pools.at(-2);
      last && before && before.sum / before.count > last.sum / last.count;
    ) {
      pools.splice(-2, 2, { sum: before.sum + last.sum, count: before.count + last.count });
      [last, before] = [pools.at(-1), pools.at(-2)];
    }
  });
  const [first, end] = [(lengths[0] ?? 0) / 2, width - (lengths.at(-1) ?? 0) / 2 - (due.at(-1) ?? 0)];
  const means = pools.flatMap((pool) => Array.from({ length: pool.count }, () => pool.sum / pool.count));
  return means.map((mean, place) => Math.max(first, Math.min(end, mean)) + (due[place] ?? 0));
}

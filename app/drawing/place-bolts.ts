/** Where each bolt of a cut plan lies on the sheet, and which cloth lies under a point of it. */
import type { LaidBolt } from '#app/plan/cut-plan.ts';
import { measureDepth } from './draw-cloth-line.ts';
import type { ClothLine, CutPlanInput, PlanStyle } from './drawn-cut-plan.ts';
import { PLAN_STYLES } from './drawn-cut-plan.ts';
import { wrapBolt } from './wrap-bolt.ts';

export interface PlacedBolt {
  readonly bolt: LaidBolt;
  /** Base line of its name. */
  readonly nameAt: number;
  readonly lines: readonly ClothLine[];
}

export interface PlacedBolts {
  readonly width: number;
  readonly height: number;
  readonly bolts: readonly PlacedBolt[];
}

/** Points; at least 240 wide. */
export function placeBolts(input: Pick<CutPlanInput, 'plan' | 'width' | 'detail'>): PlacedBolts {
  const style = PLAN_STYLES[input.detail];
  const width = Math.max(240, Number.isFinite(input.width) ? input.width : 720);
  const widest = input.plan.bolts.reduce((most, bolt) => Math.max(most, bolt.width), 1);
  const scale = style.band / widest;
  let y = 0;
  const bolts = input.plan.bolts.map((bolt): PlacedBolt => {
    const nameAt = y + style.name;
    y += style.name * 2.1;
    const lines = layOutLines(bolt, width, scale, y, style);
    y = (lines.at(-1)?.y ?? y) + bolt.width * scale + measureDepth(style) + style.name * 1.1;
    return { bolt, nameAt, lines };
  });
  return { width, height: bolts.length === 0 ? style.name * 2 : y, bolts };
}

function layOutLines(bolt: LaidBolt, width: number, scale: number, top: number, style: PlanStyle): ClothLine[] {
  const end = drawnEnd(bolt);
  const ends = wrapBolt(bolt, end, (width - style.thread) / scale);
  const pitch = bolt.width * scale + measureDepth(style) + style.figure * 0.9;
  return ends.map((to, index) => ({
    ...{ bolt, from: ends[index - 1] ?? 0, to, x: style.hair, y: top + index * pitch, scale },
    ...{ isFirst: index === 0, isLast: index === ends.length - 1 },
  }));
}

/** A remnant is drawn whole, of a bolt what is bought. */
function drawnEnd(bolt: LaidBolt): number {
  return bolt.kind === 'remnant' ? (bolt.length ?? bolt.used) : bolt.ordered;
}

/** A place on the cloth, in ticks as far as the sheet shows it: along the bolt, and from its left selvage. */
export interface ClothPlace {
  readonly on: string;
  readonly at: number;
  readonly x: number;
}

/** The cloth under a point, or nearest below or above it; null where no bolt is drawn. */
export function placeUnder(placed: PlacedBolts, x: number, y: number): ClothPlace | null {
  const lines = placed.bolts.flatMap((each) => each.lines);
  const depth = (line: ClothLine): number => line.bolt.width * line.scale;
  const off = (line: ClothLine): number => Math.max(line.y - y, y - line.y - depth(line), 0);
  const nearest = lines.reduce<ClothLine | null>((best, line) => (best && off(best) <= off(line) ? best : line), null);
  if (nearest === null) return null;
  const within = (value: number, most: number): number => Math.max(0, Math.min(most, value));
  return {
    on: nearest.bolt.id,
    at: nearest.from + within((x - nearest.x) / nearest.scale, nearest.to - nearest.from),
    x: within((y - nearest.y) / nearest.scale, nearest.bolt.width),
  };
}

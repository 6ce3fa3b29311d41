/**
 * The cut plan: every bolt to scale with its cuts in order. A bolt longer than the sheet runs on in further lines, broken
 * between cuts; the measure along its edge counts on.
 */
import type { LaidBolt } from '#app/plan/cut-plan.ts';
import { formatClothLength } from '#shared/format-length.ts';
import type { LengthStyle } from '#shared/format-length.ts';
import { drawClothLine } from './draw-cloth-line.ts';
import type { CutPlanInput, PlanStyle } from './drawn-cut-plan.ts';
import { PLAN_STYLES } from './drawn-cut-plan.ts';
import { fitText } from './label-field.ts';
import { text } from './make-shapes.ts';
import { placeBolts } from './place-bolts.ts';
import type { Drawing, Shape } from './shape.ts';
import { textWidth } from './text-widths.ts';
import { titleBolt } from './title-bolt.ts';

export type * from './drawn-cut-plan.ts';

/** Points; as wide as asked (at least 240), its height follows. The plan's cuts are groups with their ids as keys. */
export function drawCutPlan(input: CutPlanInput): Drawing {
  const style = PLAN_STYLES[input.detail];
  const placed = placeBolts(input);
  const given = { ...input, width: placed.width };
  const shapes: Shape[] = placed.bolts.flatMap(({ bolt, nameAt, lines }) => [
    ...drawHead(bolt, given, style, nameAt),
    ...lines.flatMap((line) => drawClothLine(line, given, style)),
  ]);
  if (placed.bolts.length === 0)
    shapes.push(text(0, style.name, 'Nothing to cut yet', { size: style.name, paint: 'pencil' }));
  return { width: placed.width, height: placed.height, title: nameCutPlan(given), shapes };
}

/** The same line by line, so that a page can break between two: the first of each bolt begins with its name. */
export function drawCutPlanRows(input: CutPlanInput): readonly Drawing[] {
  const style = PLAN_STYLES[input.detail];
  const placed = placeBolts(input);
  const { width } = placed;
  const given = { ...input, width };
  if (placed.bolts.length === 0) return [drawCutPlan(input)];
  return placed.bolts.flatMap(({ bolt, nameAt, lines }, order) => {
    const head = nameAt - style.name;
    const end = placed.bolts[order + 1]?.nameAt ?? placed.height + style.name;
    return lines.map((line, index): Drawing => {
      const isFirst = index === 0;
      const top = isFirst ? head : line.y;
      const foot = lines[index + 1]?.y ?? end - style.name;
      const of = lines.length === 1 ? '' : `, line ${index + 1} of ${lines.length}`;
      return {
        width,
        height: foot - top,
        title: `${titleBolt(bolt)}${of}: ${noteOf(bolt, given)}`,
        shapes: [
          ...(isFirst ? drawHead(bolt, given, style, style.name) : []),
          ...drawClothLine({ ...line, y: line.y - top }, given, style),
        ],
      };
    });
  });
}

function writing(input: CutPlanInput): LengthStyle {
  return { fractions: 'set', decimal: input.wording.decimal };
}

function sayCloth(length: number, input: CutPlanInput): string {
  return formatClothLength(length, input.wording.units, writing(input));
}

/** The bolt's name, and beside it what it is and what it gives. */
function drawHead(bolt: LaidBolt, input: CutPlanInput, style: PlanStyle, y: number): readonly Shape[] {
  const look = { font: 'serif', weight: 'semibold', size: style.name * 1.12 } as const;
  const name = fitText(titleBolt(bolt), look, input.width * 0.6);
  const after = textWidth(name, look.font, look.weight, look.size) + style.name * 0.8;
  const small = { font: 'sans', weight: 'regular', size: style.figure } as const;
  const note = fitText(noteOf(bolt, input), small, input.width - after);
  return [
    text(0, y, name, { ...look, paint: 'ink' }),
    ...(note === '' ? [] : [text(after, y, note, { ...small, paint: 'pencil' })]),
  ];
}

function noteOf(bolt: LaidBolt, input: CutPlanInput): string {
  const cuts = `${bolt.cuts.length} ${bolt.cuts.length === 1 ? 'cut' : 'cuts'}`;
  const lot = bolt.dyeLot === null ? '' : `, dye lot ${bolt.dyeLot}`;
  const more = bolt.ordered > bolt.used ? `, order ${sayCloth(bolt.ordered, input)}` : '';
  const bought = bolt.kind === 'remnant' ? ', on hand' : more;
  const of = bolt.length === null ? '' : ` of ${sayCloth(bolt.length, input)}`;
  return `${cuts}${lot}, ${sayCloth(bolt.used, input)} used${of}${bought}`;
}

/** The plan in words, for those who cannot see it. */
function nameCutPlan(input: CutPlanInput): string {
  if (input.plan.bolts.length === 0) return 'Cut plan: nothing to cut yet.';
  const bolts = input.plan.bolts.map((bolt) => `${titleBolt(bolt)}: ${noteOf(bolt, input)}`);
  const kept = input.plan.remnants.length;
  return `Cut plan to scale. ${bolts.join('. ')}. ${kept === 0 ? 'No remnants' : `${kept} ${kept === 1 ? 'remnant' : 'remnants'}`} worth keeping.`;
}

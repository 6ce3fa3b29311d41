/** What can be wrong in the question: every fault with its field, what is wrong and what would be right. */
import type { Say } from '#app/estimating/say.ts';
import { at } from '#shared/fault.ts';
import type { Fault } from '#shared/fault.ts';
import type { FixedCut, PlanInput, PlannedCut } from './plan-input.ts';
import { nextPosition, placeAfter } from './repeat-circle.ts';
import type { Kind, Task } from './task.ts';
import { widthOf } from './task.ts';

type Tell = (path: string, wrong: string, right: string) => void;

/** Faults of the fields themselves; empty when the question can be read. Paths as in the input: `cuts[2].length`. */
export function checkPlan(input: PlanInput, say: Say): Fault[] {
  const faults: Fault[] = [];
  const tell: Tell = (path, wrong, right) => faults.push({ path, wrong, right });
  const cloth = (length: number): string => `${say.length(length)} ${say.unit}`;
  if (!(input.width > 0)) tell('width', 'the cloth has no width', 'give a width above 0');
  if (input.repeat && !(input.repeat.vertical > 0))
    tell('repeat.vertical', 'a repeat of 0 or less', 'give the repeat, or none for plain cloth');
  const budget = input.settings.budget ?? 1;
  if (!(budget >= 1)) tell('settings.budget', 'no steps to plan with', 'give at least 1');
  for (const key of ['keepLength', 'keepWidth'] as const)
    if (!(input.settings[key] >= 0)) tell(at('settings', key), 'a negative length', 'give 0 or more');
  checkNames(input, tell);
  input.cuts.forEach((cut, index) => checkCut(input, cut, at('cuts', index), tell, cloth));
  checkCloth(input, tell, cloth);
  if (faults.length > 0) return faults;
  checkFlaws(input, tell, cloth);
  checkFixed(input, tell, cloth);
  return faults;
}

/** Faults that show only once cloth and cuts are seen together: a cut or a repeat longer than every bolt. */
export function checkRoom(input: PlanInput, task: Task, say: Say): Fault[] {
  const faults: Fault[] = [];
  const cloth = (length: number): string => `${say.length(length)} ${say.unit}`;
  const longest = Math.max(0, ...[...input.bolts, ...input.remnants].map((each) => each.length ?? Infinity));
  const repeat = input.repeat?.vertical ?? 0;
  if (repeat > longest)
    faults.push({
      path: 'repeat.vertical',
      wrong: `the repeat of ${cloth(repeat)} is longer than the longest bolt, ${cloth(longest)}`,
      right: 'give the repeat in the right unit, or a longer bolt',
    });
  task.kinds.forEach((kind) => {
    const fits = task.stretches.some((stretch) => {
      const sides = kind.side === null || (kind.side === 'left' ? stretch.left : stretch.right);
      return kind.shapes.some((shape) => {
        const start =
          stretch.start === null || task.size === 0 ? 0 : placeAfter(stretch.start, -stretch.from, task.size);
        const from = stretch.start === null ? stretch.from : nextPosition(stretch.from, kind.phase, start, task.size);
        return sides && shape.across <= stretch.width && from + shape.length <= stretch.to;
      });
    });
    if (fits) return;
    faults.push(...tellHomeless(input, kind, longest, cloth));
  });
  return faults;
}

/** Of cuts alike in one set the first is named, and the others counted. */
function tellHomeless(input: PlanInput, kind: Kind, longest: number, cloth: (length: number) => string): Fault[] {
  const all = kind.ids.flatMap((id) => {
    const index = input.cuts.findIndex((cut) => cut.id === id);
    const cut = input.cuts[index];
    return cut === undefined ? [] : [{ index, cut }];
  });
  return [...new Set(all.map(({ cut }) => cut.set))].flatMap((set): Fault[] => {
    const [first, ...others] = all.filter(({ cut }) => cut.set === set);
    if (first === undefined) return [];
    const { index, cut } = first;
    const isLonger = cut.length > longest;
    const one = `the cut "${cut.label ?? cut.id}" of ${cloth(cut.length)}`;
    const [named, is, finds] =
      others.length === 0 ? [one, 'is', 'finds'] : [`${one} and ${others.length} more like it`, 'are', 'find'];
    return [
      {
        path: at(at('cuts', index), 'length'),
        wrong: isLonger
          ? `${named} ${is} longer than every bolt; the longest has ${cloth(longest)}`
          : `${named} ${finds} no stretch long and wide enough at the place in the repeat`,
        right: isLonger ? 'order a longer bolt' : 'order another bolt, or move what is fixed',
      },
    ];
  });
}

function checkNames(input: PlanInput, tell: Tell): void {
  const once = (list: readonly { readonly id: string }[], name: string, seen: Set<string>): void =>
    list.forEach((each, index) => {
      if (seen.has(each.id)) tell(at(at(name, index), 'id'), `"${each.id}" is there twice`, 'give each its own id');
      seen.add(each.id);
    });
  once(input.cuts, 'cuts', new Set());
  const supplies = new Set<string>();
  once(input.bolts, 'bolts', supplies);
  once(input.remnants, 'remnants', supplies);
}

function checkCut(
  input: PlanInput,
  cut: PlannedCut,
  path: string,
  tell: Tell,
  cloth: (length: number) => string,
): void {
  if (!Number.isSafeInteger(cut.length) || cut.length <= 0)
    tell(at(path, 'length'), 'the cut has no length', 'give a length above 0');
  const across = widthOf(cut, input.width);
  if (!Number.isSafeInteger(across) || across <= 0)
    tell(at(path, 'across'), 'the cut has no width', 'give "whole", "half" or a width above 0');
  else if (across > input.width && !(cut.mayTurn && cut.length <= input.width))
    tell(
      at(path, 'across'),
      `the cut of ${cloth(across)} is wider than the cloth, ${cloth(input.width)}`,
      'take more widths',
    );
  const repeat = input.repeat?.vertical ?? 0;
  if (cut.phase !== null && repeat === 0)
    tell(at(path, 'phase'), 'a place in the repeat on plain cloth', 'give none, or the cloth a repeat');
  else if (cut.phase !== null && !(cut.phase >= 0 && cut.phase < repeat))
    tell(at(path, 'phase'), 'not a place in the repeat', `give 0 or more, below the repeat of ${cloth(repeat)}`);
  if (cut.mayTurn && (cut.direction === 'one-way' || cut.phase !== null || cut.side !== undefined))
    tell(at(path, 'mayTurn'), 'a cut that has a direction cannot be turned sideways', 'let it lie one way');
}

function checkCloth(input: PlanInput, tell: Tell, cloth: (length: number) => string): void {
  if (input.bolts.length + input.remnants.length === 0 && input.cuts.length > 0)
    tell('bolts', 'there is no cloth to lay the cuts on', 'give a bolt; one without a length is unlimited');
  const repeat = input.repeat?.vertical ?? 0;
  const checkStart = (start: number | null, path: string): void => {
    if (start !== null && repeat > 0 && !(start >= 0 && start < repeat))
      tell(at(path, 'startPhase'), 'not a place in the repeat', `give 0 or more, below the repeat of ${cloth(repeat)}`);
  };
  input.bolts.forEach((bolt, index) => {
    const path = at('bolts', index);
    if (bolt.length !== null && !(bolt.length > 0))
      tell(at(path, 'length'), 'a bolt without length', 'give a length above 0, or none for unlimited');
    if (!(bolt.step >= 0)) tell(at(path, 'step'), 'a negative step', 'give 0 or more');
    checkStart(bolt.startPhase, path);
  });
  input.remnants.forEach((remnant, index) => {
    const path = at('remnants', index);
    if (!(remnant.length > 0)) tell(at(path, 'length'), 'a remnant without length', 'give a length above 0');
    if (remnant.width !== null && !(remnant.width > 0 && remnant.width <= input.width))
      tell(at(path, 'width'), 'not a width of this cloth', `give a width up to ${cloth(input.width)}, or none`);
    checkStart(remnant.startPhase, path);
  });
}

function lengthOf(input: PlanInput, id: string): number | null {
  const supply = [...input.bolts, ...input.remnants].find((each) => each.id === id);
  return supply === undefined ? null : (supply.length ?? Infinity);
}

function checkFlaws(input: PlanInput, tell: Tell, cloth: (length: number) => string): void {
  input.flaws.forEach((flaw, index) => {
    const path = at('flaws', index);
    const length = lengthOf(input, flaw.on);
    if (length === null) return tell(at(path, 'on'), `there is no bolt "${flaw.on}"`, 'name a bolt or remnant');
    if (!(flaw.from >= 0)) tell(at(path, 'from'), 'it begins before the bolt', 'give 0 or more');
    if (!(flaw.to > flaw.from)) tell(at(path, 'to'), 'it ends where it begins or before', 'give where the bad ends');
    else if (flaw.to > length)
      tell(at(path, 'to'), 'it ends beyond the bolt', `give at most the bolt's length, ${cloth(length)}`);
  });
}

interface Box {
  readonly path: string;
  readonly name: string;
  readonly on: string;
  readonly from: number;
  readonly to: number;
  readonly x: number;
  readonly right: number;
}

function checkFixed(input: PlanInput, tell: Tell, cloth: (length: number) => string): void {
  const boxes: Box[] = input.flaws.map((flaw, index) => ({
    ...{ path: at('flaws', index), name: 'the flaw', on: flaw.on, from: flaw.from, to: flaw.to },
    ...{ x: 0, right: input.width },
  }));
  const lots = new Map<string, string>();
  const seen = new Set<string>();
  input.fixed.forEach((fixed, index) => {
    const path = at('fixed', index);
    const cut = input.cuts.find((each) => each.id === fixed.cut);
    const supply = [...input.bolts, ...input.remnants].find((each) => each.id === fixed.on);
    if (cut === undefined) return tell(at(path, 'cut'), `there is no cut "${fixed.cut}"`, 'name one of the cuts');
    if (supply === undefined) return tell(at(path, 'on'), `there is no bolt "${fixed.on}"`, 'name a bolt or remnant');
    if (seen.has(cut.id)) return tell(at(path, 'cut'), 'the cut is fixed twice', 'fix it in one place');
    seen.add(cut.id);
    const name = cut.label ?? cut.id;
    const box = boxOf(input, fixed, cut, path);
    const width = 'width' in supply ? (supply.width ?? input.width) : input.width;
    const length = supply.length ?? Infinity;
    if (!(box.from >= 0) || box.to > length)
      tell(at(path, 'at'), `"${name}" does not lie on the bolt there`, 'fix it between the start and the end');
    if (
      box.x < 0 ||
      box.right > width ||
      (cut.side === 'right' && box.right !== width) ||
      (cut.side === 'left' && box.x !== 0)
    )
      tell(at(path, 'x'), `"${name}" does not lie on the cloth's width there`, 'leave its place across open');
    checkPlace(input, fixed, cut, path, tell, cloth);
    const other = boxes.find(
      (each) =>
        each.on === box.on && each.from < box.to && box.from < each.to && each.x < box.right && box.x < each.right,
    );
    if (other) tell(at(path, 'at'), `"${name}" lies on ${other.name}`, 'move one of them');
    boxes.push(box);
    const lot = supply.dyeLot ?? `?${supply.id}`;
    const before = lots.get(cut.set);
    if (before !== undefined && before !== lot)
      tell(at(path, 'on'), `"${name}" splits its set over two dye lots`, 'fix the whole set on one');
    lots.set(cut.set, before ?? lot);
  });
}

function boxOf(input: PlanInput, fixed: FixedCut, cut: PlannedCut, path: string): Box {
  const across = widthOf(cut, input.width);
  const x = fixed.x ?? (cut.side === 'right' ? input.width - across : 0);
  const name = `"${cut.label ?? cut.id}"`;
  return { path, name, on: fixed.on, from: fixed.at, to: fixed.at + cut.length, x, right: x + across };
}

/** The right place in the repeat; where the bolt's start is unknown, the first cut fixed on it tells it for the others. */
function checkPlace(
  input: PlanInput,
  fixed: FixedCut,
  cut: PlannedCut,
  path: string,
  tell: Tell,
  cloth: (length: number) => string,
): void {
  const size = input.repeat?.vertical ?? 0;
  if (size === 0 || cut.phase === null) return;
  const supply = [...input.bolts, ...input.remnants].find((each) => each.id === fixed.on);
  const first = input.fixed
    .filter((each) => each.on === fixed.on)
    .map((each) => ({ at: each.at, phase: input.cuts.find((one) => one.id === each.cut)?.phase ?? null }))
    .filter((each) => each.phase !== null)
    .sort((a, b) => a.at - b.at)[0];
  const start = supply?.startPhase ?? (first ? placeAfter((first.phase ?? 0) - first.at, 0, size) : cut.phase);
  const right = nextPosition(fixed.at, cut.phase, start, size);
  if (right !== fixed.at)
    tell(
      at(path, 'at'),
      `"${cut.label ?? cut.id}" does not start at its place in the repeat there`,
      `fix it at ${cloth(right)}${right >= size ? ` or ${cloth(right - size)}` : ''}`,
    );
}

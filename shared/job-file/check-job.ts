/**
 * What a schema cannot see: names that meet twice, ids that nobody listed, numbers that contradict each other. Walks
 * whatever can be walked, so that one broken treatment does not hide the fault in the next.
 */
import { at } from '../fault.ts';
import type { Fault, Warning } from '../fault.ts';
import { TICKS_PER_INCH } from '../length.ts';
import { parseLength } from '../parse-length.ts';
import { isNoWindow } from '../treatments/away.ts';
import { TREATMENT_KINDS } from '../treatments/treatment.ts';
import type { TreatmentKind } from '../treatments/treatment.ts';
import { CLOTH_ROLES } from '../words.ts';
import { checkCutting } from './check-cutting.ts';
import { checkInsideMount } from './check-inside-mount.ts';
import { checkPanelsFile } from './check-panels-file.ts';
import { checkOptics } from './check-optics.ts';
import { checkPattern, firstLevel, tellsLevel } from './check-pattern.ts';
import { CheckTools } from './check-tools.ts';
import type { CheckedPlace } from './check-tools.ts';
import { READ_ALONE } from './read-place.ts';
import type { ReadAround } from './read-place.ts';
import { LOOSE, readable } from './readable.ts';
import type { Loose } from './readable.ts';
import { clothBase, UNITS, wireOpening, wireProposalHead, wireRoom } from './wire-job.ts';
import type { WireCloth } from './wire-job.ts';
import { wirePanels } from './wire-panels.ts';

interface Found {
  readonly faults: readonly Fault[];
  readonly warnings: readonly Warning[];
}

/** Cloth narrower or wider than this is unusual: seam tapes and stage cloth aside (common practice). */
const NARROW = 12 * TICKS_PER_INCH;
const WIDE = 140 * TICKS_PER_INCH;

/** Faults and warnings of a job file beyond its schema. `given` may be anything; `around` is of one room alone. */
export function checkJob(given: unknown, around: ReadAround = READ_ALONE): Found {
  const job = LOOSE.safeParse(given);
  if (!job.success) return { faults: [], warnings: [] };
  const tools = new CheckTools(UNITS.find((each) => each === job.data['units']) ?? 'in');
  readCloth(tools, listOf(job.data['cloth']));
  tools.tellTwice(listOf(job.data['rooms']), 'rooms', 'name');
  listOf(job.data['rooms']).forEach((room, index) => {
    readRoom(tools, room, at('rooms', index), around);
  });
  checkHead(tools, job.data['proposal']);
  checkCutting(tools, job.data['cutting'], listPaths(job.data['rooms']));
  return tools;
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

/** Every treatment by its names: `Nursery/East window/Panels`. */
function listPaths(rooms: unknown): string[] {
  const walk = (list: unknown, below: readonly string[], before: string): string[] =>
    listOf(list).flatMap((item) => {
      const each = LOOSE.safeParse(item);
      if (!each.success || typeof each.data['name'] !== 'string') return [];
      const path = before === '' ? each.data['name'] : `${before}/${each.data['name']}`;
      const [next, ...more] = below;
      return next === undefined ? [path] : walk(each.data[next], more, path);
    });
  return walk(rooms, ['openings', 'treatments'], '');
}

function checkHead(tools: CheckTools, proposal: unknown): void {
  const head = wireProposalHead.safeParse(proposal);
  if (!head.success) return;
  const { date, validUntil } = head.data;
  if (date !== undefined && validUntil !== undefined && validUntil < date)
    tools.fault('proposal.validUntil', `${validUntil} lies before the proposal's date`, `give ${date} or later`);
}

function readCloth(tools: CheckTools, list: readonly unknown[]): void {
  tools.tellTwice(list, 'cloth', 'id');
  list.forEach((item, index) => {
    const cloth = LOOSE.safeParse(item);
    if (!cloth.success) return;
    const { id, role } = cloth.data;
    if (typeof id === 'string') tools.roles.set(id, CLOTH_ROLES.find((each) => each === role) ?? 'unknown');
    checkCloth(tools, readable(clothBase, cloth.data), at('cloth', index));
  });
}

function checkCloth(tools: CheckTools, cloth: Partial<Omit<WireCloth, 'role' | 'family'>>, path: string): void {
  const width = tools.length(cloth.width, at(path, 'width'));
  const usable = tools.length(cloth.usableWidth, at(path, 'usableWidth'));
  if (width === 0) tools.fault(at(path, 'width'), 'is zero', 'give the width of the cloth, for example 54');
  if (usable === 0) tools.fault(at(path, 'usableWidth'), 'is zero', 'give the width between seams, or leave it out');
  if (width !== null && usable !== null && usable > width)
    tools.fault(at(path, 'usableWidth'), 'is more than the width', `give ${tools.say(width)} or less`);
  if (width !== null && width > 0 && (width < NARROW || width > WIDE))
    tools.warn(at(path, 'width'), `${tools.say(width)} is an unusual width for cloth.`);
  checkRepeat(tools, cloth, path);
  checkOptics(tools, cloth, path);
  if (cloth.content) {
    const shares = Object.values(cloth.content);
    const sum = shares.reduce((total, share) => total + share, 0);
    if (shares.some((share) => !(share >= 0)))
      tools.fault(at(path, 'content'), 'has a share below 0', 'give per cent from 0 to 100');
    else if (Math.abs(sum - 100) > 0.01)
      tools.fault(at(path, 'content'), `sums to ${sum}`, 'give shares that sum to 100');
  }
}

function checkRepeat(tools: CheckTools, cloth: Partial<Omit<WireCloth, 'role' | 'family'>>, path: string): void {
  const vertical = tools.length(cloth.repeat?.vertical, at(path, 'repeat.vertical'));
  tools.length(cloth.repeat?.horizontal, at(path, 'repeat.horizontal'));
  const match = cloth.repeat?.match;
  if (match === undefined && cloth.repeat?.horizontal !== undefined && cloth.repeat.vertical === undefined)
    tools.fault(
      at(path, 'repeat.vertical'),
      'is missing, yet the pattern repeats across',
      'give the vertical repeat, or "match": "none" for a stripe along the cloth',
    );
  if ((match === 'straight' || match === 'half-drop') && (vertical === null || vertical === 0))
    tools.fault(
      at(path, 'repeat.vertical'),
      `is ${vertical === 0 ? 'zero' : 'missing'}, yet the pattern matches`,
      'give the vertical repeat, or "match": "none"',
    );
  const bolt = tools.length(cloth.bolt, at(path, 'bolt'));
  if (bolt === 0) tools.fault(at(path, 'bolt'), 'is zero', 'give the length of a whole piece, or leave it out');
  if (bolt !== null && bolt > 0 && vertical !== null && vertical > bolt)
    tools.fault(
      at(path, 'repeat.vertical'),
      'is longer than a whole piece of the cloth',
      `give ${tools.say(bolt)} or less`,
    );
  tools.length(cloth.orderStep, at(path, 'orderStep'));
  tools.length(cloth.leastOrder, at(path, 'leastOrder'));
}

const ROOM_SHAPE = { ceiling: wireRoom.shape.ceiling };
const { width, height, sill, at: left } = wireOpening.shape;
const OPENING_SHAPE = { width, height, sill, at: left };
/** What every treatment has, whatever its kind. */
const { face, stacks } = wirePanels.shape;
const TREATMENT_SHAPE = { face, stacks };

function readRoom(tools: CheckTools, item: unknown, path: string, around: ReadAround): void {
  const room = LOOSE.safeParse(item);
  if (!room.success) return;
  const openings = listOf(room.data['openings']);
  tools.tellTwice(openings, at(path, 'openings'), 'name');
  const ceiling = tools.length(readable(ROOM_SHAPE, room.data).ceiling, at(path, 'ceiling'));
  warnOverlapping(tools, openings, at(path, 'openings'));
  const treatments = openings.flatMap((opening) => listOf(LOOSE.safeParse(opening).data?.['treatments']));
  const patternLevel = around.patternLevel ?? firstLevel(treatments, ceiling, tools.unit);
  const known = { ceiling, patternLevel, levelIsTold: tellsLevel(treatments) };
  openings.forEach((opening, index) => {
    readOpening(tools, opening, at(at(path, 'openings'), index), known);
  });
}

/** Two openings cannot share a stretch of wall: one of them was measured from somewhere else. */
function warnOverlapping(tools: CheckTools, openings: readonly unknown[], path: string): void {
  const spans = openings.flatMap((item, index) => {
    const opening = LOOSE.safeParse(item);
    if (!opening.success) return [];
    const sizes = readable(OPENING_SHAPE, opening.data);
    const [from, across] = [sizes.at, sizes.width].map((value) => {
      const parsed = value === undefined || value === null ? null : parseLength(String(value), tools.unit);
      return parsed?.ok ? parsed.ticks : null;
    });
    return typeof from === 'number' && typeof across === 'number' ? [{ index, from, to: from + across }] : [];
  });
  for (const [order, span] of spans.entries())
    for (const before of spans.slice(0, order))
      if (span.from < before.to && before.from < span.to)
        tools.warn(
          at(at(path, span.index), 'at'),
          `It lies over ${at(path, before.index)}: one of the two was measured from another place.`,
        );
}

type CheckedRoom = Pick<CheckedPlace, 'ceiling' | 'patternLevel' | 'levelIsTold'>;

function readOpening(tools: CheckTools, item: unknown, path: string, room: CheckedRoom): void {
  const { ceiling } = room;
  const opening = LOOSE.safeParse(item);
  if (!opening.success) return;
  const treatments = listOf(opening.data['treatments']);
  tools.tellTwice(treatments, at(path, 'treatments'), 'name');
  const sizes = readable(OPENING_SHAPE, opening.data);
  const wide = tools.length(sizes.width, at(path, 'width'));
  const high = tools.length(sizes.height, at(path, 'height'));
  const sillHeight = tools.length(sizes.sill, at(path, 'sill'));
  tools.length(sizes.at, at(path, 'at'));
  if (!isNoWindow(kindsOf(treatments)))
    for (const side of ['width', 'height'] as const)
      if (opening.data[side] === undefined || opening.data[side] === null)
        tools.fault(at(path, side), 'is missing', `give the ${side} of the opening`);
  if (wide === 0) tools.fault(at(path, 'width'), 'is zero', 'give the width of the opening');
  if (high === 0) tools.fault(at(path, 'height'), 'is zero', 'give the height of the opening');
  if (ceiling !== null && ceiling > 0 && high !== null && sillHeight !== null && sillHeight + high > ceiling)
    tools.fault(
      at(path, 'height'),
      `sill and height reach ${tools.say(sillHeight + high)}, above the ceiling at ${tools.say(ceiling)}`,
      'measure sill, height and ceiling again',
    );
  treatments.forEach((each, index) => {
    const treatment = LOOSE.safeParse(each);
    if (!treatment.success) return;
    const where = at(at(path, 'treatments'), index);
    checkStacks(tools, treatment.data, where);
    checkInsideMount(tools, treatment.data, where, wide);
    const place = { ...room, sill: sillHeight, width: wide, height: high };
    checkPattern(tools, treatment.data, where, place);
    if (treatment.data['kind'] === 'panels') checkPanelsFile(tools, treatment.data, where, place);
  });
}

/** Those that are known: what is of no kind has a fault of its own. */
function kindsOf(treatments: readonly unknown[]): readonly TreatmentKind[] {
  return treatments.flatMap((each) => {
    const treatment = LOOSE.safeParse(each);
    return TREATMENT_KINDS.filter((kind) => treatment.success && treatment.data['kind'] === kind);
  });
}

function checkStacks(tools: CheckTools, item: Loose, path: string): void {
  const treatment = readable(TREATMENT_SHAPE, item);
  for (const [tier, stack] of Object.entries(treatment.stacks ?? {})) {
    const where = at(at(path, 'stacks'), tier);
    if (stack.face !== undefined) tools.checkId(stack.face, at(where, 'face'), ['face']);
    stack.behind.forEach((id, index) => {
      tools.checkId(id, at(at(where, 'behind'), index), ['lining', 'interlining']);
    });
  }
  if (treatment.face !== undefined) tools.checkId(treatment.face, at(path, 'face'), ['face']);
}

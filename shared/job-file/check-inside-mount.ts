/** What hangs inside a frame has to fit between its sides, and has nothing to go round. */
import * as z from 'zod';
import { at } from '../fault.ts';
import { MOUNTS } from '../words.ts';
import type { Ticks } from '../length.ts';
import type { CheckTools } from './check-tools.ts';
import { LOOSE, readable } from './readable.ts';
import type { Loose } from './readable.ts';
import { wireLength } from './wire-fields.ts';

const MOUNT_SHAPE = { where: z.enum(MOUNTS) };
/** The field that says how wide each kind is between the sides of the frame. */
const WIDTH_FIELDS: Readonly<Record<string, readonly string[]>> = {
  panels: ['rodWidth'],
  valance: ['width'],
  cornice: ['width'],
  swags: ['width'],
  'roman-shade': ['size', 'width'],
};
const LENGTH_SHAPE = { length: wireLength };
const RETURN_SHAPE = {
  return: z.union([wireLength, z.object({ left: wireLength, right: wireLength })]),
};

/** `opening` is the width of the opening. */
export function checkInsideMount(tools: CheckTools, item: Loose, path: string, opening: Ticks | null): void {
  const mount = LOOSE.safeParse(item['mount']);
  if (!mount.success || readable(MOUNT_SHAPE, mount.data).where !== 'inside') return;
  const fields = WIDTH_FIELDS[String(item['kind'])];
  if (fields === undefined) return;
  const width = lengthAt(tools, item, fields, path);
  if (width !== null && opening !== null && opening > 0 && width > opening)
    tools.fault(
      [path, ...fields].reduce(at),
      `${tools.say(width)} does not fit inside an opening of ${tools.say(opening)}`,
      'measure both again, or mount it on the wall',
    );
  warnReadings(tools, item, path, opening);
  if (item['kind'] === 'panels' && hasReturn(tools, item, path))
    tools.fault(at(path, 'return'), 'is given inside a frame', 'leave it out: the frame closes its sides');
}

function lengthAt(tools: CheckTools, item: Loose, fields: readonly string[], path: string): Ticks | null {
  const [field, ...rest] = fields;
  if (field === undefined) return null;
  if (rest.length === 0) return tools.length(readable(LENGTH_SHAPE, { length: item[field] }).length, at(path, field));
  const inner = LOOSE.safeParse(item[field]);
  return inner.success ? lengthAt(tools, inner.data, rest, at(path, field)) : null;
}

/** Readings of the frame decide over the opening's width, which was perhaps taken roughly; yet one of them is wrong. */
function warnReadings(tools: CheckTools, item: Loose, path: string, opening: Ticks | null): void {
  const size = LOOSE.safeParse(item['size']);
  const widths: unknown = size.success ? size.data['widths'] : null;
  if (!Array.isArray(widths) || opening === null || opening === 0) return;
  const where = at(at(path, 'size'), 'widths');
  const readings = widths.flatMap((each: unknown, index) => {
    const length = readable(LENGTH_SHAPE, { length: each }).length;
    const read = tools.length(length, at(where, index));
    return read === null ? [] : [read];
  });
  const narrowest = Math.min(...readings);
  if (readings.length > 0 && narrowest > opening)
    tools.warn(
      where,
      `The narrowest reading, ${tools.say(narrowest)}, is wider than the opening (${tools.say(opening)}): measure again.`,
    );
}

function hasReturn(tools: CheckTools, item: Loose, path: string): boolean {
  const given = readable(RETURN_SHAPE, item).return;
  if (given === undefined) return false;
  const sides = typeof given === 'object' ? [given.left, given.right] : [given];
  return sides.some((side) => (tools.length(side, at(path, 'return')) ?? 0) > 0);
}

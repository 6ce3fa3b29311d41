/** What a schema cannot see of a placed pattern: a level that nobody gives, a top whose height is not known. */
import * as z from 'zod';
import { at } from '../fault.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import { ticks } from '../length.ts';
import { parseLength } from '../parse-length.ts';
import { MOUNTS } from '../words.ts';
import type { CheckedPlace, CheckTools } from './check-tools.ts';
import { levelOf } from './read-pattern.ts';
import { LOOSE, readable } from './readable.ts';
import type { Loose } from './readable.ts';
import { wirePattern } from './wire-pattern.ts';
import type { WirePattern } from './wire-pattern.ts';

const SHAPE = { pattern: wirePattern, mount: z.object({ where: z.enum(MOUNTS).optional() }) };

/** What stands in a room without a mount on frame or ceiling: only its own words tell how high its top is. */
const WITHOUT_MOUNT = ['bed-skirt', 'shower-curtain'];

/** One level a room (common practice): whoever follows it has to find it, and know how high the top hangs. */
export function checkPattern(tools: CheckTools, item: Loose, path: string, place: CheckedPlace): void {
  const { pattern } = readable(SHAPE, item);
  if (!pattern) return;
  const where = at(path, 'pattern');
  for (const field of ['motif', 'topAt', 'motifAcross'] as const) tools.length(pattern[field], at(where, field));
  if (pattern.motifAcross !== undefined && pattern.centred !== true)
    tools.fault(
      at(where, 'motifAcross'),
      'is given for a pattern that is not centred',
      'give "centred": true, or leave it out',
    );
  if (pattern.place !== 'level') {
    for (const field of ['level', 'belowCeiling'] as const)
      if (pattern[field] !== undefined)
        tools.fault(at(where, field), `is given for a pattern at the ${pattern.place}`, 'give "place": "level"');
    return;
  }
  checkLevel(tools, pattern, where, place);
  if (pattern.topAt === undefined && !isTopKnown(item, place))
    tools.fault(
      at(where, 'place'),
      'follows the level of the room, but how high its top hangs is not known',
      item['kind'] === 'panels'
        ? 'give the sill of the opening from the floor, or "hang" with the height of the fixing, or "topAt"'
        : 'give the sill of the opening from the floor, or "topAt", the top above the floor',
    );
}

function checkLevel(tools: CheckTools, pattern: WirePattern, where: string, place: CheckedPlace): void {
  if (pattern.level !== undefined && pattern.belowCeiling !== undefined)
    tools.fault(at(where, 'belowCeiling'), 'is given beside level', 'give either of the two');
  if (pattern.belowCeiling !== undefined && place.ceiling === null)
    tools.fault(
      at(where, 'belowCeiling'),
      'is given, but the height of the room is not known',
      'give the ceiling of the room, or "level" from the floor',
    );
  const given = tools.length(pattern.level, at(where, 'level'));
  const below = tools.length(pattern.belowCeiling, at(where, 'belowCeiling'));
  if (below !== null && place.ceiling !== null && below >= place.ceiling)
    tools.fault(at(where, 'belowCeiling'), `${tools.say(below)} is under the floor`, 'measure from the ceiling again');
  const own = given ?? (below === null || place.ceiling === null ? null : ticks(place.ceiling - below));
  if (given !== null && place.ceiling !== null && given > place.ceiling)
    tools.fault(
      at(where, 'level'),
      `${tools.say(given)} is above the ceiling at ${tools.say(place.ceiling)}`,
      'give the height of the motif above the floor',
    );
  // A level that somebody gives wrongly is told where it stands, not once more at whoever follows it.
  const isMissing = place.patternLevel === null && !place.levelIsTold;
  if (pattern.level === undefined && pattern.belowCeiling === undefined && isMissing)
    tools.fault(
      at(where, 'level'),
      'is missing, and no other treatment of the room gives one',
      'give the height of the motif above the floor',
    );
  if (own !== null && place.patternLevel !== null && own !== place.patternLevel)
    tools.warn(
      at(where, given === null ? 'belowCeiling' : 'level'),
      `${tools.say(own)} is not the ${tools.say(place.patternLevel)} of the room's first patterned treatment: one level a room looks right.`,
    );
}

function isTopKnown(item: Loose, place: CheckedPlace): boolean {
  if (item['kind'] === 'panels' && item['hang'] !== undefined) return true;
  if (WITHOUT_MOUNT.some((kind) => kind === item['kind'])) return false;
  if (place.sill !== null && place.height !== null) return true;
  return readable(SHAPE, item).mount?.where === 'ceiling' && place.ceiling !== null;
}

/** True where some treatment gives a level, or has a pattern that cannot be read. */
export function tellsLevel(treatments: readonly unknown[]): boolean {
  return treatments.some((item) => {
    const pattern = LOOSE.safeParse(item).data?.['pattern'];
    if (pattern === undefined || pattern === null) return false;
    const read = wirePattern.safeParse(pattern);
    return !read.success || read.data.level !== undefined || read.data.belowCeiling !== undefined;
  });
}

/** The first level that a treatment of these openings gives. What is wrong with it is told where it stands. */
export function firstLevel(treatments: readonly unknown[], ceiling: Ticks | null, unit: LengthUnit): Ticks | null {
  const read = (value: number | string): Ticks | null => {
    const parsed = parseLength(String(value), unit);
    return parsed.ok ? parsed.ticks : null;
  };
  for (const item of treatments) {
    const treatment = LOOSE.safeParse(item);
    if (!treatment.success) continue;
    const level = levelOf(readable(SHAPE, treatment.data).pattern, ceiling, read);
    if (level !== null) return level;
  }
  return null;
}

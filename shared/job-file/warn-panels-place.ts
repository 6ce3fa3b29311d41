/** Panels against their room: a rod above the ceiling, a hem under the floor, a café tier that is no tier. Common practice. */
import * as z from 'zod';
import { at } from '../fault.ts';
import { TICKS_PER_INCH } from '../length.ts';
import { HANG_ENDS } from '../treatments/panels.ts';
import type { HangEnd } from '../treatments/panels.ts';
import { MOUNTS } from '../words.ts';
import type { CheckedPlace, CheckTools } from './check-tools.ts';
import { readable } from './readable.ts';
import type { Loose } from './readable.ts';
import { wireLength } from './wire-fields.ts';

/** A break or a puddle takes this much and is no mistake. */
const PUDDLE = 8 * TICKS_PER_INCH;
const ON_FLOOR: readonly HangEnd[] = ['floor', 'break', 'puddle', 'full-puddle'];

const SHAPE = {
  mount: z.object({ where: z.enum(MOUNTS).optional(), above: wireLength.optional() }),
  finishedLength: wireLength,
  hang: z.object({ to: z.enum(HANG_ENDS).optional(), fixing: z.unknown() }),
  cafe: z.boolean(),
};

export function warnPanelsPlace(tools: CheckTools, item: Loose, path: string, place: CheckedPlace): void {
  const { mount, finishedLength, hang, cafe } = readable(SHAPE, item);
  const { sill, height, ceiling } = place;
  const length = tools.length(finishedLength, at(path, 'finishedLength'));
  if (cafe === true) {
    const toFloor = hang?.to !== undefined && ON_FLOOR.includes(hang.to);
    const whole = length !== null && height !== null && height > 0 && length >= height;
    if (toFloor || whole)
      tools.warn(
        at(path, 'cafe'),
        toFloor
          ? 'A café tier covers the lower part of the window: it ends at the sill or just below it, not at the floor.'
          : `A café tier covers the lower part of the window: ${tools.say(length ?? 0)} is as long as the window is high.`,
      );
    return;
  }
  if (sill === null || height === null || (mount?.where ?? 'wall') !== 'wall') return;
  const top = sill + height + (tools.length(mount?.above, at(path, 'mount.above')) ?? 0);
  if (ceiling !== null && ceiling > 0 && top > ceiling)
    tools.warn(
      at(path, 'mount.above'),
      `The rod would stand at ${tools.say(top)}, above the ceiling at ${tools.say(ceiling)}.`,
    );
  if (length !== null && length > top + PUDDLE)
    tools.warn(
      at(path, 'finishedLength'),
      `The hem would come ${tools.say(length - top)} below the floor: where it is to lie there, find the length from the fixing, to a puddle.`,
    );
}

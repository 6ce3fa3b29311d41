/** What the panels hang on against how they hang: rings butt, a track with a master arm overlaps, a pocket does neither. */
import * as z from 'zod';
import { at } from '../fault.ts';
import { HOOKED, RINGS_OVERLAP, RINGS_RULE, RODS } from '../treatments/rods.ts';
import { HEADINGS } from '../words.ts';
import type { CheckTools } from './check-tools.ts';
import { readable } from './readable.ts';
import type { Loose } from './readable.ts';
import { wireLength } from './wire-fields.ts';

const SHAPE = {
  heading: z.enum(HEADINGS),
  overlap: wireLength,
  rod: z.enum(RODS),
};

export function checkRod(tools: CheckTools, item: Loose, path: string): void {
  const { heading, overlap, rod } = readable(SHAPE, item);
  if (heading === undefined) return;
  if (rod !== undefined && !HOOKED.includes(heading))
    tools.fault(
      at(path, 'rod'),
      `is given for a ${heading} heading`,
      'rings or a track are for pleated, gathered and flat headings',
    );
  if (item['motor'] !== undefined && (rod === 'rings' || !(HOOKED.includes(heading) || heading === 'wave')))
    tools.fault(at(path, 'motor'), 'is given where no track is', 'a motor drives a track: give "rod": "track"');
  const length = tools.length(overlap, at(path, 'overlap'));
  if (length === null) return;
  if (heading === 'rod-pocket' && length > 0)
    tools.warn(at(path, 'overlap'), `Panels on a rod pocket do not overlap: ${tools.say(length)} is taken as written.`);
  if (rod === 'rings' && length > RINGS_OVERLAP)
    tools.warn(at(path, 'overlap'), `${RINGS_RULE}: ${tools.say(length)} needs a track with a master arm.`);
}

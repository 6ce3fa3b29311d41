/** What a schema cannot see in panels: measures that contradict each other or the room, and what is merely unlikely. */
import { at } from '../fault.ts';
import { TICKS_PER_INCH } from '../length.ts';
import type { Ticks } from '../length.ts';
import { checkRod } from './check-rod.ts';
import { warnPanelsPlace } from './warn-panels-place.ts';
import { wirePanels } from './wire-panels.ts';
import { readable } from './readable.ts';
import type { Loose, Readable } from './readable.ts';
import type { CheckedPlace, CheckTools } from './check-tools.ts';

type PanelsParts = Readable<(typeof wirePanels)['shape']>;

/** Under this a panel is shorter than any window (common practice). */
const SHORT = 12 * TICKS_PER_INCH;
const LONG_ROD = 400 * TICKS_PER_INCH;
const LARGE_OVERLAP = 8 * TICKS_PER_INCH;
const LONG_RETURN = 18 * TICKS_PER_INCH;
/** A hem may clear the sill by this much and still be meant so (common practice). */
const HEM_ON_GLASS = TICKS_PER_INCH;
/** Floor readings further apart than this: hem each width to the floor (common practice). */
const UNEVEN_FLOOR = TICKS_PER_INCH / 2;

export function checkPanelsFile(tools: CheckTools, item: Loose, path: string, place: CheckedPlace): void {
  const panels = readable(wirePanels.shape, item);
  const rod = tools.length(panels.rodWidth, at(path, 'rodWidth'));
  const length = tools.length(panels.finishedLength, at(path, 'finishedLength'));
  const overlap = tools.length(panels.overlap, at(path, 'overlap'));
  tools.length(panels.mount?.above, at(path, 'mount.above'));
  const sides =
    typeof panels.return === 'object'
      ? [
          tools.length(panels.return.left, at(path, 'return.left')),
          tools.length(panels.return.right, at(path, 'return.right')),
        ]
      : [tools.length(panels.return, at(path, 'return'))];
  checkSizes(tools, panels, path, { rod, length, overlap, sides });
  checkHang(tools, panels, item, path, place);
  checkBay(tools, panels, item, path);
  checkMake(tools, panels, path);
  checkRod(tools, item, path);
  warnPanelsPlace(tools, item, path, place);
  warnUnlikely(tools, panels, path, { rod, length, overlap, ceiling: place.ceiling });
  warnUncovered(tools, panels, path, { rod, length, sides, place });
}

interface Sizes {
  readonly rod: Ticks | null;
  readonly length: Ticks | null;
  readonly overlap: Ticks | null;
  readonly sides: readonly (Ticks | null)[];
}

function checkSizes(
  tools: CheckTools,
  panels: PanelsParts,
  path: string,
  { rod, length, overlap, sides }: Sizes,
): void {
  if (rod === 0) tools.fault(at(path, 'rodWidth'), 'is zero', 'give the rod face, bracket to bracket');
  if (length === 0)
    tools.fault(at(path, 'finishedLength'), 'is zero', 'give the length from the top of the heading to the hem');
  if (overlap !== null && overlap > 0 && panels.arrangement !== undefined && panels.arrangement !== 'pair')
    tools.fault(
      at(path, 'overlap'),
      `is ${tools.say(overlap)} on ${panels.arrangement} panels`,
      'only a pair overlaps: give 0 or leave it out',
    );
  if (panels.arrangement === 'single' && sides.length === 2 && sides.every((side) => side !== null && side > 0))
    tools.fault(at(path, 'return'), 'has two sides on a single panel', 'give the one return it has; the other is 0');
  if (typeof panels.fullness === 'number' && typeof panels.widths === 'number')
    tools.fault(at(path, 'widths'), 'is given beside fullness', 'give either fullness or widths');
  if (rod === null || rod === 0) return;
  for (const side of sides)
    if (side !== null && side > rod)
      tools.fault(at(path, 'return'), `${tools.say(side)} is more than the rod`, `give less than ${tools.say(rod)}`);
  if (overlap !== null && overlap > rod)
    tools.fault(at(path, 'overlap'), `${tools.say(overlap)} is more than the rod`, `give less than ${tools.say(rod)}`);
}

/** The finished length is given, or found from where the length starts: one of the two. */
function checkHang(tools: CheckTools, panels: PanelsParts, item: Loose, path: string, place: CheckedPlace): void {
  const given = item['finishedLength'] !== undefined;
  if (!given && item['hang'] === undefined)
    tools.fault(
      at(path, 'finishedLength'),
      'is missing',
      'give the length from the top of the heading to the hem, or "hang" with the height of the fixing',
    );
  if (given && item['hang'] !== undefined)
    tools.fault(at(path, 'hang'), 'is given beside finishedLength', 'give either of the two');
  const { hang } = panels;
  if (!hang) return;
  const where = at(path, 'hang');
  const fixings = Array.isArray(hang.fixing) ? hang.fixing : [hang.fixing];
  const readings = fixings
    .map((each, index) =>
      tools.length(each, Array.isArray(hang.fixing) ? at(at(where, 'fixing'), index) : at(where, 'fixing')),
    )
    .filter((each) => each !== null);
  const below = tools.length(hang.headingBelow, at(where, 'headingBelow')) ?? 0;
  tools.length(hang.headingAbove, at(where, 'headingAbove'));
  tools.length(hang.by, at(where, 'by'));
  if (hang.headingBelow !== undefined && hang.headingAbove !== undefined)
    tools.fault(
      at(where, 'headingAbove'),
      'is given beside headingBelow',
      'the heading stands above its fixing or below it: give one',
    );
  if ((hang.to === 'sill' || hang.to === 'apron') && place.sill === null)
    tools.fault(
      at(where, 'to'),
      `reaches to the ${hang.to}, but the opening has no sill`,
      'give the sill of the opening from the floor',
    );
  const least = Math.min(...readings);
  const end = hang.to === 'sill' || hang.to === 'apron' ? (place.sill ?? 0) : 0;
  if (readings.length > 0 && least <= below + end)
    tools.fault(at(where, 'fixing'), `${tools.say(least)} leaves no length`, 'measure the fixing from the floor again');
  if (readings.length > 1 && Math.max(...readings) - least > UNEVEN_FLOOR)
    tools.warn(
      at(where, 'fixing'),
      `The floor is uneven by ${tools.say(Math.max(...readings) - least)}: the shortest reading is taken; hem each width to the floor.`,
    );
}

/** The rod face is given, or found from the runs of a bay: one of the two. */
function checkBay(tools: CheckTools, panels: PanelsParts, item: Loose, path: string): void {
  const given = item['rodWidth'] !== undefined;
  if (!given && item['bay'] === undefined)
    tools.fault(at(path, 'rodWidth'), 'is missing', 'give the rod face, bracket to bracket, or "bay" with its runs');
  if (given && item['bay'] !== undefined)
    tools.fault(at(path, 'bay'), 'is given beside rodWidth', 'give either of the two');
  const { bay } = panels;
  if (!bay) return;
  const where = at(path, 'bay');
  if (bay.turns.length !== bay.runs.length - 1)
    tools.fault(
      at(where, 'turns'),
      `has ${bay.turns.length} for ${bay.runs.length} runs`,
      `give ${bay.runs.length - 1}: one between two runs`,
    );
  const projection = tools.length(bay.projection, at(where, 'projection')) ?? 0;
  bay.runs.forEach((run, index) => {
    const length = tools.length(run, at(at(where, 'runs'), index));
    const turns = [bay.turns[index - 1], bay.turns[index]].filter((turn) => turn !== undefined);
    const lost = turns.reduce((sum, turn) => sum + projection * Math.tan((turn * Math.PI) / 360), 0);
    if (length !== null && length <= lost)
      tools.fault(
        at(at(where, 'runs'), index),
        `${tools.say(length)} is taken by its corners`,
        'measure the run, or the projection, again',
      );
  });
}

function checkMake(tools: CheckTools, panels: PanelsParts, path: string): void {
  const stationary = panels.arrangement === 'pair-stationary' || panels.arrangement === 'single';
  if (panels.arch !== undefined && panels.arrangement !== undefined && !stationary)
    tools.fault(
      at(path, 'arch'),
      'is on panels that draw',
      'an arched heading does not draw: give single or pair-stationary',
    );
  if (panels.arch !== undefined) tools.length(panels.arch.rise, at(path, 'arch.rise'));
  if (panels.panelsOnRod !== undefined && panels.arrangement !== undefined && !stationary)
    tools.fault(
      at(path, 'panelsOnRod'),
      `is given for ${panels.arrangement} panels`,
      'several panels on a rod are still: give single or pair-stationary',
    );
  if (panels.header !== undefined && panels.heading !== undefined && panels.heading !== 'rod-pocket')
    tools.fault(at(path, 'header'), `is given for a ${panels.heading} heading`, 'only a rod pocket has a header');
  if (panels.fingers !== undefined && panels.heading !== undefined && panels.heading !== 'pinch-pleat')
    tools.fault(at(path, 'fingers'), `is given for a ${panels.heading} heading`, 'only a pinch pleat has fingers');
  tools.length(panels.header, at(path, 'header'));
  tools.length(panels.rodDiameter, at(path, 'rodDiameter'));
  panels.bands?.forEach((band, index) => {
    const where = at(at(path, 'bands'), index);
    tools.checkId(band.cloth, at(where, 'cloth'), ['face', 'lining']);
    if (tools.length(band.width, at(where, 'width')) === 0)
      tools.fault(at(where, 'width'), 'is zero', 'give the finished width of the band');
  });
}

function warnUnlikely(
  tools: CheckTools,
  panels: PanelsParts,
  path: string,
  sizes: Omit<Sizes, 'sides'> & { readonly ceiling: Ticks | null },
): void {
  const { rod, length, overlap, ceiling } = sizes;
  if (panels.return === undefined) tools.warn(at(path, 'return'), 'No return is given: 0 is taken.');
  if (panels.overlap === undefined && panels.arrangement === 'pair')
    tools.warn(at(path, 'overlap'), 'No overlap is given: 0 is taken.');
  if (length !== null && ceiling !== null && ceiling > 0 && length > ceiling)
    tools.warn(
      at(path, 'finishedLength'),
      `${tools.say(length)} is longer than the room is high (${tools.say(ceiling)}).`,
    );
  if (length !== null && length > 0 && length < SHORT)
    tools.warn(at(path, 'finishedLength'), `${tools.say(length)} is very short for panels.`);
  if (rod !== null && rod > LONG_ROD) tools.warn(at(path, 'rodWidth'), `${tools.say(rod)} is a very long rod.`);
  if (overlap !== null && overlap > LARGE_OVERLAP)
    tools.warn(
      at(path, 'overlap'),
      `${tools.say(overlap)} is a large overlap: it is the whole overlap at the centre, not each side.`,
    );
}

/** What would leave the window bare: drawn panels on too short a rod, a hem that ends on the glass, a return like an arm. */
function warnUncovered(
  tools: CheckTools,
  panels: PanelsParts,
  path: string,
  given: {
    readonly rod: Ticks | null;
    readonly length: Ticks | null;
    readonly sides: Sizes['sides'];
    readonly place: CheckedPlace;
  },
): void {
  const { rod, length, sides, place } = given;
  const { sill, width, height } = place;
  const draws = panels.arrangement === 'pair' || panels.arrangement === 'one-way';
  if (draws && panels.mount?.where !== 'inside' && rod !== null && width !== null && rod > 0 && rod < width)
    tools.warn(at(path, 'rodWidth'), `${tools.say(rod)} is shorter than the opening is wide (${tools.say(width)}).`);
  for (const side of sides)
    if (side !== null && side > LONG_RETURN)
      tools.warn(
        at(path, 'return'),
        `${tools.say(side)} is a very long return: it is the way from the rod to the wall.`,
      );
  const above = tools.length(panels.mount?.above, at(path, 'mount.above')) ?? 0;
  if (panels.cafe === true || length === null || sill === null || height === null || panels.mount?.where === 'ceiling')
    return;
  const hem = sill + height + above - length;
  if (length > 0 && hem > sill + HEM_ON_GLASS)
    tools.warn(at(path, 'finishedLength'), `The hem ends ${tools.say(hem - sill)} above the sill, on the glass.`);
}

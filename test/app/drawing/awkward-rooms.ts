/** Rooms that are hard to draw, by name: half typed, impossible, crowded, tiny. All invented. */
import { lengthFrom } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { DrawnOpening, DrawnPanels, DrawnRoom, RoomsInput } from '#app/drawing/drawn-room.ts';

export const inches = (value: number): Ticks => lengthFrom(value, 'in');

export function panels(changes: Partial<DrawnPanels> = {}): DrawnPanels {
  return {
    kind: 'panels',
    key: 'panels',
    name: 'Panels',
    heading: 'pinch-pleat',
    arrangement: 'pair',
    mount: { where: 'wall', above: inches(4) },
    rodWidth: inches(72),
    finishedLength: inches(87.5),
    returns: { left: inches(3.5), right: inches(3.5) },
    overlap: inches(3.5),
    fullness: 2.47,
    halfWidths: 8,
    pleats: 20,
    stackback: { left: inches(11), right: inches(11) },
    drawn: 'open',
    colour: '#c9b79a',
    ...changes,
  };
}

export function opening(key: string, name: string, changes: Partial<DrawnOpening> = {}): DrawnOpening {
  return {
    key,
    name,
    width: inches(60),
    height: inches(54),
    sill: inches(30),
    at: null,
    treatments: [panels()],
    ...changes,
  };
}

export function room(name: string, openings: readonly DrawnOpening[], changes: Partial<DrawnRoom> = {}): DrawnRoom {
  return { key: `room ${name}`, name, ceiling: inches(108), openings, ...changes };
}

export function sheet(rooms: readonly DrawnRoom[], changes: Partial<RoomsInput> = {}): RoomsInput {
  return { rooms, width: 560, height: 300, units: 'in', selected: 'a', detail: 'screen', ...changes };
}

const nothingYet: DrawnOpening = opening('a', 'New opening', {
  width: null,
  height: null,
  sill: null,
  treatments: [
    panels({
      mount: { where: 'wall', above: null },
      rodWidth: null,
      finishedLength: null,
      returns: { left: null, right: null },
      overlap: null,
      fullness: null,
      halfWidths: null,
      pleats: null,
      stackback: null,
      colour: null,
    }),
  ],
});

const absurd = opening('a', 'Absurd', {
  width: inches(3900),
  height: inches(0),
  sill: inches(2000),
  treatments: [
    panels({
      rodWidth: inches(3000),
      finishedLength: inches(2),
      pleats: 4000,
      mount: { where: 'wall', above: inches(900) },
    }),
  ],
});

const five = ['a', 'b', 'c', 'd', 'e'].map((key, place) =>
  opening(key, `Stairwell casement number ${place + 1}`, {
    width: inches(14),
    height: inches(40),
    treatments: [panels({ rodWidth: inches(20), finishedLength: inches(44), pleats: 6, stackback: null })],
  }),
);

export const AWKWARD: readonly { readonly name: string; readonly input: RoomsInput }[] = [
  { name: 'no rooms', input: sheet([]) },
  { name: 'room without openings', input: sheet([room('Box room', [])]) },
  { name: 'nothing measured yet', input: sheet([room('New room', [nothingYet], { ceiling: null })]) },
  { name: 'absurd numbers', input: sheet([room('Absurd room', [absurd])]) },
  {
    name: 'no sill, no ceiling',
    input: sheet([room('Loft', [opening('a', 'Gable', { sill: null })], { ceiling: null })]),
  },
  {
    name: 'opening without treatment',
    input: sheet([room('Hall', [opening('a', 'Front window', { treatments: [] })])]),
  },
  {
    name: 'cloth longer than the drop',
    input: sheet([room('Study', [opening('a', 'Window', { treatments: [panels({ finishedLength: inches(98) })] })])]),
  },
  {
    name: 'rod at the ceiling, metric',
    input: sheet(
      [
        room('Bedroom', [
          opening('a', 'Window', {
            treatments: [panels({ mount: { where: 'wall', above: inches(23) }, finishedLength: inches(106.5) })],
          }),
        ]),
      ],
      { units: 'cm', decimal: ',' },
    ),
  },
  { name: 'five narrow windows with long names', input: sheet([room('Stairs', five)], { selected: 'c' }) },
  {
    name: 'windows overlapping as typed',
    input: sheet([
      room('Bay', [
        opening('b', 'Left light', { at: inches(0) }),
        opening('a', 'Middle light', { at: inches(40) }),
        opening('c', 'Right light', { at: inches(80) }),
      ]),
    ]),
  },
  {
    name: 'one way, closed, wave under the ceiling',
    input: sheet([
      room('Media room', [
        opening('a', 'Slider', {
          width: inches(96),
          height: inches(80),
          sill: inches(0),
          treatments: [
            panels({
              heading: 'wave',
              arrangement: 'one-way',
              mount: { where: 'ceiling', above: null },
              rodWidth: inches(120),
              finishedLength: inches(107),
              overlap: inches(0),
              drawn: 'closed',
              colour: '#5e6b7a',
            }),
          ],
        }),
      ]),
    ]),
  },
  {
    name: 'inside mount, single, tabs',
    input: sheet([
      room('Kitchen', [
        opening('a', 'Over the sink', {
          width: inches(36),
          height: inches(36),
          sill: inches(42),
          treatments: [
            panels({
              heading: 'tab',
              arrangement: 'single',
              mount: { where: 'inside', above: inches(0) },
              rodWidth: inches(35.75),
              finishedLength: inches(34),
              halfWidths: 3,
              pleats: null,
              stackback: null,
              colour: '#d8cfe0',
            }),
          ],
        }),
      ]),
    ]),
  },
  {
    name: 'a phone wide',
    input: sheet([room('Nursery', five.slice(0, 3)), room('Sitting room', [opening('z', 'West')])], { width: 320 }),
  },
  { name: 'a stamp', input: sheet([room('Nursery', [opening('a', 'East window')])], { width: 90, height: 90 }) },
  {
    name: 'two lower ceilings, heat below',
    input: sheet(
      [
        room(
          'Attic',
          [
            opening('a', 'Dormer', {
              height: inches(30),
              sill: inches(28),
              treatments: [panels({ finishedLength: inches(60), rodWidth: inches(66.125) })],
            }),
          ],
          { ceiling: inches(66) },
        ),
        room(
          'Parlour',
          [opening('b', 'Street window', { heatSourceBelow: true, treatments: [panels({ heading: 'goblet' })] })],
          { ceiling: inches(132) },
        ),
      ],
      { width: 700 },
    ),
  },
  {
    name: 'on paper, nothing chosen',
    input: sheet(
      [
        room('Dining room', [
          opening('a', 'North', { treatments: [panels({ heading: 'box-pleat' })] }),
          opening('b', 'South', { treatments: [panels({ heading: 'grommet', colour: '#7b5148' })] }),
          opening('c', 'Door', {
            sill: inches(0),
            height: inches(82),
            treatments: [panels({ heading: 'pencil-pleat', drawn: 'closed', colour: '#aeb89b' })],
          }),
        ]),
      ],
      { selected: null, detail: 'paper', width: 500, height: 200 },
    ),
  },
];

/** What a wrong job file gets: every fault, each with its path, what is wrong and what would be right. */
import { describe, expect, it } from 'vitest';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { sayFault } from '#shared/fault.ts';
import { readJob, readJobText } from '#shared/job-file/read-job.ts';

const panels = {
  name: 'Panels',
  kind: 'panels',
  heading: 'pinch-pleat',
  arrangement: 'pair',
  face: 'face',
  rodWidth: 72,
  finishedLength: 84,
};
const opening = { name: 'East window', width: 60, height: 54, treatments: [panels] };
const good = {
  linenfold: 1,
  units: 'in',
  currency: 'USD',
  client: { name: 'Invented client' },
  cloth: [{ id: 'face', role: 'face', width: 54 }],
  rooms: [{ name: 'Nursery', use: 'nursery', openings: [opening] }],
};
const withTreatment = (change: object) => ({
  ...good,
  rooms: [{ name: 'Nursery', use: 'nursery', openings: [{ ...opening, treatments: [{ ...panels, ...change }] }] }],
});

function panelsOf(change: object): PanelsTreatment | null {
  const read = readJob(withTreatment(change));
  const treatment = read.ok ? read.job.rooms[0]!.openings[0]!.treatments[0]! : null;
  return treatment?.kind === 'panels' ? treatment : null;
}

function faults(given: unknown): string[] {
  const read = readJob(given);
  return read.ok ? [] : read.faults.map(sayFault);
}

describe('a job file that is right', () => {
  it('is read, and absent return and overlap are warned of', () => {
    const read = readJob(good);
    expect(read.ok && read.warnings.map((warning) => warning.path)).toEqual([
      'rooms[0].openings[0].treatments[0].return',
      'rooms[0].openings[0].treatments[0].overlap',
    ]);
  });

  it.each([
    ['rodWidth', '72', 72 * 8128],
    ['rodWidth', "6'", 72 * 8128],
    ['rodWidth', '182.88 cm', 72 * 8128],
    ['rodWidth', '2 yd', 72 * 8128],
  ])('%s may be written %s', (field, text, wanted) => {
    expect(panelsOf({ [field]: text })?.rodWidth).toBe(wanted);
  });

  it('one return number stands for each side that has one', () => {
    const of = (change: object) => panelsOf({ return: 3.5, ...change })?.returns;
    const side = 3.5 * 8128;
    expect(of({})).toEqual({ left: side, right: side });
    expect(of({ arrangement: 'one-way' })).toEqual({ left: side, right: side });
    expect(of({ arrangement: 'single' })).toEqual({ left: side, right: 0 });
  });

  it("a file's own id wins over generic cloth", () => {
    const read = readJob({
      ...good,
      cloth: [...good.cloth, { id: 'std-white', role: 'lining', family: 'standard', width: 48 }],
    });
    expect(read.ok && read.job.cloth.find((cloth) => cloth.id === 'std-white')?.width).toBe(48 * 8128);
  });
});

describe('what is unlikely is warned of, never changed', () => {
  const warningsOf = (change: object, room: object = {}): string[] => {
    const wire = withTreatment({ return: 3.5, overlap: 3.5, ...change });
    const [first] = wire.rooms;
    const read = readJob({ ...wire, rooms: [{ ...first, openings: [{ ...first!.openings[0]!, sill: 26 }], ...room }] });
    return read.ok ? read.warnings.map((warning) => warning.says) : [];
  };
  it.each<[string, object, object, RegExp]>([
    ['a hem on the glass', { finishedLength: 24 }, {}, /hem ends 30 in above the sill/],
    ['a rod shorter than the opening', { rodWidth: 40 }, {}, /shorter than the opening is wide/],
    ['a return like an arm', { return: 40 }, {}, /very long return/],
    [
      'a length longer than the room is high',
      { finishedLength: 130 },
      { ceiling: 108 },
      /longer than the room is high/,
    ],
    [
      'two openings over each other',
      {},
      {
        openings: [
          { ...opening, at: 30 },
          { ...opening, name: 'Other', at: 60 },
        ],
      },
      /lies over rooms\[0\]\.openings\[0\]/,
    ],
  ])('%s', (_, change, room, says) => {
    expect(warningsOf(change, room).join('\n')).toMatch(says);
  });
  it('a usual window has none', () => {
    expect(warningsOf({})).toEqual([]);
  });
});

describe('a job file that is wrong', () => {
  it.each<[string, unknown, string[]]>([
    ['no object', 7, ['(file): is not a job file; give one JSON object that begins { "linenfold": 1, … }']],
    [
      'an unknown key',
      { ...good, unit: 'in' },
      ['unit: is not a key that is known here; did you mean units? Else take it out'],
    ],
    [
      'a missing key',
      { ...good, currency: undefined },
      ['currency: is missing; give one of USD, CAD, AUD, NZD, GBP, EUR, CHF, SEK, NOK, DKK, PLN, ZAR, JPY'],
    ],
    [
      'another version',
      { ...good, linenfold: 2 },
      ['linenfold: is not a job file that this program knows; give "linenfold": 1'],
    ],
    [
      'cloth that nobody listed',
      withTreatment({ face: 'fce' }),
      [
        'rooms[0].openings[0].treatments[0].face: "fce" is not listed under cloth; did you mean face? Else list it under cloth',
      ],
    ],
    [
      'a window without its sizes',
      {
        ...good,
        rooms: [{ name: 'Nursery', use: 'nursery', openings: [{ name: 'East window', treatments: [panels] }] }],
      },
      [
        'rooms[0].openings[0].width: is missing; give the width of the opening',
        'rooms[0].openings[0].height: is missing; give the height of the opening',
      ],
    ],
    [
      'an opening with nothing at it and no sizes',
      {
        ...good,
        rooms: [{ name: 'Nursery', use: 'nursery', openings: [{ name: 'East window', height: 54, treatments: [] }] }],
      },
      ['rooms[0].openings[0].width: is missing; give the width of the opening'],
    ],
    [
      'a lining as face',
      withTreatment({ face: 'std-white' }),
      ['rooms[0].openings[0].treatments[0].face: "std-white" is a lining; give a face cloth here'],
    ],
    [
      'a face behind the face',
      withTreatment({ stacks: { good: { behind: ['face'] } } }),
      [
        'rooms[0].openings[0].treatments[0].stacks.good.behind[0]: "face" is a face; give linings and interlinings here',
      ],
    ],
    [
      'two treatments of one name',
      {
        ...good,
        rooms: [{ name: 'Nursery', use: 'nursery', openings: [{ ...opening, treatments: [panels, panels] }] }],
      },
      [
        'rooms[0].openings[0].treatments[1].name: "Panels" is also the name of rooms[0].openings[0].treatments[0]; give each its own name',
      ],
    ],
    [
      'light above one',
      { ...good, cloth: [{ id: 'face', role: 'face', width: 54, transmittance: 0.6, reflectance: 0.6 }] },
      ['cloth[0].transmittance: transmittance and reflectance make more than 1; give shares that sum to 1 at the most'],
    ],
    [
      'fibres that do not sum',
      { ...good, cloth: [{ id: 'face', role: 'face', width: 54, content: { cotton: 60, linen: 30 } }] },
      ['cloth[0].content: sums to 90; give shares that sum to 100'],
    ],
    [
      'a date that does not exist',
      { ...good, proposal: { date: '2026-02-30' } },
      ['proposal.date: is not a date; give year, month and day, for example "2026-11-25"'],
    ],
    [
      'an end before the beginning',
      { ...good, proposal: { date: '2026-11-25', validUntil: '2026-11-01' } },
      ["proposal.validUntil: 2026-11-01 lies before the proposal's date; give 2026-11-25 or later"],
    ],
    [
      'a window through the ceiling',
      { ...good, rooms: [{ ...good.rooms[0]!, ceiling: 96, openings: [{ ...opening, sill: 60 }] }] },
      [
        'rooms[0].openings[0].height: sill and height reach 114 in, above the ceiling at 96 in; measure sill, height and ceiling again',
      ],
    ],
  ])('%s', (_, given, wanted) => {
    expect(faults(JSON.parse(JSON.stringify(given)))).toEqual(wanted);
  });

  it('every fault is told, wherever it stands, and each once', () => {
    const found = faults({
      ...good,
      units: 'ins',
      cloth: [{ id: 'face', role: 'face', width: 'wide' }],
      rooms: [
        {
          name: 'A',
          use: 'nursry',
          openings: [{ ...opening, treatments: [{ ...panels, rodWidth: -1, face: 'other' }] }],
        },
        {
          name: 'A',
          use: 'hall',
          openings: [{ ...opening, height: 0, treatments: [{ ...panels, overlap: 3, arrangement: 'single' }] }],
        },
      ],
    });
    expect(found.map((line) => line.slice(0, line.indexOf(':')))).toEqual([
      'units',
      'cloth[0].width',
      'rooms[0].use',
      'rooms[0].openings[0].treatments[0].rodWidth',
      'rooms[1].name',
      'rooms[0].openings[0].treatments[0].face',
      'rooms[1].openings[0].height',
      'rooms[1].openings[0].treatments[0].overlap',
    ]);
  });

  it('text that is no JSON says where', () => {
    const read = readJobText('{ "linenfold": 1,\n  "units": in }');
    expect(read.ok ? '' : read.faults.map(sayFault).join()).toMatch(
      /^\(file\): is not JSON at line 2, column \d+; give plain JSON/,
    );
  });

  it('a length that cannot be read says what was read and an example', () => {
    expect(faults(withTreatment({ rodWidth: '72 foo' }))).toEqual([
      `rooms[0].openings[0].treatments[0].rodWidth: "foo" in "72 foo" is not a unit of length; write it as 84 1/2, 84.5, 7' 0 1/2" or 214.6 cm`,
    ]);
  });
});

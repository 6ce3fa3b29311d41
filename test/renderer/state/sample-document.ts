import { lengthFrom } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type {
  ClothRecord,
  OpeningDocument,
  ProjectDocument,
  RoomDocument,
  TreatmentRecord,
} from '#shared/records/records.ts';
import { NOTHING_KNOWN } from '#shared/records/known-of-cloth.ts';
import type { PanelsMake } from '#shared/records/treatment-make.ts';

/** An invented project in inches: one nursery with one window and lined pinch-pleat panels, priced by example rates. */
const kept = { createdAt: '2026-11-25T10:00:00.000Z', updatedAt: '2026-11-25T10:00:00.000Z' };

export function inches(value: number): Ticks {
  return lengthFrom(value, 'in');
}

export function sampleMake(changes: Partial<PanelsMake> = {}): PanelsMake {
  return {
    kind: 'panels',
    heading: 'pinch-pleat',
    arrangement: 'pair',
    mountWhere: 'wall',
    mountAbove: inches(4),
    rodWidth: inches(72),
    finishedLength: inches(84),
    fullness: null,
    returnLeft: inches(3.5),
    returnRight: inches(3.5),
    overlap: inches(3.5),
    halfWidths: null,
    extras: {},
    ...changes,
  };
}

export function sampleTreatment(changes: Partial<TreatmentRecord> = {}): TreatmentRecord {
  return {
    ...kept,
    id: 'treatment',
    openingId: 'opening',
    position: 0,
    name: 'Panels',
    quantity: 1,
    face: 'larch-stripe',
    make: sampleMake(),
    stacks: { good: null, better: null, best: null },
    decision: null,
    practice: null,
    drafts: {},
    ...changes,
  };
}

export function sampleOpening(changes: Partial<OpeningDocument> = {}): OpeningDocument {
  return {
    ...kept,
    id: 'opening',
    roomId: 'room',
    position: 0,
    name: 'East window',
    width: inches(60),
    height: inches(54),
    sill: inches(26.5),
    at: null,
    glazing: 'double',
    heatSourceBelow: false,
    measured: 'rough',
    notes: '',
    drafts: {},
    treatments: [sampleTreatment()],
    ...changes,
  };
}

export function sampleRoom(changes: Partial<RoomDocument> = {}): RoomDocument {
  return {
    ...kept,
    id: 'room',
    projectId: 'project',
    position: 0,
    name: 'Nursery',
    use: 'nursery',
    facing: 'E',
    climate: 'cold',
    privacy: null,
    budget: null,
    ceiling: inches(108),
    drafts: {},
    openings: [sampleOpening()],
    ...changes,
  };
}

export function sampleCloth(changes: Partial<ClothRecord> = {}): ClothRecord {
  return {
    ...kept,
    id: 'cloth',
    projectId: null,
    code: 'larch-stripe',
    name: 'Larch stripe',
    role: 'face',
    family: 'print',
    width: inches(54),
    usableWidth: null,
    match: 'straight',
    repeatVertical: inches(27),
    repeatHorizontal: null,
    cutOnRepeat: false,
    oneWay: false,
    bolt: null,
    orderStep: null,
    leastOrder: null,
    railroad: false,
    content: { cotton: 100 },
    weight: '7 oz/yd2',
    colour: '#c9b79a',
    shade: null,
    ...NOTHING_KNOWN,
    price: '42.00/yd',
    supplier: '',
    notes: '',
    drafts: {},
    ...changes,
  };
}

export function sampleDocument(changes: Partial<ProjectDocument> = {}): ProjectDocument {
  return {
    client: { ...kept, id: 'client', name: 'Ada Fenn', email: '', phone: '', address: '', notes: '', sample: true },
    project: {
      ...kept,
      id: 'project',
      clientId: 'client',
      name: 'Larch House',
      units: 'in',
      currency: 'USD',
      locale: 'en-US',
      practice: null,
      priceBook: null,
    },
    rooms: [sampleRoom()],
    cloth: [sampleCloth()],
    remnants: [],
    cuttings: [],
    settings: {
      units: 'in',
      currency: 'USD',
      locale: 'en-US',
      letterhead: { name: '', lines: [] },
      practice: {},
      priceBook: {},
      exampleRates: true,
      terms: '',
      cancellation: '',
      tierNames: { good: 'Good', better: 'Better', best: 'Best' },
      holdsDays: 30,
    },
    ...changes,
  };
}

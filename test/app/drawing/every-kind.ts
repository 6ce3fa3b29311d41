/** A drawn treatment of every kind and style, all invented, with changes as a test needs them. */
import type {
  DrawnBedSkirt,
  DrawnCornice,
  DrawnRomanShade,
  DrawnShowerCurtain,
  DrawnSwags,
  DrawnTreatment,
  DrawnValance,
} from '#app/drawing/drawn-room.ts';
import { inches, panels } from './awkward-rooms.ts';

const base = { key: 't', name: 'Treatment', colour: '#8a9a7b' } as const;
const top = {
  ...base,
  mount: { where: 'wall', above: inches(6) },
  width: inches(74),
  finishedLength: inches(16),
  returns: { left: inches(5.5), right: inches(5.5) },
} as const;

export function valance(change: Partial<DrawnValance> = {}): DrawnValance {
  return {
    ...top,
    kind: 'valance',
    style: 'tailored',
    hang: 'board',
    header: null,
    fullness: 2,
    pleats: null,
    pleatsAt: 'between',
    pleatTakeUp: inches(8),
    scallops: null,
    scallopDepth: null,
    puffs: null,
    welt: null,
    ...change,
  };
}

export function cornice(change: Partial<DrawnCornice> = {}): DrawnCornice {
  return { ...top, kind: 'cornice', welts: { top: '#7b3f34', bottom: '#7b3f34' }, shapedEdge: null, ...change };
}

export function swags(change: Partial<DrawnSwags> = {}): DrawnSwags {
  return {
    ...top,
    kind: 'swags',
    style: 'overlapped',
    width: inches(88),
    finishedLength: inches(18),
    swags: 3,
    cascades: { longest: inches(42), shortest: inches(18), width: inches(11), pleats: 4 },
    jabots: null,
    lining: '#d9c08c',
    welt: null,
    ...change,
  };
}

export function shade(change: Partial<DrawnRomanShade> = {}): DrawnRomanShade {
  return {
    ...top,
    kind: 'roman-shade',
    style: 'flat',
    mount: { where: 'inside', above: inches(0) },
    width: inches(59.75),
    finishedLength: inches(54),
    rows: null,
    raisedStack: inches(11),
    valance: null,
    drawn: 'lowered',
    ...change,
  };
}

export function bedSkirt(change: Partial<DrawnBedSkirt> = {}): DrawnBedSkirt {
  return {
    ...base,
    kind: 'bed-skirt',
    style: 'gathered',
    bed: { width: inches(60), length: inches(80) },
    drop: inches(14),
    against: 'head',
    fullness: 2.5,
    pleats: null,
    middlePleats: null,
    splitCorners: false,
    ...change,
  };
}

export function showerCurtain(change: Partial<DrawnShowerCurtain> = {}): DrawnShowerCurtain {
  return {
    ...base,
    kind: 'shower-curtain',
    arrangement: 'one-piece',
    finishedWidth: inches(72),
    finishedLength: inches(72),
    eyelets: 12,
    liner: true,
    ...change,
  };
}

export const EVERY_KIND: readonly { readonly name: string; readonly treatments: readonly DrawnTreatment[] }[] = [
  { name: 'tailored valance', treatments: [valance()] },
  { name: 'box-pleated valance', treatments: [valance({ style: 'box-pleated', pleats: 3, welt: '#5b3a2a' })] },
  {
    name: 'box-pleated valance with pleats at its corners',
    treatments: [valance({ style: 'box-pleated', pleats: 5, pleatsAt: 'corners' })],
  },
  {
    name: 'gathered valance on a rod',
    treatments: [valance({ style: 'gathered', hang: 'rod', header: inches(2) })],
  },
  { name: 'gathered valance on a board', treatments: [valance({ style: 'gathered' })] },
  {
    name: 'scalloped valance on a board',
    treatments: [valance({ style: 'scalloped', scallops: 5, scallopDepth: inches(4), welt: '#5b3a2a' })],
  },
  {
    name: 'scalloped valance on a rod',
    treatments: [valance({ style: 'scalloped', hang: 'rod', scallops: 4, scallopDepth: inches(4) })],
  },
  { name: 'balloon valance', treatments: [valance({ style: 'balloon', puffs: 5 })] },
  { name: 'cornice', treatments: [cornice()] },
  { name: 'shaped cornice', treatments: [cornice({ shapedEdge: inches(82) })] },
  { name: 'overlapped swags', treatments: [swags()] },
  {
    name: 'separate swags with a jabot',
    treatments: [
      swags({
        style: 'separate',
        swags: 2,
        jabots: { longest: inches(20), shortest: inches(10), width: inches(9), pleats: 4, count: 1 },
      }),
    ],
  },
  { name: 'flat shade', treatments: [shade()] },
  { name: 'flat shade half raised', treatments: [shade({ drawn: 'half-raised' })] },
  {
    name: 'shade before the frame with its own valance',
    treatments: [shade({ mount: { where: 'wall', above: inches(3) }, width: inches(66), valance: inches(8) })],
  },
  { name: 'soft-fold shade', treatments: [shade({ style: 'soft-fold', drawn: 'half-raised' })] },
  { name: 'relaxed shade', treatments: [shade({ style: 'relaxed', drawn: 'half-raised' })] },
  { name: 'gathered bed skirt', treatments: [bedSkirt()] },
  { name: 'tailored bed skirt', treatments: [bedSkirt({ style: 'tailored', middlePleats: 1 })] },
  { name: 'box-pleated bed skirt', treatments: [bedSkirt({ style: 'box-pleated', against: 'long-side' })] },
  { name: 'shower curtain', treatments: [showerCurtain()] },
  { name: 'pair of shower curtains', treatments: [showerCurtain({ arrangement: 'pair', liner: false })] },
  {
    name: 'café tiers',
    treatments: [panels({ cafe: true, finishedLength: inches(28), mount: { where: 'inside', above: inches(0) } })],
  },
  { name: 'puddled panels', treatments: [panels({ finishedLength: inches(98) })] },
  { name: 'arched panels', treatments: [panels({ arch: inches(20), arrangement: 'pair-stationary' })] },
  {
    name: 'panels round a bay',
    treatments: [panels({ bay: { runs: [inches(24), inches(28), inches(24)], turns: [45, 45] } })],
  },
  {
    name: 'panels with bands',
    treatments: [
      panels({
        bands: [
          { edge: 'leading', width: inches(4), colour: '#2f4a5c' },
          { edge: 'hem', width: inches(6), colour: '#2f4a5c' },
        ],
      }),
    ],
  },
  { name: 'four panels on one rod', treatments: [panels({ arrangement: 'pair-stationary', pieces: 4 })] },
  {
    name: 'sheers under drapery',
    treatments: [panels(), panels({ key: 'sheer', sheer: true, colour: '#f4f1e8', drawn: 'closed' })],
  },
  { name: 'shade inside, valance above', treatments: [valance(), shade({ key: 'shade' })] },
  { name: 'a window and a bed', treatments: [panels(), bedSkirt({ key: 'bed' })] },
];

/** The same treatment when nothing of it has been typed yet. */
export function untyped<Drawn extends DrawnTreatment>(treatment: Drawn): Drawn {
  const kept = ['kind', 'key', 'name', 'style', 'heading', 'arrangement', 'hang', 'drawn', 'against', 'pleatsAt'];
  const empty = (value: unknown, name: string): unknown => {
    if (kept.includes(name) || typeof value === 'boolean') return value;
    if (name === 'where') return value;
    if (Array.isArray(value)) return [];
    if (typeof value === 'object' && value !== null)
      return Object.fromEntries(Object.entries(value).map(([inner, part]) => [inner, empty(part, inner)]));
    return null;
  };
  return empty(treatment, '') as Drawn;
}

/** Words of the practice: what each setting means. */
export const PRACTICE_PARTS = [
  { id: 'paper', name: 'Letterhead and words' },
  { id: 'allowances', name: 'Allowances' },
  { id: 'kinds', name: 'By kind' },
  { id: 'rates', name: 'Price book' },
] as const;

export const SETTING_WORDS = {
  bottomHem: 'bottom hem, in total',
  puddleHem: 'bottom hem of what lies on the floor',
  sideHem: 'side hem of one edge, in total',
  seam: 'lost from each width at a join',
  squaring: 'extra on every cut for straightening',
  bracketSpacing: 'between two brackets, at the most',
  shrinkage: 'lost in washing before cutting',
  pleatsPerWidth: 'pleats in one width',
  pleatsClothWidth: 'width of cloth that pleats are counted on',
  orderStep: 'orders go up to',
} as const;

const LAYER_WORDS = {
  headingAllowance: 'above the finished length',
  bottomHem: 'bottom hem, in total',
  shorter: 'hangs shorter than the face by',
  narrower: 'cut narrower than the face by',
  sideHem: 'side hem of one edge',
} as const;

/** Groups of lengths in the practice, each with the words of its fields. */
export const LENGTH_GROUPS = [
  { group: 'lining', title: 'Lining', fields: LAYER_WORDS },
  { group: 'interlining', title: 'Interlining', fields: LAYER_WORDS },
  {
    group: 'remnant',
    title: 'Remnants worth keeping',
    fields: { length: 'from this length on', width: 'and from this width on' },
  },
  {
    group: 'hang',
    title: 'Where the hem ends',
    fields: {
      floor: 'clear of the floor',
      sill: 'clear of the sill',
      apron: 'below the sill',
      break: 'longer by, for a break at the floor',
      puddle: 'lying on the floor, a puddle',
      fullPuddle: 'lying on the floor, a full puddle',
    },
  },
  {
    group: 'spacing',
    title: 'Along the heading',
    fields: {
      grommet: 'between grommets, at the most',
      grommetLeast: 'between grommets, at the least',
      grommetEdge: 'edge to the first grommet',
      grommetRing: 'grommet, outer diameter',
      grommetTrim: 'trimmed to clear a seam, at the most',
      glider: 'between gliders of a wave track',
      waveEnds: 'flat beyond the gliders, both ends',
      tab: 'between tabs',
      hook: 'between hooks of a gathered tape',
      clip: 'between clips of a flat panel',
    },
  },
  {
    group: 'tab',
    title: 'Tabs',
    fields: { width: 'finished width', drop: 'panel top to rod top', seam: 'seam' },
  },
  {
    group: 'sheer',
    title: 'Sheers',
    fields: { bottomHem: 'bottom hem, in total', sideHem: 'side hem of one edge, in total' },
  },
  {
    group: 'layers',
    title: 'One treatment before another',
    fields: {
      drapery: 'return of a drapery over another',
      clear: 'panels clear of what hangs behind',
      past: 'a valance past the rod, each side',
    },
  },
  {
    group: 'motor',
    title: 'A motor at its end of the track',
    fields: { least: 'takes at the least', most: 'at the most' },
  },
  { group: 'pocket', title: 'Rod pocket', fields: { turn: 'turn', ease: 'ease round the rod' } },
  { group: 'band', title: 'Contrast bands', fields: { seam: 'lost at each long edge' } },
] as const;
export type LengthGroup = (typeof LENGTH_GROUPS)[number]['group'];

/** Wall that one width of cloth takes when drawn back. */
export const STACKBACK_WORDS = { unlined: 'unlined', lined: 'lined', interlined: 'interlined' } as const;

/** Words of a cloth's own fields. */
export const CLOTH_FIELDS = {
  name: 'name',
  role: 'hangs as',
  family: 'kind',
  width: 'width',
  usableWidth: 'usable width',
  match: 'pattern match',
  repeatVertical: 'repeat, along',
  repeatHorizontal: 'repeat, across',
  cutOnRepeat: 'supplier cuts at our place in the repeat',
  railroad: 'may be used sideways',
  oneWay: 'one way only: nap, or a pattern with a top',
  bolt: 'whole piece, long',
  orderStep: 'supplier cuts in steps of',
  leastOrder: 'least that is sold',
  price: 'what it costs you',
  weight: 'weight',
  content: 'content',
  colour: 'colour to the room',
  shade: 'shade',
  supplier: 'supplier',
  notes: 'notes',
} as const;

/** Of a cloth with a field whose text cannot be read. */
export const UNREAD_CLOTH = 'a field of it cannot be read';

/** How the lengths of a supplier are written; the first is what the practice says. */
export const CLOTH_LENGTHS = {
  bolt: { yards: 'such as 60 yd', metres: 'such as 50 m' },
  orderStep: { yards: "the practice's", metres: "the practice's" },
  leastOrder: { yards: 'any', metres: 'any' },
} as const;

export const SHADE_CHOICES = [
  { value: 'white', name: 'white' },
  { value: 'ivory', name: 'ivory' },
  { value: 'own', name: 'a colour' },
] as const;

export const GENERIC_NAMES: Readonly<Record<string, string>> = {
  'std-white': 'Standard lining, white',
  'std-ivory': 'Standard lining, ivory',
  'combo-white': 'Combination lining, white',
  'dim-out': 'Dim-out lining, white',
  'blackout-3-pass': 'Three-pass blackout, white',
  'soft-blackout': 'Soft blackout, white',
  'blackout-napped': 'Blackout with a napped back, white',
  'black-sateen': 'Black sateen',
  'inter-light': 'Light interlining',
  'inter-med': 'Medium interlining',
  'inter-heavy': 'Heavy interlining',
};

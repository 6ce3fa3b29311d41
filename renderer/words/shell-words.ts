/** Words of the frame round every screen. */
export const PLACES = [
  { place: 'clients', name: 'Clients' },
  { place: 'proposals', name: 'Proposals' },
  { place: 'cloth', name: 'Cloth' },
  { place: 'workroom', name: 'Workroom' },
  { place: 'money', name: 'Money' },
  { place: 'practice', name: 'Practice' },
] as const;
export type PlaceName = (typeof PLACES)[number]['place'];

export const LATER_PLACES = {
  money: {
    title: 'Money',
    goesHere: 'Here will stand deposits, invoices, payments, and what the year has brought.',
    meanwhile:
      'Until then, each proposal gives net, tax, total and deposit for the three options, and the list of proposals keeps them.',
    link: { text: 'Go to the proposals', place: 'proposals' },
  },
} as const;

/** What the workroom does not have yet, and where it stands meanwhile. */
export const WORKROOM_LATER =
  'One purchase list for each supplier, work orders and dates will stand here too. Until then the work sheets of a project are printed from its page.';

export const TROUBLE_TITLES = {
  newer: 'This portfolio was written by a newer Linenfold',
  damaged: 'The portfolio is damaged',
  unwritable: 'The portfolio cannot be written',
  missing: 'The portfolio is not where it was',
  busy: 'The portfolio is open somewhere else',
} as const;

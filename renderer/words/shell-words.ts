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
  workroom: {
    title: 'Workroom',
    goesHere:
      'Here will stand what is to be bought and made: one list for each supplier over all accepted work, a cut plan for every bolt, a work order to cut and sew from, and the dates.',
    meanwhile:
      "Until then, every treatment's cuts and orders stand in its working, on the right of the worksheet, and on the decorator's copy of the proposal.",
    link: { text: 'Go to the clients', place: 'clients' },
  },
  money: {
    title: 'Money',
    goesHere: 'Here will stand deposits, invoices, payments, and what the year has brought.',
    meanwhile:
      'Until then, each proposal gives net, tax, total and deposit for the three options, and the list of proposals keeps them.',
    link: { text: 'Go to the proposals', place: 'proposals' },
  },
} as const;

export const TROUBLE_TITLES = {
  newer: 'This portfolio was written by a newer Linenfold',
  damaged: 'The portfolio is damaged',
  unwritable: 'The portfolio cannot be written',
  missing: 'The portfolio is not where it was',
  busy: 'The portfolio is open somewhere else',
} as const;

/** The kinds of treatment in the words of the trade, each with a line of what it is. */
import type { TreatmentKind } from '#shared/treatments/treatment.ts';

export const KIND_WORDS: Readonly<
  Record<TreatmentKind, { readonly name: string; readonly plain: string; readonly says: string }>
> = {
  panels: {
    name: 'Panels',
    plain: 'panels',
    says: 'Curtains or drapery under a heading, drawn or still, lined or sheer.',
  },
  valance: {
    name: 'Valance',
    plain: 'a valance',
    says: 'Soft cloth across the top: tailored, box-pleated, gathered, scalloped or balloon.',
  },
  cornice: { name: 'Cornice', plain: 'a cornice', says: 'A padded, covered box across the top.' },
  swags: { name: 'Swags', plain: 'swags', says: 'Draped half-rounds on a board, with cascades and jabots if wanted.' },
  'roman-shade': {
    name: 'Roman shade',
    plain: 'a Roman shade',
    says: 'One flat, soft-folded or relaxed piece that is raised from below.',
  },
  'bed-skirt': {
    name: 'Bed skirt',
    plain: 'a bed skirt',
    says: 'Round three sides of a bed, from its platform to the floor.',
  },
  'shower-curtain': {
    name: 'Shower curtain',
    plain: 'a shower curtain',
    says: 'On rings through eyelets, with a liner of its own if wanted.',
  },
};

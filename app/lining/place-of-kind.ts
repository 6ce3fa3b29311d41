/**
 * Where a kind of treatment hangs: before the whole window, along its head alone, as a box (`board`) that no light passes, or
 * not at a window at all.
 */
import type { TreatmentKind } from '#shared/treatments/treatment.ts';

export const PLACES = ['window', 'top', 'board', 'away'] as const;
export type Place = (typeof PLACES)[number];

const PLACE_OF_KIND: Readonly<Record<TreatmentKind, Place>> = {
  panels: 'window',
  'roman-shade': 'window',
  valance: 'top',
  cornice: 'board',
  swags: 'top',
  'bed-skirt': 'away',
  'shower-curtain': 'away',
};

export function placeOf(kind: TreatmentKind): Place {
  return PLACE_OF_KIND[kind];
}

export const KIND_NAMES: Readonly<Record<TreatmentKind, string>> = {
  panels: 'panels',
  'roman-shade': 'shade',
  valance: 'valance',
  cornice: 'cornice',
  swags: 'swags',
  'bed-skirt': 'bed skirt',
  'shower-curtain': 'shower curtain',
};

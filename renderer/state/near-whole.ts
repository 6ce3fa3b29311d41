/** The near-whole case: one width fewer still hangs well. Both quantities and the saving; taken only when asked. */
import type { OpeningDocument, ProjectDocument, TreatmentRecord } from '#shared/records/records.ts';
import type { PanelsMake } from '#shared/records/treatment-make.ts';
import type { TierResult } from '#shared/result.ts';
import { piecesOf } from '#shared/treatments/panels.ts';
import type { Tier } from '#shared/words.ts';
import { priceDocument } from './price-document.ts';

export interface FewerWidths {
  readonly make: PanelsMake;
  /** The same stack with one width fewer. */
  readonly result: TierResult;
}

/** Null where the fewer widths cannot be shared out in halves among the pieces, or nothing is offered. */
export function withFewerWidths(
  document: ProjectDocument,
  opening: OpeningDocument,
  treatment: TreatmentRecord,
  tier: Tier,
  result: TierResult,
): FewerWidths | null {
  const { make } = treatment;
  if (make.kind !== 'panels' || result.offer === null) return null;
  const several = make.extras['panelsOnRod'];
  const pieces = typeof several === 'number' ? several : piecesOf(make.arrangement);
  if (result.offer.halfWidths % pieces !== 0) return null;
  const fewer: PanelsMake = { ...make, halfWidths: result.offer.halfWidths / pieces };
  const changed = { ...treatment, make: fewer };
  const rooms = document.rooms
    .filter((room) => room.openings.some((each) => each.id === opening.id))
    .map((room) => ({ ...room, openings: [{ ...opening, treatments: [changed] }] }));
  const priced = priceDocument({ ...document, rooms }, new WeakMap()).treatments.get(treatment.id);
  return priced ? { make: fewer, result: priced.tiers[tier] } : null;
}

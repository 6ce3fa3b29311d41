/** From a project's document to what the elevation is drawn from: measured where measured, priced make where priced. */
import type { DrawnOpening, DrawnRoom, DrawnTreatment, Hex } from '#app/drawing/drawn-room.ts';
import { piecesOf } from '#shared/job.ts';
import type { ClothRecord, OpeningDocument, ProjectDocument, TreatmentRecord } from '#shared/records/records.ts';
import type { TreatmentResult } from '#shared/result.ts';

export function isHex(text: string | null): text is Hex {
  return text !== null && /^#[0-9a-fA-F]{6}$/.test(text);
}

/** `drawnClosed` shows the panels of that opening as they hang at night. */
export function drawnRooms(document: ProjectDocument, results: ReadonlyMap<string, TreatmentResult>): DrawnRoom[] {
  const colours = new Map(document.cloth.map((cloth) => [cloth.code, colourOf(cloth)]));
  return document.rooms.map((room) => ({
    key: room.id,
    name: room.name,
    ceiling: room.ceiling,
    openings: room.openings.map((opening) => drawnOpening(opening, results, colours)),
  }));
}

function colourOf(cloth: ClothRecord): Hex | null {
  return isHex(cloth.colour) ? cloth.colour : null;
}

function drawnOpening(
  opening: OpeningDocument,
  results: ReadonlyMap<string, TreatmentResult>,
  colours: ReadonlyMap<string, Hex | null>,
): DrawnOpening {
  return {
    key: opening.id,
    name: opening.name,
    width: opening.width,
    height: opening.height,
    sill: opening.sill,
    at: opening.at,
    heatSourceBelow: opening.heatSourceBelow,
    treatments: opening.treatments.map((treatment) =>
      drawnTreatment(treatment, results.get(treatment.id) ?? null, colours),
    ),
  };
}

function drawnTreatment(
  treatment: TreatmentRecord,
  result: TreatmentResult | null,
  colours: ReadonlyMap<string, Hex | null>,
): DrawnTreatment {
  const { make } = treatment;
  const tier = result?.tiers[result.advised.tier] ?? null;
  const face = tier?.takeoff[0] ?? null;
  const asked = make.fullness === null ? null : make.fullness / 1000;
  const pieces = piecesOf(make.arrangement);
  const usual = tier?.stackback?.usual ?? null;
  return {
    kind: 'panels',
    key: treatment.id,
    name: treatment.name,
    heading: make.heading,
    arrangement: make.arrangement,
    mount: { where: make.mountWhere, above: make.mountAbove },
    rodWidth: make.rodWidth,
    finishedLength: make.finishedLength,
    returns: { left: make.returnLeft, right: make.returnRight },
    overlap: make.overlap,
    fullness: face?.fullnessMade ?? asked,
    halfWidths: face?.halfWidths ?? (make.halfWidths === null ? null : make.halfWidths * pieces),
    pleats: tier?.pleats ? tier.pleats.count * pieces : null,
    stackback: usual !== null && pieces === 2 ? { left: usual, right: usual } : null,
    drawn: 'open',
    colour: treatment.face === null ? null : (colours.get(treatment.face) ?? null),
  };
}

/** From a project's document to what the elevation is drawn from: measured where measured, priced make where priced. */
import type { DrawnOpening, DrawnRoom, DrawnTreatment, Hex } from '#app/drawing/drawn-room.ts';
import { piecesOf } from '#shared/treatments/panels.ts';
import type { ClothRecord, OpeningDocument, ProjectDocument, TreatmentRecord } from '#shared/records/records.ts';
import type { TierResult } from '#shared/result.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { describeDrawn } from '#app/drawing/describe-drawn.ts';
import { drawUnmade } from './draw-unmade.ts';
import type { PricedDocument } from './price-document.ts';

export function isHex(text: string | null): text is Hex {
  return text !== null && /^#[0-9a-fA-F]{6}$/.test(text);
}

/** What the engines made of it: the treatments as they read them, their prices, the cloth by id. */
export type Made = Pick<PricedDocument, 'treatments' | 'parsed' | 'cloth'>;

const NOT_MADE: Made = { treatments: new Map(), parsed: new Map(), cloth: [] };

export function drawnRooms(document: ProjectDocument, priced: Made | null): DrawnRoom[] {
  const colours = new Map(document.cloth.map((cloth) => [cloth.code, colourOf(cloth)]));
  const made = priced ?? NOT_MADE;
  return document.rooms.map((room) => ({
    key: room.id,
    name: room.name,
    ceiling: room.ceiling,
    openings: room.openings.map((opening) => drawnOpening(opening, made, colours)),
  }));
}

function colourOf(cloth: ClothRecord): Hex | null {
  return isHex(cloth.colour) ? cloth.colour : null;
}

function drawnOpening(opening: OpeningDocument, made: Made, colours: ReadonlyMap<string, Hex | null>): DrawnOpening {
  return {
    key: opening.id,
    name: opening.name,
    width: opening.width,
    height: opening.height,
    sill: opening.sill,
    at: opening.at,
    heatSourceBelow: opening.heatSourceBelow,
    treatments: opening.treatments.map((treatment) => drawnTreatment(treatment, made, colours)),
  };
}

/** As one option makes it; null until the engines could read it. */
export function drawnMade(treatment: TreatmentRecord, tier: TierResult | null, made: Made): DrawnTreatment | null {
  const parsed = made.parsed.get(treatment.id);
  if (!parsed) return null;
  return { ...describeDrawn(parsed, tier, (id) => resolveCloth(id, made.cloth)), key: treatment.id };
}

function drawnTreatment(
  treatment: TreatmentRecord,
  made: Made,
  colours: ReadonlyMap<string, Hex | null>,
): DrawnTreatment {
  const { make } = treatment;
  const result = made.treatments.get(treatment.id) ?? null;
  const advised = drawnMade(treatment, result?.tiers[result.advised.tier] ?? null, made);
  if (advised) return advised;
  const colour = treatment.face === null ? null : (colours.get(treatment.face) ?? null);
  const base = { key: treatment.id, name: treatment.name, colour };
  if (make.kind !== 'panels') return drawUnmade(make, base);
  return {
    ...base,
    kind: 'panels',
    heading: make.heading,
    arrangement: make.arrangement,
    mount: { where: make.mountWhere, above: make.mountAbove },
    rodWidth: make.rodWidth,
    finishedLength: make.finishedLength,
    returns: { left: make.returnLeft, right: make.returnRight },
    overlap: make.overlap,
    fullness: make.fullness === null ? null : make.fullness / 1000,
    halfWidths: make.halfWidths === null ? null : make.halfWidths * piecesOf(make.arrangement),
    pleats: null,
    stackback: null,
    drawn: 'open',
    cafe: make.extras['cafe'] === true,
  };
}

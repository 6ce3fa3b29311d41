/** A treatment as drawings take it: as it was measured, and as the take-off of one option makes it. */
import type { Cloth } from '#shared/cloth.ts';
import { exhaustive } from '#shared/fault.ts';
import { ticks } from '#shared/length.ts';
import type { TierResult } from '#shared/result.ts';
import { piecesOf } from '#shared/treatments/panels.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import type { SwagsTreatment, Tail } from '#shared/treatments/swags.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import type { ValanceTreatment } from '#shared/treatments/valance.ts';
import { sizeShade } from '#app/estimating/roman-shade/size-shade.ts';
import { readSheet } from './read-sheet.ts';
import type {
  DrawnPanels,
  DrawnRomanShade,
  DrawnSwags,
  DrawnTail,
  DrawnTreatment,
  DrawnValance,
  Hex,
} from './drawn-room.ts';

/** A cloth by its id; null when the job does not know it. */
export type FindCloth = (id: string) => Cloth | null;

/** `made` null: nothing is taken off yet, and the measurements alone are drawn. */
export function describeDrawn(treatment: Treatment, made: TierResult | null, find: FindCloth): DrawnTreatment {
  const colourOf = (id: string | null): Hex | null => (id === null ? null : hexOf(find(id)));
  const face = find(made?.stack.face ?? treatment.face);
  const level = treatment.pattern?.level ?? null;
  const base = {
    ...{ key: treatment.key, name: treatment.name, colour: hexOf(face) },
    ...(level === null ? {} : { motifLevel: level }),
  };
  switch (treatment.kind) {
    case 'panels':
      return { ...base, ...drawnPanels(treatment, made, face, colourOf) };
    case 'valance':
      return { ...base, ...drawnValance(treatment, made, colourOf) };
    case 'cornice':
      return {
        ...base,
        kind: 'cornice',
        mount: treatment.mount,
        width: treatment.width,
        finishedLength: treatment.finishedLength,
        returns: treatment.returns,
        welts: { top: colourOf(treatment.welts.top), bottom: colourOf(treatment.welts.bottom) },
        shapedEdge: treatment.shapedEdge,
      };
    case 'swags':
      return { ...base, ...drawnSwags(treatment, made, find) };
    case 'roman-shade':
      return { ...base, ...drawnShade(treatment, made) };
    case 'bed-skirt': {
      const sheet = readSheet('bed-skirt', made);
      return {
        ...base,
        kind: 'bed-skirt',
        style: treatment.style,
        bed: treatment.bed,
        drop: treatment.drop,
        against: treatment.against,
        fullness: treatment.style === 'tailored' ? null : treatment.fullness / 1000,
        pleats: sheet?.sides.find((side) => side.finished === treatment.bed.length)?.pleats ?? null,
        middlePleats: treatment.style === 'tailored' ? treatment.middlePleats : null,
        splitCorners: treatment.splitCorners,
      };
    }
    case 'shower-curtain':
      return {
        ...base,
        kind: 'shower-curtain',
        arrangement: treatment.arrangement,
        finishedWidth: treatment.finishedWidth,
        finishedLength: treatment.finishedLength,
        eyelets: readSheet('shower-curtain', made)?.eyelets.places.length ?? treatment.eyelets,
        liner: treatment.liner.from !== 'none',
      };
    default:
      return exhaustive(treatment);
  }
}

type Rest<Drawn extends DrawnTreatment> = Omit<Drawn, 'key' | 'name' | 'colour'>;

function drawnPanels(
  panels: PanelsTreatment,
  made: TierResult | null,
  face: Cloth | null,
  colourOf: (id: string) => Hex | null,
): Rest<DrawnPanels> {
  const { hang } = panels;
  return {
    kind: 'panels',
    heading: panels.heading,
    arrangement: panels.arrangement,
    mount: panels.mount,
    rodWidth: panels.rodWidth,
    finishedLength: panels.finishedLength,
    returns: panels.returns,
    overlap: panels.overlap,
    ...madeOf(panels, made),
    drawn: 'open',
    pieces: panels.pieces,
    sheer: face?.role === 'face' && face.family === 'sheer',
    cafe: panels.cafe,
    topFromFloor: hang === null ? null : ticks(hang.fixing - hang.headingBelow),
    arch: panels.arch,
    bay: panels.bay === null ? null : { runs: panels.bay.runs, turns: panels.bay.turns },
    bands: panels.bands.map((band) => ({ edge: band.edge, width: band.width, colour: colourOf(band.cloth) })),
  };
}

/** What the take-off counted, as drawings want it: of all pieces together. */
export function madeOf(
  panels: PanelsTreatment,
  made: TierResult | null,
): Pick<DrawnPanels, 'fullness' | 'halfWidths' | 'pleats' | 'stackback'> {
  const face = made?.takeoff.find((line) => line.layer === 0);
  const pieces = Math.max(panels.pieces, piecesOf(panels.arrangement));
  const stack = made?.stackback?.usual ?? null;
  return {
    fullness: face?.fullnessMade ?? panels.fullness / 1000,
    halfWidths: face?.halfWidths ?? null,
    pleats: made?.pleats ? made.pleats.count * pieces : null,
    stackback: stack === null ? null : { left: stack, right: pieces > 1 ? stack : null },
  };
}

function drawnValance(
  valance: ValanceTreatment,
  made: TierResult | null,
  colourOf: (id: string | null) => Hex | null,
): Rest<DrawnValance> {
  const sheet = readSheet('valance', made);
  return {
    kind: 'valance',
    style: valance.style,
    mount: valance.mount,
    width: valance.width,
    finishedLength: valance.finishedLength,
    returns: valance.returns,
    hang: valance.hang.by,
    header: valance.hang.by === 'rod' ? valance.hang.header : null,
    fullness: 'fullness' in valance ? valance.fullness / 1000 : null,
    pleats: valance.style === 'box-pleated' ? valance.pleats : null,
    pleatsAt: valance.style === 'box-pleated' ? valance.pleatsAt : 'between',
    pleatTakeUp: valance.style === 'box-pleated' ? valance.takeUp : null,
    scallops: sheet?.scallops?.count ?? (valance.style === 'scalloped' ? valance.scallops : null),
    scallopDepth: valance.style === 'scalloped' ? valance.depth : null,
    puffs: sheet?.puffs?.count ?? (valance.style === 'balloon' ? valance.puffs : null),
    welt: colourOf(valance.welt),
  };
}

function drawnSwags(swags: SwagsTreatment, made: TierResult | null, find: FindCloth): Rest<DrawnSwags> {
  const sheet = readSheet('swags', made);
  const pleatsOf = (name: 'cascades' | 'jabots') =>
    sheet?.tails.find((tail) => tail.name === name)?.pleats.count ?? null;
  const tail = (from: Tail, name: 'cascades' | 'jabots'): DrawnTail => ({
    longest: from.longest,
    shortest: from.shortest,
    width: from.width,
    pleats: from.pleats ?? pleatsOf(name),
  });
  const behind = (made?.stack.behind ?? []).map(find).find((cloth) => cloth?.role === 'lining') ?? null;
  const contrast = swags.contrast === null ? behind : find(swags.contrast);
  return {
    kind: 'swags',
    style: swags.style,
    mount: swags.mount,
    width: swags.width,
    finishedLength: swags.finishedLength,
    returns: swags.returns,
    swags: sheet?.row.count ?? swags.swags,
    cascades: swags.cascades === null ? null : tail(swags.cascades, 'cascades'),
    jabots: swags.jabots === null ? null : { ...tail(swags.jabots, 'jabots'), count: swags.jabots.count },
    lining: hexOf(contrast),
    welt: swags.welt === null ? null : hexOf(find(swags.welt)),
  };
}

function drawnShade(shade: RomanShadeTreatment, made: TierResult | null): Rest<DrawnRomanShade> {
  const sheet = readSheet('roman-shade', made);
  const { width, length } = sheet?.finished ?? sizeShade(shade);
  return {
    kind: 'roman-shade',
    style: shade.style,
    mount: shade.mount,
    width,
    finishedLength: length,
    returns: shade.returns,
    rows: sheet?.rings.heights ?? null,
    raisedStack: sheet?.raisedStack ?? null,
    valance: shade.valance?.depth ?? null,
    drawn: 'half-raised',
  };
}

/** The colour that a drawing can paint: the face's own, or a lining's shade. */
export function hexOf(cloth: Cloth | null): Hex | null {
  if (cloth === null) return null;
  const colour = cloth.role === 'face' ? cloth.colour : (cloth.colour ?? cloth.shade);
  if (colour === 'white') return '#f8f6f0';
  if (colour === 'ivory') return '#f3ead2';
  return colour !== null && /^#[0-9a-f]{6}$/iu.test(colour) ? (colour as Hex) : null;
}

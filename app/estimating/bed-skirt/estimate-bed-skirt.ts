/** A bed skirt, from measurement to order, each step with its working, and the sheet that its drawing is made from. */
import { isBlackout } from '#shared/cloth.ts';
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Part } from '#shared/parts.ts';
import type { BedSkirtTreatment } from '#shared/treatments/bed-skirt.ts';
import { billableWidths } from '../billable-widths.ts';
import type { CutGroup } from '../cut-group.ts';
import type { Estimate, Labour } from '../estimate.ts';
import { upForShrinkage, upToWhole } from '../round.ts';
import type { Say } from '../say.ts';
import { shareOut } from '../share-out.ts';
import type { BedSkirtSheet } from './bed-skirt-sheet.ts';
import { cutDeck } from './cut-deck.ts';
import type { DeckCut } from './cut-deck.ts';
import { laySkirt } from './lay-skirt.ts';
import type { LaidSkirt, SkirtCloth } from './lay-skirt.ts';
import { measureSkirt } from './measure-skirt.ts';
import type { MeasuredSkirt } from './measure-skirt.ts';
import { workBedSkirt } from './work-bed-skirt.ts';

export interface BedSkirtEstimate extends Estimate {
  readonly sheet: BedSkirtSheet;
  readonly cuts: readonly CutGroup[];
}

/**
 * The take-off of one bed skirt under one stack. `massOf` gives grams a square metre of each cloth, known or typical;
 * `deck` is the cloth the skirt names for its platform, or null. A deck of a cloth that is used already is added to that
 * cloth before the order is rounded. `checkBedSkirt` must have found no fault.
 */
export function estimateBedSkirt(
  skirt: BedSkirtTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  given: {
    readonly massOf: (cloth: Cloth) => number;
    readonly say: Say;
    readonly billableWidth: Ticks;
    readonly deck: Cloth | null;
  },
): BedSkirtEstimate {
  const { massOf, say } = given;
  const measured = measureSkirt(skirt);
  const deck = given.deck ? { cloth: given.deck, cut: cutDeck(skirt, given.deck) } : null;
  const cloths = clothsOf(skirt, measured, face, behind, deck);
  const laid = cloths.map((each) => laySkirt(skirt, each, massOf(each.cloth)));
  const fullnessMade = fullnessOf(skirt, measured, face, laid[0]);
  const takeoff = laid.map(({ line }, index) => (index === 0 ? { ...line, fullnessMade } : line));
  const widths = takeoff[0] ? skirtWidths(face, laid[0], measured.strip, given.billableWidth) : 0;
  const lined = cloths.filter((each) => each.drop !== null);
  return {
    finished: { width: measured.perimeter, length: skirt.drop },
    halfWidths: takeoff[0]?.halfWidths ?? null,
    fullnessMade,
    madeWidth: measured.strip,
    takeoff,
    grams: takeoff.reduce((sum, line) => sum + line.grams, 0),
    pleats: null,
    stackback: null,
    seamsLineUp: lined.every((each) => each.cloth.usableWidth === face.usableWidth),
    parts: partsOf(skirt, measured),
    labour: labourOf(skirt, behind, widths),
    offer: null,
    working: workBedSkirt(skirt, measured, { cloths, laid, deck, fullnessMade }, massOf, say),
    sheet: sheetOf(skirt, measured, { cloths, laid, deck }, say),
    cuts: laid.flatMap((each) => each.cuts),
  };
}

type Deck = { readonly cloth: Cloth; readonly cut: DeckCut } | null;

/** The face, the layers behind, and the deck: with a cloth that is there already, or as a layer of its own. */
function clothsOf(
  skirt: BedSkirtTreatment,
  measured: MeasuredSkirt,
  face: FaceCloth,
  behind: readonly BackCloth[],
  deck: Deck,
): SkirtCloth[] {
  const own = skirt.practice.bedSkirt;
  const { strip } = measured;
  const all: readonly Cloth[] = [face, ...behind];
  const host = deck ? all.findIndex((cloth) => cloth.id === deck.cloth.id) : -1;
  const hosted = (layer: number): DeckCut | null => (deck && host === layer ? deck.cut : null);
  const faceDrop = {
    asked: measured.dropAsked,
    plain: upForShrinkage(measured.dropAsked, skirt.practice.shrinkage),
  };
  const layers = behind.map((cloth, index): SkirtCloth => {
    const hems = cloth.role === 'interlining' ? 0 : own.liningHem - own.liningShorter;
    const asked = ticks(skirt.drop + own.topSeam + hems);
    return { cloth, layer: index + 1, drop: { asked, plain: asked }, strip, deck: hosted(index + 1) };
  });
  const alone: SkirtCloth[] =
    deck && host < 0 ? [{ cloth: deck.cloth, layer: behind.length + 1, drop: null, strip, deck: deck.cut }] : [];
  return [{ cloth: face, layer: 0, drop: faceDrop, strip, deck: hosted(0) }, ...layers, ...alone];
}

/** Fullness that the widths make, end hems off; of gathered skirts alone. */
function fullnessOf(
  skirt: BedSkirtTreatment,
  measured: MeasuredSkirt,
  face: FaceCloth,
  laid: LaidSkirt | undefined,
): number | null {
  if (skirt.style !== 'gathered' || !laid) return null;
  const ends = 2 * measured.pieces.length * skirt.practice.bedSkirt.endHem;
  if (laid.widths === null) return (measured.strip - ends) / measured.perimeter;
  const joined = laid.widths * face.usableWidth - (laid.widths - 1) * 2 * skirt.practice.seam;
  return (joined - ends) / measured.perimeter;
}

/** Widths that labour is charged for: of one skirt, the deck left out. */
function skirtWidths(face: FaceCloth, laid: LaidSkirt | undefined, strip: Ticks, billableWidth: Ticks): number {
  if (!laid || laid.widths === null) return upToWhole(strip, billableWidth);
  return billableWidths(face, { halfWidths: 2 * laid.widths, cutLength: strip }, billableWidth);
}

/** Without a deck the skirt hangs by hook and loop tape. */
function partsOf(skirt: BedSkirtTreatment, measured: MeasuredSkirt): Part[] {
  return skirt.deck === null ? [{ part: 'hookTape', length: measured.perimeter * skirt.quantity }] : [];
}

function labourOf(skirt: BedSkirtTreatment, behind: readonly BackCloth[], each: number): Labour[] {
  const widths = each * skirt.quantity;
  const interlinings = behind.filter((layer) => layer.role === 'interlining').length;
  return [
    { work: 'bedSkirtPerWidth', count: widths },
    ...(interlinings > 0 ? [{ work: 'interlining' as const, widths: widths * interlinings }] : []),
    ...(behind.some(isBlackout) ? [{ work: 'blackout' as const, widths }] : []),
  ];
}

function sheetOf(
  skirt: BedSkirtTreatment,
  measured: MeasuredSkirt,
  made: { readonly cloths: readonly SkirtCloth[]; readonly laid: readonly LaidSkirt[]; readonly deck: Deck },
  say: Say,
): BedSkirtSheet {
  return {
    kind: 'bed-skirt',
    style: skirt.style,
    drop: skirt.drop,
    perimeter: measured.perimeter,
    splitCorners: skirt.splitCorners,
    sides: measured.sides.map((side) => ({
      ...side,
      shares: side.pleats > 0 ? shareOut(side.finished, side.pleats, say.unit) : null,
    })),
    pieces: measured.pieces,
    strip: measured.strip,
    cornerPleats: measured.cornerPleats,
    middlePleats: skirt.style === 'tailored' ? skirt.middlePleats : 0,
    hem: skirt.practice.bedSkirt.hem,
    layers: made.cloths.flatMap((each, index) => {
      const laid = made.laid[index];
      if (!each.drop || !laid) return [];
      return [
        {
          cloth: each.cloth.id,
          layer: each.layer,
          railroaded: laid.line.railroaded,
          cutDrop: each.drop.plain,
          joined: laid.sideways?.strips ?? laid.widths ?? 0,
        },
      ];
    }),
    deck: made.deck ? { ...made.deck.cut, cloth: made.deck.cloth.id } : null,
  };
}

/** A shower curtain, from measurement to order, each step with its working, and the sheet that its drawing is made from. */
import { isBlackout } from '#shared/cloth.ts';
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import { at } from '#shared/fault.ts';
import type { Warning } from '#shared/fault.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Part } from '#shared/parts.ts';
import type { ShowerCurtainTreatment } from '#shared/treatments/shower-curtain.ts';
import { billableWidths } from '../billable-widths.ts';
import type { CutGroup } from '../cut-group.ts';
import type { Estimate, Labour } from '../estimate.ts';
import { upForShrinkage } from '../round.ts';
import type { Say } from '../say.ts';
import { curtainPieces, cutWidthOf, pieceFinished, placeEyelets, placeSeams } from './count-shower-widths.ts';
import type { Eyelets } from './count-shower-widths.ts';
import { layShower } from './lay-shower.ts';
import type { LaidShower, ShowerCloth, ShowerPart } from './lay-shower.ts';
import { workShowerCurtain } from './work-shower-curtain.ts';

/** The named measures a workroom needs to draw, cut and sew a shower curtain. */
export interface ShowerCurtainSheet {
  readonly kind: 'shower-curtain';
  readonly pieces: 1 | 2;
  /** Of one piece. */
  readonly finished: { readonly width: Ticks; readonly length: Ticks };
  readonly cutLength: Ticks;
  /** Of all pieces, side hems in. */
  readonly cutWidth: Ticks;
  readonly hems: { readonly top: Ticks; readonly bottom: Ticks; readonly side: Ticks };
  /** Of one piece, from its left finished edge. */
  readonly seams: readonly Ticks[];
  readonly eyelets: Eyelets;
  readonly liner: {
    readonly from: 'bought' | 'cloth';
    /** Of all quantity. */
    readonly count: number;
    readonly width: Ticks;
    readonly length: Ticks;
  } | null;
  readonly warnings: readonly Warning[];
}

export interface ShowerCurtainEstimate extends Estimate {
  readonly sheet: ShowerCurtainSheet;
  readonly cuts: readonly CutGroup[];
}

/**
 * The take-off of one shower curtain under one stack. `massOf` gives grams a square metre of each cloth, known or typical;
 * `liner` is the cloth of a liner that is made, or null. A liner of a cloth that is used already is added to that cloth
 * before the order is rounded. `checkShowerCurtain` must have found no fault.
 */
export function estimateShowerCurtain(
  curtain: ShowerCurtainTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  given: {
    readonly massOf: (cloth: Cloth) => number;
    readonly say: Say;
    readonly billableWidth: Ticks;
    readonly liner: Cloth | null;
  },
): ShowerCurtainEstimate {
  const { massOf, say } = given;
  const cloths = clothsOf(curtain, face, behind, given.liner);
  const laid = cloths.map((each) => layShower(curtain, each, massOf(each.cloth)));
  const takeoff = laid.map((each) => each.line);
  const seams = laid[0]?.widths ? placeSeams(curtain, laid[0].widths, face.usableWidth) : [];
  const eyelets = placeEyelets(curtain, seams);
  const sheet = sheetOf(curtain, cloths, seams, eyelets);
  return {
    finished: { width: curtain.finishedWidth, length: curtain.finishedLength },
    halfWidths: takeoff[0]?.halfWidths ?? null,
    fullnessMade: null,
    madeWidth: curtain.finishedWidth,
    takeoff,
    grams: takeoff.reduce((sum, line) => sum + line.grams, 0),
    pleats: null,
    stackback: null,
    seamsLineUp: seams.length === 0 || behind.every((layer) => layer.usableWidth === face.usableWidth),
    parts: partsOf(curtain, eyelets),
    labour: labourOf(curtain, face, behind, laid[0], given.billableWidth),
    offer: null,
    working: workShowerCurtain(curtain, { cloths, laid, sheet }, massOf, say),
    sheet,
    cuts: laid.flatMap((each) => each.cuts),
  };
}

function clothsOf(
  curtain: ShowerCurtainTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  liner: Cloth | null,
): ShowerCloth[] {
  const own = curtain.practice.showerCurtain;
  const part = (name: ShowerPart['name'], width: Ticks, asked: number, shrinkage = 0): ShowerPart => ({
    name,
    width,
    asked: ticks(asked),
    plain: upForShrinkage(ticks(asked), shrinkage),
  });
  const whole = cutWidthOf(curtain, own.sideHem);
  const length = curtain.finishedLength + own.topHem;
  const own0 = part('curtain', whole, length + own.bottomHem, curtain.practice.shrinkage);
  const layers = behind.map((cloth) => {
    if (cloth.role === 'interlining') return { cloth, part: part('interlining', curtain.finishedWidth, length) };
    return { cloth, part: part('lining', curtain.finishedWidth, length + own.liningHem - own.liningShorter) };
  });
  const made: ShowerCloth[] = [
    { cloth: face, layer: 0, parts: [own0] },
    ...layers.map((each, index) => ({ cloth: each.cloth, layer: index + 1, parts: [each.part] })),
  ];
  if (liner === null) return made;
  const behindAll = part('liner', whole, length + own.bottomHem - own.linerShorter);
  const host = made.find((each) => each.cloth.id === liner.id);
  if (host) return made.map((each) => (each === host ? { ...each, parts: [...each.parts, behindAll] } : each));
  return [...made, { cloth: liner, layer: behind.length + 1, parts: [behindAll] }];
}

function sheetOf(
  curtain: ShowerCurtainTreatment,
  cloths: readonly ShowerCloth[],
  seams: readonly Ticks[],
  eyelets: Eyelets,
): ShowerCurtainSheet {
  const own = curtain.practice.showerCurtain;
  const first = cloths[0]?.parts[0];
  const { from } = curtain.liner;
  return {
    kind: 'shower-curtain',
    pieces: curtainPieces(curtain),
    finished: { width: pieceFinished(curtain), length: curtain.finishedLength },
    cutLength: first?.plain ?? ticks(0),
    cutWidth: first?.width ?? ticks(0),
    hems: { top: own.topHem, bottom: own.bottomHem, side: own.sideHem },
    seams,
    eyelets,
    liner:
      from === 'none'
        ? null
        : {
            from,
            count: curtainPieces(curtain) * curtain.quantity,
            width: pieceFinished(curtain),
            length: ticks(curtain.finishedLength - own.linerShorter),
          },
    warnings: eyelets.clearOfSeams
      ? []
      : [{ path: at(curtain.key, 'eyelets'), says: 'An eyelet stands on a seam: give another number of eyelets.' }],
  };
}

/** A liner that is made has its own eyelets; both hang on the same rings. */
function partsOf(curtain: ShowerCurtainTreatment, eyelets: Eyelets): Part[] {
  const rings = eyelets.places.length * curtainPieces(curtain) * curtain.quantity;
  const made = curtain.liner.from === 'cloth' ? 2 : 1;
  return [
    { part: 'curtainRing', count: rings },
    { part: 'eyelet', count: rings * made },
  ];
}

function labourOf(
  curtain: ShowerCurtainTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  laid: LaidShower | undefined,
  billableWidth: Ticks,
): Labour[] {
  if (!laid) return [];
  const { widths } = laid;
  const halfWidths = widths === null ? null : 2 * widths;
  const run = cutWidthOf(curtain, curtain.practice.showerCurtain.sideHem);
  const billable = billableWidths(face, { halfWidths, cutLength: run }, billableWidth) * curtain.quantity;
  const interlinings = behind.filter((layer) => layer.role === 'interlining').length;
  return [
    { work: 'showerCurtainPerWidth', count: billable },
    ...(interlinings > 0 ? [{ work: 'interlining' as const, widths: billable * interlinings }] : []),
    ...(behind.some(isBlackout) ? [{ work: 'blackout' as const, widths: billable }] : []),
  ];
}

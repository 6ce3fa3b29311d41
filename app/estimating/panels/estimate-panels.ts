/**
 * Panels under a heading, from measurement to order, each step with its working. The arithmetic stands in
 * `count-widths.ts`, `cut-cloth.ts`, `lay-behind.ts` and `weigh-layer.ts`; this file puts it in the order of the table.
 */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Offer, TakeoffLine } from '#shared/result.ts';
import type { Cut, Phases } from '../cut-cloth.ts';
import { labourOfBands, layBands, workBand } from './bands.ts';
import { countPhases, cutToRepeat, handbookLength, planAlone } from '../cut-cloth.ts';
import { finishedWidth } from './finished-width.ts';
import {
  countWidths,
  flatAsked,
  flatAskedMilli,
  fullnessOf,
  joinsOf,
  measureWidths,
  widthStep,
} from './count-widths.ts';
import type { Estimate, EstimateGiven } from '../estimate.ts';
import { billedOf, labourOf } from './labour-of-panels.ts';
import { partsOf } from './parts-of-panels.ts';
import { plainCutOf } from './plain-cut.ts';
import { countPoints } from './heading-points.ts';
import type { LaidFace } from './laid-face.ts';
import { joinedFace, workJoined } from './join-repeats.ts';
import { layerCut, layerFlat2, layerHalves, linesUp } from './lay-behind.ts';
import type { LaidLayer } from './lay-behind.ts';
import type { LaidLength } from '../lay-on-pieces.ts';
import { alikeCuts, orderCloth } from '../order-cloth.ts';
import { halvesUpToTick, upToWhole } from '../round.ts';
import { mayRunSideways, prefersSideways } from './run-sideways.ts';
import type { Say } from '../say.ts';
import { measureStackback } from './stackback.ts';
import { gramsOf, hungFace, hungLayer } from './weigh-layer.ts';
import type { Hung } from './weigh-layer.ts';
import { cutTabs } from './tabs.ts';
import type { TabCloth } from './tabs.ts';
import { workPattern } from '../work-pattern.ts';
import { solveRod } from './rod-to-clear.ts';
import { workPoints } from './work-points.ts';
import { workBillable, workParts } from './work-parts.ts';
import { workStackback } from './work-stackback.ts';
import { workCut, workFace, workWeight } from './work-panels.ts';
import { workLayer } from './work-layer.ts';

/**
 * The take-off of one treatment under one stack. `massOf` gives grams a square metre of each cloth, known or typical;
 * `billableWidth` is what labour counts a width by.
 * `checkPanels` must have found no fault.
 */
export function estimatePanels(
  panels: PanelsTreatment,
  cloth: FaceCloth,
  behind: readonly BackCloth[],
  given: EstimateGiven,
): Estimate {
  const { massOf, say } = given;
  const lined = behind.length > 0;
  const joined = joinedFace(panels, cloth);
  const laid = layFace(panels, { joined, cloth }, behind, massOf(cloth));
  const face = laid.counted === null ? cloth : joined;
  const layers = behind.map((layer, index) => layLayer(panels, layer, index + 1, laid, massOf(layer)));
  const bands = layBands(panels, laid, given);
  const takeoff = [laid.line, ...layers.map(({ line }) => line), ...bands.map((band) => band.line)];
  const grams = takeoff.reduce((sum, line) => sum + line.grams, 0);
  const halves = laid.counted?.halves ?? upToWhole(2 * laid.made2, 2 * face.usableWidth);
  const points = countPoints(panels, laid.made2, laid.counted?.halves ?? null, face.repeat?.horizontal ?? null);
  const offer = offerFewer(panels, face, laid, say);
  const stackback = measureStackback(panels, halves, behind);
  const glass = given.place?.opening ?? null;
  const cut = { usable: face.usableWidth, sideways: laid.counted === null };
  const clearing = glass === null ? null : solveRod(panels, cut, behind, glass);
  const parts = partsOf(panels, face, laid, points);
  const labour = labourOf(panels, face, behind, laid, given.billableWidth);
  const billable = { width: given.billableWidth, widths: billedOf(labour) };
  return {
    finished: { width: finishedWidth(panels), length: panels.finishedLength },
    halfWidths: laid.counted?.halves ?? null,
    fullnessMade: laid.fullnessMade,
    madeWidth: halvesUpToTick(laid.made2),
    takeoff,
    grams,
    pleats: points.pleats,
    stackback,
    clearing,
    // Cloth that runs sideways has no seams.
    seamsLineUp: layers.every(({ layer, joins }) => joins === 0 || linesUp(layer, face.usableWidth)),
    parts,
    labour: [...labour, ...labourOfBands(bands)],
    offer,
    working: [
      ...workJoined(panels, cloth, face, say),
      ...workFace(panels, face, behind, laid, say),
      ...workPoints(panels, points, laid.made2, say),
      ...workPattern(panels, face, lined, laid.line.railroaded, say),
      ...workStackback(panels, { halfWidths: halves, stackback, clearing }, behind, glass, say),
      ...workCut(panels, face, laid, say),
      ...layers.flatMap((own) => workLayer(panels, laid, own, say)),
      ...bands.flatMap((band) => workBand(band, panels.practice, say)),
      ...workParts({ panels, laid, points, parts, say }),
      workBillable(panels, face, laid, billable, say),
      ...workWeight(panels, [face, ...behind, ...bands.map(({ cloth }) => cloth)], takeoff, grams, massOf, say),
    ],
  };
}

/** Upright as wide as it is joined; sideways there is no seam, and the whole cloth counts. */
function layFace(
  panels: PanelsTreatment,
  { joined: face, cloth }: { readonly joined: FaceCloth; readonly cloth: FaceCloth },
  behind: readonly BackCloth[],
  mass: number,
): LaidFace {
  const lined = behind.length > 0;
  const plain = plainCutOf(panels, lined);
  const counted = countWidths(panels, face.usableWidth);
  const cut = cutToRepeat(plain, face.repeat, panels.practice.repeatRule);
  const tabs = cutTabs(panels, countPoints(panels, counted.made2, counted.halves).count, face.usableWidth);
  const upright = layLine(panels, face, 0, cut, counted.halves, tabs);
  const sideways = panels.halfWidths === null ? laySideways(panels, cloth, 0, plain, flatWithHems(panels)) : null;
  if (sideways && prefersSideways(face, panels, sideways.plan, { plan: upright.plan, joins: counted.joins })) {
    const made2 = 2 * flatAsked(panels);
    const fullnessMade = fullnessOf(panels, made2);
    const line = weigh(sideways, hungFace(panels, made2, lined), mass, panels.quantity, fullnessMade);
    return {
      usable: cloth.usableWidth,
      counted: null,
      made2,
      fullnessMade,
      line,
      cut: { plain, length: line.cutLength, repeats: null },
      tabs: null,
    };
  }
  const hung = hungFace(panels, counted.made2, lined);
  const line = weigh(upright, hung, mass, panels.quantity, counted.fullnessMade);
  return {
    usable: face.usableWidth,
    counted,
    made2: counted.made2,
    fullnessMade: counted.fullnessMade,
    line,
    cut,
    tabs,
  };
}

function layLayer(panels: PanelsTreatment, layer: BackCloth, index: number, face: LaidFace, mass: number): LaidLayer {
  const plain = layerCut(panels, layer);
  const cut = cutToRepeat(plain, layer.repeat, panels.practice.repeatRule);
  const upright = layLine(panels, layer, index, cut, layerHalves(panels, layer, face));
  const run = halvesUpToTick(layerFlat2(panels, layer, face.made2));
  const sideways = laySideways(panels, layer, index, plain, run);
  const seams = joinsOf(panels, upright.halfWidths ?? 0);
  const takesSideways =
    sideways !== null && prefersSideways(layer, panels, sideways.plan, { plan: upright.plan, joins: seams });
  const laid = takesSideways ? sideways : upright;
  const line = weigh(laid, hungLayer(panels, layer, face.made2), mass, panels.quantity, null);
  return { layer, line, joins: takesSideways ? 0 : seams, upright, sideways };
}

/** Flat width asked and the side hems of every edge: the run of cloth used sideways. */
function flatWithHems(panels: PanelsTreatment): Ticks {
  return ticks(flatAsked(panels) + 2 * panels.pieces * panels.practice.sideHem);
}

type Unweighed = Omit<TakeoffLine, 'grams' | 'fullnessMade'>;

/** Tabs are cut from the same cloth after the widths, in rows: they have no place in the repeat. */
function layLine(
  panels: PanelsTreatment,
  cloth: Cloth,
  layer: number,
  cut: Cut,
  halves: number,
  tabs: TabCloth | null = null,
): Unweighed {
  const { practice, quantity } = panels;
  const cuts = upToWhole(halves * quantity, 2);
  const phases = countPhases(halves, panels.pieces, quantity);
  const lay = (of: Phases, rows: number): LaidLength => {
    const count = of.level + of.dropped;
    const besides = rows * (tabs?.cutLength ?? 0);
    return {
      handbook: ticks(handbookLength(cut, count, cloth.repeat) + besides),
      plan: ticks(planAlone(cut, count, cloth.repeat, of) + besides),
    };
  };
  const rows = tabs?.rows ?? 0;
  const laid = lay(phases, rows);
  const kinds = {
    counts: [phases.level, phases.dropped, rows],
    lay: ([level = 0, dropped = 0, own = 0]: readonly number[]) => lay({ level, dropped }, own),
  };
  return {
    cloth: cloth.id,
    role: cloth.role,
    layer,
    halfWidths: halves,
    railroaded: false,
    cuts,
    plainCut: cut.plain,
    cutLength: cut.length,
    repeatsPerCut: cut.repeats,
    ...laid,
    ...orderCloth(cloth, laid, practice, kinds),
  };
}

/** The cloth used sideways: null unless it may be, and the cut length fits across its width. */
function laySideways(
  panels: PanelsTreatment,
  cloth: Cloth,
  layer: number,
  across: Ticks,
  run: Ticks,
): Unweighed | null {
  if (!mayRunSideways(cloth, panels) || across > cloth.usableWidth) return null;
  const { practice, quantity } = panels;
  const length = ticks(run * quantity);
  const laid = { handbook: length, plan: length };
  const each = upToWhole(run, panels.pieces);
  const runs = alikeCuts(panels.pieces * quantity, (count) => {
    const own = ticks(Math.min(length, count * each));
    return { handbook: own, plan: own };
  });
  return {
    cloth: cloth.id,
    role: cloth.role,
    layer,
    halfWidths: null,
    railroaded: true,
    cuts: panels.pieces * quantity,
    plainCut: across,
    cutLength: run,
    repeatsPerCut: null,
    ...laid,
    ...orderCloth(cloth, laid, practice, runs),
  };
}

function weigh(line: Unweighed, hung: Hung, mass: number, quantity: number, fullnessMade: number | null): TakeoffLine {
  return { ...line, fullnessMade, grams: gramsOf(hung, mass) * quantity };
}

/** One width fewer, when it still makes the least fullness that the heading hangs well at. Offered, never taken. */
function offerFewer(panels: PanelsTreatment, face: FaceCloth, laid: LaidFace, say: Say): Offer | null {
  const { counted, cut, line } = laid;
  if (!counted || panels.halfWidths !== null) return null;
  const halves = counted.halves - widthStep(panels);
  if (halves <= 0) return null;
  const fewer = measureWidths(panels, face.usableWidth, halves);
  const least = panels.practice.leastFullness[panels.heading] / 1000;
  if (fewer.made2 <= 0 || fewer.fullnessMade < least) return null;
  // The pitch of a wave tape is fixed: with less cloth than the gliders ask it cannot hang.
  if (panels.heading === 'wave' && 1000 * fewer.made2 < 2 * flatAskedMilli(panels)) return null;
  const made = say.number(fewer.fullnessMade);
  const tabs = cutTabs(panels, countPoints(panels, fewer.made2, halves).count, face.usableWidth);
  const { order } = layLine(panels, face, 0, cut, halves, tabs);
  const saved = ticks(Math.max(0, line.order - order));
  return {
    halfWidths: halves,
    fullnessMade: fewer.fullnessMade,
    says: `${say.widths(halves)} widths would make ${made} times, still above the least of the practice, ${say.number(least)}: ${say.cloth(order)} instead of ${say.cloth(line.order)}${saved === 0 ? '' : `, ${say.cloth(saved)} saved`}.`,
  };
}

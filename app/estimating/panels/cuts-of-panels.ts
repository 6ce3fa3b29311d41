/** The cuts of panels as the joint cut plan takes them: widths alike in a group, a half-drop in two, halves by side. */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { TakeoffLine } from '#shared/result.ts';
import { runsAcross, sideStrips, stripWidth } from './bands.ts';
import { measureWidths } from './count-widths.ts';
import type { CutGroup } from '../cut-group.ts';
import type { Estimate } from '../estimate.ts';
import { countPoints } from './heading-points.ts';
import { placePattern } from '../place-pattern.ts';
import { downToWhole } from '../round-down.ts';
import { cutTabs } from './tabs.ts';

/** Bands and other lines with a use of their own have no place in the repeat of their cloth. */
export function cutsOfPanels(
  panels: PanelsTreatment,
  estimate: Estimate,
  face: Cloth,
  behind: readonly Cloth[],
): CutGroup[] {
  const cloths = [face, ...behind];
  const bands = estimate.takeoff.filter((line) => line.use !== undefined);
  return estimate.takeoff.flatMap((line) => {
    if (line.use !== undefined) return cutsOfBand(panels, line, bands.indexOf(line));
    const cloth = cloths[line.layer];
    if (cloth === undefined) return [];
    const placed = line.layer === 0 ? placePattern(panels, cloth, behind.length > 0) : null;
    const cuts = line.railroaded ? cutsOfRun(panels, line) : cutsOfWidths(panels, line, cloth, placed?.phase ?? null);
    return line.layer === 0 ? [...cuts, ...cutsOfTabs(panels, line, cloth)] : cuts;
  });
}

/** Cloth used sideways: one length for each piece, its cut length across the cloth. */
function cutsOfRun(panels: PanelsTreatment, line: TakeoffLine): CutGroup[] {
  const { pieces, quantity } = panels;
  const each = downToWhole(line.cutLength, pieces);
  const longer = line.cutLength - each * pieces;
  const group = (count: number, length: number): CutGroup => ({
    ...{ name: panels.name, cloth: line.cloth, layer: line.layer, count: count * quantity },
    ...{ length: ticks(length), width: line.plainCut, phase: 'any', turnable: false },
  });
  return [group(longer, each + 1), group(pieces - longer, each)].filter(({ count }) => count > 0);
}

/**
 * Widths run from each leading edge, in half-drop cloth by turns half a repeat lower; the half width of a piece is its
 * last, at the return. At the left panel it is a right half of the cloth and the other way round, so that the pattern
 * runs on (common practice).
 */
function cutsOfWidths(panels: PanelsTreatment, line: TakeoffLine, cloth: Cloth, placed: Ticks | null): CutGroup[] {
  const { pieces, quantity } = panels;
  const { repeat } = cloth;
  const plain = repeat === null && cloth.supply?.oneWay !== true;
  const base = {
    name: panels.name,
    cloth: line.cloth,
    layer: line.layer,
    length: line.plainCut,
    width: null,
    // The face hangs as it is woven; what hangs behind it may lie either way.
    turnable: plain && (line.layer > 0 || cloth.railroad),
  };
  const groups: CutGroup[] = [];
  const add = (count: number, dropped: boolean, more: Pick<CutGroup, 'half' | 'side'>): void => {
    const phase = phaseOf(repeat, dropped, placed);
    const alike = groups.find((each) => each.phase === phase && each.half === more.half && each.side === more.side);
    const counted = { ...base, ...more, phase, count: (alike?.count ?? 0) + count };
    if (alike) groups.splice(groups.indexOf(alike), 1, counted);
    else if (count > 0) groups.push(counted);
  };
  halvesOfPieces(line.halfWidths ?? 0, pieces).forEach((halves, piece) => {
    const whole = downToWhole(halves, 2);
    const dropped = downToWhole(whole, 2);
    add((whole - dropped) * quantity, false, {});
    add(dropped * quantity, true, {});
    if (halves % 2 === 0) return;
    const side =
      repeat === null || pieces === 1 ? {} : { side: piece % 2 === 0 ? ('right' as const) : ('left' as const) };
    add(quantity, whole % 2 === 1, { half: true, ...side });
  });
  return groups;
}

function phaseOf(repeat: Cloth['repeat'], dropped: boolean, placed: Ticks | null): CutGroup['phase'] {
  if (repeat === null) return 'any';
  if (repeat.match === 'straight') return placed;
  return ((placed ?? 0) + (dropped ? downToWhole(repeat.vertical, 2) : 0)) % repeat.vertical;
}

/** Half widths of each piece: as even as can be, the first ones wider. */
function halvesOfPieces(halves: number, pieces: number): number[] {
  const each = downToWhole(halves, pieces);
  const wider = halves - each * pieces;
  return Array.from({ length: pieces }, (_, piece) => each + (piece < wider ? 1 : 0));
}

function cutsOfTabs(panels: PanelsTreatment, line: TakeoffLine, cloth: Cloth): CutGroup[] {
  // Sideways, the tabs come from the offcut.
  if (line.halfWidths === null) return [];
  const counted = measureWidths(panels, cloth.usableWidth, line.halfWidths);
  const tabs = cutTabs(panels, countPoints(panels, counted.made2, counted.halves).count, cloth.usableWidth);
  if (tabs === null) return [];
  return [
    {
      ...{ name: `${panels.name}, tabs`, cloth: line.cloth, layer: line.layer, count: tabs.count },
      ...{ length: tabs.cutLength, width: tabs.cutWidth, phase: 'any', turnable: false },
    },
  ];
}

function cutsOfBand(panels: PanelsTreatment, line: TakeoffLine, index: number): CutGroup[] {
  const band = panels.bands[index];
  const base = {
    ...{ name: line.use ?? panels.name, cloth: line.cloth, layer: line.layer, length: line.plainCut },
    ...{ phase: 'any' as const, turnable: false },
  };
  if (band === undefined || runsAcross(band)) return [{ ...base, count: line.cuts, width: null }];
  return [{ ...base, count: sideStrips(panels, band), width: stripWidth(panels, band) }];
}

/** Refuses bands that no strip could make: wider than their cloth, or than the panel that they edge. */
import type { Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Fault } from '#shared/fault.ts';
import { at } from '#shared/fault.ts';
import { formatLengthWithUnit } from '#shared/format-length.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { Band, PanelsTreatment } from '#shared/treatments/panels.ts';
import { runsAcross, stripWidth } from './bands.ts';
import { countWidths } from './count-widths.ts';
import { joinedFace } from './join-repeats.ts';

/** `checkPanels` must have found no fault. */
export function checkBands(
  panels: PanelsTreatment,
  face: FaceCloth,
  unit: LengthUnit,
  clothOf: (id: string) => Cloth | null,
): Fault[] {
  const say = (value: number): string => formatLengthWithUnit(value, unit);
  const flat = countWidths(panels, joinedFace(panels, face).usableWidth).made2 / 2 / panels.pieces;
  return panels.bands.flatMap((band, index) => {
    const path = at(at(at(panels.key, 'bands'), index), 'width');
    const cloth = clothOf(band.cloth);
    const cut = stripWidth(panels, band);
    const room = roomFor(panels, band, flat);
    if (band.width >= room)
      return [
        {
          path,
          wrong: `${say(band.width)} leaves nothing of ${say(room)}`,
          right: 'give the finished width of the strip',
        },
      ];
    // A strip along the hem runs across its cloth and is joined; one along a side is a single length.
    if (cloth === null || runsAcross(band) || cut <= cloth.usableWidth) return [];
    return [
      {
        path,
        wrong: `a strip cut ${say(cut)} wide is wider than ${cloth.name} (${say(cloth.usableWidth)})`,
        right: 'give a narrower band, or wider cloth',
      },
    ];
  });
}

/** What one strip may take of its panel. */
function roomFor(panels: PanelsTreatment, band: Band, flat: number): number {
  if (band.edge === 'hem') return panels.finishedLength;
  return band.edge === 'both-sides' ? flat / 2 : flat;
}

/**
 * True colour: how far the face by daylight through glass and stack lies from the face lit from the room, CIEDE2000
 * under D65, 2 degrees, both at the same brightness (Y = 50), each alone. Glass and layers are composed band by band,
 * glass first; the glass is taken as neutral.
 */
import type { Glazing } from '#shared/words.ts';
import { ciede2000 } from './ciede2000.ts';
import { labOf, scaleToY, xyzOf } from './colour.ts';
import type { Lab, Spectrum } from './colour.ts';
import { composeLayers, layerOf } from './compose-layers.ts';
import type { Layer } from './compose-layers.ts';
import { glassOf } from './glass.ts';
import { BANDS_NM } from './observer.ts';
import type { FilledCloth } from '../cloth/resolve-cloth.ts';
import { layerInBand, spectraOf } from './spectra.ts';
import type { LayerSpectra } from './spectra.ts';

export interface ColourShift {
  /** CIEDE2000 between the two. */
  readonly shift: number;
  /** The face with daylight behind it, and lit from the room, both at Y = 50. */
  readonly byDay: Lab;
  readonly byRoomLight: Lab;
}

/** What a stack passes to the room and sends back to it, band by band. */
export interface StackSpectra {
  /** With the glass. */
  readonly toRoom: Spectrum;
  /** Of the cloth alone: what room light meets. */
  readonly backToRoom: Spectrum;
}

/** Layers room to street, spectra band by band; `glass` null leaves it out. */
export function stackSpectra(layers: readonly LayerSpectra[], glass: Layer | null): StackSpectra {
  const streetFirst = [...layers].reverse();
  const bands = BANDS_NM.map((_, i) => {
    const cloth = composeLayers(streetFirst.map((layer) => layerInBand(layer, i)));
    const all = glass === null ? cloth : composeLayers([glass, cloth]);
    return { through: all.Tf, back: cloth.Rb };
  });
  return { toRoom: bands.map((band) => band.through), backToRoom: bands.map((band) => band.back) };
}

/** `face` and `behind` are filled, room to street. */
export function colourShift(face: FilledCloth, behind: readonly FilledCloth[], glazing: Glazing): ColourShift {
  const glass = layerOf(glassOf(glazing).visible);
  return shiftOf(stackSpectra([face, ...behind].map(spectraOf), glass));
}

/** The two lights compared. A stack that passes nothing in any band has no daylight colour: its shift is 0. */
export function shiftOf(stack: StackSpectra): ColourShift {
  const room = labOf(scaleToY(xyzOf(stack.backToRoom), 50));
  const through = xyzOf(stack.toRoom);
  const day = through.Y > 0 ? labOf(scaleToY(through, 50)) : room;
  return { shift: ciede2000(room, day), byDay: day, byRoomLight: room };
}

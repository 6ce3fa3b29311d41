/** From a cloth to its little drawing. */
import type { SwatchInput } from '#app/drawing/draw-swatch.ts';
import type { Hex } from '#app/drawing/drawn-room.ts';
import { fillCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { StackFault } from '#app/lining/stack-fault.ts';
import type { Cloth } from '#shared/cloth.ts';
import { isHex } from './draw-document.ts';

const SHADES: Readonly<Record<string, Hex>> = { white: '#ffffff', ivory: '#f5ecd2' };

export function shadeColour(shade: string | null): Hex | null {
  if (shade === null) return null;
  return SHADES[shade] ?? (isHex(shade) ? shade : null);
}

export function swatchOf(cloth: Cloth, side: number): SwatchInput {
  const { name, role, family } = cloth;
  const colour = role === 'face' ? cloth.colour : shadeColour(cloth.shade);
  return { name, role, family, colour: isHex(colour) ? colour : null, light: lightOf(cloth), side };
}

/** Nothing is shown through a cloth that cannot be. */
function lightOf(cloth: Cloth): number {
  try {
    return fillCloth(cloth).visible.transmittance;
  } catch (error) {
    if (error instanceof StackFault) return 0;
    throw error;
  }
}

/**
 * Summer: what an inside drapery does to the sun's gain, by EN 13363-1 / ISO 52022-1 for an internal device. The
 * reflectance is that of the side facing the glass: the lining's. Declared deviation -0.02 to +0.10; never a class.
 */

export interface SolarGlass {
  readonly g: number;
  readonly U: number;
  /** Solar direct transmittance and solar reflectance towards the room; only needed for the parts. */
  readonly solarTransmittance: number;
  readonly solarReflectanceRoom: number;
}

export interface Summer {
  /** Total solar gain with the drapery drawn, of one outside. */
  readonly gTot: number;
  /** Of it what comes as radiation, and what the warm drapery gives off. */
  readonly direct: number;
  readonly secondary: number;
  /** gTot / g: the share of the bare window's gain that is left. */
  readonly Fc: number;
  /** Values outside the scope of the method (from memory): the figure is a guess there. */
  readonly outOfScope: boolean;
}

/** It reads from this much low to this much high (declared by the standard). */
export const SUMMER_ERROR = { low: 0.02, high: 0.1 } as const;

/** Heat transfer between an internal device and the room, W/m2K. */
const G2 = 30;

export function reckonSummer(glass: SolarGlass, tau: number, rho: number): Summer {
  const { g, U } = glass;
  const alpha = 1 - tau - rho;
  const G = 1 / (1 / U + 1 / G2);
  const gTot = g * (1 - g * rho - (alpha * G) / G2);
  const direct = (glass.solarTransmittance * tau) / (1 - glass.solarReflectanceRoom * rho);
  return {
    gTot,
    direct,
    secondary: gTot - direct,
    Fc: gTot / g,
    outOfScope: g < 0.15 || g > 0.85 || tau < 0 || tau > 0.5 || rho < 0.1 || rho > 0.8,
  };
}

/** A drape drawn over a share F of the window: IAC = 1 + F (IAC_cl - 1) (ASHRAE Fundamentals ch. 17, second-hand). */
export function partlyDrawn(closed: number, share: number): number {
  return 1 + share * (closed - 1);
}

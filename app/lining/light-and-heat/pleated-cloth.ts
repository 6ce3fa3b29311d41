/**
 * What folds do to a cloth. Correlations of Kotey (2009, ASHRAE RP-1311) as given in the EnergyPlus Engineering
 * Reference, "Drapes and Curtains": from normal incidence to any angle, to diffuse light, and to pleats taken as
 * rectangles of spacing S and depth W. Used for the summer figure; the plain light reading is the flat cloth.
 */
import { solveLinear } from './solve-linear.ts';

/** A cloth by light at right angles to it; beam passing between the yarns, and all that passes (beam and scattered). */
export interface NormalCloth {
  readonly reflectance: number;
  readonly transmittance: number;
  /** The beam that passes straight through: the openness of the weave. */
  readonly openness: number;
}

/** Reflectance of the yarn itself: rho_y = rho_0 / (1 - tau_bb0). */
export function yarnReflectance(cloth: NormalCloth): number {
  return cloth.reflectance / (1 - cloth.openness);
}

/** rho(theta) = rho_0 + (rho_90 - rho_0)(1 - cos^0.6 theta), rho_90 = rho_0 + (1 - rho_0) 0.7 rho_y^0.7. */
export function reflectanceAt(cloth: NormalCloth, cosTheta: number): number {
  const rho90 = cloth.reflectance + (1 - cloth.reflectance) * 0.7 * yarnReflectance(cloth) ** 0.7;
  return cloth.reflectance + (rho90 - cloth.reflectance) * (1 - cosTheta ** 0.6);
}

/** tau(theta) = tau_0 cos^b theta, b = max(-0.5 ln max(tau_0, 0.01), 0.35); for the beam or for the total. */
export function transmittanceAt(tau0: number, cosTheta: number): number {
  const b = Math.max(-0.5 * Math.log(Math.max(tau0, 0.01)), 0.35);
  return tau0 * cosTheta ** b;
}

/** Diffuse reflectance and transmittance: the integral of 2 sin cos p over all angles, in closed form over cos. */
export function diffuseOf(cloth: NormalCloth): { readonly reflectance: number; readonly transmittance: number } {
  // With u = cos: the integral of 2 u u^p du from 0 to 1 is 2 / (p + 2).
  const rho90 = cloth.reflectance + (1 - cloth.reflectance) * 0.7 * yarnReflectance(cloth) ** 0.7;
  const b = Math.max(-0.5 * Math.log(Math.max(cloth.transmittance, 0.01)), 0.35);
  return {
    reflectance: cloth.reflectance + (rho90 - cloth.reflectance) * (1 - 2 / 2.6),
    transmittance: (cloth.transmittance * 2) / (b + 2),
  };
}

/** A flat cloth in diffuse light; reflectance towards the street and towards the room may differ (a lined face). */
export interface DiffuseCloth {
  readonly transmittance: number;
  readonly reflectanceStreet: number;
  readonly reflectanceRoom: number;
}

/**
 * Effective diffuse values of the same cloth in folds. `depth` is W/S, the depth of a fold over its spacing: fullness
 * less one. Crossed-string view factors; each fold is a cavity open to one side, and cloth passes flux to the next
 * cavity with its transmittance.
 */
export function pleat(
  cloth: DiffuseCloth,
  depth: number,
): { readonly reflectance: number; readonly transmittance: number } {
  const tau = cloth.transmittance;
  const rf = cloth.reflectanceStreet;
  const rb = cloth.reflectanceRoom;
  if (depth <= 0) return { reflectance: rf, transmittance: tau };
  // Spacing S = 1. Views: from an opening or a bottom to one wall, to each other, and from wall to wall.
  const slant = Math.sqrt(1 + depth * depth);
  const toWall = (1 + depth - slant) / 2;
  const across = slant - depth;
  const wallToEnd = toWall / depth;
  const wallToWall = (slant - 1) / depth;
  // Radiosities: bottom and wall of a fold open to the street, then bottom and wall of a fold open to the room.
  const solved = solveLinear(
    [
      [1, -2 * rf * toWall, 0, 0],
      [-rf * wallToEnd, 1 - rf * wallToWall, -tau * wallToEnd, -tau * wallToWall],
      [0, 0, 1, -2 * rb * toWall],
      [-tau * wallToEnd, -tau * wallToWall, -rb * wallToEnd, 1 - rb * wallToWall],
    ],
    [rf * across, rf * wallToEnd, tau, tau * wallToEnd],
  );
  if (solved === null) throw new Error('folds of a perfect mirror have no answer');
  const [bottom = 0, wall = 0, roomBottom = 0, roomWall = 0] = solved;
  const onBottom = across + 2 * toWall * wall;
  const onRoomBottom = 2 * toWall * roomWall;
  return {
    reflectance: 0.5 * (across * bottom + 2 * toWall * wall + rf + tau * onRoomBottom),
    transmittance: 0.5 * (tau * onBottom + across * roomBottom + 2 * toWall * roomWall),
  };
}

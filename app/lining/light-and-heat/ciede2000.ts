/**
 * Colour difference CIEDE2000, kL = kC = kH = 1 (Sharma, Wu, Dalal 2005, in the order of their steps). About 1 is just
 * seen side by side, above 5 is another colour.
 */
import type { Lab } from './colour.ts';

const RAD = Math.PI / 180;
const POW25_7 = 25 ** 7;

export function ciede2000(lab1: Lab, lab2: Lab): number {
  const C1 = Math.hypot(lab1.a, lab1.b);
  const C2 = Math.hypot(lab2.a, lab2.b);
  const Cbar7 = ((C1 + C2) / 2) ** 7;
  const G = 0.5 * (1 - Math.sqrt(Cbar7 / (Cbar7 + POW25_7)));
  const a1 = (1 + G) * lab1.a;
  const a2 = (1 + G) * lab2.a;
  const C1p = Math.hypot(a1, lab1.b);
  const C2p = Math.hypot(a2, lab2.b);
  const h1 = hueOf(a1, lab1.b);
  const h2 = hueOf(a2, lab2.b);

  const dL = lab2.L - lab1.L;
  const dC = C2p - C1p;
  const grey = C1p * C2p === 0;
  const dh = grey ? 0 : turn(h2 - h1);
  const dH = 2 * Math.sqrt(C1p * C2p) * Math.sin((dh / 2) * RAD);

  const Lbar = (lab1.L + lab2.L) / 2;
  const Cbar = (C1p + C2p) / 2;
  const hbar = grey ? h1 + h2 : meanHue(h1, h2);
  const T =
    1 -
    0.17 * Math.cos((hbar - 30) * RAD) +
    0.24 * Math.cos(2 * hbar * RAD) +
    0.32 * Math.cos((3 * hbar + 6) * RAD) -
    0.2 * Math.cos((4 * hbar - 63) * RAD);
  const dTheta = 30 * Math.exp(-(((hbar - 275) / 25) ** 2));
  const RC = 2 * Math.sqrt(Cbar ** 7 / (Cbar ** 7 + POW25_7));
  const SL = 1 + (0.015 * (Lbar - 50) ** 2) / Math.sqrt(20 + (Lbar - 50) ** 2);
  const SC = 1 + 0.045 * Cbar;
  const SH = 1 + 0.015 * Cbar * T;
  const RT = -Math.sin(2 * dTheta * RAD) * RC;
  const l = dL / SL;
  const c = dC / SC;
  const h = dH / SH;
  return Math.sqrt(l * l + c * c + h * h + RT * c * h);
}

function hueOf(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const degrees = Math.atan2(b, a) / RAD;
  return degrees < 0 ? degrees + 360 : degrees;
}

function turn(difference: number): number {
  if (difference > 180) return difference - 360;
  if (difference < -180) return difference + 360;
  return difference;
}

function meanHue(h1: number, h2: number): number {
  const sum = h1 + h2;
  if (Math.abs(h1 - h2) <= 180) return sum / 2;
  return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
}

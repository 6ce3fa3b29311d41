/**
 * Every record of the reference checks that the lining engine can answer, each a row with its source and tolerance.
 * Those it cannot answer are listed with the reason in `test/reference/unanswered-physics.json`, and so are those it
 * answers in part.
 */
import { readFileSync } from 'node:fs';
import { differenceCiede2000 } from 'culori';
import { describe, expect, it } from 'vitest';
import { lengthFrom } from '#shared/length.ts';
import { LOCALES } from '#shared/locale.ts';
import { GSM_PER_OZ_YD2, parseWeight } from '#shared/weight.ts';
import { ciede2000 } from '#app/lining/light-and-heat/ciede2000.ts';
import { labOf, scaleToY, SRGB_WHITE, xyzOf, xyzOfHex } from '#app/lining/light-and-heat/colour.ts';
import type { Lab } from '#app/lining/light-and-heat/colour.ts';
import { shiftOf, stackSpectra } from '#app/lining/light-and-heat/colour-shift.ts';
import { composeLayers } from '#app/lining/light-and-heat/compose-layers.ts';
import type { Layer } from '#app/lining/light-and-heat/compose-layers.ts';
import {
  dewPoint,
  driestHumidity,
  glassTemperature,
  saturationPressure,
} from '#app/lining/light-and-heat/condensation.ts';
import { BANDS_NM, WEIGHTS } from '#app/lining/light-and-heat/observer.ts';
import { daylightAt } from '#app/lining/light-and-heat/daylight.ts';
import { damageAt, damageBetween } from '#app/lining/light-and-heat/fade.ts';
import { sayCordLaw } from '#app/lining/cord-law.ts';
import { nfpaMethod } from '#app/lining/flame-method.ts';
import {
  diffuseOf,
  pleat,
  reflectanceAt,
  transmittanceAt,
  yarnReflectance,
} from '#app/lining/light-and-heat/pleated-cloth.ts';
import { RULES } from '#app/lining/rules/index.ts';
import { solveFluxes } from '#app/lining/light-and-heat/solve-fluxes.ts';
import { partlyDrawn, reckonSummer } from '#app/lining/light-and-heat/summer.ts';
import type { SolarGlass } from '#app/lining/light-and-heat/summer.ts';
import { addedResistance, closedU, M2K_PER_R, shutterResistance } from '#app/lining/light-and-heat/warmth.ts';
import type { Permeability } from '#app/lining/light-and-heat/warmth.ts';
import { reckonWhiteness, reckonYellowness, whitenessAt } from '#app/lining/cloth/whiteness.ts';

/** What a record holds under a name: read by the readers below, which fail on anything else. */
interface Values {
  readonly [name: string]: unknown;
}

interface Check {
  readonly id: string;
  readonly topic: string;
  readonly source: string;
  readonly inputs: Values;
  readonly expected: Values;
  readonly tolerance: number | null;
}

function num(value: unknown): number {
  if (typeof value !== 'number') throw new Error(`not a number: ${JSON.stringify(value)}`);
  return value;
}
function nums(value: unknown): number[] {
  if (!Array.isArray(value)) throw new Error(`not a list: ${JSON.stringify(value)}`);
  return value.map(num);
}
function text(value: unknown): string {
  if (typeof value !== 'string') throw new Error(`not a text: ${JSON.stringify(value)}`);
  return value;
}
function values(value: unknown): Values {
  if (typeof value !== 'object' || value === null) throw new Error(`not a group: ${JSON.stringify(value)}`);
  return value as Values;
}
function list(value: unknown): unknown[] {
  if (!Array.isArray(value)) throw new Error(`not a list: ${JSON.stringify(value)}`);
  return value;
}
function layerIn(value: unknown): Layer {
  const { Tf, Rf, Tb, Rb } = values(value);
  return { Tf: num(Tf), Rf: num(Rf), Tb: num(Tb), Rb: num(Rb) };
}
function layersIn(value: unknown): Layer[] {
  return list(value).map(layerIn);
}
function labIn(value: unknown): Lab {
  const [L = Number.NaN, a = Number.NaN, b = Number.NaN] = nums(value);
  return { L, a, b };
}
function glazing(letter: string): SolarGlass {
  const found = EN_GLASS[letter];
  if (found === undefined) throw new Error(`no glazing ${letter}`);
  return found;
}

function readReference(name: string): unknown {
  return JSON.parse(readFileSync(new URL(`../../reference/${name}`, import.meta.url), 'utf8'));
}

const CHECKS = readReference('physics-checks.json') as readonly Check[];
const LISTED = readReference('unanswered-physics.json') as {
  readonly unanswered: Record<string, string>;
  readonly inPart: Record<string, string>;
};
const CLEAR = readReference('clear-glass-3mm.json') as {
  readonly glass: readonly (readonly [number, number, number])[];
  readonly sun: readonly (readonly [number, number])[];
};

const ALL = new Map(CHECKS.map((check) => [check.id, check]));
function record(id: string): Check {
  const found = ALL.get(id);
  if (found === undefined) throw new Error(`no record ${id}`);
  return found;
}

function near(found: number, wanted: number, tolerance: number | null): void {
  expect(Math.abs(found - wanted), `${found} against ${wanted}`).toBeLessThanOrEqual((tolerance ?? 0) + 1e-15);
}

/** Reference glazings of EN 14501 (from memory). */
const EN_GLASS: Readonly<Record<string, SolarGlass>> = {
  A: { g: 0.85, U: 5.8, solarTransmittance: 0.83, solarReflectanceRoom: 0.08 },
  B: { g: 0.76, U: 2.9, solarTransmittance: 0.69, solarReflectanceRoom: 0.14 },
  C: { g: 0.59, U: 1.2, solarTransmittance: 0.49, solarReflectanceRoom: 0.27 },
  D: { g: 0.32, U: 1.1, solarTransmittance: 0.27, solarReflectanceRoom: 0.38 },
};

/** Linear in a table of rows that start with the wavelength. */
function readTable(rows: readonly (readonly number[])[], nm: number, column = 1): number {
  const after = rows.findIndex((row) => (row[0] ?? 0) >= nm);
  const high = rows[after];
  const low = rows[Math.max(0, after - 1)];
  if (high === undefined || low === undefined) throw new Error(`${nm} nm is not in the table`);
  const span = (high[0] ?? 0) - (low[0] ?? 0);
  const part = span === 0 ? 0 : (nm - (low[0] ?? 0)) / span;
  return (low[column] ?? 0) + part * ((high[column] ?? 0) - (low[column] ?? 0));
}

/** The integral of f over a grid by trapezoids. */
function trapezoids(grid: readonly number[], f: (nm: number) => number): number {
  return grid.slice(1).reduce((sum, nm, i) => {
    const before = grid[i] ?? nm;
    return sum + ((nm - before) * (f(before) + f(nm))) / 2;
  }, 0);
}

function drape({ inputs, expected, tolerance }: Check): void {
  const layers = layersIn(inputs.layers_outside_to_inside);
  const cloth = composeLayers(layers);
  const wanted = layerIn(expected.stack);
  for (const key of ['Tf', 'Rf', 'Tb', 'Rb'] as const) near(cloth[key], wanted[key], tolerance);
  const all = composeLayers([layerIn(inputs.glass), ...layers]);
  near(all.Tf, num(values(expected.with_glass).T), tolerance);
  near(all.Rf, num(values(expected.with_glass).R_out), tolerance);
}

function equalLayers({ inputs, expected, tolerance }: Check): void {
  const [T, R, n] = [num(inputs.T), num(inputs.R), num(inputs.n)];
  const all = composeLayers(Array.from({ length: n }, () => ({ Tf: T, Rf: R, Tb: T, Rb: R })));
  near(all.Tf, num(expected.T), tolerance);
  near(all.Rf, num(expected.R), tolerance);
}

function listedLayers({ inputs, expected, tolerance }: Check): void {
  const all = composeLayers(layersIn(inputs.layers_outside_to_inside ?? inputs.layers));
  for (const [key, wanted] of Object.entries(expected)) near(all[key as keyof Layer], num(wanted), tolerance);
}

function internalDevice({ inputs, expected, tolerance }: Check): void {
  for (const [letter, wanted] of Object.entries(expected))
    near(reckonSummer(glazing(letter), num(inputs.tau), num(inputs.rho)).gTot, num(wanted), tolerance);
}

function keyes({ inputs, expected, tolerance }: Check): void {
  const openness = num(inputs.openness_tau_bb0);
  const cloth = { reflectance: num(inputs.rho_bt0), transmittance: num(inputs.tau_bt0), openness };
  near(yarnReflectance(cloth), num(expected.yarn_reflectance), tolerance);
  const at60 = values(expected.at60deg);
  near(reflectanceAt(cloth, 0.5), num(at60.rho), tolerance);
  near(transmittanceAt(openness, 0.5), num(at60.tau_bb), tolerance);
  near(transmittanceAt(cloth.transmittance, 0.5), num(at60.tau_total), tolerance);
  const diffuse = diffuseOf(cloth);
  near(diffuse.reflectance, num(values(expected.diffuse).rho), tolerance);
  near(diffuse.transmittance, num(values(expected.diffuse).tau), tolerance);
  const { reflectance, transmittance } = pleat(
    {
      transmittance: diffuse.transmittance,
      reflectanceStreet: diffuse.reflectance,
      reflectanceRoom: diffuse.reflectance,
    },
    num(inputs.pleat_depth_over_spacing),
  );
  near(reflectance, num(values(expected.pleated).rho), tolerance);
  near(transmittance, num(values(expected.pleated).tau), tolerance);
}

function shutter({ id, inputs, expected, tolerance }: Check): void {
  const dR = shutterResistance(id.replace('dR-', '') as Permeability, num(inputs.R_sh));
  near(dR, num(expected.dR), tolerance);
  const wanted = nums(expected.U_closed);
  nums(inputs.U).forEach((U, i) => near(closedU(U, dR), wanted[i] ?? Number.NaN, tolerance));
}

function addOn({ inputs, expected, tolerance }: Check): void {
  const wanted = nums(expected.U_closed);
  const reduction = nums(expected.reduction_pct);
  nums(inputs.dR).forEach((dR, i) => {
    const U = closedU(num(inputs.U), dR);
    near(U, wanted[i] ?? Number.NaN, tolerance);
    // Printed to two decimals of a per cent.
    near(100 * (1 - U / num(inputs.U)), reduction[i] ?? Number.NaN, 0.005);
  });
}

function implied({ inputs, expected, tolerance }: Check): void {
  const U0 = num(inputs.U0);
  near(addedResistance(U0, U0 * (1 - num(inputs.reduction_pct) / 100)), num(expected.dR), tolerance);
}

function dew({ inputs, expected, tolerance }: Check): void {
  near(dewPoint(num(inputs.T), num(inputs.RH)), num(expected.dew_point_C), tolerance);
}

function saturation({ inputs, expected, tolerance }: Check): void {
  near(saturationPressure(num(inputs.T)), num(expected.Pa), tolerance);
}

function coldGlass({ inputs, expected, tolerance }: Check): void {
  const Ti = num(inputs.Ti);
  const temperatures = nums(expected.T_glass);
  const humidities = nums(expected.RH_max_pct);
  nums(inputs.dR).forEach((dR, i) => {
    const glass = glassTemperature(Ti, num(inputs.Te), num(inputs.U), dR);
    near(glass, temperatures[i] ?? Number.NaN, tolerance);
    near(100 * driestHumidity(Ti, glass), humidities[i] ?? Number.NaN, tolerance);
  });
}

function damage({ inputs, expected, tolerance }: Check): void {
  near(damageAt(num(inputs.lambda_nm)), num(expected.cie89_3), tolerance);
}

function difference({ inputs, expected, tolerance }: Check): void {
  near(ciede2000(labIn(inputs.Lab1), labIn(inputs.Lab2)), num(expected.dE00), tolerance);
}

function whiteness({ inputs, expected, tolerance }: Check): void {
  const lab = labOf(xyzOfHex(text(inputs.srgb)), SRGB_WHITE);
  const wanted = labIn(expected.Lab65);
  near(lab.L, wanted.L, tolerance);
  near(lab.a, wanted.a, tolerance);
  near(lab.b, wanted.b, tolerance);
  near(ciede2000(lab, { L: 100, a: 0, b: 0 }), num(expected.dE00_vs_white), tolerance);
  const xyz = xyzOfHex(text(inputs.srgb));
  const { white, tint } = reckonWhiteness(xyz, D65_FULL);
  near(white, num(expected.W), tolerance);
  near(tint, num(expected.T), tolerance);
  near(reckonYellowness(xyz), num(expected.YI), tolerance);
}

/** D65 of the record's chromaticity, x 0.31272 and y 0.32903. */
const D65_FULL = { X: (100 * 0.31272) / 0.32903, Y: 100, Z: (100 * (1 - 0.31272 - 0.32903)) / 0.32903 };

function cieWhiteness({ inputs, expected, tolerance }: Check): void {
  const at = (name: string) => {
    const [x = Number.NaN, y = Number.NaN] = nums(inputs[name]);
    return { x, y };
  };
  const { white, tint } = whitenessAt(num(inputs.Y), at('xy'), at('xy_n'));
  near(white, num(expected.W), tolerance);
  near(tint, num(expected.T), tolerance);
}

function yellowness({ inputs, expected, tolerance }: Check): void {
  const [X = Number.NaN, Y = Number.NaN, Z = Number.NaN] = nums(inputs.XYZ);
  near(reckonYellowness({ X, Y, Z }), num(expected.YI_E313), tolerance);
}

function ouncesYard({ inputs, expected, tolerance }: Check): void {
  const ounces = num(inputs.oz_yd2);
  near(ounces * GSM_PER_OZ_YD2, num(expected.g_m2), tolerance);
  near(parseWeight(`${ounces} oz/yd2`, lengthFrom(54, 'in')) ?? Number.NaN, num(expected.g_m2), tolerance);
}

type Answer = (check: Check) => void;

const ANSWERS: Readonly<Record<string, Answer>> = {
  'stack-001': listedLayers,
  'stack-003': listedLayers,
  'stack-eq2': equalLayers,
  'stack-eq3': equalLayers,
  'stack-eq4': equalLayers,
  'stack-net-1': ({ inputs, expected, tolerance }) => {
    const found = solveFluxes(layersIn(inputs.layers_outside_to_inside));
    near(found.transmitted, num(expected.T), tolerance);
    near(found.reflected, num(expected.R), tolerance);
    const absorbed = nums(expected.absorbed);
    found.absorbed.forEach((a, i) => near(a, absorbed[i] ?? Number.NaN, tolerance));
    near(found.inward[2] ?? Number.NaN, num(expected.flux_arriving_at_face_back), tolerance);
    const sum = found.absorbed.reduce((s, a) => s + a, found.transmitted + found.reflected);
    near(sum, num(expected.sum), tolerance);
  },
  'stack-prop-1': ({ tolerance }) => {
    // Named cases of what properties.test.ts checks by chance: order, and one layer more.
    const a: Layer = { Tf: 0.35, Rf: 0.58, Tb: 0.35, Rb: 0.58 };
    const b: Layer = { Tf: 0.25, Rf: 0.62, Tb: 0.25, Rb: 0.62 };
    near(composeLayers([a, b]).Tf, composeLayers([b, a]).Tf, tolerance);
    expect(composeLayers([a, b]).Rf).not.toBeCloseTo(composeLayers([b, a]).Rf, 3);
    expect(composeLayers([a, b]).Tf).toBeLessThanOrEqual(Math.min(a.Tf, b.Tf));
  },
  'gtot-wincalc': ({ inputs, expected, tolerance }) => {
    const glass = { ...glazing('A'), g: num(inputs.g), U: num(inputs.U_summer) };
    const found = reckonSummer(glass, num(inputs.tau), num(inputs.rho)).gTot;
    near(found, num(expected.g_tot_simplified), tolerance);
    for (const full of nums(expected.iso15099_SHGC)) {
      expect(found - full).toBeGreaterThan(-0.02);
      expect(found - full).toBeLessThan(0.1);
    }
  },
  'U-wincalc': ({ expected, tolerance }) => {
    const bare = num(expected.U_bare);
    const added = nums(expected.dR);
    const reduction = nums(expected.reduction_pct);
    ['U_permeability_0', 'U_permeability_0.15', 'U_permeability_0.75'].forEach((key, i) => {
      const U = num(expected[key]);
      near(addedResistance(bare, U), added[i] ?? Number.NaN, tolerance);
      near(100 * (1 - U / bare), reduction[i] ?? Number.NaN, 0.005);
    });
  },
  'iac-table': ({ inputs, expected }) => {
    const columns = list(inputs.columns).map(text);
    const clear = { '1 clear (1a)': 'A', '2 clear (5a)': 'B' };
    const drapes = { 'drape closed-weave dark': 'keyes-III_D', 'drape closed-weave light': 'keyes-III_L' };
    for (const [row, letter] of Object.entries(clear)) {
      for (const [column, id] of Object.entries(drapes)) {
        const { rho, tau } = values(record(id).expected.pleated);
        const wanted = nums(expected[row])[columns.indexOf(column)] ?? Number.NaN;
        // The honest tolerance of the whole chain is that of xval-closed-light.
        near(reckonSummer(glazing(letter), num(tau), num(rho)).Fc, wanted, record('xval-closed-light').tolerance);
      }
    }
  },
  'xval-closed-light': ({ inputs, expected, tolerance }) => {
    const [tau, rho] = [num(inputs.pleat_effective_T), num(inputs.pleat_effective_R)];
    near(reckonSummer(glazing('A'), tau, rho).Fc, num(expected.ASHRAE_single), tolerance);
    near(reckonSummer(glazing('B'), tau, rho).Fc, num(expected.ASHRAE_double), tolerance);
  },
  'dmg-ratio': ({ expected, tolerance }) => near(damageAt(400) / damageAt(550), num(expected.ratio), tolerance),
  'tdw-clear3': ({ expected, tolerance }) => {
    const grid = CLEAR.sun.map(([nm]) => nm).filter((nm) => nm <= 700);
    const weighed = (nm: number): number => readTable(CLEAR.sun, nm) * damageAt(nm);
    const passed = trapezoids(grid, (nm) => weighed(nm) * readTable(CLEAR.glass, nm));
    near(passed / trapezoids(grid, weighed), num(expected.Tdw), tolerance);
  },
  'dmg-share-d65': ({ inputs, expected, tolerance }) => {
    const compare = (between: (from: number, to: number) => number, wanted: unknown): void =>
      list(inputs.bands).forEach((band, i) => {
        const [from = Number.NaN, to = Number.NaN] = nums(band);
        near(between(from, to) / between(300, 700), nums(wanted)[i] ?? Number.NaN, tolerance);
      });
    const steps = (from: number, to: number): number[] => Array.from({ length: to - from + 1 }, (_, i) => from + i);
    const behind = (from: number, to: number): number =>
      trapezoids(steps(from, to), (nm) => daylightAt(nm) * damageAt(nm) * readTable(CLEAR.glass, nm));
    const direct = (from: number, to: number): number =>
      trapezoids(steps(from, to), (nm) => readTable(CLEAR.sun, nm) * damageAt(nm));
    compare(damageBetween, expected.D65_open);
    compare(behind, expected.D65_behind_3mm_clear);
    compare(direct, expected['AM1.5_direct']);
  },
  'de2000-trap': ({ inputs, expected, tolerance }) => {
    const [one, two] = [labIn(inputs.Lab1), labIn(inputs.Lab2)];
    near(ciede2000(one, two), num(expected.dE00_right), tolerance);
    const theirs = differenceCiede2000();
    const as = (mode: 'lab' | 'lab65', { L, a, b }: Lab) => ({ mode, l: L, a, b });
    near(theirs(as('lab65', one), as('lab65', two)), num(expected.dE00_right), tolerance);
    near(theirs(as('lab', one), as('lab', two)), num(expected.dE00_wrong), tolerance);
  },
  'shift-spectral': ({ inputs, expected, tolerance }) => {
    const [S, x, y, z] = [nums(inputs.S_D65), nums(inputs.x), nums(inputs.y), nums(inputs.z)];
    expect(BANDS_NM).toEqual(nums(inputs.wl));
    BANDS_NM.forEach((nm, i) => {
      expect(daylightAt(nm)).toBe(S[i]);
      const over = (part: number | undefined): number => (part ?? Number.NaN) / (y[i] ?? Number.NaN);
      near((WEIGHTS.X[i] ?? 0) / (WEIGHTS.Y[i] ?? 1), over(x[i]), 1e-9 * over(x[i]));
      near((WEIGHTS.Z[i] ?? 0) / (WEIGHTS.Y[i] ?? 1), over(z[i]), 1e-9 * over(z[i]));
    });
    const layer = (name: string) => ({
      transmittance: nums(inputs[`${name}_T`]),
      reflectance: nums(inputs[`${name}_R`]),
    });
    const behind = (lining: string) => stackSpectra([layer('face'), layer(lining)], null);
    for (const lining of ['white', 'ivory']) {
      const wanted = values(expected[lining]);
      const xyz = xyzOf(behind(lining).toRoom);
      const sum = xyz.X + xyz.Y + xyz.Z;
      const [wantedX = Number.NaN, wantedY = Number.NaN] = nums(wanted.xy);
      near(xyz.X / sum, wantedX, tolerance);
      near(xyz.Y / sum, wantedY, tolerance);
      near(xyz.Y, num(wanted.Y_pct), tolerance);
      const lab = labOf(scaleToY(xyz, 50));
      const wantedLab = labIn(wanted.Lab_scaled_Y50);
      near(lab.L, wantedLab.L, tolerance);
      near(lab.a, wantedLab.a, tolerance);
      near(lab.b, wantedLab.b, tolerance);
    }
    const day = (lining: string) => shiftOf(behind(lining)).byDay;
    near(ciede2000(day('white'), day('ivory')), num(expected.dE00_transmitted_scaled_Y50), tolerance);
    const room = (lining: string) => labOf(xyzOf(behind(lining).backToRoom));
    near(ciede2000(room('white'), room('ivory')), num(expected.dE00_room_lit_only), tolerance);
    const swatch = (lining: string) => labOf(xyzOf(layer(lining).reflectance));
    near(ciede2000(swatch('white'), swatch('ivory')), num(expected.dE00_lining_swatches), tolerance);
  },
  'unit-R': ({ inputs, expected, tolerance }) => near(num(inputs.R_IP) * M2K_PER_R, num(expected.m2K_W), tolerance),
  'unit-nfpa': ({ inputs, expected, tolerance }) =>
    near(num(inputs.g_m2) / GSM_PER_OZ_YD2, num(expected.oz_yd2), tolerance),
  'unit-linyd': ({ inputs, expected, tolerance }) => {
    const width = lengthFrom(num(inputs.width_in), 'in');
    near(parseWeight(`${num(inputs.oz_lin_yd)} oz/yd`, width) ?? Number.NaN, num(expected.g_m2), tolerance);
  },
  'rule-nfpa701': ({ inputs, expected }) => {
    const found = list(inputs.cases).map((each) => {
      const { gsm, vinyl_blackout } = values(each);
      return nfpaMethod(num(gsm), vinyl_blackout === true);
    });
    expect(found).toEqual(expected.method);
  },
  'rule-cord-us': ({ expected }) => {
    expect(expected['16CFR1260_in_force']).toBe(false);
    const told = RULES.map((rule) => `${rule.rests.toString()} ${rule.says.toString()}`);
    const law = LOCALES.map((locale) => sayCordLaw(locale));
    expect([...told, ...law].join(' ')).not.toMatch(/1260/);
    // In force, and the date from which the standard holds: neutrally worded.
    expect(expected['16CFR1120.3_e_f_in_force']).toBe(true);
    expect(sayCordLaw('en-US')).toMatch(/16 CFR 1120\.3\(e\) and \(f\) stand/);
    expect(text(expected['ANSI_WCMA_A100.1_2022_effective'])).toBe('2024-06-01');
    expect(sayCordLaw('en-US')).toMatch(/on or after 1 June 2024/);
  },
};

/** Records that come in families, by how their id begins. */
const FAMILIES: readonly (readonly [RegExp, Answer])[] = [
  [/^stack-drape-\d$/, drape],
  [/^gtot-typ-/, internalDevice],
  [
    /^iac-partial-/,
    ({ inputs, expected, tolerance }) =>
      near(partlyDrawn(num(inputs.IAC_cl), num(inputs.F_closed)), num(expected.IAC), tolerance),
  ],
  [/^keyes-/, keyes],
  [/^dR-(high|average|low|tight)$/, shutter],
  [/^U-nathers-/, addOn],
  [/^dR-implied-/, implied],
  [/^cond-/, coldGlass],
  [/^dew-/, dew],
  [/^psat-/, saturation],
  [/^dmg-\d+$/, damage],
  [/^de2000-\d+$/, difference],
  [/^srgb-/, whiteness],
  [/^white-cie-/, cieWhiteness],
  [/^white-e313-/, yellowness],
  [/^unit-(ozyd2|[\d.]+oz)$/, ouncesYard],
];

function answerOf(id: string): Answer | undefined {
  return ANSWERS[id] ?? FAMILIES.find(([pattern]) => pattern.test(id))?.[1];
}

const ANSWERED = CHECKS.filter((check) => answerOf(check.id) !== undefined);

describe('physics checks: every record is answered or listed with its reason', () => {
  it('has no record that is in neither place or in both', () => {
    const wrong = CHECKS.filter((check) => (answerOf(check.id) !== undefined) === check.id in LISTED.unanswered);
    expect(wrong.map((check) => check.id)).toEqual([]);
  });
  it('lists no record that does not exist, and answers in part only what it answers', () => {
    expect(Object.keys(LISTED.unanswered).filter((id) => !ALL.has(id))).toEqual([]);
    expect(Object.keys(LISTED.inPart).filter((id) => answerOf(id) === undefined)).toEqual([]);
  });
});

describe('physics checks', () => {
  it.each(ANSWERED.map((check) => [`${check.id}: ${check.topic} (${check.source})`, check] as const))(
    '%s',
    (_, check) => {
      answerOf(check.id)?.(check);
    },
  );
});

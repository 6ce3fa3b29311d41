/** A treatment in the words that a client reads: what hangs there, in which cloth, how large, how full. */
import { exhaustive } from '#shared/fault.ts';
import type { BedSkirtTreatment } from '#shared/treatments/bed-skirt.ts';
import type { CorniceTreatment } from '#shared/treatments/cornice.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { liesOnFloor } from '#shared/treatments/panels.ts';
import type { RomanShadeTreatment, RomanStyle, ShadeLift } from '#shared/treatments/roman-shade.ts';
import type { ShowerCurtainTreatment } from '#shared/treatments/shower-curtain.ts';
import type { SwagsTreatment } from '#shared/treatments/swags.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import type { ValanceStyle, ValanceTreatment } from '#shared/treatments/valance.ts';
import type { Thousandths } from '#shared/practice.ts';
import type { TierResult } from '#shared/result.ts';
import type { Arrangement, Heading, MountPlace } from '#shared/words.ts';
import { sizeShade } from '#app/estimating/roman-shade/size-shade.ts';
import { roundFigure } from '#app/pricing/round-figure.ts';
import { NBSP, capital, sayCount, sayList } from './speak.ts';
import type { Speech } from './speak.ts';

const HEADED: Readonly<Record<Heading, string>> = {
  'pinch-pleat': 'pinch-pleated',
  goblet: 'goblet-pleated',
  'box-pleat': 'box-pleated',
  'pencil-pleat': 'pencil-pleated',
  'rod-pocket': 'rod-pocket',
  tab: 'tab-top',
  grommet: 'grommet-top',
  wave: 'wave-headed',
  flat: 'flat-headed',
};

interface Forms {
  readonly one: string;
  readonly many: string;
}

const ARRANGED: Readonly<Record<Arrangement, Forms>> = {
  pair: { one: 'pair', many: 'pairs' },
  'one-way': { one: 'panel drawn one way', many: 'panels drawn one way' },
  single: { one: 'single panel', many: 'single panels' },
  'pair-stationary': { one: 'pair of still panels', many: 'pairs of still panels' },
};

const CAFE: Readonly<Record<Arrangement, Forms>> = {
  pair: { one: 'pair of café tiers', many: 'pairs of café tiers' },
  'one-way': { one: 'café tier drawn one way', many: 'café tiers drawn one way' },
  single: { one: 'single café tier', many: 'single café tiers' },
  'pair-stationary': { one: 'pair of still café tiers', many: 'pairs of still café tiers' },
};

const VALANCES: Readonly<Record<ValanceStyle, Forms>> = {
  tailored: { one: 'tailored valance', many: 'tailored valances' },
  'box-pleated': { one: 'box-pleated valance', many: 'box-pleated valances' },
  gathered: { one: 'gathered valance', many: 'gathered valances' },
  scalloped: { one: 'scalloped valance', many: 'scalloped valances' },
  balloon: { one: 'balloon valance', many: 'balloon valances' },
};

const SHADES: Readonly<Record<RomanStyle, Forms>> = {
  flat: { one: 'flat Roman shade', many: 'flat Roman shades' },
  'soft-fold': { one: 'Roman shade in soft folds', many: 'Roman shades in soft folds' },
  relaxed: { one: 'relaxed Roman shade', many: 'relaxed Roman shades' },
};

const SKIRTS: Readonly<Record<BedSkirtTreatment['style'], Forms>> = {
  gathered: { one: 'gathered bed skirt', many: 'gathered bed skirts' },
  tailored: { one: 'tailored bed skirt', many: 'tailored bed skirts' },
  'box-pleated': { one: 'box-pleated bed skirt', many: 'box-pleated bed skirts' },
};

const LIFTS: Readonly<Record<ShadeLift, string>> = {
  cordless: 'cordless',
  'inaccessible-cords': 'its cords out of reach',
  motor: 'raised by a motor',
  cords: 'raised by cords within reach',
};

/** `Pinch-pleated pair in Larch stripe`; without a cloth when its options are of several. */
export function nameTreatment(treatment: Treatment, cloth: string | null): string {
  const what = nameKind(treatment);
  return capital(cloth === null ? what : `${what} in ${cloth}`);
}

/** What hangs there; a new kind is one more line. */
function nameKind(treatment: Treatment): string {
  const { quantity } = treatment;
  switch (treatment.kind) {
    case 'panels':
      return namePanels(treatment);
    case 'valance':
      return counted(quantity, VALANCES[treatment.style]);
    case 'cornice':
      return counted(quantity, { one: 'padded cornice', many: 'padded cornices' });
    case 'swags':
      return nameSwags(treatment);
    case 'roman-shade':
      return counted(quantity, SHADES[treatment.style]);
    case 'bed-skirt':
      return counted(quantity, SKIRTS[treatment.style]);
    case 'shower-curtain':
      return counted(
        quantity,
        treatment.arrangement === 'pair'
          ? { one: 'pair of shower curtains', many: 'pairs of shower curtains' }
          : { one: 'shower curtain', many: 'shower curtains' },
      );
    default:
      return exhaustive(treatment);
  }
}

function counted(quantity: number, forms: Forms): string {
  return quantity === 1 ? forms.one : `${sayCount(quantity)} ${forms.many}`;
}

/** `72 in wide, 84 in long, 2.47 times full`: the fullness made, as the client gets it. */
export function sayMeasures(treatment: Treatment, made: TierResult, speech: Speech): string {
  const each = treatment.quantity === 1 ? '' : 'each ';
  const full = (asked: Thousandths): string => {
    const got = made.takeoff[0]?.fullnessMade ?? null;
    return `${speech.fullness(got === null ? asked : 1000 * roundFigure(got, 2))} times full`;
  };
  return `${each}${measuresOf(treatment, speech, full).join(', ')}`;
}

/** The fullness in words, from the one asked for. */
type SayFull = (asked: Thousandths) => string;

function measuresOf(treatment: Treatment, speech: Speech, full: SayFull): readonly string[] {
  switch (treatment.kind) {
    case 'panels':
      return measurePanels(treatment, speech, full);
    case 'valance':
      return measureValance(treatment, speech, full);
    case 'cornice':
      return measureCornice(treatment, speech);
    case 'swags':
      return measureSwags(treatment, speech);
    case 'roman-shade':
      return measureShade(treatment, speech);
    case 'bed-skirt':
      return measureSkirt(treatment, speech, full);
    case 'shower-curtain':
      return measureCurtain(treatment, speech);
    default:
      return exhaustive(treatment);
  }
}

function namePanels(panels: PanelsTreatment): string {
  const arranged = (panels.cafe ? CAFE : ARRANGED)[panels.arrangement];
  if (panels.pieces > 2) {
    const row = `${sayCount(panels.pieces)} ${HEADED[panels.heading]} still panels on one rod`;
    return panels.quantity === 1 ? row : `${sayCount(panels.quantity)} rows of ${row}`;
  }
  if (panels.quantity === 1) return `${HEADED[panels.heading]} ${arranged.one}`;
  return `${sayCount(panels.quantity)} ${HEADED[panels.heading]} ${arranged.many}`;
}

function measurePanels(panels: PanelsTreatment, speech: Speech, full: SayFull): readonly string[] {
  const { hang, arch, bay } = panels;
  return [
    ...(bay === null ? [] : [`round a bay of ${sayCount(bay.runs.length)} runs`]),
    `${speech.length(panels.rodWidth)} wide`,
    `${speech.length(panels.finishedLength)} long`,
    ...(arch === null ? [] : [`its top arched by ${speech.length(arch)}`]),
    ...(hang && liesOnFloor(hang) ? [`${speech.length(hang.by)} of it lying on the floor`] : []),
    sayFullness(panels, speech, full),
  ];
}

function sayFullness(panels: PanelsTreatment, speech: Speech, full: SayFull): string {
  const { halfWidths } = panels;
  if (halfWidths === null) return full(panels.fullness);
  const widths = speech.fullness(halfWidths * 500);
  return `${widths}${NBSP}${halfWidths === 2 ? 'width' : 'widths'} of cloth each`;
}

function measureValance(valance: ValanceTreatment, speech: Speech, full: SayFull): readonly string[] {
  const details = (): readonly string[] => {
    switch (valance.style) {
      case 'tailored':
        return [valance.stiffened ? 'stiffened, on a covered board' : 'on a covered board'];
      case 'box-pleated':
        return [`${sayCount(valance.pleats)} ${valance.pleats === 1 ? 'pleat' : 'pleats'}`];
      case 'gathered':
        return [full(valance.fullness)];
      case 'scalloped':
        return [`scallops ${speech.length(valance.depth)} deep`];
      case 'balloon':
        return [full(valance.fullness)];
      default:
        return exhaustive(valance);
    }
  };
  return [
    `${speech.length(valance.width)} wide`,
    `${speech.length(valance.finishedLength)} deep`,
    ...details(),
    ...(valance.welt === null ? [] : ['a welt along its hem']),
  ];
}

function measureCornice(cornice: CorniceTreatment, speech: Speech): readonly string[] {
  const { top, bottom } = cornice.welts;
  const welts = [...(top === null ? [] : ['top']), ...(bottom === null ? [] : ['bottom'])];
  return [
    `${speech.length(cornice.width)} wide`,
    `${speech.length(cornice.finishedLength)} high`,
    ...(cornice.shapedEdge === null ? [] : ['its lower edge shaped']),
    ...(welts.length === 0 ? [] : [`welted at ${sayList(welts)}`]),
  ];
}

function nameSwags(swags: SwagsTreatment): string {
  const tails = [
    ...(swags.cascades === null ? [] : ['cascades']),
    ...(swags.jabots === null ? [] : [swags.jabots.count === 1 ? 'a jabot' : 'jabots']),
  ];
  const style = swags.style === 'overlapped' ? 'overlapped swags' : 'separate swags';
  const one = swags.swags === 1 ? 'a single swag' : style;
  const row = tails.length === 0 ? one : `${one} with ${sayList(tails)}`;
  return swags.quantity === 1 ? row : `${sayCount(swags.quantity)} rows of ${row}`;
}

function measureSwags(swags: SwagsTreatment, speech: Speech): readonly string[] {
  return [
    `${speech.length(swags.width)} wide`,
    `${speech.length(swags.finishedLength)} deep`,
    ...(swags.cascades === null ? [] : [`cascades to ${speech.length(swags.cascades.longest)}`]),
    ...(swags.contrast === null ? [] : ['their lining showing in the folds']),
  ];
}

/** Inside the frame or before it, size, and how it is raised. */
function measureShade(shade: RomanShadeTreatment, speech: Speech): readonly string[] {
  const { width, length } = sizeShade(shade);
  return [
    PLACES[shade.mount.where],
    `${speech.length(width)} wide`,
    `${speech.length(length)} long`,
    LIFTS[shade.lift],
    ...(shade.valance === null ? [] : [`with a valance of its own, ${speech.length(shade.valance.depth)} deep`]),
  ];
}

const PLACES: Readonly<Record<MountPlace, string>> = {
  inside: 'inside the frame',
  wall: 'in front of the frame',
  ceiling: 'from the ceiling',
};

function measureSkirt(skirt: BedSkirtTreatment, speech: Speech, full: SayFull): readonly string[] {
  const { bed, drop, splitCorners } = skirt;
  return [
    `for a bed ${speech.length(bed.width)} by ${speech.length(bed.length)}`,
    `${speech.length(drop)} drop`,
    ...(skirt.style === 'tailored' ? [] : [full(skirt.fullness)]),
    splitCorners ? 'open at the corners' : 'on three sides',
  ];
}

function measureCurtain(curtain: ShowerCurtainTreatment, speech: Speech): readonly string[] {
  const liners = { none: [], bought: ['with a liner'], cloth: ['with a liner of its own'] } as const;
  return [
    `${speech.length(curtain.finishedWidth)} wide`,
    `${speech.length(curtain.finishedLength)} long`,
    ...liners[curtain.liner.from],
  ];
}

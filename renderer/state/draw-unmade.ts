/** Kinds other than panels while somebody is still typing: what is written is drawn, what is not is null. */
import type { DrawnTail, DrawnTreatment, Given, Hex } from '#app/drawing/drawn-room.ts';
import type { Ticks } from '#shared/length.ts';
import type { OtherMake, TicksForm } from '#shared/records/treatment-make.ts';
import { BED_SKIRT_STYLES } from '#shared/treatments/bed-skirt.ts';
import { ROMAN_STYLES } from '#shared/treatments/roman-shade.ts';
import { SWAG_STYLES } from '#shared/treatments/swags.ts';
import { VALANCE_STYLES } from '#shared/treatments/valance.ts';
import { MOUNTS } from '#shared/words.ts';
import { readAt } from './form-path.ts';
import { countedSides } from './write-sides.ts';

export interface UnmadeBase {
  readonly key: string;
  readonly name: string;
  readonly colour: Hex | null;
}

function numberAt(form: TicksForm, path: string): number | null {
  const value = readAt(form, path);
  return typeof value === 'number' ? value : null;
}
function ticksAt(form: TicksForm, path: string): Given {
  return numberAt(form, path) as Ticks | null;
}
function oneOf<T extends string>(values: readonly [T, ...T[]], given: unknown): T {
  return values.find((each) => each === given) ?? values[0];
}

function topOf(form: TicksForm) {
  const sides = countedSides(form['return']);
  return {
    mount: { where: oneOf(MOUNTS, readAt(form, 'mount.where')), above: ticksAt(form, 'mount.above') },
    width: ticksAt(form, 'width'),
    finishedLength: ticksAt(form, 'finishedLength'),
    returns: { left: (sides?.left ?? null) as Given, right: (sides?.right ?? null) as Given },
  };
}

function tailAt(form: TicksForm, path: string): DrawnTail | null {
  if (!form[path]) return null;
  return {
    longest: ticksAt(form, `${path}.longest`),
    shortest: ticksAt(form, `${path}.shortest`),
    width: ticksAt(form, `${path}.width`),
    pleats: numberAt(form, `${path}.pleats`),
  };
}

export function drawUnmade({ kind, form }: OtherMake, base: UnmadeBase): DrawnTreatment {
  switch (kind) {
    case 'valance':
      return {
        ...base,
        ...topOf(form),
        kind,
        style: oneOf(VALANCE_STYLES, form['style']),
        hang: form['rod'] ? 'rod' : 'board',
        header: ticksAt(form, 'rod.header'),
        fullness: numberAt(form, 'fullness'),
        pleats: numberAt(form, 'pleats'),
        pleatsAt: form['pleatsAt'] === 'corners' ? 'corners' : 'between',
        pleatTakeUp: ticksAt(form, 'pleatTakeUp'),
        scallops: numberAt(form, 'scallops'),
        scallopDepth: ticksAt(form, 'scallopDepth'),
        puffs: numberAt(form, 'puffs'),
        welt: null,
      };
    case 'cornice':
      return {
        ...base,
        ...topOf(form),
        kind,
        welts: { top: null, bottom: null },
        shapedEdge: ticksAt(form, 'shapedEdge'),
      };
    case 'swags': {
      const jabots = tailAt(form, 'jabots');
      return {
        ...base,
        ...topOf(form),
        kind,
        style: oneOf(SWAG_STYLES, form['style']),
        swags: numberAt(form, 'swags'),
        cascades: tailAt(form, 'cascades'),
        jabots: jabots ? { ...jabots, count: numberAt(form, 'jabots.count') } : null,
        lining: null,
        welt: null,
      };
    }
    case 'roman-shade': {
      const opening = readAt(form, 'size.basis') === 'opening';
      return {
        ...base,
        ...topOf(form),
        kind,
        style: oneOf(ROMAN_STYLES, form['style']),
        width: ticksAt(form, opening ? 'size.widths.0' : 'size.width'),
        finishedLength: ticksAt(form, opening ? 'size.lengths.0' : 'size.length'),
        rows: null,
        raisedStack: null,
        valance: ticksAt(form, 'valance.depth'),
        drawn: 'half-raised',
      };
    }
    case 'bed-skirt':
      return {
        ...base,
        kind,
        style: oneOf(BED_SKIRT_STYLES, form['style']),
        bed: { width: ticksAt(form, 'bed.width'), length: ticksAt(form, 'bed.length') },
        drop: ticksAt(form, 'drop'),
        against: form['against'] === 'long-side' ? 'long-side' : 'head',
        fullness: numberAt(form, 'fullness'),
        pleats: null,
        middlePleats: numberAt(form, 'middlePleats'),
        splitCorners: form['splitCorners'] === true,
      };
    case 'shower-curtain':
      return {
        ...base,
        kind,
        arrangement: form['arrangement'] === 'pair' ? 'pair' : 'one-piece',
        finishedWidth: ticksAt(form, 'finishedWidth'),
        finishedLength: ticksAt(form, 'finishedLength'),
        eyelets: numberAt(form, 'eyelets'),
        liner: Boolean(form['liner']),
      };
  }
}

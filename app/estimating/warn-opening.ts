/**
 * Several treatments at one opening against each other, room to street: what covers the head, draperies, sheers, shades,
 * what hangs inside the frame. Common practice: a drapery over another returns 6 to 6 1/2 in; what covers a treatment
 * returns as much as it and 2 in, and goes past its rod; of two rods the inner one is no longer and stands closer.
 */
import { at } from '#shared/fault.ts';
import type { Warning } from '#shared/fault.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import type { Say } from './say.ts';

export interface HungBeside {
  readonly treatment: Treatment;
  /** As it is finished: a shade by its size. */
  readonly width: Ticks;
  readonly sheer: boolean;
}

type Kind = Treatment['kind'];
type Hung<K extends Kind> = HungBeside & { readonly treatment: Extract<Treatment, { readonly kind: K }> };
type Top = Hung<'valance' | 'cornice' | 'swags'>;
type Under = Hung<'panels' | 'roman-shade'>;

/** What was declined is left out by the caller. */
export function warnOpening(hung: readonly HungBeside[], say: Say): Warning[] {
  const outside = hung.filter((each) => standsOut(each.treatment) !== null);
  const tops = outside.filter(isTop);
  const panels = outside.filter((each) => isKind(each, 'panels')).filter(({ treatment }) => !treatment.cafe);
  const shades = outside.filter((each) => isKind(each, 'roman-shade'));
  const under: readonly Under[] = [...panels, ...shades];
  return [
    ...tops.flatMap((top) => warnTop(top, under, say)),
    ...pairsOf(panels).flatMap(([front, back]) => [
      ...warnReturn(front, back, neededOver(front, back), say),
      ...warnInnerRod(front, back, say),
    ]),
    ...panels.flatMap((front) =>
      shades.flatMap((shade) => [
        ...warnReturn(front, shade, neededOver(front, shade), say),
        ...warnShadeWidth(front, shade, say),
      ]),
    ),
  ];
}

function isKind<K extends Kind>(each: HungBeside, kind: K): each is Hung<K> {
  return each.treatment.kind === kind;
}

function isTop(each: HungBeside): each is Top {
  return isKind(each, 'valance') || isKind(each, 'cornice') || isKind(each, 'swags');
}

/** From the wall to its front; 0 where nobody gave a return, null for what hangs inside the frame or beside no window. */
function standsOut(treatment: Treatment): number | null {
  if (treatment.kind === 'bed-skirt' || treatment.kind === 'shower-curtain') return null;
  if (treatment.mount.where === 'inside') return null;
  const out = Math.max(treatment.returns.left, treatment.returns.right);
  return treatment.kind === 'roman-shade' ? Math.max(out, treatment.practice.romanShade.boardDepth) : out;
}

/**
 * Every drapery with what hangs behind it: a sheer behind what is none, else what stands closer to the wall, else what is
 * listed later. Two single panels stand beside one another.
 */
function pairsOf(panels: readonly Hung<'panels'>[]): [Hung<'panels'>, Hung<'panels'>][] {
  const isBefore = (one: Hung<'panels'>, other: Hung<'panels'>, listed: boolean): boolean => {
    if (one.sheer !== other.sheer) return other.sheer;
    const [own, theirs] = [standsOut(one.treatment) ?? 0, standsOut(other.treatment) ?? 0];
    return own === theirs ? listed : own > theirs;
  };
  return panels.flatMap((one, index) =>
    panels
      .filter((other) => other !== one && !(isSingle(one) && isSingle(other)))
      .filter((other) => isBefore(one, other, index < panels.indexOf(other)))
      .map((other): [Hung<'panels'>, Hung<'panels'>] => [one, other]),
  );
}

function isSingle({ treatment }: Hung<'panels'>): boolean {
  return treatment.arrangement === 'single' && treatment.pieces === 1;
}

/** The least return of a drapery over what hangs behind it. */
function neededOver({ treatment }: Hung<'panels'>, behind: Under): number {
  const { layers } = treatment.practice;
  const clear = (standsOut(behind.treatment) ?? 0) + layers.clear;
  return behind.treatment.kind === 'panels' ? Math.max(layers.drapery, clear) : clear;
}

function warnReturn(front: HungBeside, back: Under, needed: number, say: Say): Warning[] {
  const own = standsOut(front.treatment) ?? 0;
  const by = standsOut(back.treatment) ?? 0;
  // Neither says where it stands: that no return was given is told when the job is read.
  if (own >= needed || (own === 0 && by === 0)) return [];
  const length = (value: number): string => `${say.length(value)} ${say.unit}`;
  const stands = by === 0 ? 'whose return nobody gave' : `which stands ${length(by)} from the wall`;
  const less = own === 0 ? 'without a return it' : `a return of ${length(own)}`;
  return [
    {
      path: at(front.treatment.key, 'return'),
      says: `${front.treatment.name} hangs over ${back.treatment.name}, ${stands}: ${less} does not clear it. Give ${length(needed)}, or hang ${back.treatment.name} closer to the glass.`,
    },
  ];
}

/** The rod behind ends between the returns of the one before it. */
function warnInnerRod(front: Hung<'panels'>, back: Hung<'panels'>, say: Say): Warning[] {
  const [outer, inner] = [front.treatment, back.treatment];
  if (outer.bay !== null || inner.bay !== null || inner.rodWidth <= outer.rodWidth) return [];
  return [
    {
      path: at(inner.key, 'rodWidth'),
      says: `The rod of ${inner.name}, ${say.length(inner.rodWidth)} ${say.unit}, is longer than that of ${outer.name} before it (${say.length(outer.rodWidth)} ${say.unit}): its ends would stand through the returns. Take an inner rod no longer than the outer one.`,
    },
  ];
}

function warnShadeWidth(front: Hung<'panels'>, shade: Hung<'roman-shade'>, say: Say): Warning[] {
  const { rodWidth, bay, key, name } = front.treatment;
  if (bay !== null || shade.width <= rodWidth) return [];
  return [
    {
      path: at(key, 'rodWidth'),
      says: `${shade.treatment.name} behind it is ${say.length(shade.width)} ${say.unit} wide, wider than the rod of ${name} (${say.length(rodWidth)} ${say.unit}): the returns would close on it. Take a longer rod, or a narrower shade.`,
    },
  ];
}

function warnTop(top: Top, under: readonly Under[], say: Say): Warning[] {
  const deepest = [...under].sort((a, b) => (standsOut(b.treatment) ?? 0) - (standsOut(a.treatment) ?? 0))[0];
  if (deepest === undefined) return [];
  const { treatment } = top;
  const { overClearance } = clearanceOf(treatment);
  const by = standsOut(deepest.treatment) ?? 0;
  return [
    ...(by === 0 ? [] : warnReturn(top, deepest, by + overClearance, say)),
    ...warnTopWidth(top, under, say),
    ...under.flatMap((each) => warnTopHeight(top, each, say)),
  ];
}

function clearanceOf(treatment: Top['treatment']): { readonly overClearance: Ticks } {
  switch (treatment.kind) {
    case 'valance':
      return treatment.practice.valance;
    case 'cornice':
      return treatment.practice.cornice;
    case 'swags':
      return treatment.practice.swags;
  }
}

/** A board goes past the rod and its ends on both sides: past the widest of what hangs under it. */
function warnTopWidth({ treatment }: Top, under: readonly Under[], say: Say): Warning[] {
  const straight = under.filter((each) => each.treatment.kind !== 'panels' || each.treatment.bay === null);
  const widest = [...straight].sort((a, b) => spanOf(b) - spanOf(a))[0];
  if (widest === undefined) return [];
  const needed = ticks(spanOf(widest) + 2 * treatment.practice.layers.past);
  if (treatment.width >= needed) return [];
  const { name, kind } = widest.treatment;
  const what = kind === 'panels' ? `the rod of ${name}` : name;
  return [
    {
      path: at(treatment.key, 'width'),
      says: `${treatment.name} is ${say.length(treatment.width)} ${say.unit} wide, and ${what} underneath ${say.length(spanOf(widest))} ${say.unit}: to cover its ends it takes ${say.length(needed)} ${say.unit}, and more over finials.`,
    },
  ];
}

function spanOf({ treatment, width }: Under): Ticks {
  return treatment.kind === 'panels' ? treatment.rodWidth : width;
}

function warnTopHeight({ treatment }: Top, under: Under, say: Say): Warning[] {
  const [own, other] = [treatment.mount, under.treatment.mount];
  if (own.where !== 'wall' || other.where !== 'wall' || own.above >= other.above) return [];
  return [
    {
      path: at(treatment.key, 'mount.above'),
      says: `${under.treatment.name} underneath starts ${say.length(other.above - own.above)} ${say.unit} higher than ${treatment.name}: it would stand out over the top. Mount it higher.`,
    },
  ];
}

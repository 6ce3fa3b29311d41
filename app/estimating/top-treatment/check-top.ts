/** Faults that every top treatment can have: nothing to cover, returns that do not fit, cloth that nobody listed. */
import type { Cloth } from '#shared/cloth.ts';
import { at } from '#shared/fault.ts';
import type { Fault } from '#shared/fault.ts';
import { formatLengthWithUnit } from '#shared/format-length.ts';
import type { Mount } from '#shared/treatments/treatment-base.ts';
import type { LengthUnit, Ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import { MOST_WIDTHS } from '../most-widths.ts';

export interface Top {
  readonly key: string;
  readonly practice: Practice;
  readonly mount: Mount;
  readonly width: Ticks;
  readonly finishedLength: Ticks;
  readonly returns: { readonly left: Ticks; readonly right: Ticks };
  readonly over: Ticks | null;
  readonly dropOf: Ticks | null;
}

/** Collects faults of one treatment, each with field, fault and remedy. */
export interface FaultList {
  readonly faults: Fault[];
  readonly tell: (field: string, wrong: string, right: string) => void;
  readonly say: (length: number) => string;
  /** The kind's own section of the practice, as a path. */
  readonly section: string;
}

export function listFaults(key: string, unit: LengthUnit, kind: string): FaultList {
  const faults: Fault[] = [];
  return {
    faults,
    tell: (field, wrong, right) => {
      faults.push({ path: at(key, field), wrong, right });
    },
    say: (length) => formatLengthWithUnit(length, unit),
    section: `practice.${kind}`,
  };
}

export function checkTop(top: Top, { tell, say }: FaultList): void {
  const { returns, over, mount } = top;
  if (top.width === 0) tell('width', 'is 0', 'measure the face of board or rod');
  if (top.finishedLength === 0) tell('finishedLength', 'is 0', 'give how deep it hangs');
  if (top.width > 0 && returns.left + returns.right > 2 * top.width)
    tell(
      'return',
      `returns of ${say(returns.left)} and ${say(returns.right)} are larger than the face`,
      'measure from the wall to the front',
    );
  if (mount.where === 'inside' && (returns.left > 0 || returns.right > 0))
    tell('return', 'is given for an inside mount', 'leave it out, or mount it on the wall');
  if (mount.where === 'inside' && over !== null && over > 0)
    tell('over', 'is given for an inside mount', 'leave it out, or mount it on the wall');
  if (over !== null && mount.where !== 'inside')
    for (const side of ['left', 'right'] as const)
      if (returns[side] > 0 && returns[side] <= over)
        tell(
          'return',
          `of ${say(returns[side])} does not clear the ${say(over)} of the treatment underneath`,
          'give more than that, usually 2 in more',
        );
  if (top.dropOf !== null && top.dropOf <= top.finishedLength)
    tell('dropOf', `${say(top.dropOf)} is no longer than the treatment itself`, 'give the whole drop, floor to top');
}

/** Cloth that is cut in widths: two seams have to leave some of it, and their number has to be believable. */
export function checkWidths(
  flat: number,
  cloths: readonly Cloth[],
  { practice }: Pick<Top, 'practice'>,
  { tell, say }: FaultList,
): void {
  for (const cloth of cloths) {
    const used = cloth.usableWidth - 4 * practice.seam;
    if (used <= 0)
      tell(
        'practice.seam',
        `seams of ${say(practice.seam)} take the whole width of ${cloth.name}`,
        'give what one join loses, such as 1/2 in',
      );
    else if (flat / used > MOST_WIDTHS)
      tell(
        'width',
        `would take more than ${MOST_WIDTHS} widths of ${cloth.name}`,
        'measure width, fullness and cloth again',
      );
  }
}

/** Other cloth that is named has to be known, and a welt strip narrower than it. */
export function checkCloth(
  field: string,
  id: string | null,
  clothOf: (id: string) => Cloth | null,
  { tell }: FaultList,
): Cloth | null {
  if (id === null) return null;
  const cloth = clothOf(id);
  if (!cloth) tell(field, `"${id}" is not a cloth that is known`, 'list it under cloth');
  return cloth;
}

export function checkWelt(
  field: string,
  id: string | null,
  strip: Ticks,
  clothOf: (id: string) => Cloth | null,
  list: FaultList,
): void {
  const cloth = checkCloth(field, id, clothOf, list);
  if (cloth && strip * 2 > cloth.usableWidth)
    list.tell(
      `${list.section}.weltStrip`,
      `${list.say(strip)} does not go twice into the width of ${cloth.name}`,
      'give the width of the strip, such as 1 1/2 in',
    );
  if (cloth && strip === 0)
    list.tell(`${list.section}.weltStrip`, 'is 0', 'give the width of the strip, such as 1 1/2 in');
}

/** No cut is longer than a whole piece of its cloth, unless the cloth may run sideways. */
export function checkPiece(cloth: Cloth, cut: number, { tell, say }: FaultList): void {
  const bolt = cloth.supply?.bolt ?? null;
  if (bolt !== null && cut > bolt && !cloth.railroad)
    tell(
      cloth.role === 'face' ? 'face' : 'stacks',
      `a cut of ${say(cut)} is longer than a whole piece of ${cloth.name} (${say(bolt)})`,
      'choose cloth in longer pieces, or measure again',
    );
}

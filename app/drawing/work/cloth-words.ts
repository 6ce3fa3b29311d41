/** How a work drawing speaks of cloth and of how often a piece is cut. */
import type { WorkGiven } from './work-given.ts';
import type { TakeoffLine } from '#shared/result.ts';

export function nameOf(given: Pick<WorkGiven, 'clothOf'>, id: string): string {
  return given.clothOf(id)?.name ?? id;
}

/** `8 cuts of Larch stripe`. */
export function sayCuts(count: number, what: string): string {
  return count === 1 ? `1 cut of ${what}` : `${count} cuts of ${what}`;
}

/** `make 2`, where more than one treatment is made. */
export function sayQuantity(quantity: number): readonly string[] {
  return quantity === 1 ? [] : [`make ${quantity}`];
}

export function faceLine(given: WorkGiven): TakeoffLine | null {
  return given.made.takeoff.find((line) => line.layer === 0 && line.use === undefined) ?? null;
}

/** Layers behind the face, room to street. */
export function backLines(given: WorkGiven): readonly TakeoffLine[] {
  return given.made.takeoff.filter((line) => line.layer > 0 && line.use === undefined);
}

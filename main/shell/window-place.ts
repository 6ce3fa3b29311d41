/** Where the window was, restored only where a screen still is. All figures are the system's own screen units. */

export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface WindowPlace extends Rectangle {
  readonly maximized: boolean;
}

export const usualSize = { width: 1360, height: 860 } as const;
export const leastSize = { width: 960, height: 600 } as const;
/** So much of the title bar has to be on a screen for a hand to get hold of it. */
const grip = { width: 120, height: 40 } as const;

/** Reads a saved place. Anything that is not one (an older or damaged file) is null, and the usual size is taken. */
export function parseWindowPlace(text: string): WindowPlace | null {
  let found: unknown;
  try {
    found = JSON.parse(text);
  } catch {
    return null;
  }
  if (typeof found !== 'object' || found === null) return null;
  const { x, y, width, height, maximized } = found as Record<string, unknown>;
  if (!isWhole(x) || !isWhole(y) || !isWhole(width) || !isWhole(height)) return null;
  return { x, y, width, height, maximized: maximized === true };
}

/**
 * The place to open at: the saved one when its top edge can still be gripped on one of the screens' work areas, cut down
 * to that area where it is larger; else the usual size and no position, which lets the system centre it.
 */
export function placeWindow(
  saved: WindowPlace | null,
  workAreas: readonly Rectangle[],
): Partial<Rectangle> & { readonly maximized: boolean } {
  const area = saved === null ? undefined : workAreas.find((one) => isGrippable(saved, one));
  if (saved === null || area === undefined) return { ...usualSize, maximized: saved?.maximized ?? false };
  const width = Math.min(Math.max(saved.width, leastSize.width), area.width);
  const height = Math.min(Math.max(saved.height, leastSize.height), area.height);
  return { x: saved.x, y: saved.y, width, height, maximized: saved.maximized };
}

function isGrippable(place: Rectangle, area: Rectangle): boolean {
  const across = Math.min(place.x + place.width, area.x + area.width) - Math.max(place.x, area.x);
  return across >= grip.width && place.y >= area.y && place.y + grip.height <= area.y + area.height;
}

function isWhole(value: unknown): value is number {
  return typeof value === 'number' && Number.isSafeInteger(value);
}

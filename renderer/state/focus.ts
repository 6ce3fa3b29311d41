/** Where the focus goes when what had it is gone: to the natural next field, never to the body of the page. */

import { lineOfFault } from './form-path.ts';

/** Tries to find it this many frames long, because screens read from the desk before they show. */
const MOST_FRAMES = 120;

/**
 * Puts the focus on the first element that one of these finds, tried in their order once it is shown. A person who has
 * gone elsewhere meanwhile, by a key or the pointer, is left there.
 */
export function focusSoon(...wanted: readonly (string | (() => HTMLElement | null))[]): void {
  const before = document.activeElement;
  let frames = 0;
  let gone = false;
  const notice = ({ type, target }: Event): void => {
    gone ||= type === 'pointerdown' || (target !== before && target !== document.body);
  };
  const end = (): void => {
    for (const type of ['keydown', 'pointerdown']) window.removeEventListener(type, notice, true);
  };
  const find = (): HTMLElement | null => {
    for (const each of wanted) {
      const found = typeof each === 'string' ? document.querySelector<HTMLElement>(each) : each();
      if (found) return found;
    }
    return null;
  };
  const look = (): void => {
    frames += 1;
    const found = gone ? null : find();
    if (found) found.focus();
    if (found || gone || frames >= MOST_FRAMES) end();
    else requestAnimationFrame(look);
  };
  for (const type of ['keydown', 'pointerdown']) window.addEventListener(type, notice, true);
  requestAnimationFrame(look);
}

/** The first empty line of the window that has just been added. */
export function focusFirstEmpty(openingId: string): void {
  const sheet = `[data-opening="${openingId}"] .measures`;
  focusSoon(() => {
    const lines = [...document.querySelectorAll<HTMLInputElement>(`${sheet} input:not([type='checkbox'])`)];
    return lines.find((line) => line.value === '') ?? lines[0] ?? null;
  });
}

/** The field of the worksheet that is to be written next: the first that is still missing, else the cloth. */
export function focusNextMissing(fields: readonly string[]): void {
  const names = fields.map(lineOfFault).flatMap((field) => [field, `${field}.0`]);
  focusSoon(
    ...names.map((name) => `.measures [data-name="${name}"] :is(input, select)`),
    '.measures [data-name="face"] select',
  );
}

import type { Page } from 'playwright';
import { button, field, write } from './sheet.ts';

/** One step on the sheet of a kind: a line and what is written or chosen there, or a button. */
export type Step =
  | { readonly line: string; readonly text: string }
  | { readonly choose: string; readonly option: string }
  | { readonly press: string };

export interface KindCase {
  /** As the list of kinds calls it. */
  readonly name: string;
  readonly steps: readonly Step[];
  /** Chips of the take-off: cloth that must be bought. */
  readonly bought: readonly (string | RegExp)[];
  /** A line of the working that a decorator would look for. */
  readonly working: RegExp;
  /** How many readings a stack of it has. */
  readonly readings: number;
}

/** Sizes are invented; the window is 48 1/2 by 60, its sill 28 from the floor. */
export const KIND_CASES: readonly KindCase[] = [
  {
    name: 'Valance',
    steps: [
      { choose: 'style', option: 'box-pleated' },
      { line: 'top above frame', text: '4' },
      { line: 'face, end to end', text: '60' },
      { line: 'return, left', text: '5 1/2' },
      { line: 'finished length', text: '16' },
      { line: 'box pleats', text: '5' },
    ],
    bought: ['face'],
    working: /widths/,
    readings: 3,
  },
  {
    name: 'Cornice',
    steps: [
      { line: 'face of the box', text: '56' },
      { line: 'return, left', text: '5 1/2' },
      { line: 'height at its longest', text: '14' },
    ],
    bought: ['face'],
    working: /cut/,
    readings: 1,
  },
  {
    name: 'Swags',
    steps: [
      { line: 'board, end to end', text: '60' },
      { line: 'return, left', text: '3 1/2' },
      { line: 'depth in the middle', text: '16' },
      { press: 'Add cascades' },
      { line: 'longest point', text: '36' },
      { line: 'shortest point', text: '12' },
      { line: 'finished face', text: '9' },
    ],
    bought: ['face'],
    working: /swag/,
    readings: 3,
  },
  {
    name: 'Roman shade',
    steps: [
      { line: 'width, top', text: '48 1/2' },
      { line: 'width, middle', text: '48 5/8' },
      { line: 'length, left', text: '60' },
    ],
    bought: ['face'],
    working: /row/,
    readings: 5,
  },
  {
    name: 'Bed skirt',
    steps: [
      { line: 'platform wide', text: '60' },
      { line: 'platform long', text: '80' },
      { line: 'drop to the hem', text: '14' },
    ],
    bought: ['face'],
    working: /strip|drop|cut/,
    readings: 1,
  },
  {
    name: 'Shower curtain',
    steps: [
      { line: 'finished width', text: '72' },
      { line: 'finished length', text: '72' },
    ],
    bought: ['face'],
    working: /width/,
    readings: 1,
  },
];

/** The dialog that asks which kind, answered. */
export async function pickKind(page: Page, name: string): Promise<void> {
  await page
    .getByRole('dialog')
    .getByRole('button', { name: new RegExp(`^${name}`) })
    .click();
  await page.getByRole('dialog').waitFor({ state: 'hidden' });
}

export async function takeSteps(page: Page, steps: readonly Step[]): Promise<void> {
  for (const step of steps) {
    if ('press' in step) await button(page, step.press).click();
    else if ('choose' in step) await field(page, step.choose).selectOption(step.option);
    else await write(page, step.line, step.text);
  }
}

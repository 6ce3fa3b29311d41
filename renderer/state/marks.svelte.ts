/** A line of the working points at the number that it explains, and the number back at its lines. */

/** Numbers on the sheet that a step explains, by the step's id; ids of layers begin with their place behind the face. */
const EXPLAINS: Readonly<Record<string, readonly string[]>> = {
  'finished-width': ['rodWidth', 'returnLeft', 'returnRight', 'overlap', 'width', 'size.width', 'size.widths.0'],
  'finished-length': ['finishedLength', 'size.length', 'size.lengths.0'],
  'flat-width': ['fullness', 'rodWidth'],
  widths: ['fullness', 'halfWidths', 'order-0'],
  railroaded: ['order-0'],
  'fullness-made': ['fullness'],
  'plain-cut': ['finishedLength'],
  repeats: ['face', 'order-0'],
  'cut-length': ['finishedLength', 'order-0'],
  'laid-out': ['order-0'],
  order: ['order-0'],
  stackback: ['stackback'],
  'glass-clear': ['stackback', 'rodWidth'],
  'rod-to-clear': ['rodWidth'],
  weight: ['weight'],
  light: ['light'],
  'light-with-glass': ['light'],
  'open-share': ['light'],
  'light-in-room': ['light'],
  'colour-shift': ['colour'],
  warmth: ['warmth'],
  'u-value': ['warmth'],
  'heat-saved': ['warmth'],
  'glass-temperature': ['warmth'],
  summer: ['warmth'],
  fade: ['fade'],
  body: ['body'],
  price: ['price'],
};

/** Names of the numbers that a step explains: `layer-1-cut` explains the order of the first layer behind the face. */
export function numbersOf(step: string): readonly string[] {
  const known = EXPLAINS[step];
  if (known) return known;
  const layer = /^layer-(\d+)-/.exec(step)?.[1];
  if (layer !== undefined) return [`order-${layer}`];
  return step.startsWith('price-') ? ['price'] : [];
}

export class Marks {
  #step: string | null = $state(null);
  #number: string | null = $state(null);

  markStep(step: string | null): void {
    this.#step = step;
    this.#number = null;
  }

  markNumber(number: string | null): void {
    this.#number = number;
    this.#step = null;
  }

  isStepMarked(step: string): boolean {
    return this.#step === step || (this.#number !== null && numbersOf(step).includes(this.#number));
  }

  isNumberMarked(number: string): boolean {
    return this.#number === number || (this.#step !== null && numbersOf(this.#step).includes(number));
  }
}

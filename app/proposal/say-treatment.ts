/** A treatment in the words that a client reads: what hangs there, in which cloth, how large, how full. */
import type { PanelsTreatment, Treatment, TreatmentKind } from '#shared/job.ts';
import type { Arrangement, Heading } from '#shared/words.ts';
import { NBSP, capital, sayCount } from './speak.ts';
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

const ARRANGED: Readonly<Record<Arrangement, { readonly one: string; readonly many: string }>> = {
  pair: { one: 'pair', many: 'pairs' },
  'one-way': { one: 'panel drawn one way', many: 'panels drawn one way' },
  single: { one: 'single panel', many: 'single panels' },
  'pair-stationary': { one: 'pair of still panels', many: 'pairs of still panels' },
};

/** What each kind of treatment says of itself; a new kind is one more entry. */
const WORDS: {
  readonly [K in TreatmentKind]: {
    readonly name: (treatment: Extract<Treatment, { kind: K }>) => string;
    readonly measures: (treatment: Extract<Treatment, { kind: K }>, speech: Speech) => string;
  };
} = {
  panels: { name: namePanels, measures: measurePanels },
};

/** `Pinch-pleated pair in Larch stripe`; without a cloth when its options are of several. */
export function nameTreatment(treatment: Treatment, cloth: string | null): string {
  const what = WORDS[treatment.kind].name(treatment);
  return capital(cloth === null ? what : `${what} in ${cloth}`);
}

/** `72 in wide, 84 in long, 2½ times full`. */
export function sayMeasures(treatment: Treatment, speech: Speech): string {
  return WORDS[treatment.kind].measures(treatment, speech);
}

function namePanels(panels: PanelsTreatment): string {
  const arranged = ARRANGED[panels.arrangement];
  if (panels.quantity === 1) return `${HEADED[panels.heading]} ${arranged.one}`;
  return `${sayCount(panels.quantity)} ${HEADED[panels.heading]} ${arranged.many}`;
}

function measurePanels(panels: PanelsTreatment, speech: Speech): string {
  const each = panels.quantity === 1 ? '' : 'each ';
  const wide = `${speech.length(panels.rodWidth)} wide`;
  const long = `${speech.length(panels.finishedLength)} long`;
  return `${each}${wide}, ${long}, ${sayFullness(panels, speech)}`;
}

function sayFullness(panels: PanelsTreatment, speech: Speech): string {
  const { halfWidths } = panels;
  if (halfWidths === null) return `${speech.fullness(panels.fullness)} times full`;
  const widths = speech.fullness(halfWidths * 500);
  return `${widths}${NBSP}${halfWidths === 2 ? 'width' : 'widths'} of cloth each`;
}

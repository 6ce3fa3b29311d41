/** One window of the paper: where it is, what hangs there, and the three options side by side. */
import type { Job } from '#shared/job.ts';
import type { TierResult } from '#shared/result.ts';
import type { TreatmentKind } from '#shared/treatments/treatment.ts';
import { TIERS } from '#shared/words.ts';
import type { Tier } from '#shared/words.ts';
import { describeBeside } from '#app/lining/say/compare-stacks.ts';
import { hangsAtWindow } from './hangs-at-window.ts';
import { sayCare } from './say-care.ts';
import type { PaperOption, PaperReading, PaperWindow } from './proposal-paper.ts';
import { nameTreatment, sayMeasures } from './say-treatment.ts';
import { showRoom } from './show-house.ts';
import type { ResultsByKey } from './show-house.ts';
import { showLitWindow, showStrip, stackOf } from './show-stack.ts';
import { nameCloth } from './listed-window.ts';
import type { ListedWindow } from './listed-window.ts';
import type { NotesByWindow } from './collect-notes.ts';
import { NBSP, typeset } from './speak.ts';
import type { Speech } from './speak.ts';
import { NO_PRICE } from './write-summary.ts';

const READINGS = [
  ['light', 'light'],
  ['colour', 'by noon'],
  ['warmth', 'warmth'],
  ['fade', 'fading'],
  ['body', 'folds'],
] as const;

export interface WindowInput {
  readonly job: Job;
  readonly results: ResultsByKey;
  readonly window: ListedWindow;
  readonly place: { readonly index: number; readonly count: number; readonly what: 'window' | 'piece' };
  readonly notes: NotesByWindow;
  readonly speech: Speech;
}

export function writeWindow(input: WindowInput): PaperWindow {
  const { job, window, speech, place } = input;
  const { room, opening, treatment, result } = window;
  const cloth = nameCloth(job, window);
  const option = (tier: Tier) => writeOption(input, tier, cloth === null);
  return {
    key: window.treatment.key,
    room: room.name,
    opening: window.name,
    count: `${place.what} ${place.index + 1} of ${place.count}`,
    words: `${nameTreatment(treatment, cloth)}, ${sayMeasures(treatment, result.tiers[result.advised.tier], speech)}.`,
    advice: typeset(sentence(result.advised.why)),
    elevation: showRoom(job, room, opening.key, input.results),
    options: [option('good'), option('better'), option('best')],
    notes: input.notes.get(treatment.key) ?? [],
  };
}

function writeOption(input: WindowInput, tier: Tier, saysCloth: boolean): PaperOption {
  const { job, window, speech } = input;
  const made = window.result.tiers[tier];
  const stack = stackOf(job, made);
  const atWindow = hangsAtWindow(window.treatment);
  const { tierNames } = job.proposal;
  const head = {
    tier,
    tierName: tierNames[tier],
    advice: window.result.advised.tier === tier ? 'our advice for this room' : null,
    cloth: saysCloth ? `in ${stack.face.name}` : null,
    price: made.price === null ? NO_PRICE : speech.money(made.price.total),
    priceNote: 'before tax',
  };
  const same = made.chosen?.sameAs;
  if (made.chosen !== null && same !== undefined) {
    const title = `The same as ${tierNames[same]}`;
    return { ...head, title, says: typeset(made.chosen.why), litWindow: null, strip: null, readings: [] };
  }
  return {
    ...head,
    title: made.title,
    says: typeset(sayOption(input, tier)),
    litWindow: showLitWindow(stack, made, job, window.opening, window.treatment),
    strip: atWindow ? showStrip(stack, made, window.opening) : null,
    readings: atWindow ? sayReadings(made, window.treatment.kind) : [sayBody(made), sayCare(stack)],
  };
}

/** The first says what it does; each that follows only what it does otherwise than the one before. */
function sayOption({ job, window }: WindowInput, tier: Tier): string {
  const before = TIERS[TIERS.indexOf(tier) - 1];
  const made = window.result.tiers[tier];
  if (before === undefined) return made.says;
  return describeBeside(window.result.tiers[before], { ...stackOf(job, made), judgement: made.judgement });
}

function sayReadings(made: TierResult, kind: TreatmentKind): readonly PaperReading[] {
  return READINGS.map(([name, usual]): PaperReading => {
    const { words, figure } = made.judgement.words[name];
    // Panels show their body in their folds; what lies flat has it all the same.
    const label = name === 'body' && kind !== 'panels' ? 'body' : usual;
    return { label, words: typeset(words), figure: name === 'colour' ? '' : shortFigure(words, figure) };
  });
}

/** Where no light comes through, what is felt of a stack is its body. */
function sayBody(made: TierResult): PaperReading {
  return { label: 'body', words: typeset(made.judgement.words.body.words), figure: '' };
}

/** A figure does not say again what its words have said (`two thirds kept off`, `about 66 %`), and none is exact. */
function shortFigure(words: string, figure: string): string {
  const said = words.endsWith(' kept off') ? figure.replace(/ kept off$/u, '') : figure;
  const about = /^\d+ %/u.test(said) ? `about ${said}` : said;
  return about.replace(/ %/gu, `${NBSP}%`);
}

/** A capital at the start and a stop at the end, whatever the engine gave. */
function sentence(text: string): string {
  const trimmed = text.trim();
  if (trimmed === '') return '';
  const begun = trimmed.charAt(0).toUpperCase() + trimmed.slice(1);
  return /[.!?]$/u.test(begun) ? begun : `${begun}.`;
}

/** What every setting is until the decorator changes it. */
import type { SettingsRecord } from '#shared/records/records.ts';
import type { ReadConnection } from '#main/portfolio/connection.ts';
import { readSetSettings } from '#main/portfolio/settings.ts';

/** Common practice of workrooms, offered for editing: it is not law, and her own law may ask for other words. */
const TERMS = [
  'The deposit named at the end is due when you accept, the balance at installation.',
  'Everything is made to order from these measurements and cannot be returned or exchanged once the cloth is cut.',
  'Whoever measured answers for the measurements: what we measured and made wrong we make again.',
  'Cloth and hardware that you supply yourself are used at your own risk.',
  'Cloth differs a little from dye lot to dye lot and from any sample. Please approve a cutting of the lot where that matters.',
  'Prices of cloth and freight are confirmed again before we order; should they have risen, we ask you first.',
].join('\n');

const CANCELLATION = [
  'Notice of cancellation: in many places a client who signs at home may withdraw within some days.',
  'The law of the place where you live decides whether, until when and how, and it comes before these terms.',
  'To withdraw, write to us, naming the number of this proposal, before that time has passed.',
].join('\n');

export const DEFAULT_SETTINGS: SettingsRecord = {
  units: 'in',
  currency: 'USD',
  locale: 'en-US',
  letterhead: { name: '', lines: [] },
  practice: {},
  priceBook: {},
  exampleRates: false,
  terms: TERMS,
  cancellation: CANCELLATION,
  tierNames: { good: 'Good', better: 'Better', best: 'Best' },
  holdsDays: 30,
};

/** The settings in force: what was set, over the defaults. */
export function readSettings(reading: ReadConnection): SettingsRecord {
  return { ...DEFAULT_SETTINGS, ...readSetSettings(reading) };
}

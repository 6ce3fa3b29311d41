/**
 * What the law or standard of a country says of cords, as of November 2026, for the line that a caution rests on. Worded
 * neutrally: the program defers to local law. The vacated part of the United States' rules is not cited.
 */
import type { Locale } from '#shared/locale.ts';

const UNITED_STATES =
  'United States: ANSI/WCMA A100.1-2022, for goods made on or after 1 June 2024, has no free-hanging operating cord on custom goods; 16 CFR 1120.3(e) and (f) stand';
const EUROPE = 'EN 13120: breakaway or tension devices (second-hand summary)';

const LAW: Readonly<Partial<Record<Locale, string>>> = {
  'en-US': UNITED_STATES,
  'en-CA': 'Canada SOR/2019-97: a reachable cord of 22 cm and a loop of 44 cm at the most',
  'en-AU': 'Australia: no loose loop of 220 mm or more at or below 1,600 mm',
  'en-GB': EUROPE,
  'en-IE': EUROPE,
  'de-DE': EUROPE,
  'fr-FR': EUROPE,
  'sv-SE': EUROPE,
  'pl-PL': EUROPE,
};

/** `; Canada SOR/2019-97: ...`, or nothing where no rule is known. */
export function sayCordLaw(locale: Locale | undefined): string {
  const law = locale === undefined ? undefined : LAW[locale];
  return law === undefined ? '' : `; ${law}`;
}

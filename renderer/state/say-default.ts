/** How the help writes a default of the practice. */
import { formatClothLength, formatLengthWithUnit } from '#shared/format-length.ts';
import type { SayDefault } from '../words/help/help-text.ts';
import type { HelpUnit } from './work-example.ts';

const THOUSANDTHS = 1000;
const MILLIONTHS_PER_CENT = 10_000;

export function sayDefaults(unit: HelpUnit): SayDefault {
  return {
    length: (ticks) => (ticks === 0 ? 'nothing' : formatLengthWithUnit(ticks, unit)),
    cloth: (ticks) => formatClothLength(ticks, unit),
    times: (fullness) => `${fullness / THOUSANDTHS} times`,
    share: (millionths) => (millionths === 0 ? 'nothing' : `${millionths / MILLIONTHS_PER_CENT} %`),
  };
}

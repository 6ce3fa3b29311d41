import { practiceWithUnits, priceBookWithUnits } from '#shared/job-file/with-units.ts';
import { writeSettings } from '#main/portfolio/settings.ts';
import type { SetSettings } from '#main/portfolio/settings.ts';
import { readSettings } from './default-settings.ts';
import type { DeskParts } from './desk-parts.ts';
import type { Implementer } from './implementer.ts';

export function makeSettingsRequests(os: Implementer['settings'], { door, now }: DeskParts) {
  return {
    readSettings: os.readSettings.handler(() => door.read(readSettings)),

    editSettings: os.editSettings.handler(({ input }) =>
      door.write((writing) => {
        const before = readSettings(writing);
        const { practice, priceBook, ...changes } = input.changes;
        const unit = changes.units ?? before.units;
        const edits: SetSettings = {
          ...changes,
          ...(practice ? { practice: practiceWithUnits(practice, unit) } : {}),
          ...priceBookEdit(priceBook, unit),
        };
        writeSettings(writing, before, edits, now());
        return readSettings(writing);
      }),
    ),
  };
}

/** Bare lengths get the unit in which they were typed. */
function priceBookEdit(
  priceBook: SetSettings['priceBook'],
  unit: Parameters<typeof priceBookWithUnits>[1],
): Pick<SetSettings, 'priceBook'> {
  if (priceBook === undefined) return {};
  return { priceBook: priceBook === 'example' ? priceBook : priceBookWithUnits(priceBook, unit) };
}

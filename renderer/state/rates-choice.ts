/** Whether her own rates are in force or the program's example rates stand in for them. Her own book is always kept. */
import type { ProjectDocument, SettingsRecord } from '#shared/records/records.ts';

type RatesSettings = Pick<SettingsRecord, 'priceBook' | 'exampleRates'>;

/** A portfolio of earlier versions wrote `example` in place of the book itself. */
export function usesExampleRates(settings: RatesSettings): boolean {
  return settings.exampleRates || settings.priceBook === 'example';
}

export function useExampleRates(): Partial<RatesSettings> {
  return { exampleRates: true };
}

export function useOwnRates(settings: RatesSettings): Partial<RatesSettings> {
  return settings.priceBook === 'example' ? { exampleRates: false, priceBook: {} } : { exampleRates: false };
}

/** True where a project is priced by a written book in which nothing is added on cloth. */
export function sellsClothAtCost(document: Pick<ProjectDocument, 'project' | 'settings'>): boolean {
  const { project, settings } = document;
  const book = project.priceBook ?? (usesExampleRates(settings) ? 'example' : settings.priceBook);
  return book !== 'example' && Number(book.markup?.cloth ?? 0) === 0;
}

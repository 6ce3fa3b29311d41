/** Calendar dates as ISO text. A date is a day on the decorator's own calendar, not an instant. */

/** The day that the computer's calendar shows at that moment. */
export function localDate(moment: Date): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  const year = String(moment.getFullYear()).padStart(4, '0');
  return `${year}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
}

/** Counted in UTC, where every day has 24 hours. */
export function addDays(date: string, days: number): string {
  const day = new Date(`${date}T00:00:00Z`);
  day.setUTCDate(day.getUTCDate() + days);
  return day.toISOString().slice(0, 10);
}

/** Counts in words, as a list of clients says them. */
export function sayCount(count: number, one: string, many: string): string {
  if (count === 0) return `no ${many}`;
  return count === 1 ? `one ${one}` : `${count} ${many}`;
}

/** `today`, `yesterday`, else the date as the locale writes it. */
export function sayDay(instant: string, now: Date): string {
  const day = new Date(instant);
  const start = (date: Date): number => new Date(date.getFullYear(), date.getMonth(), date.getDate()).getTime();
  const days = Math.round((start(now) - start(day)) / 86_400_000);
  if (days === 0) return 'today';
  if (days === 1) return 'yesterday';
  return day.toLocaleDateString(undefined, { day: 'numeric', month: 'long', year: 'numeric' });
}

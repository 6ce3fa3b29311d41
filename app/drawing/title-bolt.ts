import type { LaidBolt } from '#app/plan/cut-plan.ts';

/** What a bolt or remnant is called on drawings and lists: `Bolt 1`, `Remnant End of the hall`. */
export function titleBolt(bolt: Pick<LaidBolt, 'id' | 'kind'>): string {
  const name = bolt.id.charAt(0).toUpperCase() + bolt.id.slice(1);
  return /^(bolt|remnant)/iu.test(bolt.id) ? name : `${bolt.kind === 'bolt' ? 'Bolt' : 'Remnant'} ${bolt.id}`;
}

/** Breaks a bolt into lines that fit the sheet, between cuts wherever that is possible. */
import type { LaidBolt } from '#app/plan/cut-plan.ts';

/** Ends of the lines along the bolt, the last one its drawn end; `room`: how much cloth a line holds. All in ticks. */
export function wrapBolt(bolt: LaidBolt, end: number, room: number): readonly number[] {
  const taken = [
    ...bolt.cuts.map((cut) => ({ from: Number(cut.at), to: cut.at + cut.length })),
    ...bolt.flaws.map((flaw) => ({ from: Number(flaw.from), to: Number(flaw.to) })),
  ];
  const gaps = [...new Set(taken.flatMap((each) => [each.from, each.to]))]
    .filter((at) => !taken.some((each) => each.from < at && at < each.to))
    .sort((a, b) => a - b);
  const ends: number[] = [];
  let from = 0;
  while (end - from > room) {
    const start = from;
    const fit = gaps.filter((at) => at > start && at <= start + room).at(-1);
    from = fit ?? start + room;
    ends.push(from);
  }
  return [...ends, end];
}

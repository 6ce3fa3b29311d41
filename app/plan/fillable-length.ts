/** How much of a stretch cuts can take at the most, from its start to the end of the last: the rest of it is of no use. */
import { forward, placeAfter } from './repeat-circle.ts';
import type { Kind, Stretch, Task } from './task.ts';

/** So many sums of lengths are followed; with more of them nearly every length is filled anyway. */
const MOST_SUMS = 4_000;

/** Along any line of the cloth. Its own length where nothing better is known. */
export function fillableLength(task: Task, stretch: Stretch): number {
  const room = stretch.to - stretch.from;
  if (room === Infinity) return room;
  return task.size === 0 ? furthestSum(task.kinds, room) : furthestEnd(task, stretch, room);
}

/** On patterned cloth the last cut starts at its place in the repeat. */
function furthestEnd({ kinds, size }: Task, { start }: Stretch, room: number): number {
  if (start === null) return room;
  let end = 0;
  for (const kind of kinds) {
    if (kind.phase < 0) return room;
    for (const { length } of kind.shapes) {
      const latest = room - length;
      const begins = latest < 0 ? -1 : latest - forward(kind.phase, placeAfter(start, latest, size), size);
      if (begins >= 0) end = Math.max(end, begins + length);
    }
  }
  return end;
}

/** On plain cloth cuts lie one against the other: the largest sum of lengths that there is room for. */
function furthestSum(kinds: readonly Kind[], room: number): number {
  let sums = new Set([0]);
  for (const kind of kinds)
    for (const { length } of kind.shapes) {
      const more = new Set(sums);
      for (const sum of sums)
        for (let many = 1, so = sum + length; many <= kind.ids.length && so <= room; many += 1, so += length)
          more.add(so);
      if (more.size > MOST_SUMS || more.has(room)) return room;
      sums = more;
    }
  return [...sums].reduce((most, sum) => Math.max(most, sum), 0);
}

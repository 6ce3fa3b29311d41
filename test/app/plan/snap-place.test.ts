/** A cut put down by hand lies where its pattern allows: checked against a search of every tick near it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { snapPlace } from '#app/plan/snap-place.ts';
import { lengthFrom, ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';

const inch = (value: number): Ticks => lengthFrom(value, 'in');

describe('a cut put down by hand', () => {
  it.each([
    ['plain cloth: where it is put', null, 0, 0, 130, 130],
    ['a repeat of 27 in, level: the nearer of two', 0, 0, 27, 130, 135],
    ['exactly right stays', 0, 0, 27, 108, 108],
    ['a bolt that starts 10 in into the repeat', 0, 10, 27, 40, 44],
    ['before the start: the first right place', 0, 10, 27, -30, 17],
  ] as const)('%s', (_, phase, start, repeat, asked, expected) => {
    const bolt = { length: null, startPhase: inch(start) };
    const cut = { length: inch(100), phase: phase === null ? null : inch(phase) };
    expect(snapPlace(bolt, cut, inch(repeat), inch(asked))).toBe(inch(expected));
  });

  it('lies in the right place of the repeat, within the bolt, and no right place is nearer', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 40 }).chain((repeat) =>
          fc.record({
            repeat: fc.constant(repeat),
            phase: fc.integer({ min: 0, max: repeat - 1 }),
            start: fc.integer({ min: 0, max: repeat - 1 }),
            asked: fc.integer({ min: -20, max: 220 }),
            length: fc.integer({ min: 1, max: 60 }),
          }),
        ),
        ({ repeat, phase, start, asked, length }) => {
          const bolt = { length: ticks(200), startPhase: ticks(start) };
          const place = snapPlace(bolt, { length: ticks(length), phase: ticks(phase) }, repeat, asked);
          const right = Array.from({ length: 201 - length }, (__, at) => at).filter(
            (at) => (start + at) % repeat === phase,
          );
          expect(right).toContain(place);
          const wanted = Math.max(0, Math.min(200 - length, asked));
          const nearest = Math.min(...right.map((at) => Math.abs(at - wanted)));
          expect(Math.abs(place - wanted)).toBe(nearest);
        },
      ),
    );
  });
});

import { listOpenings, nextOpeningPosition, openings } from '#main/portfolio/openings.ts';
import { rooms } from '#main/portfolio/rooms.ts';
import { mustFind } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';
import type { Implementer } from './implementer.ts';
import { freeName, newOpening, withGiven } from './new-records.ts';

export function makeOpeningRequests(os: Implementer['openings'], { door, now, makeId }: DeskParts) {
  return {
    addOpening: os.addOpening.handler(({ input }) =>
      door.write((writing) => {
        const room = mustFind(rooms.read(writing, input.roomId), 'room', input.roomId);
        const blank = newOpening({ id: makeId(), at: now() }, room.id, nextOpeningPosition(writing, room.id));
        const siblings = listOpenings(writing, room.id).map(({ name }) => name);
        return openings.add(writing, withGiven({ ...blank, name: freeName(blank.name, siblings) }, input.fields));
      }),
    ),

    editOpening: os.editOpening.handler(({ input }) =>
      door.write((writing) => mustFind(openings.edit(writing, input.id, input.changes, now()), 'opening', input.id)),
    ),

    removeOpening: os.removeOpening.handler(({ input }) => {
      door.write((writing) => mustFind(openings.remove(writing, input.id, now()), 'opening', input.id));
      return {};
    }),

    restoreOpening: os.restoreOpening.handler(({ input }) =>
      door.write((writing) => mustFind(openings.restore(writing, input.id, now()), 'opening', input.id)),
    ),
  };
}

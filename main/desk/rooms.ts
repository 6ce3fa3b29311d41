import { projects } from '#main/portfolio/projects.ts';
import { listRooms, nextRoomPosition, rooms } from '#main/portfolio/rooms.ts';
import { mustFind } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';
import type { Implementer } from './implementer.ts';
import { freeName, newRoom, withGiven } from './new-records.ts';

export function makeRoomRequests(os: Implementer['rooms'], { door, now, makeId }: DeskParts) {
  return {
    addRoom: os.addRoom.handler(({ input }) =>
      door.write((writing) => {
        const project = mustFind(projects.read(writing, input.projectId), 'project', input.projectId);
        const blank = newRoom({ id: makeId(), at: now() }, project.id, nextRoomPosition(writing, project.id));
        const siblings = listRooms(writing, project.id).map(({ name }) => name);
        return rooms.add(writing, withGiven({ ...blank, name: freeName(blank.name, siblings) }, input.fields));
      }),
    ),

    editRoom: os.editRoom.handler(({ input }) =>
      door.write((writing) => mustFind(rooms.edit(writing, input.id, input.changes, now()), 'room', input.id)),
    ),

    removeRoom: os.removeRoom.handler(({ input }) => {
      door.write((writing) => mustFind(rooms.remove(writing, input.id, now()), 'room', input.id));
      return {};
    }),

    restoreRoom: os.restoreRoom.handler(({ input }) =>
      door.write((writing) => mustFind(rooms.restore(writing, input.id, now()), 'room', input.id)),
    ),
  };
}

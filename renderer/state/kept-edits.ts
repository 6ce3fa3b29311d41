/**
 * A copy of every edit that the desk has not acknowledged yet, in the browser's own storage: a window that dies before
 * the answer loses nothing, because the next start sends them again.
 */
import type { Edit, Entity } from './edit.ts';

const KEY = 'linenfold:unsaved-edits';
const ENTITIES: readonly Entity[] = ['client', 'project', 'room', 'opening', 'treatment', 'cloth', 'settings'];

export interface KeptEdits {
  read(): Edit[];
  write(edits: readonly Edit[]): void;
}

/** `storage` may be missing or refuse (private windows): then the copy is simply not kept. */
export function makeKeptEdits(storage: Pick<Storage, 'getItem' | 'setItem' | 'removeItem'> | null): KeptEdits {
  return {
    read() {
      try {
        const given: unknown = JSON.parse(storage?.getItem(KEY) ?? '[]');
        return Array.isArray(given) ? given.filter(isEdit) : [];
      } catch {
        // What cannot be read was not written by us, or was cut short: there is nothing to send.
        return [];
      }
    },
    write(edits) {
      try {
        if (edits.length === 0) storage?.removeItem(KEY);
        else storage?.setItem(KEY, JSON.stringify(edits));
      } catch {
        // A full or forbidden storage: the desk itself is still asked at once.
        return;
      }
    },
  };
}

function isEdit(value: unknown): value is Edit {
  if (typeof value !== 'object' || value === null) return false;
  const { entity, id, changes } = value as Record<string, unknown>;
  return (
    typeof id === 'string' &&
    ENTITIES.some((each) => each === entity) &&
    typeof changes === 'object' &&
    changes !== null &&
    !Array.isArray(changes)
  );
}

import type { Migration } from '../migrate.ts';
import { first } from './10-first.ts';
import { cutting } from './20-cutting.ts';
import { knownOfCloth } from './30-known-of-cloth.ts';
import { roomWishes } from './40-room-wishes.ts';

/** Every migration in order, numbered by ten: a new one goes at the end and the ones before it never change. */
export const MIGRATIONS: readonly Migration[] = [first, cutting, knownOfCloth, roomWishes];

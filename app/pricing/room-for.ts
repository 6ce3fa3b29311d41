/** The room as one of its treatments has to answer it: of its wishes only those that fall to this one. */
import type { Opening, Room } from '#shared/job.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { closesOver } from '#app/lining/judged-form.ts';
import { privacyFor } from '#app/lining/choose/privacy-asked.ts';
import type { Hides } from '#app/lining/choose/privacy-asked.ts';
import { faceOf } from './job-pricing.ts';
import type { JobPricing } from './job-pricing.ts';

export function roomFor(room: Room, opening: Opening, treatment: Treatment, pricing: JobPricing): Room {
  if (room.privacy === null) return room;
  const hides = (each: Treatment): Hides => ({
    closes: closesOver(each),
    sheer: faceOf(pricing, each.face)?.family === 'sheer',
  });
  const beside = opening.treatments.filter((other) => other.key !== treatment.key).map(hides);
  return { ...room, privacy: privacyFor(room.privacy, hides(treatment), beside) };
}

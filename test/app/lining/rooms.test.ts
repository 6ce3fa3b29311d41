/**
 * Twelve contrasting rooms, invented, as pages that somebody can read (`test/reference/rooms/*.md`). After a change that
 * is meant, write them anew with `vitest run --config build/vitest.config.ts --project unit test/app/lining/rooms -u`
 * and read them against the facts of the trade; the checklist below holds what can be checked by itself.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { placeOf } from '#app/lining/place-of-kind.ts';
import { resolveCloth } from '#app/lining/resolve-cloth.ts';
import type { Job } from '#shared/job.ts';
import type { TierResult } from '#shared/result.ts';
import { TIERS } from '#shared/words.ts';
import { readRoom, studyRoom, writeRoom } from './write-room.ts';
import type { StudiedOpening, StudiedTreatment } from './write-room.ts';

const FOLDER = new URL('../../reference/rooms/', import.meta.url);
const NAMES = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.json'))
  .map((name) => name.replace(/\.json$/, ''));

const jobOf = (name: string): Job => readRoom(readFileSync(new URL(`${name}.json`, FOLDER), 'utf8'));

describe('twelve rooms', () => {
  it('there are twelve', () => {
    expect(NAMES).toHaveLength(12);
  });
  it.each(NAMES)('%s reads as it did', async (name) => {
    await expect(writeRoom(jobOf(name))).toMatchFileSnapshot(`../../reference/rooms/${name}.md`);
  });
});

interface Option {
  readonly job: Job;
  readonly at: StudiedOpening;
  readonly treatment: StudiedTreatment;
  readonly tier: TierResult;
  /** Families behind the face, room to street. */
  readonly families: readonly string[];
  readonly rules: readonly string[];
}

const OPTIONS: readonly Option[] = NAMES.flatMap((name) => {
  const job = jobOf(name);
  return studyRoom(job).flatMap((at) =>
    at.treatments.flatMap((treatment) =>
      TIERS.map((key): Option => {
        const tier = treatment.result.tiers[key];
        const families = tier.stack.behind.map((id) => resolveCloth(id, job.cloth)?.family ?? '');
        return { job, at, treatment, tier, families, rules: tier.judgement.advice.map((advice) => advice.rule) };
      }),
    ),
  );
});

const chosenOnly = (option: Option): boolean => option.tier.chosen !== null;
const place = (option: Option): string => placeOf(option.treatment.treatment.kind);
const CHILD = ['nursery', 'child'];
const INTERLININGS = ['light', 'medium', 'heavy'];

/** Facts of `the-job` (common practice), each over every option of every room: where it applies, and what must hold. */
const CHECKLIST: readonly (readonly [string, (option: Option) => boolean, (option: Option) => boolean])[] = [
  [
    'a stop about the stack is never chosen, only given by hand, and then said to be',
    (o) => o.tier.judgement.advice.some((advice) => advice.level === 'stop'),
    (o) => o.tier.judgement.advice.filter((a) => a.level === 'stop').every((a) => /asked for/.test(a.says)),
  ],
  ['ivory and colour have to be asked for', chosenOnly, (o) => !o.tier.stack.behind.includes('std-ivory')],
  [
    'no coated blackout in the body of a shade, in swags or in gathers unless asked for',
    (o) => chosenOnly(o) && ['roman-shade', 'swags'].includes(o.treatment.treatment.kind),
    (o) => !o.families.includes('blackout-3-pass') && !o.families.includes('blackout-napped'),
  ],
  [
    'a nursery is offered darkness in every option',
    (o) => o.at.room.use === 'nursery' && place(o) === 'window',
    (o) => o.families.some((family) => /blackout|black-sateen/.test(family)),
  ],
  [
    'cords are spoken of wherever there is a draw in a child’s room',
    (o) => CHILD.includes(o.at.room.use) && place(o) === 'window',
    (o) => o.rules.some((rule) => /cord/.test(rule)),
  ],
  ['heat below is flagged', (o) => o.at.opening.heatSourceBelow, (o) => o.rules.some((rule) => /^heat-/.test(rule))],
  [
    'a public room is told of flame tests and ways out',
    (o) => o.at.room.use === 'public',
    (o) => o.rules.includes('flame-test') && o.rules.includes('ways-out'),
  ],
  [
    'silk is lined in every option and told of its leading edge in the sun',
    (o) => o.treatment.choose.face.family === 'silk' && place(o) === 'window',
    (o) => o.families.length > 0 && o.rules.includes('silk-leading-edge'),
  ],
  [
    'nothing interlined in the damp, nor behind grommets, tabs, pockets or waves, unless asked for',
    (o) =>
      chosenOnly(o) &&
      (o.at.room.use === 'bath' ||
        ['grommet', 'tab', 'rod-pocket', 'wave'].includes(o.treatment.choose.treatment.heading)),
    (o) => !o.families.some((family) => INTERLININGS.includes(family)),
  ],
  [
    'interlining alone is never called dark',
    (o) => o.families.some((family) => INTERLININGS.includes(family)) && !o.families.some((f) => /black|dim/.test(f)),
    (o) => !/dark/.test(o.tier.judgement.words.light.words),
  ],
  [
    'soft blackout behind stitching asks for a sewn sample',
    (o) => o.families.includes('blackout-soft') && place(o) !== 'away',
    (o) => o.rules.includes('sew-a-sample') || o.rules.some((rule) => /needle|points/.test(rule)),
  ],
  [
    'what covers the top alone, or is not at a window, promises no darkness and no warmth',
    (o) => place(o) !== 'window',
    (o) => !/dark/.test(o.tier.judgement.words.light.words) && o.tier.judgement.words.warmth.words === 'hardly',
  ],
  [
    'a light lining is advised for a bed skirt and a shower curtain',
    (o) => place(o) === 'away',
    (o) => o.treatment.result.tiers[o.treatment.result.advised.tier].stack.behind.join() === 'std-white',
  ],
];

describe('the twelve rooms against the facts of the trade (common practice)', () => {
  it.each(CHECKLIST)('%s', (_, applies, holds) => {
    const found = OPTIONS.filter(applies);
    expect(found.length).toBeGreaterThan(0);
    for (const option of found) {
      const where = `${option.at.room.name}, ${option.treatment.treatment.name}, ${option.tier.title}`;
      expect(holds(option), where).toBe(true);
    }
  });

  it('every word is plain, short and whole', () => {
    for (const { tier, treatment } of OPTIONS) {
      const texts = [
        tier.says,
        treatment.result.advised.why,
        ...(tier.chosen === null ? [] : [tier.chosen.why]),
        ...tier.judgement.advice.map((advice) => advice.says),
      ];
      for (const text of texts) {
        expect(text).toMatch(/^[A-Z].*\.$/);
        expect(text.length).toBeLessThan(230);
        expect(text).not.toMatch(/undefined|NaN|null|m2K|g\/m2|\bclass\b|certified grade|[\u2013\u2014]/);
      }
    }
  });
});

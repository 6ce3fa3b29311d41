/**
 * Contrasting rooms, twelve at the least, invented, as pages that somebody can read (`test/reference/rooms/*.md`). After a change that
 * is meant, write them anew with `vitest run --config build/vitest.config.ts --project unit test/app/lining/rooms -u`
 * and read them against the facts of the trade; the checklist below holds what can be checked by itself.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { placeOf } from '#app/lining/place-of-kind.ts';
import { FADE_WORDS, LIGHT_WORDS, WARMTH_WORDS } from '#app/lining/say/say-readings.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { priceJob } from '#app/pricing/price-job.ts';
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

/** What each page is there to show. */
const ABOUT: Readonly<Record<string, string>> = {
  '01-nursery-east': 'A nursery in the morning sun that has to be dark by day, with heat below its window.',
  '02-media-room': 'Velvet on wave carriers before coated glass, dark for pictures.',
  '03-silk-west-bay': 'Thin silk in the evening sun.',
  '04-sheer-linen-north': 'A sheer that lets the light in, and a drapery before good glass in a cold climate.',
  '05-cotton-sateen-bath': 'Cotton on tabs in the damp.',
  '06-listed-sash-pelmet': 'Heavy wool under a cornice before single glass in the cold.',
  '07-restaurant': 'A public room, its face certified, its lining not.',
  '08-roman-childs-room': 'Roman shades for a child, one of them asked for with cords and with a coated blackout.',
  '09-kitchen-soft-folds': 'A soft-fold shade in steam and cooking.',
  '10-swags-and-cascades': 'Swags whose tails show a contrast lining, over panels that do not draw.',
  '11-bedroom-in-one-cloth': 'Valance, draperies and bed skirt of one cotton.',
  '12-guest-shower-and-sunroom': 'A gathered valance and grommet panels in the sun, and a shower curtain.',
  '13-asked-for-by-hand-west':
    'Cheap thin cotton in the evening sun, unlined, with ivory, with a firm lining, with linings that show; all asked for by hand.',
  '14-hotel-and-flat':
    'A hotel bedroom and a flat where much is asked for that does not go: a narrow lining, other shrinkage, cords, bare silk, a dim nursery, flannel in the damp.',
};

describe('the rooms', () => {
  it('there are twelve at the least, each with what it is there to show', () => {
    expect(NAMES.length).toBeGreaterThanOrEqual(12);
    expect(Object.keys(ABOUT)).toEqual(NAMES);
  });
  it.each(NAMES)('%s is measured so that it could hang', (name) => {
    expect(priceJob(jobOf(name)).warnings).toEqual([]);
  });
  it.each(NAMES)('%s reads as it did', async (name) => {
    await expect(writeRoom(jobOf(name), ABOUT[name] ?? '')).toMatchFileSnapshot(`../../reference/rooms/${name}.md`);
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
    (o) => chosenOnly(o) && o.at.room.use === 'nursery' && place(o) === 'window',
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
    (o) => o.rules.some((rule) => /^flame-/.test(rule)) && o.rules.includes('ways-out'),
  ],
  [
    'silk is lined in every option and told of its leading edge in the sun',
    (o) => chosenOnly(o) && o.treatment.choose.face.family === 'silk' && place(o) === 'window',
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

describe('the rooms against the facts of the trade (common practice)', () => {
  it.each(CHECKLIST)('%s', (_, applies, holds) => {
    const found = OPTIONS.filter(applies);
    expect(found.length).toBeGreaterThan(0);
    for (const option of found) {
      const where = `${option.at.room.name}, ${option.treatment.treatment.name}, ${option.tier.title}`;
      expect(holds(option), where).toBe(true);
    }
  });

  /** Figure of a reading as a share, the middle of a range; null where it has none, or one of another quantity. */
  const shareOf = (figure: string): number | null => {
    const found = /^(?:about |over |less than )?([\d.]+)(?: to ([\d.]+))? %$/.exec(figure);
    if (found === null) return null;
    const [low, high] = [Number(found[1]), Number(found[2] ?? found[1])];
    return (low + high) / 200;
  };
  it.each([
    ['light', LIGHT_WORDS],
    ['warmth', WARMTH_WORDS],
    ['fade', FADE_WORDS],
  ] as const)(
    '%s: the same figure has the same word in every room, and a larger one never a lesser word',
    (name, steps) => {
      const rank = (words: string): number => steps.length - steps.findIndex((step) => step.words === words);
      const told = OPTIONS.flatMap(({ tier }) => {
        const { words, figure } = tier.judgement.words[name];
        const share = shareOf(figure);
        return share === null || !steps.some((step) => step.words === words) ? [] : [{ share, rank: rank(words) }];
      }).sort((a, b) => a.share - b.share);
      expect(told.length).toBeGreaterThan(20);
      told.slice(1).forEach((each, i) => expect(each.rank).toBeGreaterThanOrEqual(told[i]?.rank ?? 0));
    },
  );

  it('an option that is chosen says what it adds to the one before, and reads otherwise unless it says that it adds little', () => {
    const texts = ({ judgement }: TierResult): string =>
      JSON.stringify([
        Object.values(judgement.words).map(({ words, figure }) => [words, figure]),
        judgement.advice.map(({ rule }) => rule),
      ]);
    for (const { treatment } of new Map(OPTIONS.map((option) => [option.treatment, option])).values())
      TIERS.slice(1).forEach((key, i) => {
        const [tier, before] = [treatment.result.tiers[key], treatment.result.tiers[TIERS[i] ?? key]];
        if (tier.chosen === null || before.chosen === null) return;
        if (tier.chosen.sameAs !== undefined) {
          expect(tier.chosen.why).toMatch(/^Nothing more is offered\. [A-Z].*\.$/);
          expect(tier.stack).toEqual(treatment.result.tiers[tier.chosen.sameAs].stack);
          return;
        }
        expect(tier.chosen.why).toMatch(/^(A step up from|It takes more cloth or work than) /);
        if (/^A step/.test(tier.chosen.why)) expect(texts(tier)).not.toBe(texts(before));
      });
  });

  it('no praise goes against a caution of the same option', () => {
    const AGAINST: readonly (readonly [string, RegExp])[] = [
      ['combination-labour', /napped-in-damp/],
      ['body-lent', /thick-for-thin-face/],
      ['soft-blackout-folds', /stiff-blackout/],
      ['napped-blackout-labour', /napped-in-damp/],
    ];
    for (const { rules } of OPTIONS)
      for (const [praise, caution] of AGAINST) if (rules.includes(praise)) expect(rules.join(' ')).not.toMatch(caution);
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

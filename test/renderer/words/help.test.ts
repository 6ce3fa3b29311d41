import { describe, expect, it } from 'vitest';
import { lengthFrom } from '#shared/length.ts';
import { defaultPractice } from '#shared/practice-defaults.ts';
import { BED_SKIRT_STYLES } from '#shared/treatments/bed-skirt.ts';
import { ROMAN_STYLES } from '#shared/treatments/roman-shade.ts';
import { SWAG_STYLES } from '#shared/treatments/swags.ts';
import { TREATMENT_KINDS } from '#shared/treatments/treatment.ts';
import { VALANCE_STYLES } from '#shared/treatments/valance.ts';
import { HEADINGS } from '#shared/words.ts';
import { anchorOf, linesOf, searchHelp } from '../../../renderer/state/help-search.ts';
import { sayDefaults } from '../../../renderer/state/say-default.ts';
import { drawExample, drawExampleWork, takeOffSteps, workExample } from '../../../renderer/state/work-example.ts';
import { EXAMPLES } from '../../../renderer/words/help/examples.ts';
import type { Example } from '../../../renderer/words/help/examples.ts';
import { HELP_SECTIONS, KIND_HELP, KIND_PARTS } from '../../../renderer/words/help/help-sections.ts';
import { brokenNumbers, wordsOf } from '../../app/drawing/read-drawing.ts';

const ALL: readonly [string, Example][] = TREATMENT_KINDS.flatMap((kind) =>
  Object.entries(EXAMPLES[kind]).map(([style, example]): [string, Example] => [`${kind}, ${style}`, example]),
);
const STYLES = {
  panels: HEADINGS,
  valance: VALANCE_STYLES,
  swags: SWAG_STYLES,
  'roman-shade': ROMAN_STYLES,
  'bed-skirt': BED_SKIRT_STYLES,
} as const;

describe('the help has a section', () => {
  it.each(TREATMENT_KINDS)('for %s, with every part written', (kind) => {
    const section = HELP_SECTIONS.find(({ id }) => id === kind);
    expect(section?.is).toBe('kind');
    const help = KIND_HELP[kind];
    for (const rows of [help.is, help.measured, help.reckoned, help.settings, help.sentBack, help.cautions])
      expect(rows.length).toBeGreaterThan(0);
    expect(Object.keys(help.styles)).toContain(help.shown);
    expect(Object.keys(EXAMPLES[kind])).toEqual(Object.keys(help.styles));
  });

  it.each(Object.entries(STYLES))('for every style of %s', (kind, styles) => {
    expect(Object.keys(KIND_HELP[kind as keyof typeof STYLES].styles)).toEqual([...styles]);
  });

  it('under an id and an anchor of its own', () => {
    expect(new Set(HELP_SECTIONS.map(({ id }) => id)).size).toBe(HELP_SECTIONS.length);
    for (const section of HELP_SECTIONS) {
      const parts = section.is === 'topic' ? section.help.parts.map(({ title }) => title) : Object.values(KIND_PARTS);
      expect(new Set(parts.map((part) => anchorOf(section, part))).size).toBe(parts.length);
    }
  });

  it.each(HELP_SECTIONS.map((section) => [section.title, section] as const))(
    'whose lines are each said once: %s',
    (_title, section) => {
      const lines = linesOf(section).map(({ part, text }) => `${part}: ${text}`);
      expect(lines.filter((line, index) => lines.indexOf(line) !== index)).toEqual([]);
    },
  );
});

describe('the examples', () => {
  it.each(ALL)('%s is read, reckoned and drawn in both systems', (_name, example) => {
    for (const unit of ['in', 'cm'] as const) {
      const answer = workExample(example, unit);
      if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
      expect(takeOffSteps(answer.worked).length).toBeGreaterThan(3);
      const elevation = drawExample(answer.worked, { width: 700, height: 250, dimensioned: true });
      const work = drawExampleWork(answer.worked, 700);
      for (const drawing of [elevation, work]) {
        expect(brokenNumbers(drawing)).toEqual([]);
        expect(wordsOf(drawing).some((word) => /\d/.test(word))).toBe(true);
      }
    }
  });

  // Pinch pleats: 84 + 2 × 3 1/2 + 3 1/2 = 94 1/2, times 2.5 = 236.25, by 54 = 4.375, up to 5; 87 + 8 + 8 = 103,
  // in repeats of 18 up to 6 = 108 (the arithmetic of panels as published yardage charts print it).
  it('pinch pleats come to five widths of 108', () => {
    const answer = workExample(EXAMPLES.panels['pinch-pleat'], 'in');
    if (!answer.ok) throw new Error('not read');
    const face = answer.worked.made.takeoff[0];
    expect(face?.cuts).toBe(5);
    expect(face?.cutLength).toBe(lengthFrom(108, 'in'));
  });
});

describe('defaults in the help', () => {
  it('are those of the practice, in the units of the reader', () => {
    const shown = (unit: 'in' | 'cm', name: string): string | undefined =>
      KIND_HELP.panels.settings.find((setting) => setting.name === name)?.of(defaultPractice(unit), sayDefaults(unit));
    expect(shown('in', 'bottom hem, in total')).toBe('8 in');
    expect(shown('cm', 'bottom hem, in total')).toBe('20 cm');
    expect(shown('in', 'orders go up to')).toBe('¼ yd');
    expect(shown('in', 'lost in washing')).toBe('nothing');
  });

  it('follow a practice that is another', () => {
    const practice = { ...defaultPractice('in'), bottomHem: lengthFrom(10, 'in') };
    const row = KIND_HELP.panels.settings.find(({ name }) => name === 'bottom hem, in total');
    expect(row?.of(practice, sayDefaults('in'))).toBe('10 in');
  });
});

describe('finding in the help', () => {
  it('brings a section whose title it is first', () => {
    expect(searchHelp('roman shade')[0]?.section.id).toBe('roman-shade');
  });
  it('finds a paragraph by words in any order and case', () => {
    const found = searchHelp('Repeats CUT');
    expect(found.some(({ section, part }) => section.id === 'panels' && part === KIND_PARTS.reckoned)).toBe(true);
  });
  it.each(['', '   '])('finds nothing for %j', (text) => {
    expect(searchHelp(text)).toEqual([]);
  });
  it('says nothing for words that stand nowhere', () => {
    expect(searchHelp('zeppelin')).toEqual([]);
  });
});

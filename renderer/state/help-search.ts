/** Finds words in the help: every word typed has to stand in one and the same paragraph, title or term. */
import { HELP_SECTIONS, KIND_PARTS } from '../words/help/help-sections.ts';
import type { HelpSection } from '../words/help/help-sections.ts';

export interface HelpFinding {
  readonly section: HelpSection;
  /** The part it stands in; empty for the section itself. */
  readonly part: string;
  /** Where to scroll to. */
  readonly anchor: string;
  /** What was found, whole. */
  readonly text: string;
}

const MOST_FOUND = 24;

/** Id of a part's heading in the article. */
export function anchorOf(section: HelpSection, part: string): string {
  return `help-${section.id}-${part.toLowerCase().replace(/[^a-z0-9]+/g, '-')}`;
}

/** Everything of a section that can be found, with the part that holds it. */
export function linesOf(section: HelpSection): readonly { readonly part: string; readonly text: string }[] {
  if (section.is === 'topic')
    return section.help.parts.flatMap((part) => [
      { part: part.title, text: part.title },
      ...(part.says ?? []).map((text) => ({ part: part.title, text })),
      ...(part.points ?? []).map((text) => ({ part: part.title, text })),
      ...(part.terms ?? []).map(({ term, says }) => ({ part: part.title, text: `${term}: ${says}` })),
      ...(part.settings ?? []).map(({ name }) => ({ part: part.title, text: name })),
    ]);
  const { help } = section;
  return [
    ...help.is.map((text) => ({ part: KIND_PARTS.is, text })),
    ...help.measured.map(({ term, says }) => ({ part: KIND_PARTS.measured, text: `${term}: ${says}` })),
    ...Object.values(help.styles).flatMap(({ name, says, settings }) => [
      { part: KIND_PARTS.styles, text: `${name}: ${says}` },
      ...(settings ?? []).map((each) => ({ part: KIND_PARTS.styles, text: `${name}, ${each.name}` })),
    ]),
    ...help.reckoned.map((text) => ({ part: KIND_PARTS.reckoned, text })),
    ...help.settings.map(({ name }) => ({ part: KIND_PARTS.settings, text: name })),
    ...help.sentBack.map((text) => ({ part: KIND_PARTS.sentBack, text })),
    ...help.cautions.map((text) => ({ part: KIND_PARTS.cautions, text })),
  ];
}

/** Sections whose title holds the words come first, then paragraphs in the order of the help. */
export function searchHelp(text: string): readonly HelpFinding[] {
  const words = text.trim().toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return [];
  const holds = (candidate: string): boolean => {
    const lower = candidate.toLowerCase();
    return words.every((word) => lower.includes(word));
  };
  const titles = HELP_SECTIONS.filter((section) => holds(section.title)).map((section): HelpFinding => ({
    section,
    part: '',
    anchor: '',
    text: section.title,
  }));
  const lines = HELP_SECTIONS.flatMap((section) =>
    linesOf(section)
      .filter(
        (line) =>
          holds(`${section.title} ${line.part} ${line.text}`) &&
          words.some((word) => line.text.toLowerCase().includes(word)),
      )
      .map((line): HelpFinding => ({
        section,
        part: line.part,
        anchor: anchorOf(section, line.part),
        text: line.text,
      })),
  );
  return [...titles, ...lines].slice(0, MOST_FOUND);
}

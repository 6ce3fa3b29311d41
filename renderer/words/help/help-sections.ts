/** Every section of the help in the order shown; a kind of treatment without one does not compile. */
import { TREATMENT_KINDS } from '#shared/treatments/treatment.ts';
import type { TreatmentKind } from '#shared/treatments/treatment.ts';
import { KIND_WORDS } from '../kind-sheets/kinds.ts';
import { BED_SKIRT_HELP } from './bed-skirt.ts';
import { BEHIND_HELP } from './behind.ts';
import { CLOTH_HELP } from './cloth.ts';
import { CORNICE_HELP } from './cornice.ts';
import type { AnyKindHelp, KindHelp, TopicHelp } from './help-text.ts';
import { JOB_FILES_HELP } from './job-files.ts';
import { KEYS_HELP } from './keys.ts';
import { MEASURING_HELP } from './measuring.ts';
import { PANELS_HELP } from './panels.ts';
import { PRICES_HELP } from './prices.ts';
import { PROPOSALS_HELP } from './proposals.ts';
import { ROMAN_SHADE_HELP } from './roman-shade.ts';
import { SHOWER_CURTAIN_HELP } from './shower-curtain.ts';
import { SWAGS_HELP } from './swags.ts';
import { VALANCE_HELP } from './valance.ts';

export const KIND_HELP: { readonly [Kind in TreatmentKind]: KindHelp<Kind> } = {
  panels: PANELS_HELP,
  valance: VALANCE_HELP,
  cornice: CORNICE_HELP,
  swags: SWAGS_HELP,
  'roman-shade': ROMAN_SHADE_HELP,
  'bed-skirt': BED_SKIRT_HELP,
  'shower-curtain': SHOWER_CURTAIN_HELP,
};

const BEFORE: readonly TopicHelp[] = [MEASURING_HELP];
const AFTER: readonly TopicHelp[] = [CLOTH_HELP, BEHIND_HELP, PRICES_HELP, PROPOSALS_HELP, JOB_FILES_HELP, KEYS_HELP];

export type HelpSection =
  | { readonly is: 'kind'; readonly id: TreatmentKind; readonly title: string; readonly help: AnyKindHelp }
  | { readonly is: 'topic'; readonly id: string; readonly title: string; readonly help: TopicHelp };

function sectionOfTopic(help: TopicHelp): HelpSection {
  return { is: 'topic', id: help.id, title: help.title, help };
}

export const HELP_SECTIONS: readonly HelpSection[] = [
  ...BEFORE.map(sectionOfTopic),
  ...TREATMENT_KINDS.map((kind): HelpSection => ({
    is: 'kind',
    id: kind,
    title: KIND_WORDS[kind].name,
    help: KIND_HELP[kind],
  })),
  ...AFTER.map(sectionOfTopic),
];

/** Where the help opens when nothing more is asked. */
export const FIRST_HELP = MEASURING_HELP.id;

/** Headings over the parts of a kind's section, in their order. */
export const KIND_PARTS = {
  is: 'What it is',
  measured: 'What to measure, from where to where',
  styles: 'What it comes in',
  reckoned: 'How it is reckoned',
  settings: 'What your practice says, unless you change it',
  worked: 'The example, worked',
  made: 'The example, as the workroom gets it',
  sentBack: 'What the workroom sends back',
  cautions: 'Cautions',
} as const;

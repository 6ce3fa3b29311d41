/**
 * What the help is made of. A section is data: words by kind and style, measurements in measuring order, settings that
 * name their own default, and a worked example that the program draws and reckons when it is read.
 */
import type { Practice, Thousandths } from '#shared/practice.ts';
import type { LengthTable } from '#shared/treatments/length-settings.ts';
import type { BedSkirtStyle } from '#shared/treatments/bed-skirt.ts';
import type { RomanStyle } from '#shared/treatments/roman-shade.ts';
import type { ShowerCurtainTreatment } from '#shared/treatments/shower-curtain.ts';
import type { SwagStyle } from '#shared/treatments/swags.ts';
import type { TreatmentKind } from '#shared/treatments/treatment.ts';
import type { ValanceStyle } from '#shared/treatments/valance.ts';
import type { Heading } from '#shared/words.ts';

/** What each kind comes in; a style without its words, or without its example, does not compile. */
export interface StylesOf {
  readonly panels: Heading;
  readonly valance: ValanceStyle;
  readonly cornice: 'straight' | 'shaped';
  readonly swags: SwagStyle;
  readonly 'roman-shade': RomanStyle;
  readonly 'bed-skirt': BedSkirtStyle;
  readonly 'shower-curtain': ShowerCurtainTreatment['arrangement'];
}

/** How a default is written: in the reader's own units. */
export interface SayDefault {
  readonly length: (ticks: number) => string;
  /** As cloth is bought: yards or metres. */
  readonly cloth: (ticks: number) => string;
  readonly times: (fullness: Thousandths) => string;
  readonly share: (millionths: number) => string;
}
export interface SettingShown {
  readonly name: string;
  readonly of: (practice: Practice, say: SayDefault) => string;
}

/** One measurement: the word of its line on the sheet, and from where to where it is read. */
export interface Measured {
  readonly term: string;
  readonly says: string;
}

export interface StyleHelp {
  readonly name: string;
  readonly says: string;
  readonly settings?: readonly SettingShown[];
}

export interface KindHelp<Kind extends TreatmentKind> {
  readonly kind: Kind;
  readonly is: readonly string[];
  readonly measured: readonly Measured[];
  readonly styles: Readonly<Record<StylesOf[Kind], StyleHelp>>;
  /** The style whose example is dimensioned, worked and taken apart. */
  readonly shown: StylesOf[Kind];
  readonly reckoned: readonly string[];
  readonly settings: readonly SettingShown[];
  readonly sentBack: readonly string[];
  readonly cautions: readonly string[];
}

/** The help of whichever kind: its styles are read by name alone. */
export interface AnyKindHelp extends Omit<KindHelp<TreatmentKind>, 'styles' | 'shown'> {
  readonly styles: Readonly<Record<string, StyleHelp>>;
  readonly shown: string;
}

/** Help that is about no one kind. */
export interface TopicHelp {
  readonly id: string;
  readonly title: string;
  readonly parts: readonly TopicPart[];
}
export interface TopicPart {
  readonly title: string;
  readonly says?: readonly string[];
  readonly points?: readonly string[];
  readonly terms?: readonly Measured[];
  readonly settings?: readonly SettingShown[];
}

type TableSection = 'valance' | 'cornice' | 'swags' | 'romanShade' | 'bedSkirt' | 'showerCurtain';

/** Settings of a kind's own table, under the words that the table has for them. */
export function settingsOf<Section extends TableSection, Table extends LengthTable>(
  section: Section,
  table: Table,
  names: readonly (keyof Table & keyof Practice[Section] & string)[],
): readonly SettingShown[] {
  return names.map((name) => ({
    name: (table[name]?.says ?? name).replace(/\.$/, ''),
    // Every name of a table is a length of its section.
    of: (practice, say) => say.length(practice[section][name] as number),
  }));
}

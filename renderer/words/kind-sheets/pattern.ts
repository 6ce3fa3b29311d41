/** Where the pattern stands: asked of every kind in the same words, after all that it is made of. */
import type { PatternPlace } from '#shared/treatments/pattern-place.ts';
import { readAt } from '../../state/form-path.ts';
import type { Asked, SheetGroup, SheetLine } from './sheet.ts';

type Place = PatternPlace['place'];

const PLACE_WORDS: Readonly<Record<Place, string>> = {
  level: "at the room's level",
  top: 'whole, at the top',
  hem: 'whole, above the hem',
  middle: 'in the middle of the drop',
};
const ORDER = ['level', 'top', 'hem', 'middle'] as const satisfies readonly Place[];

interface PatternAsked {
  /** Where it may stand; the first is what a new one starts with. */
  readonly places?: readonly Place[];
  /** Words of its own for a place. */
  readonly words?: Readonly<Partial<Record<Place, string>>>;
  /** Its makes that show a motif in the middle across; not given: none. */
  readonly centred?: (asked: Asked) => boolean;
  /** How high its top is, where frame and mount do not tell. */
  readonly top?: (asked: Asked) => number | null;
}

export function patternGroup({ places = ORDER, words = {}, centred, top = topOfMount }: PatternAsked = {}): SheetGroup {
  const follows = ({ form }: Asked): boolean => readAt(form, 'pattern.place') === 'level';
  const levelLines: readonly SheetLine[] = [
    { type: 'length', path: 'pattern.level', label: 'motif above floor', applies: follows },
    { type: 'length', path: 'pattern.belowCeiling', label: 'or below ceiling', applies: follows },
    { type: 'length', path: 'pattern.topAt', label: 'top above floor', applies: follows, usual: top },
  ];
  const isCentred = (asked: Asked): boolean =>
    centred !== undefined && centred(asked) && readAt(asked.form, 'pattern.centred') === true;
  return {
    id: 'pattern',
    title: 'Where the pattern stands',
    optional: {
      path: 'pattern',
      add: 'Place the pattern',
      takeOff: 'Let the pattern fall as it falls',
      start: () => ({ place: places[0] }),
    },
    lines: [
      {
        type: 'choice',
        path: 'pattern.place',
        label: 'motif',
        choices: places.map((value) => ({ value, name: words[value] ?? PLACE_WORDS[value] })),
      },
      ...(places.includes('level') ? levelLines : []),
      { type: 'length', path: 'pattern.motif', label: 'motif in repeat' },
      ...(centred === undefined
        ? []
        : ([
            { type: 'flag', path: 'pattern.centred', label: 'one in the middle across', applies: centred },
            { type: 'length', path: 'pattern.motifAcross', label: 'motif from edge', applies: isCentred },
          ] as const)),
    ],
  };
}

/** Over the frame, or at its head inside it; a mount at the ceiling has the room's, which the opening does not know. */
function topOfMount({ form, opening }: Asked): number | null {
  const { sill, height } = opening;
  if (sill === null || height === null || readAt(form, 'mount.where') === 'ceiling') return null;
  const above = readAt(form, 'mount.where') === 'inside' ? 0 : readAt(form, 'mount.above');
  return sill + height + (typeof above === 'number' ? above : 0);
}

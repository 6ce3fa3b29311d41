/**
 * The starter book: one page for each generic cloth, and one for each family that no generic cloth stands for. Every
 * value of a page says where it comes from; none was measured, and none is a supplier's.
 */
import type { Cloth, KnownOfCloth } from '#shared/cloth.ts';
import { FACE_FAMILIES, GENERIC_CLOTH_IDS } from '#shared/words.ts';
import type { FaceFamily, GenericClothId, LiningFamily } from '#shared/words.ts';
import { KEYES_BOUNDS } from './face-families.ts';
import type { KeyesClass } from './face-families.ts';
import { TYPICAL } from './provenance.ts';
import type { Provenance } from './provenance.ts';
import { BLANK, JUDGED_VALUES, provenanceOf, STARTER_CLOTH } from './starter-cloth.ts';
import type { JudgedValue } from './starter-cloth.ts';
import { typicalFace, typicalLining, typicalWays } from './typical-values.ts';

export const PAGE_VALUES = [...JUDGED_VALUES, 'hand'] as const;
export type PageValue = JudgedValue | 'hand';

export interface StarterPage {
  readonly key: string;
  /** Of the generic cloth; null for a family alone, which no stack can name. */
  readonly id: GenericClothId | null;
  /** With every value that is known of it. */
  readonly cloth: Cloth & Required<Pick<KnownOfCloth, 'thickness' | 'hand'>>;
  readonly provenance: Readonly<Partial<Record<PageValue, Provenance>>>;
}

const FACE_NAMES: Readonly<Record<FaceFamily, string>> = {
  plain: 'Plain cloth',
  print: 'Print',
  woven: 'Woven pattern',
  sheer: 'Sheer',
  silk: 'Silk',
  velvet: 'Velvet',
};

const OTHER_LININGS = { thermal: 'Thermal lining', sheer: 'Sheer lining', contrast: 'Contrast lining' } as const;

const CLASS_WORDS: Readonly<Record<KeyesClass, string>> = {
  II_L: 'half-open light',
  III_D: 'closed dark',
  III_M: 'closed medium',
  III_L: 'closed light',
};

export const STARTER_BOOK: readonly StarterPage[] = [
  ...FACE_FAMILIES.map(pageOfFace),
  ...GENERIC_CLOTH_IDS.map(pageOfGeneric),
  ...(['thermal', 'sheer', 'contrast'] as const).map(pageOfLining),
];

function pageOfGeneric(id: GenericClothId): StarterPage {
  const cloth = STARTER_CLOTH[id];
  const { hand } = typicalWays(cloth);
  const told = JUDGED_VALUES.filter((value) => cloth[value] !== undefined && cloth[value] !== null);
  return {
    key: id,
    id,
    cloth: { ...cloth, thickness: cloth.thickness ?? 0, hand },
    provenance: {
      ...Object.fromEntries(told.map((value) => [value, provenanceOf(id, value)])),
      hand: `${TYPICAL}: the hand nearest to how firmly the family holds`,
    },
  };
}

/** A family of face cloth has no fibre, needle or care of its own: any of them may be of any. */
function pageOfFace(family: FaceFamily): StarterPage {
  const { stiffness: _held, ...values } = typicalFace(family);
  const cloth = { ...BLANK, ...values, id: family, role: 'face', family, name: FACE_NAMES[family] } as const;
  const whole = { ...cloth, content: null, shade: null };
  const bounds = KEYES_BOUNDS[family];
  const solar =
    bounds === null
      ? `${TYPICAL}: opener than any drapery class of Keyes 1967`
      : `${TYPICAL}: between ${CLASS_WORDS[bounds[0]]} and ${CLASS_WORDS[bounds[1]]} drapery of Keyes 1967 (second-hand)`;
  return {
    key: `face-${family}`,
    id: null,
    cloth: { ...whole, hand: typicalWays(whole).hand },
    provenance: { weight: TYPICAL, visible: TYPICAL, uv: TYPICAL, solar, thickness: TYPICAL, hand: TYPICAL },
  };
}

function pageOfLining(family: LiningFamily & keyof typeof OTHER_LININGS): StarterPage {
  const { stiffness: _held, ...values } = typicalLining(family);
  const cloth = { ...BLANK, ...values, id: family, role: 'lining', family, name: OTHER_LININGS[family] } as const;
  const whole = { ...cloth, content: null, shade: family === 'contrast' ? null : 'white' };
  return {
    key: `lining-${family}`,
    id: null,
    cloth: { ...whole, hand: typicalWays(whole).hand },
    provenance: {
      weight: TYPICAL,
      ...(whole.shade === null ? {} : { shade: 'common practice: white unless asked for' }),
      visible: TYPICAL,
      uv: TYPICAL,
      solar: TYPICAL,
      thickness: TYPICAL,
      hand: TYPICAL,
    },
  };
}

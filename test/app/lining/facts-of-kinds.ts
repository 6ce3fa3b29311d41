/** Facts of the trade about each kind of treatment (common practice): where a rule speaks, and where it must not. */
import type { FaceCloth } from '#shared/cloth.ts';
import type { GenericClothId, RoomUse } from '#shared/words.ts';
import type { JudgeInput } from '#app/lining/judge-input.ts';
import { inches } from './kind-case.ts';
import type { KindName } from './kind-case.ts';
import { ownOf } from './window-case.ts';
import type { Told } from './window-case.ts';

const inRoom = (use: RoomUse): Told => ({ room: { use } });
export const CORDS: Told = { treatment: { shade: { style: 'flat', lift: 'cords', rings: 48, ribs: 9 } } };
const PALE: Partial<FaceCloth> = { colour: '#f5f2ec' };
const CONTRAST = ownOf('std-white', { family: 'contrast', shade: '#d8775f' });

export type Case = readonly [KindName, readonly GenericClothId[], Told?, Partial<JudgeInput>?];
export interface Fact {
  readonly fact: string;
  readonly rule: string;
  readonly level: string;
  readonly fires: Case;
  readonly quiet: Case;
}

export const FACTS: readonly Fact[] = [
  {
    fact: 'needle holes show in the body of a Roman shade, and nothing mends that',
    rule: 'needle-holes-body',
    level: 'caution',
    fires: ['flat shade', ['blackout-3-pass']],
    quiet: ['flat shade', ['soft-blackout']],
  },
  {
    fact: 'a soft blackout is for stitching through the body',
    rule: 'soft-blackout-folds',
    level: 'praise',
    fires: ['flat shade', ['soft-blackout']],
    quiet: ['flat shade', ['std-white']],
  },
  {
    fact: 'sew through a sample and hold it to the light',
    rule: 'sew-a-sample',
    level: 'note',
    fires: ['swags', ['soft-blackout']],
    quiet: ['swags', ['std-white']],
  },
  {
    fact: 'a stiff blackout does not fold softly',
    rule: 'stiff-blackout-gathers-badly',
    level: 'caution',
    fires: ['soft-fold shade', ['blackout-3-pass']],
    quiet: ['flat shade', ['blackout-3-pass']],
  },
  {
    fact: 'three-pass blackout swags badly',
    rule: 'stiff-blackout-gathers-badly',
    level: 'caution',
    fires: ['swags', ['blackout-3-pass']],
    quiet: ['cornice', ['blackout-3-pass']],
  },
  {
    fact: 'three-pass blackout gathers badly',
    rule: 'stiff-blackout-gathers-badly',
    level: 'caution',
    fires: ['gathered valance', ['blackout-3-pass']],
    quiet: ['gathered valance', ['soft-blackout']],
  },
  {
    fact: 'three-pass blackout suits tailored, board-mounted valances',
    rule: 'blackout-suits-flat',
    level: 'praise',
    fires: ['tailored valance', ['blackout-3-pass']],
    quiet: ['gathered valance', ['blackout-3-pass']],
  },
  {
    fact: 'machine-sewn hems of a flat valance show needle holes',
    rule: 'needle-holes-hems',
    level: 'note',
    fires: ['tailored valance', ['blackout-3-pass']],
    quiet: ['tailored valance', ['std-white']],
  },
  {
    fact: 'a valance well above the window, lined with blackout, shows no line where glass meets wall',
    rule: 'glass-line-hidden',
    level: 'praise',
    fires: ['tailored valance', ['blackout-3-pass']],
    quiet: ['tailored valance', ['std-white']],
  },
  {
    fact: 'without one that line shows by day',
    rule: 'glass-line-shows',
    level: 'note',
    fires: ['tailored valance', ['std-white']],
    quiet: ['tailored valance', ['std-white'], { treatment: { mount: { where: 'wall', above: inches(16) } } }],
  },
  {
    fact: 'cascades show their lining: a contrast can be chosen',
    rule: 'tails-show-lining',
    level: 'note',
    fires: ['swags', ['std-white']],
    quiet: ['cornice', ['std-white']],
  },
  {
    fact: 'what daylight through a contrast lining does to the face is computed',
    rule: 'contrast-tints-tails',
    level: 'note',
    fires: ['swags', ['std-white'], { treatment: { tails: { lining: CONTRAST } } }],
    quiet: ['swags', ['std-white'], { treatment: { tails: { lining: ownOf('blackout-3-pass', {}) } } }],
  },
  {
    fact: 'a contrast lining that tints nothing is praised',
    rule: 'contrast-shows-on-tails',
    level: 'praise',
    fires: [
      'swags',
      ['std-white'],
      { treatment: { tails: { lining: ownOf('blackout-3-pass', { family: 'contrast', shade: '#d8775f' } as never) } } },
    ],
    quiet: ['swags', ['std-white']],
  },
  {
    fact: 'a light lining suits a bed skirt, where light does not matter',
    rule: 'light-lining-suits-make',
    level: 'praise',
    fires: ['bed skirt', ['std-white']],
    quiet: ['bed skirt', ['blackout-3-pass']],
  },
  {
    fact: 'a light lining suits a shower curtain',
    rule: 'light-lining-suits-make',
    level: 'praise',
    fires: ['shower curtain', ['std-white']],
    quiet: ['tailored valance', ['std-white']],
  },
  {
    fact: 'unlined, a bed skirt hangs better with a light lining',
    rule: 'lining-helps-make',
    level: 'note',
    fires: ['bed skirt', []],
    quiet: ['bed skirt', ['std-white']],
  },
  {
    fact: 'a blackout is more than a bed skirt needs',
    rule: 'more-than-it-needs',
    level: 'note',
    fires: ['bed skirt', ['blackout-3-pass']],
    quiet: ['bed skirt', ['std-white']],
  },
  {
    fact: 'a reachable cord in a nursery is a stop',
    rule: 'cord-in-child-room',
    level: 'stop',
    fires: ['flat shade', ['std-white'], { ...CORDS, ...inRoom('nursery') }],
    quiet: ['flat shade', ['std-white'], inRoom('nursery')],
  },
  {
    fact: 'a reachable cord in a child’s room is a stop',
    rule: 'cord-in-child-room',
    level: 'stop',
    fires: ['flat shade', ['soft-blackout'], { ...CORDS, ...inRoom('child') }],
    quiet: ['flat shade', ['soft-blackout'], { ...CORDS, ...inRoom('living') }],
  },
  {
    fact: 'a reachable cord elsewhere is cautioned of',
    rule: 'cord-in-reach',
    level: 'caution',
    fires: ['flat shade', ['std-white'], CORDS],
    quiet: ['flat shade', ['std-white']],
  },
  {
    fact: 'rear cords of a shade are held close in a child’s room',
    rule: 'shade-cords-child',
    level: 'caution',
    fires: ['flat shade', ['std-white'], inRoom('child')],
    quiet: ['cornice', ['std-white'], inRoom('child')],
  },
  {
    fact: 'cordless is the default of a shade, and said',
    rule: 'shade-cords',
    level: 'note',
    fires: ['flat shade', ['std-white']],
    quiet: ['swags', ['std-white']],
  },
  {
    fact: 'button cells in remotes are a swallowing hazard',
    rule: 'button-cells',
    level: 'note',
    fires: ['flat shade', ['std-white'], inRoom('nursery')],
    quiet: ['flat shade', ['std-white']],
  },
  {
    fact: 'escape windows stay free',
    rule: 'escape-window',
    level: 'note',
    fires: ['flat shade', ['std-white'], inRoom('bedroom')],
    quiet: ['cornice', ['std-white'], inRoom('bedroom')],
  },
  {
    fact: 'inside the frame daylight stays at the sides',
    rule: 'light-inside-frame',
    level: 'note',
    fires: ['soft-fold shade', ['soft-blackout']],
    quiet: ['flat shade', ['soft-blackout']],
  },
  {
    fact: 'a flat make wants firm cloth',
    rule: 'limp-for-flat',
    level: 'note',
    fires: ['flat shade', [], { face: { family: 'silk' } }],
    quiet: ['flat shade', ['inter-med', 'std-white']],
  },
  {
    fact: 'a thick interlining folds up badly in a shade',
    rule: 'bulky-shade',
    level: 'caution',
    fires: ['flat shade', ['inter-heavy', 'std-white']],
    quiet: ['flat shade', ['inter-light', 'std-white']],
  },
  {
    fact: 'interlining is not for a shower curtain',
    rule: 'interlining-damp',
    level: 'stop',
    fires: ['shower curtain', ['inter-light', 'std-white']],
    quiet: ['bed skirt', ['inter-light', 'std-white']],
  },
  {
    fact: 'interlining is not for a rod pocket, but goes on a board',
    rule: 'interlining-heading',
    level: 'stop',
    fires: ['gathered valance', ['inter-light', 'std-white']],
    quiet: ['swags', ['inter-light', 'std-white']],
  },
  {
    fact: 'a shower curtain takes a liner',
    rule: 'shower-liner',
    level: 'note',
    fires: ['shower curtain', []],
    quiet: ['shower curtain', [], { treatment: { liner: true } }],
  },
  {
    fact: 'a shower curtain has to be washed',
    rule: 'shower-wants-washable',
    level: 'caution',
    fires: ['shower curtain', ['std-white'], { face: { care: 'dry-clean' } }],
    quiet: ['shower curtain', ['std-white'], { face: { care: 'wash' } }],
  },
  {
    fact: 'steam spoils velvet and silk',
    rule: 'face-in-damp',
    level: 'caution',
    fires: ['flat shade', ['std-white'], { face: { family: 'velvet' }, ...inRoom('bath') }],
    quiet: ['flat shade', ['std-white'], { face: { family: 'print' }, ...inRoom('bath') }],
  },
  {
    fact: 'a nap holds damp, in a bathroom',
    rule: 'napped-in-damp',
    level: 'note',
    fires: ['flat shade', ['combo-white'], inRoom('bath')],
    quiet: ['flat shade', ['combo-white'], inRoom('living')],
  },
  {
    fact: 'and in a kitchen: a combination lining is half an interlining',
    rule: 'napped-in-damp',
    level: 'note',
    fires: ['flat shade', ['combo-white'], inRoom('kitchen')],
    quiet: ['flat shade', ['std-white'], inRoom('kitchen')],
  },
  {
    fact: 'cloth keeps clear of stoves and open flames',
    rule: 'kitchen-flame',
    level: 'caution',
    fires: ['flat shade', ['std-white'], inRoom('kitchen')],
    quiet: ['flat shade', ['std-white'], inRoom('dining')],
  },
  {
    fact: 'what is lined dries slowly in a shower, and folded damp cloth grows mould',
    rule: 'shower-dries',
    level: 'note',
    fires: ['shower curtain', ['std-white'], inRoom('bath')],
    quiet: ['shower curtain', [], inRoom('bath')],
  },
  {
    fact: 'the layers take the care of the most delicate',
    rule: 'care-differs',
    level: 'note',
    fires: ['bed skirt', [], { face: { care: 'wash' } }, { behind: [ownOf('std-white', { care: 'dry-clean' })] }],
    quiet: ['bed skirt', [], { face: { care: 'wash' } }, { behind: [ownOf('std-white', { care: 'wash' })] }],
  },
  {
    fact: 'difference in shrinkage makes a hem pucker',
    rule: 'shrinkage-differs',
    level: 'caution',
    fires: [
      'bed skirt',
      [],
      { face: { shrinkage: { length: 0.05, width: 0.02 } } },
      { behind: [ownOf('std-white', { shrinkage: { length: 0.01, width: 0.02 } })] },
    ],
    quiet: [
      'bed skirt',
      [],
      { face: { shrinkage: { length: 0.02, width: 0.02 } } },
      { behind: [ownOf('std-white', { shrinkage: { length: 0.01, width: 0.02 } })] },
    ],
  },
  {
    fact: 'a rule for clothing is never evidence for drapery (16 CFR 1610)',
    rule: 'flame-clothing-rule',
    level: 'caution',
    fires: [
      'cornice',
      ['std-white'],
      { face: { flame: { test: '16 CFR 1610', certificate: 'invented' } }, ...inRoom('public') },
    ],
    quiet: [
      'cornice',
      ['std-white'],
      { face: { flame: { test: 'NFPA 701', certificate: 'invented' } }, ...inRoom('public') },
    ],
  },
  {
    fact: 'public rooms need a flame-tested stack, whatever hangs there',
    rule: 'flame-test',
    level: 'caution',
    fires: ['bed skirt', ['std-white'], inRoom('public')],
    quiet: ['bed skirt', ['std-white'], inRoom('living')],
  },
  {
    fact: 'blackout joined to a napped back: two layers’ labour',
    rule: 'napped-blackout-labour',
    level: 'praise',
    fires: ['flat shade', ['blackout-napped']],
    quiet: ['tailored valance', ['blackout-napped']],
  },
  {
    fact: 'a patterned lining shows through a pale face',
    rule: 'patterned-lining-shows',
    level: 'note',
    fires: ['flat shade', [], { face: PALE }, { behind: [CONTRAST] }],
    quiet: ['flat shade', [], { face: { colour: '#2f4a7a' } }, { behind: [CONTRAST] }],
  },
  {
    fact: 'a contrast lining shows on turned-back edges',
    rule: 'contrast-shows',
    level: 'praise',
    fires: ['flat shade', [], {}, { behind: [CONTRAST] }],
    quiet: ['flat shade', ['std-white']],
  },
  {
    fact: 'a light lining where light should come through',
    rule: 'light-lining-lets-light',
    level: 'praise',
    fires: ['flat shade', ['std-white'], inRoom('kitchen')],
    quiet: ['flat shade', ['std-white'], inRoom('media')],
  },
  {
    fact: 'a thin face pales in strong sun',
    rule: 'thin-face-pales',
    level: 'note',
    fires: ['flat shade', ['std-white'], { face: { weight: 110 }, room: { facing: 'S' } }],
    quiet: ['flat shade', ['combo-white'], { face: { weight: 110 }, room: { facing: 'S' } }],
  },
];

import { SWAGS_LENGTHS } from '#shared/treatments/swags-practice.ts';
import { settingsOf } from './help-text.ts';
import type { KindHelp } from './help-text.ts';

export const SWAGS_HELP: KindHelp<'swags'> = {
  kind: 'swags',
  is: [
    'Half-rounds of draped cloth on a board. Cascades are pleated tails at both ends of the board, with a slanted edge that shows the lining. Jabots are shorter tails between the swags.',
    'A cascade is a third or two thirds of the whole drop, never half.',
  ],
  measured: [
    { term: 'top above frame', says: 'From the top of the frame up to the top of the board.' },
    { term: 'board, end to end', says: 'Along the front of the board, outside to outside.' },
    { term: 'return', says: 'From the wall to the front of the board; over a drapery, its return and a little more.' },
    { term: 'depth in the middle', says: 'From the top of the board to the lowest point of a swag.' },
    {
      term: 'longest point, shortest point',
      says: 'Of one cascade or jabot: from the top of the board to the lowest corner, and to where the slant begins.',
    },
    { term: 'finished face', says: 'Width of one tail as it hangs pleated, without the return.' },
  ],
  shown: 'overlapped',
  styles: {
    overlapped: {
      name: 'Overlapped',
      says: 'Each swag laps half of its neighbour. The width of one is twice the board divided by their number and one more, up to a whole step.',
      settings: settingsOf('swags', SWAGS_LENGTHS, ['widthStep', 'widestSwag']),
    },
    separate: {
      name: 'Side by side',
      says: 'Swags that only meet: the board divided by their number. Jabots cover where they meet.',
      settings: settingsOf('swags', SWAGS_LENGTHS, ['widestSwag']),
    },
  },
  reckoned: [
    'How many: as given, or as few as keep each within the widest.',
    'Flat swag: its finished width and depth, each times what the folds take, with cloth for the top of the board and the seam. On the bias a square is cut from corner to corner; a swag too wide or too deep for it goes on the straight grain. The lining behind the face is always on the bias.',
    'Tails: finished face, two depths of every knife pleat, the return of a cascade and the seams give the flat width; the longest point and its allowance the cut. Pleats are counted whole, then spaced again.',
    'Pattern: folds take up what lies above and below, so a motif is placed in the middle of each swag or not at all; and only on the straight grain, because on the bias it would stand at 45 degrees. Tails show it as it falls.',
    'What lines the tails is ordered apart where you choose a contrast, because it shows.',
    'Board and its cover as for a valance.',
  ],
  settings: [
    {
      name: 'flat cloth along the lower edge, over the finished width',
      of: ({ swags }, say) => say.times(swags.flatWidth),
    },
    { name: 'flat cloth down the middle, over the finished depth', of: ({ swags }, say) => say.times(swags.flatDepth) },
    ...settingsOf('swags', SWAGS_LENGTHS, [
      'boardTurn',
      'fold',
      'biasWidest',
      'biasDeepest',
      'tailAllowance',
      'pleatFace',
      'pleatDepth',
    ]),
  ],
  sentBack: [
    'Tails without a lining, or without saying which lining shows.',
    'Left and right cascades that are the same hand: their slants face each other.',
    'A pattern that has to stand upright on a swag cut on the bias: it turns by 45 degrees.',
    'A stiff blackout behind a swag: it does not drape.',
  ],
  cautions: [
    'The board hangs overhead: brackets into structure, hung by a competent installer, with care on ladders.',
    'Long cascades beside a heater or a lamp must stay clear of it.',
    'Flat cloth of a swag is a rule of thumb set to a trade average: drape a sample in muslin before a costly cloth is cut.',
  ],
};

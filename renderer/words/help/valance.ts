import { VALANCE_LENGTHS } from '#shared/treatments/valance-practice.ts';
import { settingsOf } from './help-text.ts';
import type { KindHelp } from './help-text.ts';

export const VALANCE_HELP: KindHelp<'valance'> = {
  kind: 'valance',
  is: [
    'A short treatment of soft cloth across the head of a window, alone or over panels or a shade. It hangs from a board on brackets, or is gathered on a rod of its own.',
    'A fifth to a sixth of the whole drop looks right; the program says when it is shallow or deep for the drop you give.',
  ],
  measured: [
    {
      term: 'top above frame',
      says: 'From the top of the frame up to the top of the board or heading. Set high, it hides where glass meets wall.',
    },
    {
      term: 'face, end to end',
      says: 'Along the front of the board or rod, from one outer end to the other. Over a treatment it goes past its rod on both sides.',
    },
    {
      term: 'return',
      says: 'From the front of the board back to the wall. Over another treatment it has to clear it: the return underneath and a little more.',
    },
    { term: 'finished length', says: 'From the top of the board or heading to the lowest point of the hem.' },
    {
      term: 'return underneath, whole drop it tops',
      says: 'The return of what hangs below it, and the length from its own top to the hem below. They change no cut; they let the program judge.',
    },
  ],
  shown: 'box-pleated',
  styles: {
    tailored: {
      name: 'Tailored',
      says: 'Flat, lined to the edge and turned, with or without buckram. Plain cloth may run sideways so that no seam crosses the front. A stiff blackout suits it well.',
      settings: settingsOf('valance', VALANCE_LENGTHS, ['sideHem', 'facedSeam', 'wrap']),
    },
    'box-pleated': {
      name: 'Box-pleated',
      says: 'Flat fields with box pleats between them, or pleats at both corners as well. Each pleat takes its own cloth, and seams hide behind the pleats.',
      settings: settingsOf('valance', VALANCE_LENGTHS, ['pleatTakeUp']),
    },
    gathered: {
      name: 'Gathered',
      says: 'Drawn up along the top, on a board or over a rod with a header. Hemmed below.',
      settings: [
        { name: 'usual fullness', of: ({ valance }, say) => say.times(valance.gatheredFullness) },
        ...settingsOf('valance', VALANCE_LENGTHS, ['bottomHem']),
      ],
    },
    scalloped: {
      name: 'Scalloped',
      says: 'A hem cut in round scallops and faced: flat on a board, gathered on a rod. The finished length is that of the lowest point.',
      settings: [
        { name: 'usual fullness on a rod', of: ({ valance }, say) => say.times(valance.scallopedFullness) },
        ...settingsOf('valance', VALANCE_LENGTHS, ['scallopWidth', 'facing']),
      ],
    },
    balloon: {
      name: 'Balloon',
      says: 'Gathered above and tied up below into puffs, for good: no cord hangs from it. What is drawn up is added to the length.',
      settings: [
        { name: 'usual fullness', of: ({ valance }, say) => say.times(valance.balloonFullness) },
        ...settingsOf('valance', VALANCE_LENGTHS, ['balloonTakeUp', 'puffWidth']),
      ],
    },
  },
  reckoned: [
    'Width with returns: face and both returns. A flat one adds its side hems and what wraps round the ends of the board; a box-pleated one what every pleat takes; a gathered one is multiplied by its fullness.',
    'Widths: that width by the usable width of the cloth, up. A flat front takes one whole width in the middle and a piece at each side, never a seam in the middle.',
    'Cut: finished length, cloth on top of the board or the pocket, and the seam or hem at the bottom; up to whole repeats where the cloth has one.',
    'Pattern: a motif is placed from the finished top; what lies on the board or in the pocket comes off before it.',
    'Board: as long as the face, as deep as the return, with its cover in strips cut from the first lining. Welts are strips on the bias, joined.',
    'Lining: as wide as the face and sewn edge to edge where the front is turned, hemmed apart and a little shorter where it is gathered.',
  ],
  settings: [
    ...settingsOf('valance', VALANCE_LENGTHS, [
      'boardDepth',
      'boardThickness',
      'boardTurn',
      'overClearance',
      'weltStrip',
      'liningHem',
      'liningShorter',
    ]),
    { name: 'looks mean below one part of the drop in', of: ({ valance }) => String(valance.shallowestPart) },
    { name: 'looks heavy above one part of the drop in', of: ({ valance }) => String(valance.deepestPart) },
  ],
  sentBack: [
    'No return, or a return that touches the rod or shade underneath.',
    'A finished length without its place: top of board or top of header, lowest or highest point of the hem.',
    'Box pleats without their number, scallops without their depth, a pocket without the rod diameter.',
    'A motif that the program cannot place for you: say which field it stands in.',
  ],
  cautions: [
    'Board and cloth hang overhead: brackets into structure, hung by a competent installer, with care on ladders.',
    'A valance catches warm air from a heater below and light from a lamp beside it: keep both clear.',
    'The puffs of a balloon are tied for good. A balloon that is raised is a corded shade, with all that goes for one.',
  ],
};

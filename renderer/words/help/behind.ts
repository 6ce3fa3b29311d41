import type { TopicHelp } from './help-text.ts';

export const BEHIND_HELP: TopicHelp = {
  id: 'behind',
  title: 'What goes behind',
  parts: [
    {
      title: 'A stack',
      says: [
        'A stack is the layers from the room to the glass: the face, sometimes an interlining, a lining. Until you choose, the program does, for the room, the window, the make and the cloth, and says why. Change it under any of the three.',
      ],
      terms: [
        {
          term: 'standard lining',
          says: 'A woven lining. White shows the face in its true colour by day; ivory yellows it. From the street both look alike.',
        },
        {
          term: 'interlining',
          says: 'A soft layer between face and lining: body, warmth, some darkness. For dry cleaning only; not for damp rooms, nor behind grommets, tabs, pockets or wave headings.',
        },
        {
          term: 'combination lining',
          says: 'Sateen on one side, napped on the other: part of the body of an interlining at the labour of two layers.',
        },
        {
          term: 'three-pass blackout',
          says: 'Stops all light where it is not pierced. Stiff: for flat things. It gathers and drapes badly, and every needle hole shows.',
        },
        {
          term: 'soft blackout',
          says: 'Stops nearly all light, drapes, and closes round the needle. Always sew through a sample and hold it to the light.',
        },
        {
          term: 'contrast lining',
          says: 'Coloured, for where the lining shows: cascades, turned-back edges. The program computes what daylight through it does to the face.',
        },
      ],
    },
    {
      title: 'Five readings',
      terms: [
        {
          term: 'light',
          says: 'How much daylight comes through the closed treatment; edges, gaps and needle holes are counted besides.',
        },
        {
          term: 'by day',
          says: 'How far daylight through the stack shifts the colour of the face from what it is by lamplight.',
        },
        {
          term: 'warmth',
          says: 'How much heat through the glass is kept in while it is closed. It rests on how it closes at the sides and the sill.',
        },
        { term: 'fading', says: 'How much of the damaging light is kept from the back of the face.' },
        { term: 'body', says: 'From limp to firm: a judgement from weight and family, not a test.' },
      ],
    },
    {
      title: 'How far to trust them',
      says: [
        'They are computed for your glass and mount from the values of the cloth. Where nobody measured a value, a typical one is taken and marked. No reading is a test result, and no class of any standard is claimed.',
        'Readings of light and warmth belong to what hangs before the glass: a valance or a cornice has fewer, a bed skirt or a shower curtain only its body.',
      ],
    },
    {
      title: 'Cautions',
      points: [
        'A stop is not to be made as it is: a cord within reach in a child’s room.',
        'A caution is told with what would be better; a note is worth knowing.',
        'Heavy stacks over cold glass can gather damp; some glass cracks from the heat in sun.',
        'A lining or interlining changes how cloth burns. What has to comply is the whole stack.',
      ],
    },
  ],
};

import type { TopicHelp } from './help-text.ts';

export const CLOTH_HELP: TopicHelp = {
  id: 'cloth',
  title: 'Cloth and repeats',
  parts: [
    {
      title: 'Width',
      says: [
        'The width is from selvage to selvage; the usable width is what is left between the selvages and within the pattern, where they differ. A width in the take-off is one full width of cloth.',
        'Choose a lining as wide as the face or a little narrower: then its seams lie behind the seams of the face.',
      ],
    },
    {
      title: 'Repeat and match',
      terms: [
        {
          term: 'vertical repeat',
          says: 'From one motif to the same motif below it, along the selvage. Cuts go up to whole repeats.',
        },
        { term: 'straight across', says: 'The pattern meets the next width at the same height.' },
        {
          term: 'half-drop',
          says: 'It meets half a repeat lower. Neighbouring cuts then begin half a repeat apart, and the layout uses it.',
        },
        {
          term: 'horizontal repeat',
          says: 'From motif to motif across; it tells where a seam may fall. Where the usable width is not whole repeats of it, joined panels cannot match: the program says so, with what it would take. A practice may say that joined widths bring whole repeats alone, and then it is counted so.',
        },
        {
          term: 'cut on the repeat',
          says: 'The supplier cuts at your place in the pattern, so no repeat extra is ordered.',
        },
      ],
    },
    {
      title: 'Where the pattern stands',
      says: [
        'Under "Where the pattern stands" of every kind a motif is placed. Nothing is cut longer for it: each cut begins further into the repeat, and the layout, the working and the work sheet say where.',
        "The room's level is written once, from the floor or from the ceiling; every other treatment of the room that follows it has its motif at the same height, a shade in one window and panels in the next. For that the program must know how high each top hangs: it finds it from sill, height and mount, or you write it.",
      ],
      terms: [
        { term: "at the room's level", says: 'The middle of a motif at one height in the whole room.' },
        {
          term: 'motif above floor, or below ceiling',
          says: 'The level of the room: of the two, write the one that you measured. Others of the room leave both empty and follow.',
        },
        { term: 'whole, at the top', says: 'A whole motif just below the finished top.' },
        { term: 'whole, above the hem', says: 'A whole motif just above the hem.' },
        {
          term: 'motif in repeat',
          says: 'From where the repeat is measured from to the middle of the motif. Left empty, half the repeat is taken.',
        },
        {
          term: 'one in the middle across',
          says: 'Of flat valances, cornices, Roman shades and swags on the straight grain: a motif in the middle of the front, the seams equally far from it. The cut then begins where the motif asks and not at the selvage, so a width gives less and there may be more of them.',
        },
        {
          term: 'motif from edge',
          says: 'From the left edge of the usable width to the middle of any motif. Left empty, half a repeat is given up at either side; measured, it may take fewer widths.',
        },
      ],
    },
    {
      title: 'Sideways and one way',
      says: [
        'Railroaded cloth may be turned so that its pattern or its plain width runs along the rod: where the whole length fits across the bolt, no seams are needed.',
        'What runs sideways has its repeat across: no motif is placed on it, and the program says so.',
        'A pile or a pattern with a top runs all one way: tell the cloth, and nothing is turned round in the layout.',
      ],
    },
    {
      title: 'What is ordered',
      says: [
        'The length as laid out, what is extra, and up to the step in which the cloth is sold. The step can be that of the practice, or of the one cloth. Orders always go up and are never cut short by rounding.',
      ],
      settings: [{ name: 'orders go up to', of: (practice, say) => say.cloth(practice.orderStep) }],
    },
    {
      title: 'Weight',
      says: [
        'Ask whether ounces are of a running yard or a square yard: five ounces a running yard at 54 in is about 113 g/m², five ounces a square yard 170. A cloth whose weight nobody told is reckoned by its family, and marked as assumed.',
      ],
    },
    {
      title: 'What it does to light',
      says: [
        'Under "What it does" stand the daylight, ultraviolet and heat that a cloth passes and sends back, in per cent; together they are never more than 100. What you leave empty is typical of its kind, shown grey and marked; say beside a value of yours where it comes from.',
        'With a telephone that measures light you can find what a sample passes: read the meter at a sunny window bare and with the sample before it. Never look into the sun, and stay on the floor.',
        'The starter book has linings, interlinings and kinds of face cloth, every value with its source. Make one yours, in the place of the generic one or beside it, and write over what you know.',
      ],
    },
    {
      title: 'Content and care',
      says: [
        'Match content: an all-cotton face wants an all-cotton lining, a blend a blend, so that layers move together. Difference in shrinkage makes a hem pucker. A flame certificate belongs to one cloth; in a public room the whole made-up stack has to comply with the local code.',
      ],
    },
  ],
};

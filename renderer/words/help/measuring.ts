import type { TopicHelp } from './help-text.ts';

export const MEASURING_HELP: TopicHelp = {
  id: 'measuring',
  title: 'Measuring',
  parts: [
    {
      title: 'How to write a measurement',
      says: [
        'As you would on paper: 84 1/2, 84-1/2", 7\' 0 1/2", 84.5, 2.146 m, 214,6 cm. A bare number is in the units of the project. The field shows it back in those units; what cannot be read stays as you typed it, with an example of what can.',
        'Tab and Enter go down the sheet in measuring order. Every field is kept when you leave it.',
      ],
    },
    {
      title: 'The window',
      terms: [
        {
          term: 'opening wide, opening high',
          says: 'Outside mount: the frame, edge to edge, or the hole where there is no frame. Inside mount: the hole itself, which the shade or valance asks for in three readings.',
        },
        { term: 'sill from the floor', says: 'From the finished floor up to the lower edge of the opening.' },
        {
          term: 'from the left wall',
          says: 'From the left end of its wall to the left edge of the opening. It places the window in the drawing, and shows how much wall the open panels have.',
        },
        {
          term: 'glass, heat source below',
          says: 'Both change what may hang there: readings of light and warmth go by the glass, clearances by the heater.',
        },
      ],
    },
    {
      title: 'Three readings',
      says: [
        'Walls lean and floors run. Widths inside a frame are read at top, middle and bottom, and the narrowest counts. Heights of a fixing are read at left, middle and right, and the shortest counts. Where the floor differs by more than half an inch (about 1 cm), each width is hemmed to the floor, and the work order has to say so.',
      ],
    },
    {
      title: 'Rough or final',
      says: [
        'The line "measured" says how far a measure can be trusted. Rough is good enough for a price. An order needs final: read after the floor is laid and the hardware is up, by the person who answers for it.',
      ],
    },
    {
      title: 'Opening size or finished size',
      says: [
        'Say once who deducts. "Of the opening" hands the workroom the readings of the frame, and it deducts; "finished, deducted" hands it the made size. Deducting twice makes a shade that lets light in at both sides; deducting never makes one that sticks.',
      ],
    },
    {
      title: 'A bed or a bath',
      says: [
        'A bed skirt and a shower curtain need no window. "Add a bed", or "Add a bath" in a bathroom, stands one in the room; the sheet then asks of the platform or the curtain alone, and where on the wall it stands.',
      ],
    },
    {
      title: 'On paper',
      says: [
        '"Measure sheet to print", at the foot of a project, is a blank sheet for the visit; "Work sheets to print" beside it draws each piece for the workroom.',
      ],
    },
  ],
};

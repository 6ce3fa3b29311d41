import type { TopicHelp } from './help-text.ts';

export const KEYS_HELP: TopicHelp = {
  id: 'keys',
  title: 'Keys, undo and where things are kept',
  parts: [
    {
      title: 'Keys',
      terms: [
        { term: 'F1', says: 'This help, from anywhere. Escape closes it, and you are where you were.' },
        {
          term: 'Ctrl or Cmd and K',
          says: 'Find anything: a client, a room, a cloth, a proposal, a page of this help.',
        },
        { term: 'Ctrl or Cmd and Z', says: 'Undo, across the whole project; with Shift, or with Y, redo.' },
        {
          term: 'Tab, Enter',
          says: 'Down the sheet in measuring order; Enter from the last line goes on to the next window.',
        },
        {
          term: 'Arrow keys',
          says: 'Through lists. In the drawing of the rooms Tab goes from window to window and Enter chooses one.',
        },
      ],
    },
    {
      title: 'The order of things',
      says: [
        'Treatments at one window hang one behind the other, and their tabs stand in that order: the first nearest the room, the last nearest the glass. "Towards the room" and "towards the glass" move the one shown. Windows and rooms move before or after their neighbour.',
      ],
    },
    {
      title: 'Kept',
      says: [
        'Nothing has to be saved. The whole portfolio is one file in your data folder, backed up before every change of its form. Nothing is sent anywhere.',
      ],
    },
  ],
};

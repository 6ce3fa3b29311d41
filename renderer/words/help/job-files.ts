import type { TopicHelp } from './help-text.ts';

export const JOB_FILES_HELP: TopicHelp = {
  id: 'job-files',
  title: 'Job files',
  parts: [
    {
      title: 'What it is',
      says: [
        'One file of plain text (JSON) that holds a whole project: client, rooms, windows, treatments, cloth, practice and price book. It is the open format of this program, for moving a project to another computer, for keeping it, and for other programs.',
      ],
    },
    {
      title: 'Out and in',
      points: [
        '"Export as a job file" stands at the foot of a project.',
        '"Import a job file" stands under Clients. It makes a new client with a project; nothing that is here is changed.',
        'A file with something wrong in it is refused whole, with every fault by its place, what is wrong and what would be right.',
      ],
    },
    {
      title: 'Without the window',
      says: [
        'The command line of the program prices a job file, writes its proposal, and prints the schema of the format: see the README that comes with it.',
      ],
    },
  ],
};

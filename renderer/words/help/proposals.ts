import type { TopicHelp } from './help-text.ts';

export const PROPOSALS_HELP: TopicHelp = {
  id: 'proposals',
  title: 'Proposals',
  parts: [
    {
      title: 'Making one',
      says: [
        '"Make a proposal", at the head of a project, shows it as the client will see it. Write the number, the date, until when it holds and your terms; then make it. What is not finished yet is listed with a link to the field.',
      ],
    },
    {
      title: 'It does not change',
      says: [
        'A proposal is frozen when it is made: measurements, cloth, prices, words and the PDF itself. Later changes to the project or to your price book make a new revision; the one that was handed over stays as it was.',
      ],
    },
    {
      title: 'Sending it',
      says: [
        'Open it, save a copy, or write a mail draft with the PDF attached, to be sent when there is a network. Nothing leaves this computer by itself.',
      ],
    },
    {
      title: 'What it says besides prices',
      points: [
        'Each window as it would hang, drawn from the numbers.',
        'What each option does, in words first.',
        'Cautions about cords, heat, weight and flame, where they apply. They are for the client and cannot be switched off.',
        'Your terms and notices, in your own words. They are text, not legal advice.',
      ],
    },
    {
      title: 'For the workroom',
      says: [
        '"Work sheets to print", at the foot of a project, draws every piece as it is cut and made. The copy for the decorator holds all the arithmetic.',
      ],
    },
  ],
};

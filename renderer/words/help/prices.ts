import type { TopicHelp } from './help-text.ts';

export const PRICES_HELP: TopicHelp = {
  id: 'prices',
  title: 'The three prices',
  parts: [
    {
      title: 'Good, better, best',
      says: [
        'Every treatment is reckoned under three stacks: quantities, readings and price for each. The one that fits room and window best is advised, with its reason. Where no step above another is worth offering (behind most sheers, on a bed skirt) the next is the same and says why; anything can still be put there by hand. Under Practice you may rename the three.',
      ],
    },
    {
      title: 'What a price is made of',
      points: [
        'Cloth, lining and interlining: the order of each, times what it costs you, with your markup.',
        'Labour: by the width for each heading or kind, and what is added for interlining, blackout, pleats, rings or boards.',
        'Hardware and notions: rods, brackets, tape, hooks, weights, each from your price book.',
        'Tax: on the kinds of lines you say, once on the sum for each rate.',
      ],
      says: [
        'Every line is rounded once and then added, so that what is printed adds up. The price of a treatment is before tax; the totals of the project are with it.',
      ],
    },
    {
      title: 'A rate that is missing',
      says: [
        'A rate that is needed and not set is named, with a link to its line in the price book. Nothing is priced at zero in silence. "Use the example rates" shows prices at once; every paper then says that they are examples.',
      ],
    },
    {
      title: 'One width fewer',
      says: [
        'Where one width less would still make the least fullness of the heading, the sheet offers it beside the price. It is never taken by itself.',
      ],
    },
  ],
};

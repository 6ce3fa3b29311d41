import type { KindHelp, SettingShown } from './help-text.ts';
import type { Heading } from '#shared/words.ts';

/** What a heading takes by default. */
function headingSettings(heading: Heading): readonly SettingShown[] {
  return [
    { name: 'usual fullness', of: (practice, say) => say.times(practice.fullness[heading]) },
    { name: 'still hangs well at', of: (practice, say) => say.times(practice.leastFullness[heading]) },
    {
      name: 'added above the finished length, lined',
      of: (practice, say) => say.length(practice.headingAllowance[heading].lined),
    },
  ];
}

export const PANELS_HELP: KindHelp<'panels'> = {
  kind: 'panels',
  is: [
    'Lengths of cloth that hang from a heading: curtains or drapery, drawn or still, lined or sheer, to the sill, below it, to the floor or on it.',
    'A pair that draws meets in the middle; a one-way draw opens to one side; still panels only frame the window, and may be sold by widths instead of by fullness.',
  ],
  measured: [
    { term: 'rod above frame', says: 'From the top of the frame up to the rod, or to the underside of a track.' },
    {
      term: 'rod face',
      says: 'From bracket to bracket along the front, without finials, returns or overlap. To clear the glass the rod reaches past it by what the open panels take: see the stackback on the worksheet.',
    },
    {
      term: 'finished length',
      says: 'From the top of the heading to the hem. Where it starts is the commonest remake, so let the program find it: "Find the length from the fixing" asks for the height of the fixing above the floor at left, middle and right, and takes the shortest.',
    },
    {
      term: 'fixing above floor',
      says: 'Rings: to the eye of the ring. Track: to its underside. Grommets, tabs and pockets: to the top of the pole.',
    },
    {
      term: 'return',
      says: 'From the rod back to the wall at each outer end. It is measured, never guessed; a drapery over another stands further out. At a corner wall there is none.',
    },
    {
      term: 'overlap, in all',
      says: 'Where a pair crosses in the middle, both leading edges together. Many sheets say "3½ a panel" and mean 7: here it is the whole. Rings on one pole only meet, so their overlap is nothing or an inch.',
    },
  ],
  shown: 'pinch-pleat',
  styles: {
    'pinch-pleat': {
      name: 'Pinch pleat',
      says: 'Two or three fingers pinched at each pleat and tacked at the foot. It draws easily and hangs in even folds. Returns and overlap stay flat; the space between pleats follows from the rest, and what is left over goes into the pleats.',
      settings: headingSettings('pinch-pleat'),
    },
    goblet: {
      name: 'Goblet',
      says: 'Pleats opened into cups and tacked at the foot, formal and tall. Drawing crushes the cups, so they hang best still. Count on a heading that stands upright above the ring.',
      settings: headingSettings('goblet'),
    },
    'box-pleat': {
      name: 'Box pleat',
      says: 'Flat pleats side by side, from a track. It takes most cloth and most wall when open, and suits still panels.',
      settings: headingSettings('box-pleat'),
    },
    'pencil-pleat': {
      name: 'Pencil pleat',
      says: 'Gathered by the cords of a tape, in narrow upright folds. The width can be drawn up on site. The cords of the tape are tied off behind, out of reach.',
      settings: headingSettings('pencil-pleat'),
    },
    'rod-pocket': {
      name: 'Rod pocket',
      says: 'A sleeve of cloth pushed over the rod, with or without a header above it. It is arranged by hand and left: it does not draw well. The pocket needs the diameter of the rod.',
      settings: [
        ...headingSettings('rod-pocket'),
        { name: 'turned in at the pocket', of: (practice, say) => say.length(practice.pocket.turn) },
        { name: 'ease round the rod', of: (practice, say) => say.length(practice.pocket.ease) },
      ],
    },
    tab: {
      name: 'Tab top',
      says: 'Loops of cloth over a pole. The panel begins below the pole by the drop of the tab, and light comes in between the tabs. Tabs drag on the pole: for panels that are seldom moved. Not for interlining.',
      settings: [
        ...headingSettings('tab'),
        {
          name: 'from the top of the panel to the top of the pole',
          of: (practice, say) => say.length(practice.tab.drop),
        },
        { name: 'between tabs, at the most', of: (practice, say) => say.length(practice.spacing.tab) },
      ],
    },
    grommet: {
      name: 'Grommet',
      says: 'Metal rings set in the top, threaded on a pole: deep, even folds. Their number is always even, so that both edges turn to the wall. The ring must be wider than the pole, no seam may fall under one (two more are taken, or a strip is trimmed at the wall side, until none does), and the heading stands a little above the pole. Not for interlining.',
      settings: [
        ...headingSettings('grommet'),
        { name: 'between grommets, at the most', of: (practice, say) => say.length(practice.spacing.grommet) },
        { name: 'from the edge to the first', of: (practice, say) => say.length(practice.spacing.grommetEdge) },
      ],
    },
    wave: {
      name: 'Wave',
      says: 'One soft S after another on a track whose gliders are held apart by a cord. The gliders decide: their number is made even, and the flat cloth follows from spaces, spacing and fullness. Not for interlining or stiff blackout.',
      settings: [
        ...headingSettings('wave'),
        { name: 'between gliders', of: (practice, say) => say.length(practice.spacing.glider) },
        { name: 'flat beyond the outer gliders', of: (practice, say) => say.length(practice.spacing.waveEnds) },
      ],
    },
    flat: {
      name: 'Flat',
      says: 'No pleats: hung from rings, clips or hooks with a little fullness. Pattern and border read whole, and a stiff blackout hangs as it should.',
      settings: [
        ...headingSettings('flat'),
        { name: 'between clips or rings', of: (practice, say) => say.length(practice.spacing.clip) },
      ],
    },
  },
  reckoned: [
    'Width with returns and overlap: rod face, both returns and the whole overlap added up.',
    'Flat width: that width times the fullness of the heading. A practice may let fullness act on the face and the overlap alone, and add the returns flat.',
    'Widths: flat width divided by the usable width of the cloth, up to whole widths for all pieces together. An odd number gives each half of a pair a half width, split from one cut and sewn to the return side. Where one width fewer would still hang well, it is offered, never taken silently.',
    'Fullness made: the widths chosen, less side hems and joins, divided by the finished width. It is what the client gets, and it is told.',
    'Cut before repeat: finished length, heading and bottom hem, and what straightening takes. Cloth that is washed first is cut longer by the share it loses.',
    'Cut length: up to whole repeats, so that every width begins at the same place in the pattern. Plain cloth needs nothing more.',
    'Pattern: a motif is placed from the top of the heading; cuts then begin further into the repeat, and are no longer for it.',
    'Laid out: every cut but the last runs to whole repeats; the last ends where it ends. A half-drop lets neighbours begin half a repeat later. By the chart is what a printed table would say: all cuts at full length.',
    'Order: the length as laid out, one repeat more because no supplier promises where a bolt begins, up to the step in which it is sold. A cloth cut at our place in the repeat needs no more.',
    'Lining and interlining: as many widths as the face where they are as wide, else by their own width. They have their own heading and hem, and hang a little shorter.',
    'Weight on the rod: every layer by its made width, its length with the hems that stay in, and its weight.',
  ],
  settings: [
    { name: 'bottom hem, in total', of: (practice, say) => say.length(practice.bottomHem) },
    { name: 'side hem of one edge, in total', of: (practice, say) => say.length(practice.sideHem) },
    { name: 'lost from each of two widths at a join', of: (practice, say) => say.length(practice.seam) },
    { name: 'extra on every cut for straightening', of: (practice, say) => say.length(practice.squaring) },
    { name: 'lost in washing', of: (practice, say) => say.share(practice.shrinkage) },
    { name: 'lining: above the finished length', of: (practice, say) => say.length(practice.lining.headingAllowance) },
    { name: 'lining: bottom hem, in total', of: (practice, say) => say.length(practice.lining.bottomHem) },
    { name: 'lining: hangs shorter by', of: (practice, say) => say.length(practice.lining.shorter) },
    {
      name: 'interlining: above the finished length',
      of: (practice, say) => say.length(practice.interlining.headingAllowance),
    },
    { name: 'hem clear of the floor', of: (practice, say) => say.length(practice.hang.floor) },
    { name: 'orders go up to', of: (practice, say) => say.cloth(practice.orderStep) },
  ],
  sentBack: [
    'A length without saying where it starts: top of the heading, eye of the ring, or top of the pole.',
    'No word on whether the overlap is for one panel or for both.',
    'Half widths without their side, or a pattern without where the motif stands.',
    'A grommet smaller than its pole; a pocket without the rod diameter.',
    'A rough measure, or one read before the floor and the hardware were in.',
  ],
  cautions: [
    'Cords, loops, bead chains and tieback loops can strangle small children and pets. Panels drawn by hand or by wand have none. A cot stands out of reach of cloth and pole.',
    'Heavy pairs fall. The weight and the number of brackets shown are guidance: the rating of the rod and a competent installer decide.',
    'Keep cloth clear of heaters, stoves, lamps and floor vents. Cloth that lies on the floor can trip people and block a vent.',
    'Stiff coated blackout gathers and pleats badly, and every needle hole shows as a point of daylight.',
  ],
};

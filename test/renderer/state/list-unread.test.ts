import { describe, expect, it } from 'vitest';
import { listUnread, placeDeskFault } from '../../../renderer/state/list-unread.ts';
import { sampleCloth, sampleDocument, sampleOpening, sampleRoom, sampleTreatment } from './sample-document.ts';

/** What stands in the way, without where the focus goes. */
function say(document = sampleDocument()) {
  return listUnread(document).map(({ where, label, says, address }) => [where, label, says, address]);
}

describe('texts that could not be read', () => {
  it('are none in a document without drafts, and blank drafts count as none', () => {
    expect(say()).toEqual([]);
    expect(say(sampleDocument({ rooms: [sampleRoom({ drafts: { ceiling: ' ' } })] }))).toEqual([]);
  });

  it('are named by place and label, each with the address of its field', () => {
    const treatment = sampleTreatment({ drafts: { finishedLength: '84 q' } });
    const opening = sampleOpening({ drafts: { width: '60 z' }, treatments: [treatment] });
    const document = sampleDocument({
      rooms: [sampleRoom({ drafts: { ceiling: 'high' }, openings: [opening] })],
      cloth: [sampleCloth({ drafts: { price: 'dear' } })],
    });
    const window = '#/project/project/opening';
    expect(say(document)).toEqual([
      ['Nursery', 'ceiling', '"high" cannot be read', window],
      ['Nursery, East window', 'opening wide', '"60 z" cannot be read', window],
      ['Nursery, East window', 'finished length', '"84 q" cannot be read', window],
      ['Larch stripe', 'what it costs you', '"dear" cannot be read', '#/cloth/cloth'],
    ]);
  });

  it('of cloth that hangs nowhere stand in the way of nothing', () => {
    const unused = sampleCloth({ id: 'other', code: 'other', drafts: { price: 'dear' } });
    expect(say(sampleDocument({ cloth: [sampleCloth(), unused] }))).toEqual([]);
  });
});

describe('faults of the desk', () => {
  it.each([
    ['rooms[0].ceiling', 'Nursery', 'ceiling', '#/project/project/opening'],
    ['rooms[0].openings[0].width', 'Nursery, East window', 'opening wide', '#/project/project/opening'],
    ['rooms[0].openings[0].treatments[0].rodWidth', 'Nursery, East window', 'rod face', '#/project/project/opening'],
    ['cloth[0].price', 'Larch stripe', 'what it costs you', '#/cloth/cloth'],
    ['proposal.tierNames', '', '', null],
    ['rooms[7].ceiling', '', '', null],
  ])('at %s are said of a thing with a name', (path, where, label, address) => {
    const told = placeDeskFault({ path, wrong: 'it is odd', right: 'mend it' }, sampleDocument());
    expect([told.where, told.label, told.address]).toEqual([where, label, address]);
    expect(told.says).toBe('it is odd: mend it');
  });

  it('say the place once', () => {
    const path = 'rooms[0].openings[0].treatments[0].rodWidth';
    const wrong = 'Nursery, East window, Panels: the rod face is not given yet';
    const told = placeDeskFault({ path, wrong, right: 'give it' }, sampleDocument());
    expect(told.says).toBe('the rod face is not given yet: give it');
  });
});

import { describe, expect, it } from 'vitest';
import { TIERS } from '#shared/words.ts';
import { priceDocument } from '../../../renderer/state/price-document.ts';
import { placePath } from '../../../renderer/state/read-document.ts';
import type { PriceMemo } from '../../../renderer/state/price-document.ts';
import type { TreatmentMake } from '#shared/records/treatment-make.ts';
import { inches, sampleDocument, sampleMake, sampleOpening, sampleRoom, sampleTreatment } from './sample-document.ts';

const fresh = (): PriceMemo => new WeakMap();

describe('a document priced as one types', () => {
  it('gives three prices whose totals are the sums of the treatments, and says that rates are examples', () => {
    const second = sampleOpening({ id: 'second', name: 'Second', treatments: [sampleTreatment({ id: 'other' })] });
    const priced = priceDocument(
      sampleDocument({ rooms: [sampleRoom({ openings: [sampleOpening(), second] })] }),
      fresh(),
    );
    expect([...priced.treatments.keys()]).toEqual(['treatment', 'other']);
    expect(priced.exampleRates).toBe(true);
    for (const tier of TIERS) {
      const net = [...priced.treatments.values()].reduce((sum, each) => sum + (each.tiers[tier].price?.total ?? 0), 0);
      expect(priced.totals?.[tier].net).toBe(net);
      expect(priced.totals?.[tier].total).toBe(net + (priced.totals?.[tier].tax ?? 0));
    }
  });

  it('agrees with the worked example of the job file: 4 widths, cuts of 108 in', () => {
    const { treatments } = priceDocument(sampleDocument(), fresh());
    const face = treatments.get('treatment')?.tiers.good.takeoff[0];
    expect(face).toMatchObject({ halfWidths: 8, cutLength: inches(108), plainCut: inches(100) });
  });

  it('names what is still missing and prices the rest', () => {
    const bare = sampleOpening({
      id: 'bare',
      name: 'Bare',
      treatments: [sampleTreatment({ id: 'empty', face: null, make: sampleMake({ rodWidth: null }) })],
    });
    const priced = priceDocument(
      sampleDocument({ rooms: [sampleRoom({ openings: [sampleOpening(), bare] })] }),
      fresh(),
    );
    expect(priced.unfinished.get('empty')).toEqual(['rodWidth', 'face']);
    expect(priced.treatments.has('treatment')).toBe(true);
    expect(priced.totals).not.toBeNull();
  });

  it('leaves out what is impossible, tells where and why, and gives no total then', () => {
    const tall = sampleOpening({
      id: 'tall',
      name: 'Tall',
      height: inches(100),
      treatments: [sampleTreatment({ id: 't2' })],
    });
    const priced = priceDocument(
      sampleDocument({ rooms: [sampleRoom({ openings: [sampleOpening(), tall] })] }),
      fresh(),
    );
    expect(priced.faults.map(({ id, field }) => [id, field])).toEqual([['tall', 'height']]);
    expect([...priced.treatments.keys()]).toEqual(['treatment']);
    expect(priced.totals).toBeNull();
  });

  it('names every rate that nobody has set, once', () => {
    const document = sampleDocument();
    const priced = priceDocument(
      { ...document, settings: { ...document.settings, priceBook: {}, exampleRates: false } },
      fresh(),
    );
    const rates = priced.missingRates.map(({ rate }) => rate);
    expect(rates).toContain('labour.perWidth.pinch-pleat');
    expect(new Set(rates).size).toBe(rates.length);
    expect(priced.totals).toBeNull();
  });

  it('reckons an opening again only when something changed that it rests on', () => {
    const memo = fresh();
    const document = sampleDocument();
    const before = priceDocument(document, memo).treatments.get('treatment');
    const renamed = { ...document, rooms: [{ ...document.rooms[0]!, name: 'Room of Ada' }] };
    expect(priceDocument(renamed, memo).treatments.get('treatment')).toBe(before);
    const warmer = { ...document, rooms: [{ ...document.rooms[0]!, climate: 'warm' as const }] };
    expect(priceDocument(warmer, memo).treatments.get('treatment')).not.toBe(before);
  });

  describe('one level a room, typed at one window and followed at another (common practice)', () => {
    const shade: TreatmentMake = {
      kind: 'roman-shade',
      form: {
        ...{ style: 'flat', mount: { where: 'wall', above: 0 }, return: 0 },
        ...{ size: { basis: 'finished', width: inches(27), length: inches(58) }, pattern: { place: 'level' } },
      },
    };
    const panels = (pattern: object) => sampleMake({ extras: { pattern } });
    function room(pattern: object) {
      const giving = sampleOpening({ treatments: [sampleTreatment({ make: panels(pattern) })] });
      const follows = sampleOpening({ id: 'second', treatments: [sampleTreatment({ id: 'shade', make: shade })] });
      return sampleDocument({ rooms: [sampleRoom({ ceiling: inches(108), openings: [giving, follows] })] });
    }

    it('the shade of the next window takes it, from the floor or from the ceiling', () => {
      for (const pattern of [
        { place: 'level', level: inches(60) },
        { place: 'level', belowCeiling: inches(48) },
      ]) {
        const priced = priceDocument(room(pattern), fresh());
        expect(priced.faults).toEqual([]);
        expect(priced.parsed.get('shade')?.pattern?.level).toBe(inches(60));
        expect(priced.treatments.get('shade')?.tiers.good.takeoff[0]?.pattern?.level).toBe(inches(60));
      }
    });

    it('and follows where it changes, though nothing of its own window did', () => {
      const memo = fresh();
      const before = room({ place: 'level', level: inches(60) });
      priceDocument(before, memo);
      const [giving, follows] = before.rooms[0]?.openings ?? [];
      const [treatment] = giving?.treatments ?? [];
      if (!giving || !follows || !treatment) throw new Error('two windows');
      const make = panels({ place: 'level', level: inches(64) });
      const openings = [{ ...giving, treatments: [{ ...treatment, make }] }, follows];
      const after = { ...before, rooms: before.rooms.map((each) => ({ ...each, openings })) };
      expect(priceDocument(after, memo).parsed.get('shade')?.pattern?.level).toBe(inches(64));
    });

    it('nobody gives one: the window that follows is told', () => {
      const { faults } = priceDocument(room({ place: 'hem' }), fresh());
      expect(faults.map(({ id, field }) => [id, field])).toEqual([['shade', 'pattern.level']]);
    });
  });
});

describe('where a fault stands', () => {
  it.each([
    ['rooms[0].openings[1].treatments[0].return.left', { id: 't', field: 'return.left' }],
    ['rooms[0].openings[1].height', { id: 'o', field: 'height' }],
    ['cloth[0].width', { id: null, field: 'cloth[0].width' }],
  ])('%s', (path, place) => {
    expect(placePath(path, { 'rooms[0].openings[1].treatments[0]': 't', 'rooms[0].openings[1]': 'o' })).toEqual(place);
  });
});

import { describe, expect, it } from 'vitest';
import { defaultPractice } from '#shared/practice-defaults.ts';
import type { TreatmentMake } from '#shared/records/treatment-make.ts';
import { largerReturn, underneath } from '../../../renderer/state/layered.ts';
import { fillForm, usualFills } from '../../../renderer/state/suggest-form.ts';
import { suggestMake } from '../../../renderer/state/suggest-make.ts';
import { inches, sampleMake, sampleOpening, sampleRoom, sampleTreatment } from './sample-document.ts';

const practice = defaultPractice('in');
const sheer = sampleTreatment({ id: 'sheer', name: 'Sheers' });

function over(make: TreatmentMake, name = 'Over') {
  const treatment = sampleTreatment({ id: 'over', name, make });
  return { treatment, opening: sampleOpening({ treatments: [treatment, sheer] }) };
}

describe('what hangs over another (common practice)', () => {
  it('a drapery over another returns 6 in', () => {
    const { opening, treatment } = over(sampleMake());
    const larger = largerReturn(opening, treatment, practice, 'in');
    expect(larger?.says).toMatch(/^Sheers, underneath, reaches 3½ in .* Its return is 3½ in: .* needs 6 in\.$/);
    expect(larger?.make).toMatchObject({ returnLeft: inches(6), returnRight: inches(6) });
    const taken = over(larger?.make ?? sampleMake());
    expect(largerReturn(taken.opening, taken.treatment, practice, 'in')).toBeNull();
  });

  it.each(['valance', 'cornice', 'swags'] as const)('%s returns as much as what is underneath, and 2 in', (kind) => {
    const { opening, treatment } = over({ kind, form: { mount: { where: 'wall' }, return: inches(3.5) } });
    const larger = largerReturn(opening, treatment, practice, 'in');
    expect(larger?.says).toMatch(/needs 5½ in/);
    expect(larger?.make).toMatchObject({ form: { return: inches(5.5), over: inches(3.5) } });
  });

  it('leaves the return to be reckoned where none is written', () => {
    const { opening, treatment } = over({ kind: 'valance', form: { style: 'tailored', mount: { where: 'wall' } } });
    expect(largerReturn(opening, treatment, practice, 'in')?.make).toEqual({
      kind: 'valance',
      form: { style: 'tailored', mount: { where: 'wall' }, over: inches(3.5) },
    });
  });

  it('says nothing inside a frame, nor of the one that hangs behind', () => {
    const inside = over({ kind: 'valance', form: { mount: { where: 'inside' } } });
    expect(largerReturn(inside.opening, inside.treatment, practice, 'in')).toBeNull();
    const { opening } = over(sampleMake());
    expect(underneath(opening, sheer)).toEqual([]);
    expect(largerReturn(opening, sheer, practice, 'in')).toBeNull();
  });
});

describe('what is usual over another treatment (common practice)', () => {
  const empty = { returnLeft: null, returnRight: null };
  const usual = (make: TreatmentMake, unders = [sheer]) => {
    const treatment = sampleTreatment({ id: 'over', make });
    const opening = sampleOpening({ treatments: [treatment, ...unders] });
    return suggestMake(sampleRoom(), opening, treatment, 'in', practice);
  };
  it('a drapery over sheers begins with 6 in, and by itself with 3½', () => {
    expect(usual(sampleMake(empty))).toMatchObject({ returnLeft: inches(6), returnRight: inches(6) });
    expect(usual(sampleMake(empty), [])).toMatchObject({ returnLeft: inches(3.5), returnRight: inches(3.5) });
  });
  it('over a shade on a board of 3½ in it begins with 5½', () => {
    const form = { mount: { where: 'wall' }, return: inches(3.5), size: { basis: 'finished' } };
    const shade = sampleTreatment({ id: 'shade', make: { kind: 'roman-shade', form } });
    expect(usual(sampleMake(empty), [shade])).toMatchObject({ returnLeft: inches(5.5), returnRight: inches(5.5) });
  });
  it('over a shade inside the frame it has its own return', () => {
    const form = { mount: { where: 'inside' }, size: { basis: 'opening' } };
    const shade = sampleTreatment({ id: 'shade', make: { kind: 'roman-shade', form } });
    expect(usual(sampleMake(empty), [shade])).toMatchObject({ returnLeft: inches(3.5) });
  });
});

describe('what is usual of other kinds (common practice)', () => {
  it('a valance is a fifth of the whole drop, and clears the panels that it tops', () => {
    const { opening, treatment } = over({ kind: 'valance', form: { style: 'tailored', mount: { where: 'wall' } } });
    const fills = usualFills(opening, treatment, practice, 'in');
    // 26 1/2 to the sill, 54 high, its top 2 in over a rod that is 4 above the frame.
    expect(fillForm({}, fills)).toEqual({
      mount: { above: inches(6) },
      width: inches(76),
      over: inches(3.5),
      dropOf: inches(86.5),
      finishedLength: inches(17),
    });
  });

  it('leaves alone whatever is written', () => {
    const { opening, treatment } = over({ kind: 'valance', form: { width: inches(70), mount: { where: 'wall' } } });
    expect(usualFills(opening, treatment, practice, 'in').map(({ path }) => path)).not.toContain('width');
  });

  it('a shade inside the frame begins with the opening', () => {
    const shade = sampleTreatment({
      make: { kind: 'roman-shade', form: { mount: { where: 'inside' }, size: { basis: 'opening' } } },
    });
    const opening = sampleOpening({ treatments: [shade] });
    expect(fillForm({}, usualFills(opening, shade, practice, 'in'))).toEqual({
      size: { widths: [inches(60)], lengths: [inches(54)] },
    });
  });
});

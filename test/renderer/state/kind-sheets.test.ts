import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { KIND_FIELDS, PANELS_EXTRAS } from '#shared/job-file/kind-fields.ts';
import { isLength, unwrapped } from '#shared/job-file/map-lengths.ts';
import { defaultPractice } from '#shared/practice-defaults.ts';
import { treatmentMake } from '#shared/records/treatment-make.ts';
import type { TreatmentMake } from '#shared/records/treatment-make.ts';
import { TREATMENT_KINDS } from '#shared/treatments/treatment.ts';
import { closeUp, fitForm, formOf, labelAt, makeAlike, newMake, withForm } from '../../../renderer/state/kind-form.ts';
import { addedTreatment, turnedInto } from '../../../renderer/state/new-treatment.ts';
import { KIND_SHEETS } from '../../../renderer/words/kind-sheets/kind-sheet-of.ts';
import type { Asked, SheetLine } from '../../../renderer/words/kind-sheets/sheet.ts';
import { inches, sampleOpening, sampleTreatment } from './sample-document.ts';

/** The parts of the wire schema that stand at a path; unions are followed into each of their options. */
function schemasAt(schema: z.core.$ZodType, steps: readonly string[]): z.core.$ZodType[] {
  const here = unwrapped(schema);
  // A length is a union of its own: number or text.
  if (here instanceof z.ZodUnion && !isLength(here)) return here.options.flatMap((option) => schemasAt(option, steps));
  const [step, ...rest] = steps;
  if (step === undefined) return [here];
  if (here instanceof z.ZodObject) {
    const next = (here.shape as Record<string, z.core.$ZodType>)[step];
    return next ? schemasAt(next, rest) : [];
  }
  if (here instanceof z.ZodArray) return schemasAt(here.element, rest);
  return [];
}
const LINES = TREATMENT_KINDS.flatMap((kind) =>
  KIND_SHEETS[kind].groups.flatMap((group) =>
    group.lines.map((line): [string, SheetLine] => [
      `${kind} ${group.list ? `${group.list.path}.0.${line.path}` : line.path}`,
      line,
    ]),
  ),
);

describe('every line of every sheet', () => {
  it.each(LINES)('%s stands in the schema of the job file', (name, line) => {
    const [kind = '', path = ''] = name.split(' ');
    const schema = kind === 'panels' ? PANELS_EXTRAS : KIND_FIELDS[kind as keyof typeof KIND_FIELDS];
    const found = schemasAt(schema, path.split('.'));
    expect(found.length).toBeGreaterThan(0);
    if (line.type === 'length') expect(found.some(isLength)).toBe(true);
    if (line.type === 'sides') expect(found.some(isLength)).toBe(true);
    if (line.type === 'cloth') expect(found.some((each) => each instanceof z.ZodString)).toBe(true);
    if (line.type === 'flag') expect(found.some((each) => each instanceof z.ZodBoolean)).toBe(true);
    if (line.type === 'choice' && !line.read)
      for (const { value } of line.choices)
        expect(
          found.some((each) => z.safeParse(each, value).success),
          value,
        ).toBe(true);
  });

  it('covers what the schema has: nothing of a kind is out of reach', () => {
    for (const kind of TREATMENT_KINDS) {
      const schema = kind === 'panels' ? PANELS_EXTRAS : KIND_FIELDS[kind];
      const lines = KIND_SHEETS[kind].groups.flatMap((group) => [
        ...(group.list ? [group.list.path] : []),
        ...group.lines.map(({ path }) => path),
      ]);
      const first = new Set(lines.map((path) => path.split('.')[0]));
      expect([...Object.keys(schema.shape)].filter((key) => !first.has(key))).toEqual([]);
    }
  });

  it('begins with a form that the portfolio keeps', () => {
    for (const kind of TREATMENT_KINDS)
      for (const unit of ['in', 'cm'] as const)
        expect(treatmentMake.safeParse(newMake(kind, unit)).success, kind).toBe(true);
  });
});

function askedOf(make: TreatmentMake): Asked {
  return {
    form: formOf(make),
    make,
    practice: defaultPractice('in'),
    face: 'larch-stripe',
    opening: sampleOpening(),
    unit: 'in',
  };
}

describe('the form of a kind', () => {
  it('puts aside what another style does not have, and brings it back', () => {
    const pleated: TreatmentMake = {
      kind: 'valance',
      form: { style: 'box-pleated', pleats: 5, pleatTakeUp: inches(6) },
    };
    const flat = withForm(pleated, fitForm(askedOf(withForm(pleated, { ...pleated.form, style: 'tailored' })), 'one'));
    expect(formOf(flat)).toEqual({ style: 'tailored' });
    const again = fitForm(askedOf(withForm(flat, { style: 'box-pleated' })), 'one');
    expect(again).toEqual({ style: 'box-pleated', pleats: 5, pleatTakeUp: inches(6) });
  });

  it('closes up readings when the line is left', () => {
    expect(closeUp({ size: { widths: [1, null, 2] } }, 'size.widths')).toEqual({ size: { widths: [1, 2] } });
    expect(closeUp({ size: { widths: [null] } }, 'size.widths')).toEqual({ size: {} });
  });

  it('is made alike without what is measured at each window', () => {
    const shade: TreatmentMake = {
      kind: 'roman-shade',
      form: { style: 'relaxed', mount: { where: 'inside' }, size: { basis: 'opening', widths: [inches(34)] }, rows: 9 },
    };
    expect(formOf(makeAlike(shade))).toEqual({
      style: 'relaxed',
      mount: { where: 'inside' },
      size: { basis: 'opening' },
    });
  });

  it('names a line that something is missing or wrong at', () => {
    expect(labelAt('roman-shade', 'size.widths.1')).toBe('width, middle');
    expect(labelAt('valance', 'return.right')).toBe('return, right');
    expect(labelAt('panels', 'bands.1.cloth')).toBe('band cloth');
    expect(labelAt('swags', 'jabots.longest')).toBe('jabots: longest point');
    expect(labelAt('swags', 'cascades')).toBe('cascades, a pair');
    expect(labelAt('cornice', 'rows')).toBeNull();
  });
});

describe('another kind', () => {
  it('keeps what she chose, and the first one waits for the way back', () => {
    const panels = sampleTreatment({ name: 'Winter pair', quantity: 2, drafts: { rodWidth: '7O', quantity: 'two' } });
    const changes = turnedInto(panels, 'cornice', 'in');
    const cornice = { ...panels, ...changes };
    expect(cornice).toMatchObject({ name: 'Winter pair', quantity: 2, face: 'larch-stripe', stacks: panels.stacks });
    expect(cornice.make).toEqual({ kind: 'cornice', form: { mount: { where: 'wall', above: null } } });
    expect(cornice.drafts).toEqual({ quantity: 'two' });
    expect({ ...cornice, ...turnedInto(cornice, 'panels', 'in') }.make).toEqual(panels.make);
  });

  it('takes the new name where the old one said nothing but the kind', () => {
    expect(turnedInto(sampleTreatment({ name: 'Panels 2' }), 'swags', 'in').name).toBe('Swags 2');
  });

  it('is named beside its likes, and takes their cloth', () => {
    const opening = sampleOpening();
    expect(addedTreatment(opening, 'panels', null, 'in')).toMatchObject({
      name: 'Panels 2',
      face: 'larch-stripe',
      position: 1,
    });
    expect(addedTreatment(opening, 'valance', null, 'in').name).toBe('Valance');
  });
});

/** Cloth, base fields and records that the cases of single treatments are built from, read by the program's own readers. */
import { readFileSync } from 'node:fs';
import * as z from 'zod';
import { speaker } from '#app/estimating/say.ts';
import { resolveCloth, weightOf } from '#app/lining/cloth/resolve-cloth.ts';
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { readPractice } from '#shared/job-file/read-practice.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import type { WirePractice } from '#shared/job-file/wire-practice.ts';
import { sayFault } from '#shared/fault.ts';
import { lengthFrom } from '#shared/length.ts';
import type { LengthUnit } from '#shared/length.ts';
import { defaultPractice } from '#shared/practice-defaults.ts';
import type { TreatmentBase } from '#shared/treatments/treatment-base.ts';

type WireFace = Extract<NonNullable<WireJob['cloth']>[number], { role: 'face' }>;
type WireBack = Exclude<NonNullable<WireJob['cloth']>[number], { role: 'face' }>;

export interface ClothCase {
  readonly units?: LengthUnit;
  readonly cloth?: Partial<WireFace>;
  readonly linings?: readonly WireBack[];
  readonly behind?: readonly string[];
  readonly practice?: WirePractice;
  readonly quantity?: number;
}

export interface Stock {
  readonly unit: LengthUnit;
  readonly face: FaceCloth;
  readonly behind: readonly BackCloth[];
  readonly base: TreatmentBase;
  readonly find: (id: string) => Cloth | null;
  readonly given: {
    readonly massOf: (cloth: Cloth) => number;
    readonly say: ReturnType<typeof speaker>;
    readonly billableWidth: ReturnType<typeof lengthFrom>;
  };
}

export function stockOf(given: ClothCase): Stock {
  const unit = given.units ?? 'in';
  const read = readJob({
    linenfold: 1,
    units: unit,
    currency: 'USD',
    client: { name: 'Invented client' },
    cloth: [{ id: 'face', role: 'face', width: '54 in', ...given.cloth }, ...(given.linings ?? [])],
    rooms: [],
  });
  if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
  const find = (id: string): Cloth | null => resolveCloth(id, read.job.cloth) ?? null;
  const face = find('face');
  if (face?.role !== 'face') throw new Error('the case has no face');
  const behind = (given.behind ?? []).map((id) => {
    const cloth = find(id);
    if (!cloth || cloth.role === 'face') throw new Error(`no lining ${id}`);
    return cloth;
  });
  return {
    unit,
    face,
    behind,
    find,
    base: {
      name: 'Treatment',
      key: 'treatment',
      quantity: given.quantity ?? 1,
      practice: readPractice(given.practice, defaultPractice(unit), unit),
      stacks: {},
      face: 'face',
      pattern: null,
    },
    given: {
      massOf: (cloth) => weightOf(cloth).gramsPerM2,
      say: speaker(unit, 'en-US'),
      billableWidth: lengthFrom(54, 'in'),
    },
  };
}

const figures = z.record(z.string(), z.unknown());
const record = z.object({ id: z.string(), source: z.string(), inputs: figures, steps: figures, answer: figures });

export interface PublishedExample {
  readonly input: (key: string) => number;
  readonly step: (key: string) => number;
  readonly says: (key: string) => number;
}

/** A worked example from outside the project, by its id in `test/reference/estimating-examples.json`. */
export function publishedExample(id: string): PublishedExample {
  const file = new URL('../../reference/estimating-examples.json', import.meta.url);
  const found = z
    .array(record)
    .parse(JSON.parse(readFileSync(file, 'utf8')))
    .find((each) => each.id === id);
  if (!found) throw new Error(`no record ${id}`);
  const number = (from: z.infer<typeof figures>, key: string): number => z.number().parse(from[key]);
  return {
    input: (key) => number(found.inputs, key),
    step: (key) => number(found.steps, key),
    says: (key) => number(found.answer, key),
  };
}

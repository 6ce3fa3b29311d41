/** Records of `test/reference/estimating-examples.json`: source, address, inputs, steps and answer of a worked example. */
import { readFileSync } from 'node:fs';
import * as z from 'zod';

const figures = z.record(z.string(), z.unknown());
const record = z.object({ id: z.string(), source: z.string(), inputs: figures, steps: figures, answer: figures });
const records = z
  .array(record)
  .parse(JSON.parse(readFileSync(new URL('../../reference/estimating-examples.json', import.meta.url), 'utf8')));

export interface ReferenceRecord extends z.infer<typeof record> {
  readonly input: (key: string) => number;
  readonly step: (key: string) => number;
  readonly says: (key: string) => number;
}

export function referenceRecord(id: string): ReferenceRecord {
  const found = records.find((each) => each.id === id);
  if (!found) throw new Error(`no record ${id}`);
  const number = (from: z.infer<typeof figures>, key: string): number => z.number().parse(from[key]);
  return {
    ...found,
    input: (key) => number(found.inputs, key),
    step: (key) => number(found.steps, key),
    says: (key) => number(found.answer, key),
  };
}

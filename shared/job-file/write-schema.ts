/** The JSON Schema (2020-12) of the job file and of the result, from the very schemas that validate them. */
import * as z from 'zod';
import { wireJob } from './wire-job.ts';
import { wireResult } from './wire-result.ts';

/** The schema of the job file, or of the result of `price --json`. */
export function writeSchema(of: 'job' | 'result'): unknown {
  const schema = of === 'job' ? wireJob : wireResult;
  return z.toJSONSchema(schema, { target: 'draft-2020-12', io: 'input', unrepresentable: 'throw' });
}

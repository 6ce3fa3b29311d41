/** The contract, ready to be implemented: whatever is thrown under it leaves as an error that the contract names. */
import { implement, ORPCError, ValidationError } from '@orpc/server';
import * as z from 'zod';
import { contract } from '#shared/contract/contract.ts';
import { tellFaults } from '#shared/job-file/tell-faults.ts';
import { badInput, tellDeskError } from './desk-errors.ts';
import type { DeskError } from './desk-errors.ts';

/** `onFault` is told of every fault that is ours; the other side gets one plain apology. */
export function implementContract(onFault: (error: unknown) => void) {
  return implement(contract)
    .$config({ initialInputValidationIndex: 1 })
    .use(async ({ next, procedure }, input) => {
      try {
        return await next();
      } catch (error) {
        const told = tellInputFaults(error, procedure['~orpc'].inputSchema, input) ?? tellDeskError(error);
        if (told !== null) throw told;
        onFault(error);
        throw error;
      }
    });
}

export type Implementer = ReturnType<typeof implementContract>;

/** What the request's own schema found wrong, as faults with paths; null when it is another error. */
function tellInputFaults(error: unknown, schema: unknown, input: unknown): DeskError | null {
  if (!(error instanceof ORPCError) || error.code !== 'BAD_REQUEST' || !(error.cause instanceof ValidationError))
    return null;
  if (!(schema instanceof z.ZodType)) return null;
  const checked = schema.safeParse(input);
  return checked.success ? null : badInput(tellFaults(checked.error, schema, input));
}

import type { Fault } from '#shared/fault.ts';

/** What can be wrong with a stack that is to be judged; switch on this, never on the text. */
export type StackFaultCode =
  | 'no-face'
  | 'two-faces'
  | 'impossible-optics'
  | 'unknown-glass'
  | 'missing-spectrum'
  | 'impossible-colour'
  | 'impossible-number'
  | 'impossible-reading'
  | 'other-window';

/** A stack that cannot be judged: which field, what is wrong, what would be right. */
export class StackFault extends Error {
  readonly code: StackFaultCode;
  readonly fault: Fault;

  constructor(code: StackFaultCode, fault: Fault) {
    super(`${fault.path}: ${fault.wrong}; ${fault.right}`);
    this.name = 'StackFault';
    this.code = code;
    this.fault = fault;
  }
}

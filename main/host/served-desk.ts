import type { AnyRouter } from '@orpc/server';

/** A stored paper (a proposal's PDF, a photograph): what is served by address. */
export interface Paper {
  /** The file name to offer when it is saved, with its ending. */
  readonly name: string;
  /** Media type, for example `application/pdf`. */
  readonly type: string;
  readonly bytes: Uint8Array;
}

/** What every shell serves: the contract's router, papers by address, and an end that leaves the portfolio tidy. */
export interface ServedDesk {
  readonly router: AnyRouter;
  /** The paper of that kind and id, or null when there is none. */
  readPaper(kind: string, id: string): Promise<Paper | null>;
  /** Closes the portfolio. Nothing may be asked afterwards. */
  close(): Promise<void>;
}

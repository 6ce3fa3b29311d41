import path from 'node:path';
import { openPortfolio } from '#main/portfolio/open-portfolio.ts';
import type { Portfolio } from '#main/portfolio/open-portfolio.ts';
import type { ReadConnection, WriteConnection } from '#main/portfolio/connection.ts';
import { PortfolioUnavailable } from '#main/portfolio/portfolio-trouble.ts';

/**
 * The way to the portfolio. It is opened when somebody first asks for it, so that job files can be priced without one. A
 * trouble is remembered until `tryAgain`: it does not come and go between two requests.
 */
export interface PortfolioDoor {
  readonly file: string;
  read<T>(use: (reading: ReadConnection) => T): T;
  write<T>(use: (writing: WriteConnection) => T): T;
  /** Forgets a trouble and opens anew. */
  tryAgain(): void;
  close(): void;
}

export function makePortfolioDoor(dataFolder: string, now: () => string, busyTimeout?: number): PortfolioDoor {
  const file = path.join(dataFolder, 'portfolio.sqlite');
  let portfolio: Portfolio | null = null;
  let trouble: PortfolioUnavailable | null = null;
  let closed = false;

  function pass<T>(use: (open: Portfolio) => T): T {
    if (closed) throw new Error('the desk is closed');
    if (trouble !== null) throw trouble;
    try {
      portfolio ??= openPortfolio({ file, now, busyTimeout });
      return use(portfolio);
    } catch (error) {
      if (error instanceof PortfolioUnavailable) {
        trouble = error;
        leave();
      }
      throw error;
    }
  }

  function leave(): void {
    portfolio?.close();
    portfolio = null;
  }

  return {
    file,
    read: (use) => pass((open) => open.read(use)),
    write: (use) => pass((open) => open.write(use)),
    tryAgain() {
      if (trouble === null) return;
      trouble = null;
      leave();
    },
    close() {
      leave();
      closed = true;
    },
  };
}

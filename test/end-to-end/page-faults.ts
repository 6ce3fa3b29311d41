import type { Page } from 'playwright';

/** Errors that a page reported: on its console, thrown, or by failed requests. A test that leaves any has failed. */
export interface PageFaults {
  /** Lets errors that match pass from now on, where a test provokes them. */
  allow(pattern: RegExp): void;
  /** Throws when the page has reported an error that was not allowed. */
  check(): void;
}

export function watchPageFaults(page: Page): PageFaults {
  const faults: string[] = [];
  const allowed: RegExp[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => faults.push(`thrown: ${error.stack ?? error.message}`));
  return {
    allow: (pattern) => void allowed.push(pattern),
    check() {
      const left = faults.filter((fault) => !allowed.some((pattern) => pattern.test(fault)));
      if (left.length > 0) throw new Error(`the page reported:\n${left.join('\n')}`);
    },
  };
}

/** What went wrong at the desk, in words that a screen can show: what, why, and what to do. Switches on codes alone. */
import type { Fault } from '#shared/fault.ts';
import type { PortfolioTrouble } from '#shared/contract/errors.ts';

export interface DeskFault {
  readonly code: string;
  readonly says: string;
  readonly remedy: string;
  readonly faults: readonly Fault[];
  /** Set when the portfolio itself cannot be opened. */
  readonly trouble: {
    readonly trouble: PortfolioTrouble;
    readonly file: string;
    readonly says: string;
    readonly remedy: string;
  } | null;
  /** For "copy details": never shown by itself. */
  readonly details: string;
}

interface Thrown {
  readonly code?: unknown;
  readonly message?: unknown;
  readonly data?: unknown;
}

export function tellDeskFault(error: unknown): DeskFault {
  const thrown: Thrown = typeof error === 'object' && error !== null ? error : {};
  const code = typeof thrown.code === 'string' ? thrown.code : 'UNKNOWN';
  const data = (typeof thrown.data === 'object' && thrown.data !== null ? thrown.data : {}) as Record<string, unknown>;
  const text = (key: string, otherwise: string): string => {
    const value = data[key];
    return typeof value === 'string' && value !== '' ? value : otherwise;
  };
  const plain = { code, faults: [], trouble: null, details: detailsOf(error) };
  switch (code) {
    case 'BAD_INPUT': {
      const faults = Array.isArray(data['faults']) ? (data['faults'] as Fault[]) : [];
      const first = faults[0];
      return {
        ...plain,
        faults,
        says: first
          ? `${first.path === '' ? 'What was given' : first.path} ${first.wrong}.`
          : 'What was given is not right.',
        remedy: first ? `${capital(first.right)}.` : 'Look at what was typed last.',
      };
    }
    case 'NOT_FOUND':
      return { ...plain, says: 'It is not there any more.', remedy: 'Undo brings back what was removed.' };
    case 'REFUSED':
      return { ...plain, says: text('why', 'That cannot be done now.'), remedy: text('remedy', '') };
    case 'PORTFOLIO_UNAVAILABLE':
      return {
        ...plain,
        says: text('says', 'The portfolio cannot be opened.'),
        remedy: text('remedy', ''),
        trouble: {
          trouble: text('trouble', 'missing') as PortfolioTrouble,
          file: text('file', ''),
          says: text('says', ''),
          remedy: text('remedy', ''),
        },
      };
    case 'FILE_TROUBLE':
      return {
        ...plain,
        says: `${text('says', 'The file could not be written.')} (${text('file', '')})`,
        remedy: text('remedy', ''),
      };
    case 'LACKING':
      return { ...plain, says: text('what', 'This window cannot do that.'), remedy: text('instead', '') };
    case 'HOST_GONE':
      return {
        ...plain,
        says:
          typeof thrown.message === 'string' ? thrown.message : 'The part of Linenfold that keeps your work stopped.',
        remedy: 'What you typed is kept here until it can be saved.',
      };
    default:
      return isOffline(error)
        ? {
            ...plain,
            says: 'The part of Linenfold that keeps your work does not answer.',
            remedy: 'Look whether it still runs. What you typed is kept here until it can be saved.',
          }
        : {
            ...plain,
            says: 'Something went wrong that is the fault of this program. We are sorry.',
            remedy: 'Try once more. What you typed is kept here.',
          };
  }
}

/** A fetch that never reached anyone. */
function isOffline(error: unknown): boolean {
  return error instanceof TypeError;
}

function detailsOf(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** What was asked on the command line, or what is wrong with how it was asked. */
import { TIERS } from '#shared/words.ts';
import type { Tier } from '#shared/words.ts';

export type Asked =
  | { readonly command: 'price'; readonly file: string; readonly json: boolean }
  | { readonly command: 'propose'; readonly file: string; readonly out: string }
  | {
      readonly command: 'cut-plan';
      readonly files: readonly string[];
      readonly out: string;
      readonly tier: Tier | null;
    }
  | { readonly command: 'schema'; readonly of: 'job' | 'result' }
  | { readonly command: 'help' }
  | { readonly command: 'wrong'; readonly says: string };

export const USAGE = `Linenfold without its window: prices a job file, proposes it and lays its cloth.

  npm run --silent job -- price  JOB.json [--json]       three priced options as a table, or the result as JSON
  npm run --silent job -- propose JOB.json --out F.pdf   the proposal
  npm run --silent job -- cut-plan JOB.json --out F.pdf [--tier good|better|best]
  npm run --silent job -- cut-plan JOB.json JOB.json... --out F.pdf
                                                         every cut laid on its cloth: of accepted work, or of one
                                                         option; of several jobs, of what is accepted in all
  npm run --silent job -- schema [--result]              JSON Schema of the job file, or of the result

Exit 0: done. Exit 2: the job is wrong, every fault on a line of its own. Exit 1: the program failed.
`;

export function readArguments(given: readonly string[]): Asked {
  const [command, ...rest] = given;
  if (command === undefined || command === 'help' || command === '--help' || command === '-h')
    return { command: 'help' };
  const wrong = (says: string): Asked => ({ command: 'wrong', says });
  const flags = rest.filter((each) => each.startsWith('--'));
  switch (command) {
    case 'price': {
      const files = rest.filter((each) => !each.startsWith('--'));
      const unknown = flags.find((flag) => flag !== '--json');
      if (unknown !== undefined) return wrong(`${unknown} is not known here; price takes --json`);
      const [file] = files;
      if (file === undefined || files.length > 1)
        return wrong('price takes one job file; for example: price house.job.json');
      return { command, file, json: flags.includes('--json') };
    }
    case 'propose': {
      const found = readOut(rest, 'propose');
      if ('says' in found) return wrong(found.says);
      const [file] = found.files;
      return file === undefined || found.files.length > 1
        ? wrong('propose takes one job file; for example: propose house.job.json --out house.pdf')
        : { command, file, out: found.out };
    }
    case 'cut-plan': {
      const at = rest.indexOf('--tier');
      const tier = at < 0 ? null : (TIERS.find((each) => each === rest[at + 1]) ?? undefined);
      if (tier === undefined) return wrong(`--tier takes ${TIERS.join(', ')}`);
      const found = readOut(at < 0 ? rest : rest.filter((_, index) => index !== at && index !== at + 1), 'cut-plan');
      if ('says' in found) return wrong(found.says);
      if (tier !== null && found.files.length > 1)
        return wrong('--tier goes with one job file; several are laid as accepted');
      return { command, ...found, tier };
    }
    case 'schema': {
      const unknown = rest.find((each) => each !== '--result');
      if (unknown !== undefined) return wrong(`${unknown} is not known here; schema takes --result`);
      return { command, of: rest.includes('--result') ? 'result' : 'job' };
    }
    default:
      return wrong(`${command} is not a command; give price, propose, cut-plan or schema`);
  }
}

/** The job files and the file to write, or what is wrong. */
function readOut(
  given: readonly string[],
  command: 'propose' | 'cut-plan',
): { readonly files: readonly string[]; readonly out: string } | { readonly says: string } {
  const at = given.indexOf('--out');
  const out = at < 0 ? undefined : given[at + 1];
  if (out === undefined || out.startsWith('--'))
    return { says: `${command} needs --out and a file; for example: --out house.pdf` };
  const others = given.filter((_, index) => index !== at && index !== at + 1);
  const unknown = others.find((each) => each.startsWith('--'));
  if (unknown !== undefined) return { says: `${unknown} is not known here; ${command} takes --out` };
  if (others.length === 0)
    return { says: `${command} takes a job file; for example: ${command} house.job.json --out house.pdf` };
  return { files: others, out };
}

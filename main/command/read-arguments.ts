/** What was asked on the command line, or what is wrong with how it was asked. */

export type Asked =
  | { readonly command: 'price'; readonly file: string; readonly json: boolean }
  | { readonly command: 'propose'; readonly file: string; readonly out: string }
  | { readonly command: 'schema'; readonly of: 'job' | 'result' }
  | { readonly command: 'help' }
  | { readonly command: 'wrong'; readonly says: string };

export const USAGE = `Linenfold without its window: prices and proposes a job file.

  npm run --silent job -- price  JOB.json [--json]       three priced options as a table, or the result as JSON
  npm run --silent job -- propose JOB.json --out F.pdf   the proposal
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
      const at = rest.indexOf('--out');
      const out = at < 0 ? undefined : rest[at + 1];
      if (out === undefined || out.startsWith('--'))
        return wrong('propose needs --out and a file; for example: --out house.pdf');
      const others = rest.filter((_, index) => index !== at && index !== at + 1);
      const unknown = others.find((each) => each.startsWith('--'));
      if (unknown !== undefined) return wrong(`${unknown} is not known here; propose takes --out`);
      const [file] = others;
      if (file === undefined || others.length > 1)
        return wrong('propose takes one job file; for example: propose house.job.json --out house.pdf');
      return { command, file, out };
    }
    case 'schema': {
      const unknown = rest.find((each) => each !== '--result');
      if (unknown !== undefined) return wrong(`${unknown} is not known here; schema takes --result`);
      return { command, of: rest.includes('--result') ? 'result' : 'job' };
    }
    default:
      return wrong(`${command} is not a command; give price, propose or schema`);
  }
}

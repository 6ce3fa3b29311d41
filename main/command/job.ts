/**
 * The program without its window. Serves the same desk as the shells, by direct call; the portfolio is never opened.
 * Exit 0: done. Exit 2: the job is wrong, every fault a line on standard error. Exit 1: the program failed.
 */
import { readFileSync } from 'node:fs';
import { randomUUID } from 'node:crypto';
import os from 'node:os';
import path from 'node:path';
import { createRouterClient, ORPCError } from '@orpc/server';
import { ERRORS } from '#shared/contract/errors.ts';
import { sayFault } from '#shared/fault.ts';
import { LOCALES } from '#shared/locale.ts';
import type { Locale } from '#shared/locale.ts';
import { createDesk } from '#main/desk/create-desk.ts';
import { PROGRAM_VERSION } from '#main/desk/program-version.ts';
import { FileTrouble } from '#main/files/file-trouble.ts';
import { writeOver } from '#main/files/write-file.ts';
import { readFonts } from '#main/host/fonts.ts';
import { cutPaperStarter } from '#main/host/start-cut-paper.ts';
import { makeCommandMachine } from './command-machine.ts';
import { tellPrices } from './price-table.ts';
import { readArguments, USAGE } from './read-arguments.ts';
import type { Asked } from './read-arguments.ts';

/** The job is wrong, or was asked for in a wrong way: told as it is, exit 2. */
class Wrong extends Error {}

const desk = createDesk({
  // Never opened: none of the requests below needs a portfolio.
  dataFolder: path.join(os.tmpdir(), 'linenfold-no-portfolio'),
  machine: makeCommandMachine(),
  clock: () => new Date(),
  makeId: randomUUID,
  readFonts: () => readFonts(null),
  startCutPaper: cutPaperStarter(null),
  programVersion: PROGRAM_VERSION,
  onFault: () => undefined,
});
const client = createRouterClient(desk.router);

async function run(asked: Asked): Promise<void> {
  switch (asked.command) {
    case 'help':
      process.stdout.write(USAGE);
      return;
    case 'wrong':
      throw new Wrong(`${asked.says}\n\n${USAGE}`);
    case 'schema': {
      const { schema } = await client.jobs.writeSchema({ of: asked.of });
      process.stdout.write(`${JSON.stringify(schema, null, 2)}\n`);
      return;
    }
    case 'price': {
      const text = readJobFile(asked.file);
      const result = await client.jobs.priceJob({ text });
      process.stdout.write(asked.json ? `${JSON.stringify(result, null, 2)}\n` : tellPrices(result, localeOf(text)));
      return;
    }
    case 'propose': {
      const { pdf, pages } = await client.jobs.proposeJob({ text: readJobFile(asked.file) });
      writePaper(asked.out, pdf, pages);
      return;
    }
    case 'cut-plan': {
      const texts = asked.files.map(readJobFile);
      const { pdf, pages } = await client.jobs.drawCutPlan({
        texts,
        ...(asked.tier === null ? {} : { tier: asked.tier }),
      });
      writePaper(asked.out, pdf, pages);
    }
  }
}

function writePaper(out: string, pdf: string, pages: number): void {
  writeOver(path.resolve(out), Buffer.from(pdf, 'base64'));
  process.stdout.write(`${out}: ${pages === 1 ? '1 page' : `${pages} pages`}\n`);
}

function readJobFile(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    throw new Wrong(`${file}: cannot be read (${codeOf(error)}); give the path of a job file\n`);
  }
}

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : 'unknown';
}

/** The job has been read without a fault when its prices are told. */
function localeOf(text: string): Locale {
  const job: unknown = JSON.parse(text.replace(/^\ufeff/, ''));
  const asked: unknown = typeof job === 'object' && job !== null && 'locale' in job ? job.locale : null;
  return LOCALES.find((locale) => locale === asked) ?? 'en-US';
}

/** Tells what went wrong and gives the exit code. */
function tell(error: unknown): 1 | 2 {
  if (error instanceof Wrong) {
    process.stderr.write(error.message);
    return 2;
  }
  if (error instanceof ORPCError && error.code === 'BAD_INPUT') {
    const { faults } = ERRORS.BAD_INPUT.data.parse(error.data);
    process.stderr.write(faults.map((fault) => `${sayFault(fault)}\n`).join(''));
    return 2;
  }
  if (error instanceof FileTrouble) {
    process.stderr.write(`${error.file}: ${error.message}; ${error.remedy}\n`);
    return 1;
  }
  process.stderr.write(`The program failed: ${error instanceof Error ? error.message : String(error)}\n`);
  return 1;
}

try {
  await run(readArguments(process.argv.slice(2)));
} catch (error) {
  process.exitCode = tell(error);
} finally {
  await desk.close();
}

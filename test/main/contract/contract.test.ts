import { ORPCError } from '@orpc/client';
import { isContractProcedure } from '@orpc/contract';
import { describe, expect, test } from 'vitest';
import { contract } from '#shared/contract/contract.ts';
import { ERRORS } from '#shared/contract/errors.ts';
import { makeTestDesk } from '../desk/test-desk.ts';
import { STORY, TROUBLED_STORY } from './story.ts';
import type { Answer, Memory, Step } from './story.ts';
import { openDirect, openHttp, openPort } from './transports.ts';
import type { Transport } from './transports.ts';
import type { TestDesk } from '../desk/test-desk.ts';

interface Told {
  readonly request: string;
  readonly answer?: unknown;
  readonly error?: { code: string; status: number; message: string; defined: boolean; data: unknown };
}

/** Tells the story over one transport, on a fresh portfolio with the same clock and ids as every other. */
async function tell(story: readonly Step[], open: (desk: TestDesk) => Promise<Transport>): Promise<Told[]> {
  const desk = makeTestDesk();
  const transport = await open(desk);
  const memory: Memory = {};
  const told: Told[] = [];
  try {
    for (const { request, input, before, keep } of story) {
      before?.(desk);
      const outcome = await ask(transport, request, input(memory));
      if (keep !== undefined) memory[keep] = outcome.answer as Answer;
      told.push(withoutFolder({ request, ...outcome }, desk.folder));
    }
    expect(desk.faults).toEqual([]);
  } finally {
    await transport.close();
    await desk.remove();
  }
  return told;
}

async function ask(transport: Transport, request: string, input: unknown): Promise<Omit<Told, 'request'>> {
  try {
    return { answer: await transport.call(request, input) };
  } catch (error) {
    if (!(error instanceof ORPCError)) throw error;
    const { code, status, message, defined, data } = error as ORPCError<string, unknown>;
    return { error: { code, status, message, defined, data } };
  }
}

/** Each desk has a folder of its own; all else has to be the same. */
function withoutFolder(told: Told, folder: string): Told {
  return JSON.parse(JSON.stringify(told).replaceAll(JSON.stringify(folder).slice(1, -1), '<folder>')) as Told;
}

function listRequests(): string[] {
  return Object.entries(contract).flatMap(([domain, requests]) =>
    Object.entries(requests).map(([verb, request]) => {
      expect(isContractProcedure(request), `${domain}.${verb}`).toBe(true);
      return `${domain}.${verb}`;
    }),
  );
}

describe('the contract', () => {
  test('has every request and every error in the story', () => {
    const asked = new Set([...STORY, ...TROUBLED_STORY].map(({ request }) => request));
    expect(listRequests().filter((request) => !asked.has(request))).toEqual([]);
    const failed = new Set([...STORY, ...TROUBLED_STORY].map(({ fails }) => fails));
    expect(Object.keys(ERRORS).filter((code) => !failed.has(code))).toEqual([]);
  });

  test('has each request answered once with success', () => {
    const answered = new Set(STORY.filter(({ fails }) => fails === undefined).map(({ request }) => request));
    expect(listRequests().filter((request) => !answered.has(request))).toEqual([]);
  });

  test.each([
    ['a working day', STORY],
    ['a portfolio that cannot be opened', TROUBLED_STORY],
  ])(
    'is the same called directly, over a message port and over loopback HTTP: %s',
    async (_name, story) => {
      const direct = await tell(story, openDirect);
      direct.forEach(({ request, error }, index) => {
        expect(error?.code, `${index} ${request} ${JSON.stringify(error?.data)}`).toBe(story[index]?.fails);
      });
      // An error that the contract names arrives as one, with its data.
      for (const { request, error } of direct) if (error) expect(error, request).toMatchObject({ defined: true });
      expect(await tell(story, openPort)).toEqual(direct);
      expect(await tell(story, openHttp)).toEqual(direct);
    },
    120_000,
  );
});

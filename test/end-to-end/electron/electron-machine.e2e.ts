import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ContractRouterClient } from '@orpc/contract';
import type { Contract } from '#shared/contract/contract.ts';
import { waitForDesk } from '../wait-for-desk.ts';
import { openInElectron, type OpenElectron } from './electron-shell.ts';
import { openPageClient } from './page-client.ts';

/** What the shell lends the desk: the dialogs and the computer's reader are stood in for, all between them is real. */
describe('a paper in the Electron shell', () => {
  let program: OpenElectron;
  let client: ContractRouterClient<Contract>;
  let proposalId: string;

  beforeAll(async () => {
    program = await openInElectron();
    await waitForDesk(program.page);
    client = await openPageClient(program.page);
    const { projectId } = await client.samples.addSample({});
    proposalId = (await client.proposals.makeProposal({ projectId })).id;
  });
  afterAll(async () => {
    await program.close();
  });

  it('is saved where the dialog says', async () => {
    const chosen = path.join(program.folders.papers, '..', 'My copy.pdf');
    await program.app.evaluate(({ dialog }, filePath) => {
      dialog.showSaveDialog = () => Promise.resolve({ canceled: false, filePath });
    }, chosen);
    expect(await client.proposals.saveCopy({ id: proposalId })).toEqual({ file: chosen });
    expect(readFileSync(chosen).subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('is not saved when the dialog is cancelled', async () => {
    await program.app.evaluate(({ dialog }) => {
      dialog.showSaveDialog = () => Promise.resolve({ canceled: true, filePath: '' });
    });
    expect(await client.proposals.saveCopy({ id: proposalId })).toEqual({ file: null });
  });

  it("is opened by the computer's own reader", async () => {
    await program.app.evaluate(({ shell }) => {
      const opened: string[] = [];
      Object.assign(globalThis, { opened });
      shell.openPath = (file: string) => {
        opened.push(file);
        return Promise.resolve('');
      };
    });
    const { file } = await client.proposals.openPaper({ id: proposalId });
    expect(file).toMatch(/\.pdf$/);
    expect(await program.app.evaluate(() => (globalThis as unknown as { opened: string[] }).opened)).toEqual([file]);
  });

  it.each([
    ['proposal', () => proposalId, '%PDF-'],
    ['decorator-copy', () => proposalId, '%PDF-'],
    ['measure-sheet', () => 'blank', '%PDF-'],
  ])('is opened by the reader from a link to another window too: %s', async (kind, id, begins) => {
    await program.app.evaluate(({ shell }) => {
      const opened: string[] = [];
      Object.assign(globalThis, { opened });
      shell.openPath = (file: string) => {
        opened.push(file);
        return Promise.resolve('');
      };
    });
    await program.page.evaluate((target) => window.open(target), `/papers/${kind}/${id()}`);
    const opened = async (): Promise<string[]> =>
      program.app.evaluate(() => (globalThis as unknown as { opened: string[] }).opened);
    await expect.poll(async () => (await opened()).length, { timeout: 20_000 }).toBe(1);
    const [file] = await opened();
    expect(readFileSync(file!).subarray(0, 5).toString()).toBe(begins);
    expect(program.app.windows()).toHaveLength(1);
  });

  it('is told when the computer has no reader for it', async () => {
    await program.app.evaluate(({ shell }) => {
      shell.openPath = () => Promise.resolve('Failed to open path');
    });
    await expect(client.proposals.openPaper({ id: proposalId })).rejects.toMatchObject({ code: 'FILE_TROUBLE' });
  });

  it('is read by its address, with its name when it is to be kept', async () => {
    const read = (address: string) =>
      program.page.evaluate(async (target) => {
        const answer = await fetch(target);
        const head = new TextDecoder().decode((await answer.arrayBuffer()).slice(0, 5));
        return [answer.status, answer.headers.get('content-type'), head, answer.headers.get('content-disposition')];
      }, address);
    expect(await read(`/papers/proposal/${proposalId}`)).toEqual([
      200,
      'application/pdf',
      '%PDF-',
      expect.stringMatching(/^inline; filename=/),
    ]);
    expect((await read(`/papers/proposal/${proposalId}?download=1`))[3]).toMatch(/^attachment; filename=/);
  });
});

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { findAddressFault, writeDraft } from '#main/mail/write-draft.ts';
import { makeFileName } from '#main/files/make-file-name.ts';
import { writeBeside, writeOver } from '#main/files/write-file.ts';
import { MachineLacks } from '#main/host/machine.ts';
import { addMailDraft } from '#main/portfolio/mail-drafts.ts';
import { listProposals, markProposal, readProposal, readProposalResult } from '#main/portfolio/proposals.ts';
import { badInput, fileTrouble, mustFind } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';
import type { Implementer } from './implementer.ts';
import { makeProposal } from './make-proposal.ts';
import { findClientFolder, namePaper, namePaperToSend, readStoredPaper, writePaperOut } from './write-paper-out.ts';

const PDF = [{ name: 'PDF', extensions: ['pdf'] }];

export function makeProposalRequests(os: Implementer['proposals'], parts: DeskParts) {
  const { door, machine, now, makeId, inTurn } = parts;
  return {
    listProposals: os.listProposals.handler(({ input }) =>
      door.read((reading) => listProposals(reading, input.projectId ?? null)),
    ),

    makeProposal: os.makeProposal.handler(({ input }) => inTurn(() => makeProposal(parts, input))),

    readProposal: os.readProposal.handler(({ input }) =>
      door.read((reading) => {
        const {
          clientName: _client,
          projectName: _project,
          ...record
        } = mustFind(readProposal(reading, input.id), 'proposal', input.id);
        return { ...record, ...mustFind(readProposalResult(reading, input.id), 'proposal', input.id) };
      }),
    ),

    openPaper: os.openPaper.handler(async ({ input }) => {
      const file = findWrittenPaper(parts, input.id);
      await act(file, () => machine.openPath(file));
      return { file };
    }),

    saveCopy: os.saveCopy.handler(async ({ input }) => {
      const { proposal, pdf } = readStoredPaper(parts, input.id);
      // Without a dialog the copy in the papers folder is what can be had; the page offers a link beside.
      if (machine.lacks.includes('chooseSavePath')) return { file: writePaperOut(parts, input.id).file };
      const file = await machine.chooseSavePath(namePaperToSend(proposal), PDF);
      if (file !== null) writeOver(file, pdf);
      return { file };
    }),

    showInFolder: os.showInFolder.handler(async ({ input }) => {
      const file = findWrittenPaper(parts, input.id);
      await act(file, () => machine.showInFolder(file));
      return { file };
    }),

    writeDraft: os.writeDraft.handler(async ({ input }) => {
      const wrong = findAddressFault(input.to);
      if (wrong !== null)
        throw badInput([{ path: 'to', wrong: `"${wrong}" is no mail address`, right: 'give it as ada@example.com' }]);
      const { proposal, pdf } = readStoredPaper(parts, input.id);
      const { to, subject, text } = input;
      const draft = { id: makeId(), proposalId: proposal.id, to, subject, text, createdAt: now() };
      const name = namePaperToSend(proposal);
      const mail = await writeDraft({ ...draft, date: new Date(draft.createdAt), attachment: { name, bytes: pdf } });
      door.write((writing) => addMailDraft(writing, draft, proposal.projectId));
      const folder = findClientFolder(parts, proposal.clientName);
      const draftFile = writeBeside(folder, makeFileName(proposal.number, 'Proposal', '.eml'), mail);
      const pdfFile = writePaperOut(parts, proposal.id).file;
      return { draftFile, pdfFile, address: `/papers/draft/${draft.id}` };
    }),

    markProposal: os.markProposal.handler(({ input }) =>
      door.write((writing) => {
        const before = mustFind(readProposal(writing, input.id), 'proposal', input.id);
        markProposal(writing, before, input.state, now());
        const { clientName: _client, projectName: _project, ...record } = before;
        return { ...record, state: input.state };
      }),
    ),
  };
}

/** Where the PDF lies, written again when it was moved away or changed since. */
function findWrittenPaper(parts: DeskParts, id: string): string {
  const { proposal, pdf } = readStoredPaper(parts, id);
  if (proposal.file !== null && holds(proposal.file, pdf)) return proposal.file;
  return writePaperOut(parts, id).file ?? path.join(findClientFolder(parts, proposal.clientName), namePaper(proposal));
}

function holds(file: string, pdf: Uint8Array): boolean {
  try {
    return readFileSync(file).equals(pdf);
  } catch {
    // Gone, or no longer readable: it is written again.
    return false;
  }
}

/** What the computer answers when it cannot open a file is the world's, not ours. */
async function act(file: string, ask: () => Promise<void>): Promise<void> {
  try {
    await ask();
  } catch (error) {
    if (error instanceof MachineLacks) throw error;
    const says = error instanceof Error ? error.message : String(error);
    throw fileTrouble(file, `The computer could not open it: ${says}`, 'Open it from its folder.', error);
  }
}

/** The desk: implements every request of the contract, one file a domain, and hands out papers by address. */
import type { ServedDesk } from '#main/host/served-desk.ts';
import { makeClientRequests } from './clients.ts';
import { makeClothRequests } from './cloth.ts';
import { makeCuttingRequests } from './cuttings.ts';
import { makeDeskParts } from './desk-parts.ts';
import type { DeskParts, DeskSettings } from './desk-parts.ts';
import { makeHistoryRequests } from './history.ts';
import { implementContract } from './implementer.ts';
import { makeJobRequests } from './jobs.ts';
import { makeOpeningRequests } from './openings.ts';
import { makePortfolioRequests } from './portfolio.ts';
import { makeProjectRequests } from './projects.ts';
import { makeProposalRequests } from './proposals.ts';
import { readPaper } from './read-paper.ts';
import { makeRemnantRequests } from './remnants.ts';
import { makeRoomRequests } from './rooms.ts';
import { makeSampleRequests } from './samples.ts';
import { makeSettingsRequests } from './settings.ts';
import { makeTreatmentRequests } from './treatments.ts';

export type { DeskSettings } from './desk-parts.ts';

/** A served desk whose router is typed, for callers in the same process (`createRouterClient(desk.router)`). */
export interface Desk extends ServedDesk {
  readonly router: DeskRouter;
}
export type DeskRouter = ReturnType<typeof makeRouter>;

/** Opens nothing yet: the portfolio is opened by the first request that needs it. */
export function createDesk(settings: DeskSettings): Desk {
  const parts = makeDeskParts(settings);
  return {
    router: makeRouter(parts, settings.onFault),
    readPaper: (kind, id) => readPaper(parts, kind, id),
    close: async () => {
      parts.cutPapers.close();
      parts.door.close();
    },
  };
}

function makeRouter(parts: DeskParts, onFault: DeskSettings['onFault']) {
  const os = implementContract(onFault);
  return os.router({
    portfolio: makePortfolioRequests(os.portfolio, parts),
    clients: makeClientRequests(os.clients, parts),
    projects: makeProjectRequests(os.projects, parts),
    rooms: makeRoomRequests(os.rooms, parts),
    openings: makeOpeningRequests(os.openings, parts),
    treatments: makeTreatmentRequests(os.treatments, parts),
    cloth: makeClothRequests(os.cloth, parts),
    remnants: makeRemnantRequests(os.remnants, parts),
    cuttings: makeCuttingRequests(os.cuttings, parts),
    settings: makeSettingsRequests(os.settings, parts),
    proposals: makeProposalRequests(os.proposals, parts),
    jobs: makeJobRequests(os.jobs, parts),
    samples: makeSampleRequests(os.samples, parts),
    history: makeHistoryRequests(os.history, parts),
  });
}

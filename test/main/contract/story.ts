/**
 * One working day at the desk, in which every request of the contract and every error of it occurs: what the contract
 * test tells over each transport. All that a step may know is what the steps before it were answered.
 */
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { TestDesk } from '../desk/test-desk.ts';

export interface Step {
  /** `clients.addClient`. */
  readonly request: string;
  readonly input: (memory: Memory) => unknown;
  /** Under which name the answer is remembered. */
  readonly keep?: string;
  /** What happens outside before it. */
  readonly before?: (desk: TestDesk) => void;
  /** The error's code when one is expected. */
  readonly fails?: string;
}

/** Answers by name. They are compared, not read: only the ids in them are used. */
export type Memory = Record<string, Answer>;
export interface Answer {
  readonly [field: string]: Answer;
}

const SAMPLE_FILE = path.join(import.meta.dirname, '../../reference/sample.job.json');
const sampleText = readFileSync(SAMPLE_FILE, 'utf8');
const faultyText = sampleText.replace('"kind": "panels"', '"kind": "tent"').replace('"width": 60', '"width": "wide"');

const inches = (value: number): number => value * 8128;
const step = (request: string, input: Step['input'], more: Omit<Step, 'request' | 'input'> = {}): Step => ({
  request,
  input,
  ...more,
});
const id =
  (name: string, ...fields: string[]) =>
  (memory: Memory) =>
    fields.reduce<Answer | undefined>((answer, field) => answer?.[field], memory[name]);
const byId =
  (name: string, ...fields: string[]) =>
  (memory: Memory) => ({ id: id(name, ...fields, 'id')(memory) });
const changes =
  (fields: object, name: string, ...path: string[]) =>
  (memory: Memory) => ({ id: id(name, ...path, 'id')(memory), changes: fields });
const nothing = () => ({});
const nobody = () => ({ id: 'nobody' });

export const STORY: readonly Step[] = [
  step('portfolio.readState', nothing),
  step('portfolio.tryAgain', nothing),
  step('settings.readSettings', nothing),
  step('settings.editSettings', () => ({
    changes: { letterhead: { name: 'Reed & Rye', lines: ['2 Example Lane'] }, practice: { bottomHem: 8 } },
  })),
  step('settings.editSettings', () => ({ changes: { holdsDays: 0, practice: { bottomhem: 8 } } }), {
    fails: 'BAD_INPUT',
  }),
  step('settings.editSettings', () => ({ changes: { priceBook: 'example' } })),

  step('clients.addClient', () => ({ name: 'Zoë Świątek', email: 'zoe@example.com', projectName: 'Whole house' }), {
    keep: 'zoe',
  }),
  step('clients.addClient', () => ({ name: '  ' }), { fails: 'BAD_INPUT' }),
  step('clients.addClient', () => ({ email: 5 }), { fails: 'BAD_INPUT' }),
  step('clients.editClient', changes({ phone: '000 000', notes: `She said: "84 1/2"; '100 %'` }, 'zoe', 'client')),
  step('clients.editClient', () => ({ id: 'nobody', changes: {} }), { fails: 'NOT_FOUND' }),
  step('clients.listClients', nothing),
  step('clients.listClients', () => ({ search: 'swiatek' })),
  step('clients.listClients', () => ({ search: '%' })),

  step('projects.addProject', (memory) => ({ clientId: id('zoe', 'client', 'id')(memory), name: 'Later' }), {
    keep: 'later',
  }),
  step('projects.editProject', changes({ name: 'Next year', units: 'cm', practice: { sideHem: 7 } }, 'later')),
  step('projects.removeProject', byId('later')),
  step('projects.readProject', byId('later'), { fails: 'NOT_FOUND' }),
  step('projects.listAccepted', nothing),
  step('projects.restoreProject', byId('later')),
  step('projects.readProject', byId('later')),

  step(
    'rooms.addRoom',
    (memory) => ({
      projectId: id('zoe', 'project', 'id')(memory),
      fields: { name: 'Nursery', use: 'nursery', ceiling: inches(108) },
    }),
    { keep: 'room' },
  ),
  step('rooms.addRoom', (memory) => ({ projectId: id('zoe', 'project', 'id')(memory), fields: {} }), { keep: 'spare' }),
  step('rooms.editRoom', changes({ facing: 'E', ceiling: 1.5 }, 'room'), { fails: 'BAD_INPUT' }),
  step('rooms.editRoom', changes({ facing: 'E', drafts: { ceiling: '9 ft some' } }, 'room')),
  step('rooms.editRoom', changes({ drafts: {} }, 'room')),
  step('rooms.removeRoom', byId('spare')),
  step('rooms.restoreRoom', byId('spare')),

  step(
    'openings.addOpening',
    (memory) => ({
      roomId: id('room', 'id')(memory),
      fields: { name: 'East window', width: inches(60), height: inches(54), sill: inches(30) },
    }),
    { keep: 'opening' },
  ),
  step('openings.editOpening', changes({ measured: 'final', heatSourceBelow: true }, 'opening')),
  step('openings.removeOpening', byId('opening')),
  step('openings.editOpening', changes({ notes: 'gone' }, 'opening'), { fails: 'NOT_FOUND' }),
  step('openings.restoreOpening', byId('opening')),

  step(
    'cloth.addCloth',
    () => ({
      projectId: null,
      fields: { name: 'Reed linen', width: inches(54), price: '58.50/yd', colour: '#a9a58f' },
    }),
    { keep: 'linen' },
  ),
  step('cloth.addCloth', () => ({ projectId: null, fields: { name: 'Reed linen', role: 'lining', price: 'a lot' } }), {
    fails: 'BAD_INPUT',
  }),
  step(
    'cloth.addCloth',
    (memory) => ({
      projectId: id('zoe', 'project', 'id')(memory),
      fields: { code: 'own', role: 'lining', width: inches(54), price: '7.25/yd' },
    }),
    { keep: 'own' },
  ),
  step('cloth.editCloth', changes({ weight: '7 oz/yd2', content: { linen: 100 } }, 'linen')),
  step('cloth.listCloth', nothing),

  step('treatments.addTreatment', (memory) => ({ openingId: id('opening', 'id')(memory), fields: {} }), {
    keep: 'treatment',
  }),
  step('proposals.makeProposal', (memory) => ({ projectId: id('zoe', 'project', 'id')(memory) }), {
    fails: 'BAD_INPUT',
  }),
  step('treatments.editTreatment', (memory) => ({
    id: id('treatment', 'id')(memory),
    changes: {
      face: id('linen', 'code')(memory),
      practice: { bottomHem: 6 },
      make: {
        kind: 'panels',
        heading: 'pinch-pleat',
        arrangement: 'pair',
        mountWhere: 'wall',
        mountAbove: inches(4),
        rodWidth: inches(72),
        finishedLength: inches(84),
        fullness: 2500,
        returnLeft: inches(3.5),
        returnRight: inches(3.5),
        overlap: inches(3.5),
        halfWidths: null,
        extras: {},
      },
    },
  })),
  step('treatments.removeTreatment', byId('treatment')),
  step('treatments.restoreTreatment', byId('treatment')),
  step('cloth.removeCloth', byId('linen'), { fails: 'REFUSED' }),
  step('cloth.removeCloth', byId('own')),
  step('cloth.restoreCloth', byId('own')),
  step('treatments.editTreatment', changes({ decision: 'better' }, 'treatment')),
  step('treatments.editTreatment', changes({ decision: 'perhaps' }, 'treatment'), { fails: 'BAD_INPUT' }),
  step(
    'remnants.addRemnant',
    (memory) => ({
      projectId: null,
      fields: { cloth: id('linen', 'code')(memory), name: 'End of the hall', length: inches(90), dyeLot: 'A7' },
    }),
    { keep: 'remnant' },
  ),
  step('remnants.addRemnant', () => ({ projectId: null, fields: { cloth: 'nothing' } }), { fails: 'BAD_INPUT' }),
  step('remnants.editRemnant', changes({ width: inches(30), startsAt: null }, 'remnant')),
  step('remnants.editRemnant', changes({ width: inches(60) }, 'remnant'), { fails: 'BAD_INPUT' }),
  step('cloth.editCloth', changes({ code: 'other' }, 'linen'), { fails: 'REFUSED' }),
  step('remnants.listRemnants', () => ({ projectId: null })),
  step('remnants.removeRemnant', byId('remnant')),
  step('remnants.restoreRemnant', byId('remnant')),
  step(
    'cuttings.addCutting',
    (memory) => ({
      projectId: id('zoe', 'project', 'id')(memory),
      cloth: id('linen', 'code')(memory),
      fields: { bolts: [{ name: 'first', length: inches(1800), dyeLot: 'A7', startsAt: null }] },
    }),
    { keep: 'cutting' },
  ),
  step(
    'cuttings.addCutting',
    (memory) => ({
      projectId: id('zoe', 'project', 'id')(memory),
      cloth: id('linen', 'code')(memory),
      fields: {},
    }),
    { fails: 'REFUSED' },
  ),
  step('cuttings.editCutting', (memory) => ({
    id: id('cutting', 'id')(memory),
    changes: {
      flaws: [{ on: 'first', from: inches(720), to: inches(774) }],
      fixed: [{ treatmentId: id('treatment', 'id')(memory), cut: 2, on: 'first', at: inches(100), x: null }],
    },
  })),
  step('cuttings.editCutting', changes({ flaws: [{ on: 'second', from: 5, to: 5 }] }, 'cutting'), {
    fails: 'BAD_INPUT',
  }),
  step('cuttings.removeCutting', byId('cutting')),
  step('cuttings.restoreCutting', byId('cutting')),
  step('projects.readProject', byId('zoe', 'project')),
  step('cuttings.drawCutPlan', (memory) => ({ projectId: id('zoe', 'project', 'id')(memory) })),
  step('cuttings.drawCutPlan', () => ({ projectId: 'nobody' }), { fails: 'NOT_FOUND' }),
  step('cuttings.readDrawing', () => ({ projectId: null })),
  step('cuttings.leaveDrawing', () => ({ projectId: null })),

  step('proposals.makeProposal', (memory) => ({ projectId: id('zoe', 'project', 'id')(memory) }), { keep: 'proposal' }),
  step(
    'proposals.makeProposal',
    (memory) => ({
      projectId: id('zoe', 'project', 'id')(memory),
      tierNames: { good: 'Plain', better: 'Warm', best: 'Dark' },
      terms: 'As agreed.',
    }),
    { keep: 'second' },
  ),
  step('proposals.readProposal', byId('proposal')),
  step('proposals.readProposal', nobody, { fails: 'NOT_FOUND' }),
  step('proposals.openPaper', byId('proposal')),
  step('proposals.showInFolder', byId('proposal')),
  step('proposals.saveCopy', byId('proposal')),
  step('proposals.saveCopy', byId('proposal'), {
    before: ({ machine, folder }) => (machine.savePath = path.join(folder, 'copy.pdf')),
  }),
  step('proposals.writeDraft', (memory) => ({
    id: id('proposal', 'id')(memory),
    to: 'zoe@example.com',
    subject: 'Dla Zoë: ½ i 84″',
    text: 'Dzień dobry',
  })),
  step('proposals.writeDraft', (memory) => ({ id: id('proposal', 'id')(memory), to: 'zoe', subject: '', text: '' }), {
    fails: 'BAD_INPUT',
  }),
  step('proposals.markProposal', (memory) => ({ id: id('proposal', 'id')(memory), state: 'sent' })),
  step('proposals.listProposals', nothing),
  step('proposals.listProposals', byIdOfProject),
  step('projects.removeProject', byId('zoe', 'project'), { fails: 'REFUSED' }),
  step('clients.removeClient', byId('zoe', 'client'), { fails: 'REFUSED' }),
  step('proposals.openPaper', byId('second'), {
    before: ({ machine }) => (machine.lacks = ['openPath', 'chooseSavePath']),
    fails: 'LACKING',
  }),
  step('proposals.saveCopy', byId('second')),

  step('jobs.exportJob', projectOf('zoe'), { keep: 'exported' }),
  step('jobs.saveJob', projectOf('zoe')),
  step('jobs.saveJob', projectOf('zoe'), {
    before: ({ machine, folder }) => {
      machine.lacks = [];
      machine.savePath = path.join(folder, 'gone', 'job.json');
    },
    fails: 'FILE_TROUBLE',
  }),
  step('jobs.priceJob', (memory) => ({ text: id('exported', 'text')(memory) })),
  step('jobs.priceJob', () => ({ text: faultyText }), { fails: 'BAD_INPUT' }),
  step('jobs.priceJob', () => ({ text: sampleText.replace('"priceBook": "example",', '') }), { fails: 'BAD_INPUT' }),
  step('jobs.proposeJob', () => ({ text: sampleText })),
  step('jobs.drawCutPlan', () => ({ texts: [sampleText], tier: 'good' })),
  step('jobs.drawCutPlan', () => ({ texts: [sampleText, faultyText] }), { fails: 'BAD_INPUT' }),
  step('jobs.writeSchema', () => ({ of: 'job' })),
  step('jobs.writeSchema', () => ({ of: 'result' })),
  step('jobs.importJob', () => ({ text: sampleText }), { keep: 'imported' }),
  step('jobs.importJob', () => ({ text: '{ "linenfold": 1, ' }), { fails: 'BAD_INPUT' }),
  step('projects.readProject', (memory) => ({ id: id('imported', 'projectId')(memory) })),
  step('clients.removeClient', (memory) => ({ id: id('imported', 'clientId')(memory) })),
  step('clients.restoreClient', (memory) => ({ id: id('imported', 'clientId')(memory) })),

  step('samples.removeSample', nothing, { fails: 'NOT_FOUND' }),
  step('samples.addSample', nothing, { keep: 'sample' }),
  step('samples.addSample', nothing),
  step('proposals.makeProposal', (memory) => ({ projectId: id('sample', 'projectId')(memory) })),
  step('proposals.makeProposal', (memory) => ({ projectId: id('sample', 'projectId')(memory) }), {
    before: ({ machine, folder }) => {
      machine.papers = path.join(folder, 'blocked');
      writeFileSync(machine.papers, 'a file where the papers should go');
    },
    fails: 'FILE_TROUBLE',
  }),
  step('proposals.listProposals', (memory) => ({ projectId: id('sample', 'projectId')(memory) })),
  step('portfolio.readState', nothing),
  step('samples.removeSample', nothing),
  step('history.listHistory', nothing),
  step('history.listHistory', (memory) => ({ projectId: id('zoe', 'project', 'id')(memory), most: 5 })),
  step('history.listHistory', () => ({ most: 0 }), { fails: 'BAD_INPUT' }),
];

/** What comes of it when the file in the portfolio's place is none. */
export const TROUBLED_STORY: readonly Step[] = [
  step('portfolio.readState', nothing, {
    before: ({ folder }) => {
      mkdirSync(path.join(folder, 'data'));
      writeFileSync(path.join(folder, 'data', 'portfolio.sqlite'), 'This is no portfolio. '.repeat(20));
    },
  }),
  step('clients.listClients', nothing, { fails: 'PORTFOLIO_UNAVAILABLE' }),
  step('settings.readSettings', nothing, { fails: 'PORTFOLIO_UNAVAILABLE' }),
  step('jobs.priceJob', () => ({ text: sampleText })),
  step('portfolio.tryAgain', nothing),
  step('portfolio.tryAgain', nothing, {
    before: ({ folder }) => rmSync(path.join(folder, 'data', 'portfolio.sqlite')),
  }),
  step('clients.listClients', nothing),
];

function projectOf(name: string) {
  return (memory: Memory) => ({ projectId: id(name, 'project', 'id')(memory) });
}

function byIdOfProject(memory: Memory) {
  return { projectId: id('zoe', 'project', 'id')(memory) };
}

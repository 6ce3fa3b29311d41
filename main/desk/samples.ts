import { readSampleClient } from '#main/portfolio/clients.ts';
import { listProjectsOf } from '#main/portfolio/projects.ts';
import { removeSample } from '#main/portfolio/remove-sample.ts';
import { notFound } from './desk-errors.ts';
import type { DeskParts } from './desk-parts.ts';
import type { Implementer } from './implementer.ts';
import { importJob, readWireText } from './import-job.ts';
import sampleHousehold from './sample-household.json' with { type: 'json' };

const NOTES =
  'Invented: a household to try things with. It can be taken away in one click, with all that was made of it.';

export function makeSampleRequests(os: Implementer['samples'], parts: DeskParts) {
  const { door, now } = parts;
  return {
    /** The one that is there when there is one. */
    addSample: os.addSample.handler(() =>
      door.write((writing) => {
        const there = readSampleClient(writing);
        const project = there === null ? undefined : listProjectsOf(writing, there.id)[0];
        if (there !== null && project !== undefined) return { clientId: there.id, projectId: project.id };
        // One that was put aside would be in the way of the next removal.
        removeSample(writing, now());
        const wire = readWireText(JSON.stringify(sampleHousehold));
        return importJob(writing, wire, parts, { projectName: 'Larch House', sample: true, notes: NOTES });
      }),
    ),

    removeSample: os.removeSample.handler(() => {
      const count = door.write((writing) => removeSample(writing, now()));
      if (count === 0) throw notFound('sample household', 'sample');
      return {};
    }),
  };
}

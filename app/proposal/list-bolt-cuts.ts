/** The list of cuts in order, bolt by bolt, as the workroom ticks them off. */
import type { LaidBolt, LaidCut } from '#app/plan/cut-plan.ts';
import type { ClothPlan } from '#app/plan/plan-cloth.ts';
import { titleBolt } from '#app/drawing/title-bolt.ts';
import type { ListedBoltCuts, ListedCut } from './cut-plan-paper.ts';
import { capital } from './speak.ts';
import type { Speech } from './speak.ts';

export function listBoltCuts(planned: ClothPlan, speech: Speech): ListedBoltCuts[] {
  return planned.plan.bolts.map((bolt) => ({
    title: titleBolt(bolt),
    says: capital(sayBolt(bolt, planned, speech)),
    cuts: bolt.cuts.map((cut, index) => listCut(cut, index, bolt, planned, speech)),
  }));
}

function sayBolt(bolt: LaidBolt, { input, cloth }: ClothPlan, speech: Speech): string {
  const lot = bolt.dyeLot === null ? '' : `dye lot ${bolt.dyeLot}, `;
  const known = [...input.bolts, ...input.remnants].find(({ id }) => id === bolt.id)?.startPhase ?? null;
  const place =
    known === null ? 'begin at the first cut’s place in the repeat' : `begins ${speech.length(known)} into the repeat`;
  const start = cloth.repeat === null ? '' : `${place}, `;
  return `${lot}${start}${speech.cloth(bolt.used)} to the last cut’s end`;
}

function listCut(cut: LaidCut, index: number, bolt: LaidBolt, { cloth }: ClothPlan, speech: Speech): ListedCut {
  const isHalf = cut.across * 2 <= bolt.width && cut.across * 2 >= bolt.width - 1;
  const selvage = cut.x === 0 ? 'left' : 'right';
  const drop = cloth.repeat?.match === 'half-drop' && cut.phase !== null && cut.phase > 0;
  const notes = [
    ...(isHalf ? [`half width, ${selvage} selvage`] : []),
    ...(!isHalf && cut.x > 0 ? [`${speech.length(cut.x)} from the left selvage`] : []),
    ...(cut.laid === 'sideways' ? ['turned sideways'] : []),
    ...(drop ? [`${speech.length(cut.phase)} lower in the repeat`] : []),
    ...(cut.fixed ? ['fixed by hand'] : []),
  ];
  return {
    number: String(index + 1),
    from: speech.length(cut.at),
    to: speech.length(cut.at + cut.length),
    length: speech.length(cut.length),
    across: cut.across === bolt.width ? 'whole width' : speech.length(cut.across),
    label: cut.label,
    note: notes.join(', '),
  };
}

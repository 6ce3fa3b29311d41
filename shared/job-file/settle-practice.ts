/** The practice of one treatment of panels: sheers, cloth that lies on the floor and a weighted edge have their own hems. */
import { ticks } from '../length.ts';
import type { Ticks } from '../length.ts';
import type { Practice } from '../practice.ts';
import type { FaceFamily } from '../words.ts';
import type { WirePanels } from './wire-panels.ts';

/** `family` is that of the treatment's own face; a stack that names another face is made by the same practice. */
export function settlePractice(wire: WirePanels, practice: Practice, family: FaceFamily | null): Practice {
  const hems = family === 'sheer' ? { ...practice, ...practice.sheer } : practice;
  return { ...hems, bottomHem: bottomHemOf(wire, hems) };
}

function bottomHemOf(wire: WirePanels, { bottomHem, puddleHem }: Practice): Ticks {
  if (wire.weightedEdge === true) return ticks(0);
  return wire.hang?.to === 'puddle' || wire.hang?.to === 'full-puddle' ? puddleHem : bottomHem;
}

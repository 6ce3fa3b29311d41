/** Invented questions for the cut plan as short JSON, in centimetres: sets of a house, and the cloth to lay them on. */
import { cutToRepeat, handbookLength } from '#app/estimating/cut-cloth.ts';
import { listCuts } from '#app/plan/list-cuts.ts';
import type { PlanInput } from '#app/plan/plan-input.ts';
import type { Repeat } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Match } from '#shared/words.ts';
import { cm, PLAIN_SETTINGS } from './seeded-plans.ts';

export interface PlanFile {
  readonly name: string;
  readonly width: number;
  /** 0 is plain cloth. */
  readonly repeat: number;
  readonly match: Match;
  readonly sets: readonly {
    readonly name: string;
    /** The plain cut. */
    readonly cut: number;
    /** Widths of one treatment; halves as .5 a piece. */
    readonly widths: number;
    readonly pieces: number;
    readonly quantity: number;
    /** Own motif placement; absent: 0. */
    readonly phase?: number;
  }[];
  readonly bolts: readonly {
    readonly id: string;
    readonly lot: string | null;
    readonly length: number | null;
    readonly start: number | null;
    readonly step: number;
  }[];
  readonly remnants?: readonly {
    readonly id: string;
    readonly lot: string | null;
    readonly length: number;
    readonly start: number | null;
  }[];
}

/** The question, with the handbook's length of each set added up (and one repeat for each further motif placement). */
export function readPlanFile(file: PlanFile): PlanInput {
  const repeat = repeatOf(file);
  const placements = new Set(file.sets.map((set) => set.phase ?? 0)).size;
  const handbook = file.sets.reduce((sum, set) => {
    const cut = cutToRepeat(cm(set.cut), repeat, 'whole');
    return sum + handbookLength(cut, Math.ceil(set.widths * set.quantity), repeat);
  }, 0);
  return {
    cuts: file.sets.flatMap((set) =>
      listCuts({
        set: set.name,
        label: set.name,
        plainCut: cm(set.cut),
        halfWidths: set.widths * 2,
        pieces: set.pieces,
        quantity: set.quantity,
        repeat,
        phase: cm(set.phase ?? 0),
      }),
    ),
    bolts: file.bolts.map((bolt) => ({
      id: bolt.id,
      dyeLot: bolt.lot,
      length: bolt.length === null ? null : cm(bolt.length),
      startPhase: bolt.start === null ? null : cm(bolt.start),
      step: cm(bolt.step),
    })),
    remnants: (file.remnants ?? []).map((each) => ({
      id: each.id,
      dyeLot: each.lot,
      length: cm(each.length),
      width: null,
      startPhase: each.start === null ? null : cm(each.start),
    })),
    repeat,
    width: cm(file.width),
    settings: PLAIN_SETTINGS,
    fixed: [],
    flaws: [],
    handbook: ticks(handbook + (repeat === null ? 0 : (placements - 1) * repeat.vertical)),
  };
}

export function repeatOf(file: PlanFile): Repeat | null {
  if (file.repeat === 0 || file.match === 'none') return null;
  return { vertical: cm(file.repeat), horizontal: null, match: file.match, cutOnRepeat: false };
}

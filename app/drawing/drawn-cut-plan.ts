/** What the drawing of a cut plan is made from. */
import type { CutPlan, LaidBolt } from '#app/plan/cut-plan.ts';
import type { Repeat } from '#shared/cloth.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { Paint } from './shape.ts';

export interface CutPlanInput {
  readonly plan: Pick<CutPlan, 'bolts' | 'remnants'>;
  readonly repeat: Pick<Repeat, 'vertical' | 'match'> | null;
  /** The cloth's own colour, laid thinly over its cuts; null: linen. */
  readonly colour: Paint | null;
  readonly wording: { readonly units: LengthUnit; readonly decimal: '.' | ',' };
  /** Points. */
  readonly width: number;
  readonly detail: 'screen' | 'paper';
  /** The set that is chosen: the thread runs along its cuts. */
  readonly selected: string | null;
}

export interface PlanStyle {
  /** How tall the whole width of the cloth is drawn: the scale follows from it, along the cloth as across. */
  readonly band: number;
  readonly name: number;
  readonly figure: number;
  readonly hair: number;
  readonly thread: number;
}

export const PLAN_STYLES: Readonly<Record<CutPlanInput['detail'], PlanStyle>> = {
  screen: { band: 62, name: 11.5, figure: 10, hair: 0.8, thread: 2.4 },
  paper: { band: 43, name: 7.5, figure: 6.5, hair: 0.5, thread: 1.6 },
};

/** One line of a bolt that is too long for the sheet. */
export interface ClothLine {
  readonly bolt: LaidBolt;
  /** Along the bolt, in ticks. */
  readonly from: number;
  readonly to: number;
  /** Where the strip of cloth lies on the sheet. */
  readonly x: number;
  readonly y: number;
  /** Points a tick. */
  readonly scale: number;
  readonly isFirst: boolean;
  readonly isLast: boolean;
}

import type { Cloth } from '#shared/cloth.ts';
import type { TierResult } from '#shared/result.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';

/** What the pieces of every kind are drawn from. */
export interface WorkGiven<Kind extends Treatment = Treatment> {
  readonly treatment: Kind;
  readonly made: TierResult;
  readonly clothOf: (id: string) => Cloth | null;
  /** `84½`. */
  readonly say: (length: number) => string;
  /** `84½ in`. */
  readonly sayUnit: (length: number) => string;
  readonly detail: 'screen' | 'paper';
}

/** Cornices: a padded board box, face and ends covered with cloth, a dust board on top. */
import type { Mount, TreatmentBase } from './treatment-base.ts';
import type { Ticks } from '../length.ts';
import type { Practice } from '../practice.ts';
import type { CornicePractice } from './cornice-practice.ts';

export interface CorniceTreatment extends TreatmentBase {
  readonly kind: 'cornice';
  /** Resolved for this treatment alone, its own section with it. */
  readonly practice: Practice & { readonly cornice: CornicePractice };
  readonly mount: Mount;
  /** Outside face of the box, end to end. */
  readonly width: Ticks;
  /** Height of the box at its longest. */
  readonly finishedLength: Ticks;
  /** Outside depth of each end, from the wall to the front; 0 for a side without an end. */
  readonly returns: { readonly left: Ticks; readonly right: Ticks };
  /** The return of the treatment that hangs under it; null when there is none. */
  readonly over: Ticks | null;
  readonly dropOf: Ticks | null;
  /** Length of a shaped lower edge of the face, measured along its template; null for a straight one. */
  readonly shapedEdge: Ticks | null;
  /** Cloth ids of the welts along the top and the lower edge; null for none. */
  readonly welts: { readonly top: string | null; readonly bottom: string | null };
}

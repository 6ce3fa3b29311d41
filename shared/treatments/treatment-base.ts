/** What every treatment carries whatever its kind. */
import type { PanelsTreatment } from '../job.ts';

export type TreatmentBase = Pick<PanelsTreatment, 'name' | 'key' | 'quantity' | 'practice' | 'stacks' | 'face'>;

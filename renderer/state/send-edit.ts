/** How each record is edited, removed and brought back through the contract. */
import { exhaustive } from '#shared/fault.ts';
import { client } from './client.ts';
import type { Edit, PlacedEntity } from './edit.ts';

export async function sendEdit(edit: Edit): Promise<void> {
  const { id } = edit;
  switch (edit.entity) {
    case 'client':
      await client.clients.editClient({ id, changes: edit.changes });
      return;
    case 'project':
      await client.projects.editProject({ id, changes: edit.changes });
      return;
    case 'room':
      await client.rooms.editRoom({ id, changes: edit.changes });
      return;
    case 'opening':
      await client.openings.editOpening({ id, changes: edit.changes });
      return;
    case 'treatment':
      await client.treatments.editTreatment({ id, changes: edit.changes });
      return;
    case 'cloth':
      await client.cloth.editCloth({ id, changes: edit.changes });
      return;
    case 'remnant':
      await client.remnants.editRemnant({ id, changes: edit.changes });
      return;
    case 'cutting':
      await client.cuttings.editCutting({ id, changes: edit.changes });
      return;
    case 'settings':
      await client.settings.editSettings({ changes: edit.changes });
      return;
    default:
      exhaustive(edit);
  }
}

export async function sendRemoval(entity: PlacedEntity, id: string): Promise<void> {
  switch (entity) {
    case 'client':
      await client.clients.removeClient({ id });
      return;
    case 'project':
      await client.projects.removeProject({ id });
      return;
    case 'room':
      await client.rooms.removeRoom({ id });
      return;
    case 'opening':
      await client.openings.removeOpening({ id });
      return;
    case 'treatment':
      await client.treatments.removeTreatment({ id });
      return;
    case 'cloth':
      await client.cloth.removeCloth({ id });
      return;
    case 'remnant':
      await client.remnants.removeRemnant({ id });
      return;
    case 'cutting':
      await client.cuttings.removeCutting({ id });
      return;
    default:
      exhaustive(entity);
  }
}

export async function sendRestoring(entity: PlacedEntity, id: string): Promise<void> {
  switch (entity) {
    case 'client':
      await client.clients.restoreClient({ id });
      return;
    case 'project':
      await client.projects.restoreProject({ id });
      return;
    case 'room':
      await client.rooms.restoreRoom({ id });
      return;
    case 'opening':
      await client.openings.restoreOpening({ id });
      return;
    case 'treatment':
      await client.treatments.restoreTreatment({ id });
      return;
    case 'cloth':
      await client.cloth.restoreCloth({ id });
      return;
    case 'remnant':
      await client.remnants.restoreRemnant({ id });
      return;
    case 'cutting':
      await client.cuttings.restoreCutting({ id });
      return;
    default:
      exhaustive(entity);
  }
}

/** The form of a new client, kept until the client is added or the form is given up. */
import { KeptDraft } from './kept-draft.svelte.ts';

export type ClientField = 'name' | 'email' | 'phone' | 'address';

export function openClientDraft(): KeptDraft<ClientField> {
  return new KeptDraft('new-client', ['name', 'email', 'phone', 'address']);
}

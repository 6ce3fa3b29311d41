/**
 * Saving before the window goes away. A screen that holds something typed and not yet saved registers how to save it;
 * Electron waits for all of them, a browser only lets them start.
 */

type Save = () => Promise<void>;

const saves = new Set<Save>();

/** Registers what to save before the window closes. Returns the function that takes it back. */
export function saveBeforeClosing(save: Save): () => void {
  saves.add(save);
  return () => saves.delete(save);
}

/** Saves everything registered. Rejects with the first failure, after all have been tried. */
async function saveAll(): Promise<void> {
  const results = await Promise.allSettled([...saves].map((save) => save()));
  const failed = results.find((result) => result.status === 'rejected');
  if (failed !== undefined) throw failed.reason;
}

/** Listens to the shell; called once, when the page starts. */
export function watchClosing(): void {
  // A reload, or a browser's tab closed: what is sent now arrives, though nobody waits for the answer.
  window.addEventListener('pagehide', () => void saveAll().catch(() => undefined));
  const shell = window.linenfoldShell;
  shell?.onCloseAsked(() => {
    // What could not be saved is not confirmed: after its limit the shell asks the person.
    saveAll().then(
      () => shell.confirmClose(),
      (reason: unknown) => console.warn('not saved before closing:', reason),
    );
  });
}

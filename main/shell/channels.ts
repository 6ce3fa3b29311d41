/** Names of what passes between preload and main process. The renderer never sees them. */
export const channels = {
  /** Renderer's end of a new message port, on its way to the host. */
  port: 'linenfold:port',
  /** What the host process is doing: `up`, `gone` or `failed`. */
  hostState: 'linenfold:host-state',
  /** The page has begun to listen for closing: from here on it may hold something that is not saved. */
  closeWatched: 'linenfold:close-watched',
  /** The window wants to close: save first. */
  closeAsked: 'linenfold:close-asked',
  /** Everything typed is saved: the window may close. */
  closeReady: 'linenfold:close-ready',
} as const;

/** `up`: asks are answered. `gone`: it died and is being started again. `failed`: it died twice and stays away. */
export type HostState = 'up' | 'gone' | 'failed';

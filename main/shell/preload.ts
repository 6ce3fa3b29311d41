/**
 * The only bridge between page and program: it carries one message port to the main process and two signals back. A port
 * cannot cross contextBridge, so the page hands it over by `window.postMessage`. The page's side of this is
 * renderer/state/shell.ts.
 */
import { contextBridge, ipcRenderer } from 'electron';
import { channels, type HostState } from './channels.ts';

window.addEventListener('message', (event) => {
  if (event.source !== window || event.origin !== window.location.origin) return;
  if (event.data !== 'linenfold:connect' || event.ports.length !== 1) return;
  ipcRenderer.postMessage(channels.port, null, [...event.ports]);
});

contextBridge.exposeInMainWorld('linenfoldShell', {
  kind: 'electron',
  onHostState(listener: (state: HostState) => void): void {
    ipcRenderer.on(channels.hostState, (_event, state: HostState) => listener(state));
  },
  onCloseAsked(listener: () => void): void {
    ipcRenderer.on(channels.closeAsked, () => listener());
    ipcRenderer.send(channels.closeWatched);
  },
  confirmClose(): void {
    ipcRenderer.send(channels.closeReady);
  },
});

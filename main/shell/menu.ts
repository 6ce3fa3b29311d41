import { app, Menu, type MenuItemConstructorOptions } from 'electron';

/** The menu is the system's usual one: what the program does stands in its screens, not here. */
export function buildMenu(): Menu {
  const onMac = process.platform === 'darwin';
  const view: MenuItemConstructorOptions[] = [
    { role: 'resetZoom' },
    { role: 'zoomIn' },
    { role: 'zoomOut' },
    { type: 'separator' },
    { role: 'togglefullscreen' },
  ];
  if (!app.isPackaged) view.push({ type: 'separator' }, { role: 'reload' }, { role: 'toggleDevTools' });
  return Menu.buildFromTemplate([
    ...(onMac ? [{ role: 'appMenu' as const }] : [{ label: '&File', submenu: [{ role: 'quit' as const }] }]),
    { role: 'editMenu' },
    { label: '&View', submenu: view },
    { role: 'windowMenu' },
  ]);
}

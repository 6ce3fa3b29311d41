// The walls of the house as one lint rule: which floor may import which, and which outside package belongs in which room.
// The tables come first; the rule below only reads them. test/build/walls.test.ts breaks each wall once.
import { builtinModules } from 'node:module';
import path from 'node:path';

/** What each floor may import of ours. A floor is a top-level folder. */
const floors = {
  shared: ['shared'],
  app: ['app', 'shared'],
  main: ['main', 'app', 'shared'],
  renderer: ['renderer', 'app', 'shared'],
  build: ['build', 'main', 'app', 'shared'],
  test: ['test', 'build', 'renderer', 'main', 'app', 'shared'],
};

/** Rooms that only some may enter, though their floor could be. Tests may enter every room. */
const closedRooms = [
  { room: 'main/shell', open: ['main/shell'], reason: 'nothing imports a shell' },
  { room: 'main/browser', open: ['main/browser'], reason: 'nothing imports a shell' },
  { room: 'main/command', open: ['main/command'], reason: 'nothing imports a shell' },
  {
    room: 'app/documents',
    open: ['app/documents', 'main', 'build'],
    reason: 'papers are made by the desk; the renderer shows their bytes',
  },
];

/** Where each outside package may be imported. A package that is not listed may be imported in build and test alone. */
const packages = {
  zod: ['shared', 'main'],
  '@orpc/contract': ['shared', 'main', 'renderer'],
  '@orpc/server': ['main'],
  '@orpc/client': ['renderer', 'main'],
  electron: ['main/shell'],
  'electron-log': ['main/shell'],
  'better-sqlite3': ['main/portfolio'],
  kysely: ['main/portfolio'],
  nodemailer: ['main/mail'],
  'pdf-lib': ['app/documents'],
  fontkit: ['app/documents'],
  svelte: ['renderer'],
  'bits-ui': ['renderer'],
  '@lucide/svelte': ['renderer'],
  '@internationalized/date': ['renderer'],
  '@expo-google-fonts/fraunces': ['renderer'],
  '@expo-google-fonts/source-sans-3': ['renderer'],
};
const everywhere = ['build', 'test'];

/** Node's own modules. The preload script runs in Chromium's sandbox, where there are none. */
const nodeRooms = ['main', 'build', 'test'];
const withoutNode = ['main/shell/preload.ts'];

/** Files at the top level that configure tools. */
const topFiles = ['electron.config.ts'];

const isIn = (file, rooms) => rooms.some((room) => file === room || file.startsWith(`${room}/`));

/** What is wrong with an import, or null. `file` is the importing file's path in the project, with forward slashes. */
export function findWallFault(file, source) {
  const floor = topFiles.includes(file) ? 'build' : file.split('/')[0];
  if (floors[floor] === undefined) return null;
  const bare = source.split('?')[0];
  if (bare.startsWith('#') || bare.startsWith('.')) return findInnerFault(file, floor, bare);
  return findOuterFault(file, floor, bare);
}

function findInnerFault(file, floor, source) {
  const target = source.startsWith('#')
    ? source.slice(1)
    : path.posix.normalize(path.posix.join(path.posix.dirname(file), source));
  const targetFloor = target.split('/')[0];
  if (target === 'package.json' && isIn(file, everywhere)) return null;
  if (!floors[floor].includes(targetFloor)) return `${floor} may not import ${targetFloor}`;
  if (floor === 'test') return null;
  const closed = closedRooms.find(({ room, open }) => isIn(target, [room]) && !isIn(file, open));
  return closed === undefined ? null : `${closed.room} may not be imported here: ${closed.reason}`;
}

function findOuterFault(file, floor, source) {
  const name = source.startsWith('@') ? source.split('/').slice(0, 2).join('/') : source.split('/')[0];
  if (source.startsWith('node:') || builtinModules.includes(source)) {
    if (!source.startsWith('node:')) return `write "node:${source}" for Node's own module`;
    const allowed = (isIn(file, nodeRooms) || floor === 'build') && !withoutNode.includes(file);
    return allowed ? null : `Node's own modules are for ${nodeRooms.join(', ')} alone`;
  }
  if (everywhere.includes(floor)) return null;
  const rooms = packages[name];
  if (rooms === undefined) return `the package "${name}" has no room in build/walls.js`;
  return isIn(file, rooms) ? null : `the package "${name}" is for ${rooms.join(', ')} alone`;
}

const imports = {
  meta: { type: 'problem', schema: [], messages: { wall: '{{fault}}.' } },
  create(context) {
    const file = path.relative(context.cwd, context.filename).split(path.sep).join('/');
    const check = (node, source) => {
      if (source?.type !== 'Literal' || typeof source.value !== 'string') return;
      const fault = findWallFault(file, source.value);
      if (fault !== null) context.report({ node, messageId: 'wall', data: { fault } });
    };
    return {
      ImportDeclaration: (node) => check(node, node.source),
      ExportNamedDeclaration: (node) => check(node, node.source),
      ExportAllDeclaration: (node) => check(node, node.source),
      ImportExpression: (node) => check(node, node.source),
      TSImportType: (node) => check(node, node.source ?? node.argument?.literal),
      TSExternalModuleReference: (node) => check(node, node.expression),
      CallExpression: (node) => {
        if (node.callee.type === 'Identifier' && node.callee.name === 'require') check(node, node.arguments[0]);
      },
    };
  },
};

export const walls = { meta: { name: 'walls' }, rules: { imports } };

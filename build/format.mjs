// `npm run format [-- FILE...]`: writes the files given (or all) as prettier wants them.
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));
const files = process.argv.slice(2);
const prettier = path.join(root, 'node_modules', 'prettier', 'bin', 'prettier.cjs');
const flags = ['--config', path.join(root, 'build', 'prettier.json'), '--write'];
const done = spawnSync(process.execPath, [prettier, ...flags, ...(files.length > 0 ? files : ['.'])], {
  stdio: 'inherit',
});
process.exit(done.status ?? 1);

// Installs node_modules from the lock file, and only when it is missing or older than the lock file.
import { execSync } from 'node:child_process';
import { statSync } from 'node:fs';

const ui = new URL('..', import.meta.url);
const age = (name) => statSync(new URL(name, ui), { throwIfNoEntry: false })?.mtimeMs ?? 0;

// npm writes this file last, so a broken install counts as missing.
if (age('node_modules/.package-lock.json') < age('package-lock.json')) {
  execSync('npm ci --no-audit --no-fund', { cwd: ui, stdio: 'inherit' });
}

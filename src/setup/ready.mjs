// Installs the pinned dependencies when they are missing or the lockfile has changed, and checks that a recent
// enough Node runs the rest. Plain JavaScript, because it may itself run on Node 20. Talks on standard error only,
// so that a command whose standard output is JSON can call it first.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

const windows = process.platform === 'win32';
const stamp = 'node_modules/.ready';
const wanted = createHash('sha256')
  .update(readFileSync('package-lock.json'))
  .update(process.platform + process.arch)
  .digest('hex');

const installed = () => existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted;

/** Type stripping, which runs our .ts files as they are, is on without a flag from Node 22.18. */
function recent(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  return major > 22 || (major === 22 && minor >= 18);
}

/** The Node that npm scripts will find: the pinned one in node_modules/.bin once it is installed. */
function scriptNode() {
  const asked = spawnSync('node', ['-p', 'process.versions.node'], { encoding: 'utf8', shell: windows });
  return asked.stdout?.trim() ?? '';
}

function install() {
  console.error('Installing the pinned dependencies ...');
  const npm = process.env.npm_execpath;
  // The Node that started npm, never the one inside node_modules, which the install replaces.
  const starter = process.env.npm_node_execpath ?? process.execPath;
  // `npm ci` deletes node_modules first; on Windows the running node.exe inside it cannot be deleted.
  const args = [
    windows && existsSync('node_modules') ? 'install' : 'ci',
    '--no-audit',
    '--no-fund',
    '--loglevel=error',
  ];
  const options = { stdio: ['inherit', 2, 2] };
  const done = npm
    ? spawnSync(starter, [npm, ...args], options)
    : spawnSync('npm', args, { ...options, shell: true });
  if (done.status !== 0) process.exit(done.status ?? 1);
}

if (!(installed() && recent(process.versions.node))) {
  if (!installed() || !recent(scriptNode())) install();
  const found = scriptNode();
  if (!recent(found)) {
    console.error(
      `Node ${found || '(none found)'} is too old: 22.18 or later is needed, and no pinned copy exists for ` +
        `${process.platform}-${process.arch}. Install Node 24 and run the command again.`,
    );
    process.exit(1);
  }
  writeFileSync(stamp, wanted);
}

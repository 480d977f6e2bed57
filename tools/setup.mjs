import './node-version.mjs';
import { existsSync, readFileSync } from 'node:fs';
import { progress } from './progress.mjs';
import { at } from './root.mjs';
import { run } from './run.mjs';

/** What went wrong during an installation, and the command that mends it. First match speaks. */
const mishaps = [
  {
    sign: /ENOSPC|no space left/i,
    say: 'The disk is full, so the packages could not be installed. Make room; this shows how much there is: df -h .',
  },
  {
    sign: /EACCES|EPERM|EROFS|permission denied|read-only file system/i,
    say: 'This folder may not be written by you. Make it yours: sudo chown -R "$(id -un)" .',
  },
  {
    sign: /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH|network/i,
    say: 'The npm registry cannot be reached, so the packages could not be installed. Check the connection or the proxy: npm ping',
  },
  {
    sign: /CERT|SSL|self.signed/i,
    say: 'The npm registry answers with a certificate this computer does not trust. Name your own: npm config set cafile FILE',
  },
  {
    sign: /package-lock\.json|EUSAGE/i,
    say: 'package.json and package-lock.json do not fit together. Bring them in line: npm install',
  },
];

/** The one sentence for a failed `npm ci`. */
export function explainInstall({ output, error }) {
  if (error?.code === 'ENOENT') return 'npm is not installed. Install it: sudo apt-get install npm';
  const known = mishaps.find((mishap) => mishap.sign.test(output));
  return known?.say ?? `npm ci did not succeed. Read its messages above, then try again: npm ci`;
}

/** True when everything that package-lock.json names lies in node_modules in the same version. */
export function isInstalled() {
  const installedFile = at('node_modules/.package-lock.json');
  if (!existsSync(installedFile)) return false;
  const wanted = JSON.parse(readFileSync(at('package-lock.json'), 'utf8')).packages;
  const installed = JSON.parse(readFileSync(installedFile, 'utf8')).packages;
  return Object.entries(wanted).every(
    ([path, entry]) =>
      !path.startsWith('node_modules/') ||
      entry.link === true ||
      entry.optional === true ||
      entry.devOptional === true ||
      installed[path]?.version === entry.version,
  );
}

/** Installs what the lock file names, when it is not there yet. Ends the process with a sentence when it cannot. */
export async function setUp() {
  if (isInstalled()) return;
  console.error(
    'Installing the packages named in package-lock.json (npm ci). The first time this takes a minute or two.',
  );
  const line = progress('installing');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const result = await run(npm, ['ci', '--no-fund', '--no-audit'], { timeout_s: 1800, onSecond: line.tick });
  line.end();
  if (result.code === 0) return;
  console.error(result.output.trim().split('\n').slice(-20).join('\n'));
  console.error(
    result.timedOut ? 'npm ci took more than 30 minutes. Check the connection: npm ping' : explainInstall(result),
  );
  process.exit(1);
}

if (process.argv[1] === at('tools/setup.mjs')) await setUp();

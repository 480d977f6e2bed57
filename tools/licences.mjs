import { existsSync, readFileSync } from 'node:fs';
import { at } from './root.mjs';

/** Licences that may enter. Each part of an AND must be here, one part of an OR suffices. */
const allowed = new Set([
  '0BSD',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BSL-1.0',
  'BlueOak-1.0.0',
  'CC0-1.0',
  'ISC',
  'MIT',
  'MPL-2.0',
  'OFL-1.1',
  'Unlicense',
  'Zlib',
]);

/** Packages whose package.json names no known licence: what their own licence file says, read by a person. */
const readByHand = new Map([
  [
    'dejavu-fonts-ttf',
    'Bitstream Vera and Arev font licences, changes in the public domain: may be embedded and passed on',
  ],
  ['png-js', 'MIT, in its LICENSE file'],
]);

/** True when an SPDX expression can be met with allowed licences alone. */
export function mayEnter(expression) {
  const plain = expression.replace(/[()]/g, '');
  return plain.split(' OR ').some((choice) => choice.split(' AND ').every((name) => allowed.has(name.trim())));
}

/** Every package that the lock file brings, with its licence, looked up in the package itself where the lock is silent. */
export function licenceList() {
  const { packages } = JSON.parse(readFileSync(at('package-lock.json'), 'utf8'));
  return Object.entries(packages)
    .filter(([path, entry]) => path.includes('node_modules/') && entry.link !== true)
    .map(([path, entry]) => ({
      name: path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length),
      version: entry.version,
      licence: entry.license ?? licenceInPackage(path),
    }));
}

function licenceInPackage(path) {
  const file = at(path, 'package.json');
  if (!existsSync(file)) return 'none stated';
  const { license, licenses } = JSON.parse(readFileSync(file, 'utf8'));
  return license?.type ?? license ?? licenses?.map((each) => each.type).join(' OR ') ?? 'none stated';
}

/** The stage: fails for a licence nobody has allowed, and when there is nothing to check. */
export async function checkLicences() {
  const list = licenceList();
  const refused = list.filter(({ name, licence }) => !mayEnter(licence) && !readByHand.has(name));
  if (list.length === 0)
    return { passed: 0, failed: 1, note: 'package-lock.json lists no package: nothing was checked' };
  if (refused.length === 0) return { passed: 1, failed: 0, note: `${list.length} packages` };
  const output = refused.map(({ name, version, licence }) => `${name} ${version}: ${licence}`).join('\n');
  const note = 'Leave these packages out, or read their licence and add it to tools/licences.mjs.';
  return { passed: 0, failed: 1, note, output };
}

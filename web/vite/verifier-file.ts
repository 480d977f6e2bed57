import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

const source = new URL('../../records/verifier/verify-record.mjs', import.meta.url);

/** Name under which a build offers the verifier that stands alone, for download and as a module. */
export const verifierFile = 'verify-record.mjs';

/** Puts the verifier beside the page as it is: who checks a record with it should be able to read it. */
export function verifierBesidePage(): Plugin {
  return {
    name: 'verifier-beside-page',
    apply: 'build',
    generateBundle() {
      this.emitFile({ type: 'asset', fileName: verifierFile, source: readFileSync(source, 'utf8') });
    },
  };
}

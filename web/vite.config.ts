import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { precache } from './vite/precache.ts';
import { verifierBesidePage } from './vite/verifier-file.ts';

// The page's content-security policy allows no inline script or style: nothing may be inlined into the page,
// and the preload helper that Vite would add to it is left out.
export default defineConfig({
  root: import.meta.dirname,
  plugins: [react(), verifierBesidePage(), precache()],
  resolve: {
    conditions: ['source', 'module', 'browser', 'development|production'],
    alias: { '@stdlib/assert-has-generator-support': `${import.meta.dirname}/stand-ins/has-generators.cjs` },
  },
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // What is needed before anything is shown comes as one file: each of many small ones costs a turn of its own.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] } } },
    chunkSizeWarningLimit: 2500,
  },
});

import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { precache } from './vite/precache.ts';

// The page's content-security policy allows no inline script or style: nothing may be inlined into the page,
// and the preload helper that Vite would add to it is left out.
export default defineConfig({
  root: import.meta.dirname,
  plugins: [react(), precache()],
  resolve: {
    conditions: ['source', 'module', 'browser', 'development|production'],
    alias: { '@stdlib/assert-has-generator-support': `${import.meta.dirname}/stand-ins/has-generators.cjs` },
  },
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 2500,
  },
});

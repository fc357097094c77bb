import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { OFFLINE_WORKER, offlinePlugin } from './offline-plugin.ts';

// Built alike whoever builds: a test runner says otherwise, and React's other half is twice as large.
const said = process.env.NODE_ENV;
process.env.NODE_ENV = 'production';
const asItShips = (): Plugin => ({
  name: 'as-it-ships',
  closeBundle() {
    if (said === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = said;
  },
});

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/**
 * Four pages from one build. The server sends them with a policy that allows scripts, styles and
 * fonts from itself alone, so nothing may be inlined into a page or become a data: address.
 */
export default defineConfig({
  root: here('.'),
  base: '/',
  plugins: [react(), offlinePlugin(), asItShips()],
  build: {
    outDir: here('../.build/pages'),
    emptyOutDir: true,
    // Everything comes from the same room; one file a page beats many round trips.
    chunkSizeWarningLimit: 900,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // School tablets are old: this is the oldest set of browsers that the pages promise to run on.
    target: ['es2021', 'chrome90', 'safari15', 'firefox90'],
    rolldownOptions: {
      input: {
        tablet: here('tablet/index.html'),
        desk: here('desk/index.html'),
        board: here('board/index.html'),
        check: here('check/index.html'),
        [OFFLINE_WORKER]: here('tablet/offline-worker.ts'),
      },
      output: {
        // A worker answers for addresses below its own.
        entryFileNames: ({ name }) =>
          name === OFFLINE_WORKER ? `${OFFLINE_WORKER}.js` : 'assets/[name]-[hash].js',
      },
    },
  },
});

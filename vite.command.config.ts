import { rm } from 'node:fs/promises';
import { defineConfig } from 'vite';

/** It unpacks a browser that lies beside its program, in a process of its own. */
const OUTSIDE = ['@sparticuz/chromium'];

/**
 * The command, in a few files in place of a thousand: finding and reading those took longer than printing a handout.
 * They lie as deep as the rooms do, since the rooms find templates, lessons and fonts from where they are.
 */
export default defineConfig({
  plugins: [
    {
      name: 'nothing-of-an-older-build',
      buildStart: () => rm('dist/command', { recursive: true, force: true }),
    },
  ],
  // Some packages still ask where they are in the older way.
  define: { __filename: 'import.meta.filename', __dirname: 'import.meta.dirname' },
  ssr: { noExternal: true, external: OUTSIDE },
  build: {
    ssr: 'src/cli/main.ts',
    outDir: 'dist',
    emptyOutDir: false,
    copyPublicDir: false,
    license: { fileName: 'command/licences.md' },
    target: 'node20',
    minify: false,
    rolldownOptions: {
      external: OUTSIDE,
      output: { entryFileNames: 'cli/main.js', chunkFileNames: 'command/[name].js' },
    },
  },
});

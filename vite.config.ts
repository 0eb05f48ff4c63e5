import { defineConfig } from 'vite';

/** The practice page's program: one file that runs in any browser of the last few years, with nothing beside it. */
export default defineConfig({
  build: {
    outDir: 'dist/practice',
    emptyOutDir: false,
    copyPublicDir: false,
    license: { fileName: 'licences.md' },
    target: 'es2022',
    lib: {
      entry: 'src/practice/page/main.ts',
      formats: ['iife'],
      name: 'benchleaf',
      fileName: () => 'page.js',
    },
  },
});

import { join } from 'node:path'
import { defineConfig } from 'vite'
import solid from 'vite-plugin-solid'
import { equationDocs } from './scripts/equation-docs.mjs'
import { firstAnswerBeside } from './scripts/first-answer.ts'

const root = join(import.meta.dirname, 'src/shells/web')

export default defineConfig({
  root,
  base: './',
  publicDir: false,
  plugins: [solid(), equationDocs(), firstAnswerBeside()],
  build: {
    target: 'es2022',
    outDir: join(import.meta.dirname, 'dist/web'),
    emptyOutDir: true,
    assetsInlineLimit: 0,
    // Only the page itself fetches ahead; a worker that did would look for a document.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_, deps, { hostType }) => (hostType === 'html' ? deps : []),
    },
    chunkSizeWarningLimit: 2000,
    rolldownOptions: {
      checks: { pluginTimings: false },
      // The workers are entries of the same build, so that they share the chunks of the page.
      input: {
        index: join(root, 'index.html'),
        engine: join(root, 'workers/engine.ts'),
        sheets: join(root, 'workers/sheets.ts'),
        solids: join(root, 'workers/solids.ts'),
        booklet: join(root, 'workers/booklet.ts'),
        sensitivity: join(root, 'workers/sensitivity.ts'),
      },
      output: {
        entryFileNames: 'assets/[name].js',
        chunkFileNames: 'assets/[name]-[hash].js',
        assetFileNames: 'assets/[name]-[hash][extname]',
      },
    },
  },
})

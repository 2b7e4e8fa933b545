import { defineConfig } from 'vite'

export default defineConfig({
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist',
    emptyOutDir: false,
    minify: false,
    rolldownOptions: {
      checks: { pluginTimings: false },
      input: {
        cli: 'src/shells/cli/main.ts',
        run: 'src/shells/cli/run.ts',
        index: 'src/index.ts',
        equations: 'src/equations.ts',
      },
      output: { entryFileNames: '[name].mjs', chunkFileNames: 'chunks/[name]-[hash].mjs' },
    },
  },
})

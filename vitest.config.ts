import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'test/**/*.test.ts'],
    exclude: ['test/browser/**', 'node_modules/**'],
    environment: 'node',
    testTimeout: 120_000,
  },
})

import { describe, expect, it } from 'vitest'
import type { Published } from '../src/kernel/published.ts'
import { sources } from '../src/tables/sources.ts'

const modules = import.meta.glob<{ default: readonly Published[] }>('../src/**/values*.ts', { eager: true })

describe('published values', () => {
  for (const [path, module] of Object.entries(modules)) {
    const place = path.replace('../src/', '').replace('/values.ts', '')
    describe(place, () => {
      for (const row of module.default) {
        it(`${row.name} = ${row.expected} (${row.source}; ${row.why})`, () => {
          expect(Object.keys(sources), 'the source is in the register').toContain(row.source)
          const relative = row.absolute ? row.within / Math.abs(row.expected || Number.POSITIVE_INFINITY) : row.within
          if (relative > 0.05) expect(row.loose, 'a tolerance above 5 % needs a reason').toBeTypeOf('string')
          const limit = row.absolute ? row.within : row.within * Math.abs(row.expected)
          const got = row.compute()
          expect(Math.abs(got - row.expected), `got ${got}, within ${limit}`).toBeLessThanOrEqual(limit)
        })
      }
    })
  }
})

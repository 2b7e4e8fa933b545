import { describe, expect, it } from 'vitest'
import { buildSources } from '../src/tables/sources/build.ts'
import { sources } from '../src/tables/sources.ts'

const texts = import.meta.glob<string>(['../src/**/*.ts', '!../src/tables/sources/*.ts', '!../src/**/*.test.ts'], {
  eager: true,
  query: '?raw',
  import: 'default',
})
const all = Object.values(texts).join('\n')

/** Parts of the register whose every entry must be used. */
const complete = { build: buildSources }

describe('register of sources', () => {
  for (const [part, entries] of Object.entries(complete))
    for (const id of Object.keys(entries))
      it(`uses ${id} of ${part}`, () => expect(all.includes(`'${id}'`) || all.includes(`Source   ${id}`)).toBe(true))

  for (const [id, { kind, cite, where, read }] of Object.entries(sources))
    it(`${id} can be found`, () => {
      expect(id).toMatch(/^[A-Za-z0-9.-]+$/)
      expect(cite.length).toBeGreaterThan(8)
      expect(where.length).toBeGreaterThan(3)
      if (read !== null) expect(read).toMatch(/^\d{4}-\d{2}-\d{2}$/)
      // What is remembered was not read.
      if (kind === 'from-memory') expect(read).toBeNull()
    })
})

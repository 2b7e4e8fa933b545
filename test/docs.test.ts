import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { pages } from '../scripts/docs.ts'

const root = join(import.meta.dirname, '..')
const read = (path: string) => readFileSync(join(root, path), 'utf8')

describe('generated pages', () => {
  it.each(Object.keys(pages))('%s is what `npm run docs` writes now', (path) => expect(read(path)).toBe(pages[path]!()))
})

describe('written pages', () => {
  const written = ['README.md', 'ARCHITECTURE.md', 'STYLE.md', 'CONTRIBUTING.md', 'SECURITY.md', 'CHANGELOG.md']
  const docs = readdirSync(join(root, 'docs'), { recursive: true, encoding: 'utf8' })
    .filter((f) => f.endsWith('.md'))
    .map((f) => `docs/${f}`)

  it.each([...written, ...docs])('%s links only to what is there', (path) => {
    const links = [...read(path).matchAll(/\]\(([^)#]+?)(?:#[^)]*)?\)/g)]
      .map((m) => m[1]!)
      .filter((l) => !/^[a-z]+:/.test(l))
    expect(links.filter((l) => !existsSync(join(root, dirname(path), l)))).toEqual([])
  })

  it('the decisions are numbered without a gap or a double', () => {
    const numbers = readdirSync(join(root, 'docs/decisions'))
      .map((f) => Number(f.slice(0, 4)))
      .sort((a, b) => a - b)
    expect(numbers).toEqual(numbers.map((_, i) => i + 1))
  })

  it('every direct dependency has its line in the decision on packages', () => {
    const own = JSON.parse(read('package.json')) as Record<string, Record<string, string>>
    const names = ['dependencies', 'devDependencies', 'optionalDependencies'].flatMap((k) => Object.keys(own[k] ?? {}))
    const page = read('docs/decisions/0002-packages.md')
    expect(names.filter((n) => !page.includes(n))).toEqual([])
  })

  it('every direct dependency has an exact version', () => {
    const own = JSON.parse(read('package.json')) as Record<string, Record<string, string>>
    const ranges = ['dependencies', 'devDependencies', 'optionalDependencies'].flatMap((k) =>
      Object.values(own[k] ?? {}),
    )
    expect(ranges.filter((v) => !/^\d+\.\d+\.\d+$/.test(v))).toEqual([])
  })

  it('nothing that is kept names a machine’s path or a registry’s host', () => {
    const places = new RegExp(['/(wo', 'rk|ho', 'me|tm', 'p)/'].join(''))
    const hosts = new RegExp(['registry\\.np', 'mjs'].join(''))
    const files = [...written, ...docs, 'package.json', 'package-lock.json']
    expect(files.filter((f) => places.test(read(f)) || hosts.test(read(f)))).toEqual([])
  })
})

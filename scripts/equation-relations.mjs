// Which equation each judged number came out of: the engine is run once with its equations watched, and a finding is
// tied to the equations that gave exactly its number, or else a limit or another number that it tells. Nothing is entered
// by hand, so nothing can go out of date; a number that no equation gave is tied to none.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'vite'

import { equationTable } from './equation-docs.mjs'

const docs = equationTable()
const root = join(import.meta.dirname, '..')
const MOST = 2

/** Every exported function of the equations files also tells the watcher what it gave. */
const watched = () => ({
  name: 'watched-equations',
  enforce: 'pre',
  transform(code, id) {
    if (!/src\/disciplines\/.*equations[^/]*\.ts$/.test(id)) return null
    const tail = []
    const told = (name) => `(globalThis.watchedEquations?.('${name}', RESULT), RESULT)`
    const out = code.replace(/^export function (\w+)(\s*[<(])/gm, (_, name, open) => {
      tail.push(
        `export const ${name} = ((...a: unknown[]) => { const r = (${name}_plain as any)(...a); return ${told(name).replaceAll('RESULT', 'r')} }) as typeof ${name}_plain`,
      )
      return `function ${name}_plain${open}`
    })
    const names = [...out.matchAll(/^function (\w+)_plain/gm)].map((m) => m[1])
    // Inside the file the plain functions call each other, so that only what leaves it is told.
    const inner = names.reduce(
      (text, n) => text.replace(new RegExp(`(?<![\\w.])${n}(?=\\s*[(,)}])(?!_plain)`, 'g'), `${n}_plain`),
      out,
    )
    return { code: `${inner}\n${tail.join('\n')}`, map: null }
  },
})

const numbersIn = (value, into = []) => {
  if (typeof value === 'number') into.push(value)
  else if (Array.isArray(value)) {
    if (value.length <= 64) for (const v of value) numbersIn(v, into)
  } else if (typeof value === 'object' && value !== null) for (const v of Object.values(value)) numbersIn(v, into)
  return into
}

const DIGITS = 6
const short = (n) => Math.abs(Number(n.toPrecision(DIGITS)) - n) <= 1e-12 * Math.abs(n)

/** A number of few digits, in itself or as degrees, is typed or comes out of many equations: it ties nothing. */
const telling = (n) => Number.isFinite(n) && !short(n) && !short((n * 180) / Math.PI)

async function engine(folder) {
  await build({
    configFile: false,
    root,
    logLevel: 'silent',
    plugins: [watched()],
    build: {
      ssr: true,
      target: 'node20',
      outDir: folder,
      minify: false,
      rolldownOptions: { input: { index: join(root, 'src/index.ts') }, output: { entryFileNames: '[name].mjs' } },
    },
    ssr: { noExternal: true },
  })
  return import(pathToFileURL(join(folder, 'index.mjs')).href)
}

/** What a finding shows, dearest first: its number, its limits, the other numbers of its sentence. */
const shown = ({ measured, must, want, slots }) =>
  [measured, { must, want }, slots].map((part) => numbersIn(part ?? {}))

/** Equations by finding. */
export async function equationRelations() {
  const folder = mkdtempSync(join(tmpdir(), 'rootfall-watched-'))
  const { parsePlan, evaluate } = await engine(folder)
  const table = {}
  for (const file of readdirSync(join(root, 'examples')).filter((f) => f.endsWith('.plan.json'))) {
    const gave = new Map()
    globalThis.watchedEquations = (name, result) => {
      for (const n of numbersIn(result)) if (telling(n)) gave.set(n, new Set([...(gave.get(n) ?? []), name]))
    }
    const { findings } = evaluate(parsePlan(JSON.parse(readFileSync(join(root, 'examples', file), 'utf8'))).plan)
    delete globalThis.watchedEquations
    for (const f of findings) {
      const own = (name) => docs[name]?.discipline === f.id.split('/')[0]
      const of = (numbers) =>
        numbers.filter(telling).flatMap((n) => [...(gave.get(n) ?? gave.get(-n) ?? [])].filter(own))
      const names = shown(f)
        .map(of)
        .find((found) => found.length > 0)
      const all = [...new Set([...(table[f.id] ?? []), ...(names ?? [])])]
      if (all.length > 0) table[f.id] = all
    }
  }
  rmSync(folder, { recursive: true, force: true })
  return Object.fromEntries(Object.entries(table).map(([id, names]) => [id, names.slice(0, MOST)]))
}

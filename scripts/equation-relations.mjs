// Which equation each judged number came out of: the engine is run once with its equations watched, and a finding is
// tied to the equations that gave exactly its number. Nothing is entered by hand, so nothing can go out of date.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'vite'
import { equationTable } from './equation-docs.mjs'

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

/** A whole number or a nought comes out of many equations: it ties nothing. */
const telling = (n) => Number.isFinite(n) && !Number.isInteger(n) && !Number.isInteger(n * 1000)

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

const docs = equationTable()

/** Equations of the same discipline that rest on the very source of the limit. */
const ofSource = ({ id, source }) =>
  Object.keys(docs).filter(
    (name) =>
      !/^(common-practice|from-memory|derived)/.test(source) &&
      docs[name].discipline === id.split('/')[0] &&
      docs[name].source?.split(/[ ,;]/)[0] === source,
  )

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
      const numbers = numbersIn(f.measured).filter(telling)
      const names = numbers.flatMap((n) => [...(gave.get(n) ?? gave.get(-n) ?? [])])
      const all = [...new Set([...(table[f.id] ?? []), ...(names.length > 0 ? names : ofSource(f))])]
      if (all.length > 0) table[f.id] = all
    }
  }
  rmSync(folder, { recursive: true, force: true })
  return Object.fromEntries(Object.entries(table).map(([id, names]) => [id, names.slice(0, MOST)]))
}

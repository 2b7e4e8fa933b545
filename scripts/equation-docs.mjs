// The doc comments of the equations as data for the page: what each is, its equation, symbols, range and source.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

const root = join(import.meta.dirname, '..')
const LABELS = ['Symbols', 'Valid', 'Source', 'Throws', 'Why']

function parsed(comment) {
  const lines = comment.split('\n').map((l) => l.replace(/^\s*\*? ?/, ''))
  const out = { about: '', equation: '' }
  let part = 'about'
  for (const line of lines) {
    const label = LABELS.find((l) => new RegExp(`^${l}\\s`).test(line))
    if (label) part = label.toLowerCase()
    else if (part === 'about' && line.trim() === '' && out.about !== '') part = 'equation'
    const text = label
      ? line.slice(label.length).trim()
      : part === 'equation'
        ? line.replace(/^ {2}/, '').trimEnd()
        : line.trim()
    const between = part === 'equation' ? '\n' : ' '
    if (text !== '') out[part] = out[part] ? `${out[part]}${between}${text}` : text
  }
  return out
}

/** Every exported function of the equations files that has the doc form, by name. */
export function equationTable() {
  const files = readdirSync(join(root, 'src/disciplines'), { recursive: true })
    .map(String)
    .filter((f) => /equations[^/]*\.ts$/.test(f))
  const table = {}
  for (const file of files.sort()) {
    const source = readFileSync(join(root, 'src/disciplines', file), 'utf8')
    for (const [, comment, name] of source.matchAll(
      /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export (?:const|function) (\w+)/g,
    )) {
      const doc = parsed(comment)
      if (doc.symbols) table[name] = { discipline: file.split(/[\\/]/)[0], ...doc }
    }
  }
  return table
}

/** Puts the table beside the page; it is fetched when the first why is opened. */
export const equationDocs = () => ({
  name: 'equation-docs',
  async generateBundle() {
    const { equationRelations } = await import('./equation-relations.mjs')
    const source = JSON.stringify({ docs: equationTable(), relations: await equationRelations() })
    this.emitFile({ type: 'asset', fileName: 'assets/equations.json', source })
  },
})

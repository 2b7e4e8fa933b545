import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { evaluateDocument } from '../src/evaluate.ts'
import { evaluated } from '../src/shells/web/workers/evaluated.ts'

const root = join(import.meta.dirname, '..')
const names = ['balcony', 'school', 'hall']

/** What the command line prints for a plan. */
function printed(path: string): { readonly facts: unknown; readonly findings: readonly { readonly id: string }[] } {
  const cli = join(root, 'src/shells/cli/run.ts')
  const args = ['--import', 'tsx', cli, 'evaluate', path, '--no-remedies']
  return JSON.parse(spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8', maxBuffer: 1e9 }).stdout)
}

const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value))

describe('page, command line and library', () => {
  for (const name of names)
    it(`give the same evaluation to the last digit: ${name}`, () => {
      const path = join(root, 'examples', `${name}.plan.json`)
      const document = JSON.parse(readFileSync(path, 'utf8'))
      const library = evaluateDocument(document, { remedies: false })
      const page = evaluated(structuredClone(document))
      expect(plain(page.facts)).toEqual(plain(library.facts))
      expect(plain(page.findings)).toEqual(plain(library.findings))
      const command = printed(path)
      expect(command.facts).toEqual(plain(library.facts))
      expect(command.findings).toEqual(plain(library.findings))
    })
})

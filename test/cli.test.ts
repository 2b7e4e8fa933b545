import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Ajv2020 from 'ajv/dist/2020.js'
import { beforeAll, describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '..')
const folder = mkdtempSync(join(tmpdir(), 'rootfall-cli-'))
const balcony = join(root, 'examples', 'balcony.plan.json')
const bad = (name: string) => join(root, 'examples', 'bad', `${name}.plan.json`)

interface Ran {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

function run(args: readonly string[], input = '', env: Record<string, string> = {}): Ran {
  const done = spawnSync(process.execPath, [join(root, 'dist', 'run.mjs'), ...args], {
    input,
    encoding: 'utf8',
    cwd: folder,
    env: { ...process.env, ...env },
  })
  return { code: done.status, out: done.stdout, err: done.stderr }
}

beforeAll(() => {
  const built = spawnSync(process.execPath, ['scripts/prepare.mjs', '--build'], { cwd: root, encoding: 'utf8' })
  if (built.status !== 0) throw new Error(built.stderr)
}, 120_000)

describe('the command line', () => {
  it('helps, on standard output, and names every command', () => {
    const { code, out } = run(['--help'])
    expect(code).toBe(0)
    for (const name of [
      'new',
      'check',
      'explain',
      'sensitivity',
      'evaluate',
      'sheets',
      'solids',
      'cuts',
      'parts',
      'steps',
      'schema',
    ])
      expect(out).toContain(name)
    expect(run([]).out).toBe(out)
  })

  it.each([
    'new',
    'check',
    'explain',
    'sensitivity',
    'evaluate',
    'sheets',
    'solids',
    'cuts',
    'parts',
    'steps',
    'schema',
  ])('%s has help and --json', (name) => {
    const { code, out } = run([name, '--help'])
    expect(code).toBe(0)
    expect(out).toContain('--json')
  })

  it('suggests the nearest command', () => {
    const { code, out, err } = run(['chek', balcony])
    expect([code, out]).toEqual([2, ''])
    expect(err).toContain('check')
  })

  it('suggests the nearest finding', () => {
    const { code, err } = run(['explain', balcony, 'templates/ring-wed'])
    expect(code).toBe(2)
    expect(err).toContain('templates/ring-web')
  })

  it('explains a finding with number, reason and source', () => {
    const { code, out } = run(['explain', balcony, 'templates/ring-web'])
    expect(code).toBe(0)
    expect(out).toMatch(/Why: {4}\S/)
    expect(out).toMatch(/Source: \S/)
  })

  it('keeps data on standard output and messages on standard error', () => {
    const { out, err } = run(['evaluate', bad('slips')])
    expect(() => JSON.parse(out)).not.toThrow()
    expect(err).toContain('maxHead')
  })

  it('exits 1 where a finding fails, 3 where the plan cannot be read, 2 on wrong use', () => {
    expect(run(['check', bad('overfull-ring')]).code).toBe(1)
    expect(run(['check', bad('slips')]).code).toBe(3)
    expect(run(['check', join(folder, 'nowhere.json')]).code).toBe(3)
    expect(run(['check', '-'], 'not json').code).toBe(3)
    expect(run(['check']).code).toBe(2)
    expect(run(['check', balcony, '--loud']).code).toBe(2)
  })

  it('reads a plan from standard input with the same result', () => {
    expect(run(['evaluate', '-'], readFileSync(balcony, 'utf8')).out).toBe(run(['evaluate', balcony]).out)
  })

  it('prints the same bytes twice', () => {
    expect(run(['check', balcony, '--json']).out).toBe(run(['check', balcony, '--json']).out)
  })

  it('writes a new plan that is read without an issue, and never over one that is there', () => {
    const path = join(folder, 'mine.plan.json')
    expect(run(['new', path, '--name', 'Mine']).code).toBe(0)
    expect(JSON.parse(readFileSync(path, 'utf8'))).toMatchObject({ rootfall: 1, name: 'Mine' })
    writeFileSync(path, 'mine')
    expect(run(['new', path]).code).toBe(2)
    expect(readFileSync(path, 'utf8')).toBe('mine')
  })

  it('suggests the nearest example', () => {
    const { code, err } = run(['new', '-', '--from', 'balcny'])
    expect(code).toBe(2)
    expect(err).toContain('balcony')
  })

  it('writes solids whole, and nothing where a name is wrong', () => {
    const to = join(folder, 'solids')
    const { code, out, err } = run(['solids', balcony, '--out', to, '--only', 'stub,lid', '--format', 'stl,glb'])
    expect([code, out]).toEqual([0, `${join(to, 'stub.stl')}\n${join(to, 'stub.glb')}\n`])
    expect(readdirSync(to).sort()).toEqual(['stub.glb', 'stub.stl'])
    expect(err).toContain('Left out: lid')
    expect(err).toContain('sells for food')
    const wrong = run(['solids', balcony, '--out', join(folder, 'none'), '--only', 'stubb'])
    expect([wrong.code, existsSync(join(folder, 'none'))]).toEqual([2, false])
    expect(wrong.err).toContain('Did you mean stub')
  })

  it('prints a schema that accepts the examples', () => {
    const valid = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(JSON.parse(run(['schema']).out))
    expect(valid(JSON.parse(readFileSync(balcony, 'utf8')))).toBe(true)
  })

  it('says which reading decides, in words, as a table and as bars, and refuses a share that is none', () => {
    const blank = JSON.stringify({
      rootfall: 1,
      pump: { power: '35 W' },
      prices: { energyPerKWh: 0.98, currency: 'zł' },
    })
    const { code, out } = run(['sensitivity', '-'], blank)
    expect(code).toBe(0)
    expect(out).toContain('Energy of a month 25.06 zł: the pump’s power ±5 zł, the price of a kilowatt-hour ±2.5 zł')
    expect(out).toContain('Flow at the top: not yet, fill in ')
    // 0.84 kWh a day over the mean month of the calendar, 365.2425 days over 12.
    expect(run(['sensitivity', '-', '--csv'], blank).out.split('\r\n')[1]).toBe(
      'Energy of a month,25.056,zł,the pump’s power,pump/power,7,7,W,-5.0111,5.0111',
    )
    expect(run(['sensitivity', '-', '--svg'], blank).out).toContain('+5 zł')
    expect(JSON.parse(run(['sensitivity', '-', '--json'], blank).out).results[0].id).toBe('energy')
    const wrong = run(['sensitivity', '-', '--below', 'much'], blank)
    expect([wrong.code, wrong.out]).toEqual([2, ''])
  })

  it('does not mind a reader that leaves early', () => {
    const done = spawnSync(
      'sh',
      ['-c', `"${process.execPath}" "${join(root, 'dist', 'run.mjs')}" evaluate "${balcony}" | head -c 10`],
      { encoding: 'utf8' },
    )
    expect(done.stderr).toBe('')
  })

  it('groups what is open by the blanks to fill in, those that open the most first', () => {
    const { out } = run(['check', '-'], JSON.stringify({ rootfall: 1, column: { pipe: 'ASTM D1785 4 in Sch 40' } }))
    const blocks = out.split(/^open /m).slice(1)
    const counts = blocks.map((block) => block.match(/[a-z]+\/[a-z-]+/g)?.length ?? 0)
    expect(counts.length).toBeGreaterThan(3)
    expect(counts).toEqual([...counts].sort((a, b) => b - a))
    expect(new Set(blocks.map((block) => block.split('\n')[0])).size).toBe(blocks.length)
    const all = run(['check', '-', '--all'], JSON.stringify({ rootfall: 1 })).out
    expect(all).toMatch(/^open +hydraulics\/pump-lifts /m)
  })

  it('shows inches to the owner of a pipe by an inch standard, until a tape is named', () => {
    const check = (tape?: string) => {
      const plan = {
        rootfall: 1,
        column: { pipe: 'ASTM D1785 4 in Sch 40', length: '6 ft' },
        tools: tape ? { tape } : {},
      }
      return run(['check', '-'], JSON.stringify(plan)).out
    }
    expect(check()).toContain('72 in')
    expect(check('1 mm')).toContain('1829 mm')
  })

  it('shows inches to the owner of an inch tape', () => {
    const { out } = run(['check', join(root, 'examples', 'hall.plan.json'), '--all'])
    expect(out).toMatch(/\d\/\d+ in|\d in/)
  })
})

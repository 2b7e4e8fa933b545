// npm test: installs what is missing, then types, lint, architecture, unit, published-value, property, print and
// browser tests. Ends with one line: N passed, N failed.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildWhenStale, checkNode, install, root, say, systemPrograms } from './prepare.mjs'

checkNode()
install()
systemPrograms(
  [
    { names: ['pdftoppm'], debian: 'poppler-utils', what: 'PDF tools (pdftoppm, pdffonts, pdftotext)' },
    {
      names: ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'],
      debian: 'chromium',
      what: 'a Chromium',
      hint: 'or set CHROMIUM_PATH',
    },
  ].filter((p) => p.debian !== 'chromium' || !process.env.CHROMIUM_PATH),
)

let passed = 0
let failed = 0

function step(name, command, args) {
  say(`\n— ${name}`)
  const done = spawnSync(command, args, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] })
  if (done.status === 0) passed++
  else failed++
  return done.status === 0
}

const bin = (path) => join('node_modules', path)
step('types', process.execPath, [bin('typescript/bin/tsc'), '--noEmit', '-p', '.'])
step('types of the engine, without DOM and Node', process.execPath, [
  bin('typescript/bin/tsc'),
  '--noEmit',
  '-p',
  'tsconfig.engine.json',
])
step('lint and format', process.execPath, [bin('@biomejs/biome/bin/biome'), 'check', '.'])
step('dead code', process.execPath, [bin('knip/bin/knip.js'), '--no-progress'])

say('\n— build')
try {
  await buildWhenStale()
  passed++
} catch (error) {
  failed++
  say(String(error?.stack ?? error))
}

function vitest(name, args) {
  say(`\n— ${name}`)
  const file = join(mkdtempSync(join(tmpdir(), 'rootfall-')), 'tests.json')
  const done = spawnSync(
    process.execPath,
    [bin('vitest/vitest.mjs'), 'run', ...args, '--reporter=dot', '--reporter=json', `--outputFile.json=${file}`],
    { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] },
  )
  if (!existsSync(file)) {
    failed++
    return
  }
  const report = JSON.parse(readFileSync(file, 'utf8'))
  passed += report.numPassedTests
  failed += report.numFailedTests
  // A file that could not be loaded has no failed test of its own, yet the run has failed; skipped tests do not count as passed.
  if (report.numFailedTests === 0 && done.status !== 0) failed++
  if (report.numPendingTests + report.numTodoTests > 0) {
    failed++
    say(`${report.numPendingTests + report.numTodoTests} tests were skipped; nothing may be skipped`)
  }
}

vitest('unit, published values, properties, print', [])
if (existsSync(join(root, 'vitest.browser.config.ts'))) vitest('browser', ['--config', 'vitest.browser.config.ts'])

process.stdout.write(`\n${passed} passed, ${failed} failed\n`)
process.exit(failed === 0 ? 0 : 1)

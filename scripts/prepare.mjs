// What both commands of the README need first: Node new enough, packages installed, dist/ not older than the sources.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { delimiter, join } from 'node:path'

export const root = join(import.meta.dirname, '..')
const LEAST_NODE = [20, 19]

export function say(line) {
  process.stderr.write(`${line}\n`)
}

export function checkNode() {
  const [major, minor] = process.versions.node.split('.').map(Number)
  if (major > LEAST_NODE[0] || (major === LEAST_NODE[0] && minor >= LEAST_NODE[1])) return
  say(
    `rootfall needs Node ${LEAST_NODE.join('.')} or newer; this is ${process.versions.node}. Install a newer Node and run the same command again.`,
  )
  process.exit(2)
}

function run(command, args, options = {}) {
  return spawnSync(command, args, {
    cwd: root,
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
    ...options,
  })
}

/** Installs exactly what the lock file names, once for each state of the lock file. */
export function install() {
  const lock = readFileSync(join(root, 'package-lock.json'))
  const sum = createHash('sha256').update(lock).digest('hex')
  const mark = join(root, 'node_modules', '.rootfall-lock')
  if (existsSync(mark) && readFileSync(mark, 'utf8') === sum) return
  say('Installing packages …')
  const done = run('npm', ['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'])
  if (done.status !== 0) {
    say(
      'npm ci did not succeed; its message stands above. Check the network and the npm registry, then run the same command again.',
    )
    process.exit(4)
  }
  writeFileSync(mark, sum)
}

function newest(path) {
  if (!existsSync(path)) return 0
  const stat = statSync(path)
  if (!stat.isDirectory()) return stat.mtimeMs
  return Math.max(0, ...readdirSync(path).map((name) => newest(join(path, name))))
}

/** Whether dist/ is older than anything it is made of. */
export function stale() {
  const built = join(root, 'dist', 'cli.mjs')
  if (!existsSync(built)) return true
  const made = statSync(built).mtimeMs
  const inputs = [
    'src',
    'assets',
    'package-lock.json',
    'vite.node.config.ts',
    'vite.web.config.ts',
    'scripts/build.mjs',
  ]
  return inputs.some((name) => newest(join(root, name)) > made)
}

export async function buildWhenStale() {
  if (!stale()) return
  say('Building …')
  mkdirSync(join(root, 'dist'), { recursive: true })
  const { buildAll } = await import('./build.mjs')
  await buildAll()
}

const onPath = (name) =>
  process.env.PATH.split(delimiter)
    .map((folder) => join(folder, name))
    .find((p) => existsSync(p))

/** Programs of the system that the tests need: installed as root on Debian, else named in a clear message. */
export function systemPrograms(wanted) {
  const present = ({ names, check }) => names.some((n) => onPath(n)) || (check?.() ?? false)
  const missing = wanted.filter((p) => !present(p))
  if (missing.length === 0) return
  const packages = missing.map((m) => m.debian)
  if (process.platform === 'linux' && process.getuid?.() === 0 && onPath('apt-get')) {
    say(`Installing ${packages.join(', ')} …`)
    run('apt-get', ['-o', 'DPkg::Lock::Timeout=300', 'update', '-qq'], { stdio: ['ignore', 'ignore', 2] })
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
    run('apt-get', ['-o', 'DPkg::Lock::Timeout=300', 'install', '-y', '-qq', '--no-install-recommends', ...packages], {
      stdio: ['ignore', 'ignore', 2],
      env,
    })
  }
  const still = missing.filter((p) => !present(p))
  if (still.length === 0) return
  for (const m of still)
    say(
      `The tests need ${m.what}. On Debian or Ubuntu: sudo apt-get install ${m.debian}${m.hint ? `; ${m.hint}` : ''}.`,
    )
  process.exit(2)
}

export const chromium = () =>
  process.env.CHROMIUM_PATH ??
  ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'].map(onPath).find(Boolean)

if (process.argv[1] === import.meta.filename && process.argv.includes('--build')) await buildWhenStale()

// npm start: installs what is missing, builds what is old, writes the build package of the balcony example into
// out/balcony, then opens the workbench on this machine. --no-serve (or CI=true) ends before the workbench.
import { spawn, spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildWhenStale, checkNode, install, root, say } from './prepare.mjs'

checkNode()
install()
await buildWhenStale()
buildPackage('balcony')

const given = process.argv.slice(2)
const page = existsSync(join(root, 'dist', 'web', 'index.html'))
if (page && !given.includes('--no-serve') && process.env.CI !== 'true') {
  const args = [join(root, 'dist', 'run.mjs'), 'serve', ...given.filter((a) => a !== '--no-open')]
  const server = spawn(process.execPath, args, { cwd: root, stdio: ['inherit', 'pipe', 'inherit'] })
  server.on('exit', (code) => process.exit(code ?? 0))
  for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => server.kill(signal))
  server.stdout.on('data', (bytes) => {
    const address = String(bytes).trim()
    process.stdout.write(`${address}\n`)
    if (address.startsWith('http://localhost') && !given.includes('--no-open')) openPage(address)
  })
}

/** The default browser, where there is a desktop to show it. */
function openPage(address) {
  const desktop = process.platform !== 'linux' || process.env.DISPLAY || process.env.WAYLAND_DISPLAY
  if (!desktop) return
  const [command, ...args] =
    process.platform === 'darwin' ? ['open'] : process.platform === 'win32' ? ['cmd', '/c', 'start', ''] : ['xdg-open']
  spawn(command, [...args, address], { stdio: 'ignore', detached: true })
    .on('error', () => say(`Open ${address} in a browser.`))
    .unref()
}

/** Everything that a maker needs of one example, as files: sheets, drawings, tables, evaluation. */
function buildPackage(name) {
  const plan = join('examples', `${name}.plan.json`)
  const folder = join('out', name)
  const rootfall = (args, stdout) =>
    spawnSync(process.execPath, [join(root, 'dist', 'run.mjs'), ...args], {
      cwd: root,
      encoding: 'utf8',
      maxBuffer: 1 << 28,
      stdio: ['ignore', stdout, 'inherit'],
    })
  say(`Drawing the sheets of ${plan} into ${folder} …`)
  const sheets = rootfall(['sheets', plan, '--out', folder], 'pipe')
  if (sheets.status !== 0) process.exit(sheets.status ?? 4)
  mkdirSync(join(root, folder), { recursive: true })
  say('Judging the plan …')
  const evaluation = rootfall(['evaluate', plan, '--no-remedies'], 'pipe')
  writeFileSync(join(root, folder, 'evaluation.json'), evaluation.stdout)
  // Findings are the point of the page; a failing one is no fault of the start.
  rootfall(['check', plan], 'inherit')
  const first = sheets.stdout.split('\n').find((line) => line.endsWith('.pdf'))
  process.stdout.write(`\nOpen first: ${first}\n`)
}

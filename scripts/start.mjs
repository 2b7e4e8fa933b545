// npm start: installs what is missing, builds what is old, then opens the workbench on this machine.
// --no-serve (or CI=true) ends after the build.
import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { buildWhenStale, checkNode, install, root, say } from './prepare.mjs'

checkNode()
install()
await buildWhenStale()

const given = process.argv.slice(2)
if (!given.includes('--no-serve') && process.env.CI !== 'true') {
  const args = [join(root, 'dist', 'run.mjs'), 'serve', ...given.filter((a) => a !== '--no-open')]
  const server = spawn(process.execPath, args, { cwd: root, stdio: ['inherit', 'pipe', 'inherit'] })
  server.on('exit', (code) => process.exit(code ?? 0))
  for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => server.kill(signal))
  server.stdout.on('data', (bytes) => {
    const address = String(bytes).trim()
    process.stdout.write(`${address}\n`)
    if (address.startsWith('http://localhost') && !given.includes('--no-open')) openPage(address)
  })
} else say('Built.')

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

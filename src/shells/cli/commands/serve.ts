import { existsSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { listen } from '../../server/listen.ts'
import { staticTable } from '../../server/static.ts'
import { planFolder } from '../../store/plan-folder.ts'
import { EXIT, json, out, say, stop } from '../io.ts'
import type { CommandOf } from '../main.ts'

const PORT = 4826

/** The built page: beside the built command line, or in dist/ where the sources run. */
const pageFolder = (): string | undefined =>
  ['web', '../web', '../../../../dist/web']
    .map((path) => join(import.meta.dirname, path))
    .find((path) => existsSync(join(path, 'index.html')))

const untilStopped = (): Promise<void> =>
  new Promise((done) => {
    process.once('SIGINT', done)
    process.once('SIGTERM', done)
  })

export const serve: CommandOf = {
  name: 'serve',
  summary: 'open the workbench: a page on this machine, plans kept as files in a folder',
  describe: (c) =>
    c
      .option('--folder <path>', 'folder of the plan files', 'plans')
      .option('--port <number>', `port; the next free one where it is in use (0: any)`, String(PORT)),
  run: async (_args, options) => {
    const port = Number(options['port'])
    if (!Number.isInteger(port) || port < 0 || port > 65_535)
      return stop(`--port ${String(options['port'])}: write a whole number from 0 to 65535.`, EXIT.usage)
    const page = pageFolder()
    if (page === undefined) return stop('The page is not built. Run `npm start`, or `npm run build` once.', EXIT.input)
    const folder = resolve(String(options['folder']))
    const served = { folder: planFolder(folder), files: staticTable(page), say }
    const { port: bound, close } = await listen(served, port)
    const address = `http://localhost:${bound}/`
    if (options['json']) json({ address, folder })
    else out(address)
    say(`rootfall: plans are kept in ${folder}. Stop with Ctrl+C.`)
    await untilStopped()
    await close()
    return EXIT.holds
  },
}

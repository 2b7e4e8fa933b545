// Builds the command line, the library and its types into dist/.
import { execFileSync } from 'node:child_process'
import { existsSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { build } from 'vite'

const root = join(import.meta.dirname, '..')

export async function buildAll({ types = false } = {}) {
  rmSync(join(root, 'dist'), { recursive: true, force: true })
  await build({ configFile: join(root, 'vite.node.config.ts'), root, logLevel: 'warn' })
  if (existsSync(join(root, 'src/shells/web/index.html')))
    await build({ configFile: join(root, 'vite.web.config.ts'), logLevel: 'warn' })
  if (types)
    execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.types.json'], {
      cwd: root,
      stdio: 'inherit',
    })
}

if (process.argv[1] === import.meta.filename) await buildAll({ types: true })

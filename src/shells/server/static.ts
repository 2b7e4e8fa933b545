import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { extname, join, relative, sep } from 'node:path'
import { gzipSync } from 'node:zlib'

/** One file of the built page, read at start; nothing else can be asked for. */
export interface StaticFile {
  readonly type: string
  readonly etag: string
  readonly plain: Buffer
  readonly packed: Buffer | null
  readonly hashed: boolean
}

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
  '.png': 'image/png',
  '.txt': 'text/plain; charset=utf-8',
}

/** Names that carry the hash of their content never change. */
const HASHED = /-[A-Za-z0-9_-]{8}\.[a-z0-9]+$/

function staticFile(path: string): StaticFile | null {
  const type = TYPES[extname(path)]
  if (type === undefined) return null
  const plain = readFileSync(path)
  const etag = `"${createHash('sha256').update(plain).digest('hex').slice(0, 24)}"`
  const packs = !['.woff2', '.png'].includes(extname(path)) && plain.length > 500
  return { type, etag, plain, packed: packs ? gzipSync(plain, { level: 9 }) : null, hashed: HASHED.test(path) }
}

/** Every file of the built page by its address; `/` is the page itself. */
export function staticTable(folder: string): ReadonlyMap<string, StaticFile> {
  const table = new Map<string, StaticFile>()
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue
    const path = join(entry.parentPath, entry.name)
    const file = staticFile(path)
    const address = `/${relative(folder, path).split(sep).join('/')}`
    if (file !== null) table.set(address === '/index.html' ? '/' : address, file)
  }
  return table
}

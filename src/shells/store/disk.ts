import { open, readdir, readFile, rename, stat, unlink } from 'node:fs/promises'
import { dirname } from 'node:path'

/** The few calls of the file system that the store makes, so that a test can let any of them fail. */
export interface Disk {
  readonly names: (folder: string) => Promise<readonly string[]>
  readonly read: (path: string) => Promise<string>
  readonly changed: (path: string) => Promise<number>
  readonly writeSynced: (path: string, text: string) => Promise<void>
  readonly rename: (from: string, to: string) => Promise<void>
  readonly syncFolder: (path: string) => Promise<void>
  readonly remove: (path: string) => Promise<void>
}

async function syncFolder(path: string): Promise<void> {
  // Windows cannot open a folder; its rename is durable with the file system's own journal.
  if (process.platform === 'win32') return
  const folder = await open(path, 'r')
  try {
    await folder.sync()
  } finally {
    await folder.close()
  }
}

export const disk: Disk = {
  names: (folder) => readdir(folder),
  read: (path) => readFile(path, 'utf8'),
  changed: async (path) => (await stat(path)).mtimeMs,
  writeSynced: async (path, text) => {
    const file = await open(path, 'w', 0o644)
    try {
      await file.writeFile(text)
      await file.sync()
    } finally {
      await file.close()
    }
  },
  rename,
  syncFolder,
  remove: unlink,
}

let turn = 0

/**
 * Writes a file whole or not at all: a new file beside it, synced, renamed over it, the folder synced. A reader sees
 * the old text or the new one, also after a loss of power.
 */
export async function writeWhole(path: string, text: string, on: Disk = disk): Promise<void> {
  turn += 1
  const part = `${path}.${process.pid}-${turn}.part`
  try {
    await on.writeSynced(part, text)
    await on.rename(part, path)
  } catch (error) {
    await on.remove(part).catch(() => undefined)
    throw error
  }
  await on.syncFolder(dirname(path))
}

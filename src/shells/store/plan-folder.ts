import { createHash } from 'node:crypto'
import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { type Disk, disk, writeWhole } from './disk.ts'

export const ID = /^[a-z0-9-]{1,64}$/
const ENDING = '.plan.json'

/** A plan file as kept: its text and the mark of exactly this text. */
export interface Kept {
  readonly id: string
  readonly text: string
  readonly revision: string
}

export interface Listed {
  readonly id: string
  readonly name: string
  readonly changed_ms: number
}

/** What became of a wish to write. */
export type Written =
  | { readonly kind: 'written'; readonly revision: string }
  | { readonly kind: 'conflict'; readonly kept: Kept | null }
  | { readonly kind: 'read-only' }

export interface PlanFolder {
  readonly list: () => Promise<readonly Listed[]>
  readonly read: (id: string) => Promise<Kept | null>
  /** Writes over exactly the revision that was read; `null` for a plan that is not there yet. */
  readonly write: (id: string, text: string, over: string | null) => Promise<Written>
}

export const revisionOf = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 32)

function nameIn(text: string): string {
  try {
    const json: unknown = JSON.parse(text)
    const name = typeof json === 'object' && json !== null && 'name' in json ? json.name : ''
    return typeof name === 'string' ? name.slice(0, 80) : ''
  } catch {
    return ''
  }
}

const missing = (error: unknown): boolean => (error as NodeJS.ErrnoException).code === 'ENOENT'

/**
 * A folder of plan files. Writes of one plan follow one another, each over the revision that its writer had read; once
 * the disk has failed to keep a write, nothing more is written.
 */
export function planFolder(folder: string, on: Disk = disk): PlanFolder {
  const path = (id: string): string => {
    if (!ID.test(id)) throw new RangeError(`planFolder: ${id} is no id`)
    return join(folder, id + ENDING)
  }
  const queue = new Map<string, Promise<unknown>>()
  let failed = false

  const read = async (id: string): Promise<Kept | null> => {
    try {
      const text = await on.read(path(id))
      return { id, text, revision: revisionOf(text) }
    } catch (error) {
      if (missing(error)) return null
      throw error
    }
  }

  const writeNow = async (id: string, text: string, over: string | null): Promise<Written> => {
    if (failed) return { kind: 'read-only' }
    const kept = await read(id)
    if ((kept?.revision ?? null) !== over) return { kind: 'conflict', kept }
    await mkdir(folder, { recursive: true })
    try {
      await writeWhole(path(id), text, on)
    } catch (error) {
      failed = (error as NodeJS.ErrnoException).code === 'EIO'
      throw error
    }
    return { kind: 'written', revision: revisionOf(text) }
  }

  return {
    read,
    list: async () => {
      const names = await on.names(folder).catch((error: unknown) => {
        if (missing(error)) return []
        throw error
      })
      const ids = names
        .filter((n) => n.endsWith(ENDING))
        .map((n) => n.slice(0, -ENDING.length))
        .filter((id) => ID.test(id))
      const rows = await Promise.all(
        ids.map(async (id) => ({ id, name: nameIn(await on.read(path(id))), changed_ms: await on.changed(path(id)) })),
      )
      return rows.sort((a, b) => b.changed_ms - a.changed_ms)
    },
    write: async (id, text, over) => {
      const before = queue.get(id) ?? Promise.resolve()
      const mine = before.catch(() => undefined).then(() => writeNow(id, text, over))
      queue.set(id, mine)
      try {
        return await mine
      } finally {
        if (queue.get(id) === mine) queue.delete(id)
      }
    },
  }
}

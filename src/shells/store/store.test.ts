import { mkdtempSync, readdirSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { type Disk, disk, writeWhole } from './disk.ts'
import { planFolder, revisionOf } from './plan-folder.ts'

const fresh = (): string => mkdtempSync(join(tmpdir(), 'rootfall-store-'))

/** A disk whose n-th call fails, the write having put down half of its text before. */
function failing(n: number, code: string): { readonly on: Disk; readonly calls: () => number } {
  let calls = 0
  const turn = async <T>(work: () => Promise<T>, half?: () => Promise<unknown>): Promise<T> => {
    calls++
    if (calls !== n) return work()
    await half?.()
    throw Object.assign(new Error(code), { code })
  }
  return {
    calls: () => calls,
    on: {
      ...disk,
      writeSynced: (path, text) =>
        turn(
          () => disk.writeSynced(path, text),
          () => disk.writeSynced(path, text.slice(0, text.length / 2)),
        ),
      rename: (from, to) => turn(() => disk.rename(from, to)),
      syncFolder: (path) => turn(() => disk.syncFolder(path)),
    },
  }
}

describe('a file written whole', () => {
  for (const code of ['EIO', 'ENOSPC', 'EACCES'])
    it(`is the old text or the new one, whichever call fails with ${code}`, async () => {
      for (let n = 1; n <= 4; n++) {
        const folder = fresh()
        const path = join(folder, 'a.plan.json')
        await writeWhole(path, 'old text, whole')
        const { on, calls } = failing(n, code)
        const failed = await writeWhole(path, 'new text, whole', on).then(
          () => false,
          () => true,
        )
        expect(['old text, whole', 'new text, whole']).toContain(readFileSync(path, 'utf8'))
        expect(failed).toBe(n <= calls())
        expect(readdirSync(folder)).toEqual(['a.plan.json'])
      }
    })
})

describe('the folder of plans', () => {
  it('writes nothing more once the disk failed to keep a write', async () => {
    const { on } = failing(1, 'EIO')
    const plans = planFolder(fresh(), on)
    await expect(plans.write('a', '{}', null)).rejects.toThrow('EIO')
    expect(await plans.write('a', '{}', null)).toEqual({ kind: 'read-only' })
  })

  it('goes on by itself once a full disk has room again', async () => {
    const { on } = failing(1, 'ENOSPC')
    const plans = planFolder(fresh(), on)
    await expect(plans.write('a', '{}', null)).rejects.toThrow('ENOSPC')
    expect(await plans.write('a', '{}', null)).toEqual({ kind: 'written', revision: revisionOf('{}') })
  })

  it('lists plans by their last change and passes over what is none', async () => {
    const folder = fresh()
    const plans = planFolder(folder)
    expect(await plans.list()).toEqual([])
    await plans.write('first', '{"name":"First"}', null)
    await disk.writeSynced(join(folder, 'note.txt'), 'x')
    await disk.writeSynced(join(folder, 'Bad Name.plan.json'), '{}')
    await disk.writeSynced(join(folder, 'broken.plan.json'), '{')
    expect((await plans.list()).map((p) => [p.id, p.name]).sort()).toEqual([
      ['broken', ''],
      ['first', 'First'],
    ])
  })

  it('takes no id that could be a path', async () => {
    for (const id of ['../a', 'a/b', '', 'A', 'a.b', 'a'.repeat(65)])
      await expect(planFolder('x').read(id)).rejects.toThrow(RangeError)
  })
})

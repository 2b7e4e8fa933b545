import type { PlanFolder } from '../store/plan-folder.ts'
import type { Answer } from './answer.ts'

/** What a route is given: the id in its address, the body of a change, the revision that it was made over. */
export interface Asked {
  readonly id: string
  readonly body: string
  readonly over: string | null
}

export interface Route {
  readonly method: 'GET' | 'PUT'
  /** With `:id` where an id stands. */
  readonly path: string
  /** Whether the request changes something; such a request must be JSON from our own page. */
  readonly changes: boolean
  readonly answer: (folder: PlanFolder, asked: Asked) => Promise<Answer>
}

const kept = (k: { text: string; revision: string } | null): Answer =>
  k === null
    ? { status: 404, json: { problem: 'no-such-plan' } }
    : { status: 200, json: { text: k.text, revision: k.revision }, headers: { ETag: `"${k.revision}"` } }

function isJson(text: string): boolean {
  try {
    const value: unknown = JSON.parse(text)
    return typeof value === 'object' && value !== null && !Array.isArray(value)
  } catch {
    return false
  }
}

async function put(folder: PlanFolder, { id, body, over }: Asked): Promise<Answer> {
  if (!isJson(body)) return { status: 400, json: { problem: 'not-json' } }
  const written = await folder.write(id, body, over)
  switch (written.kind) {
    case 'written':
      return { status: 200, json: { revision: written.revision }, headers: { ETag: `"${written.revision}"` } }
    case 'conflict':
      return {
        status: 409,
        json: { problem: 'conflict', text: written.kept?.text ?? null, revision: written.kept?.revision ?? null },
      }
    case 'read-only':
      return { status: 503, json: { problem: 'read-only' } }
  }
}

/** Everything that can be asked of the server beside its files. */
export const routes: readonly Route[] = [
  {
    method: 'GET',
    path: '/api/plans',
    changes: false,
    answer: async (folder) => ({ status: 200, json: await folder.list() }),
  },
  {
    method: 'GET',
    path: '/api/plans/:id',
    changes: false,
    answer: async (folder, { id }) => kept(await folder.read(id)),
  },
  { method: 'PUT', path: '/api/plans/:id', changes: true, answer: put },
]

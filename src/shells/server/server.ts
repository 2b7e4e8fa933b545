import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import { ID, type PlanFolder } from '../store/plan-folder.ts'
import { type Answer, sendFile, sendJson } from './answer.ts'
import { bodyText } from './body.ts'
import { allowedHosts, changeAllowed, hostAllowed } from './guard.ts'
import { type Asked, type Route, routes } from './routes.ts'
import type { StaticFile } from './static.ts'

export interface Served {
  readonly folder: PlanFolder
  readonly files: ReadonlyMap<string, StaticFile>
  readonly say: (line: string) => void
}

const LIMITS = { headers_ms: 10_000, request_ms: 30_000, check_ms: 1000, connections: 100, requests: 1000 }
const BASE = '/api/plans'

/** The route of an address, with its id; the id is looked at before anything else is done with it. */
function routeOf(method: string, path: string): { readonly route: Route; readonly id: string } | 'no-method' | null {
  const id = path.startsWith(`${BASE}/`) ? path.slice(BASE.length + 1) : null
  if (path !== BASE && (id === null || !ID.test(id))) return null
  const form = id === null ? BASE : `${BASE}/:id`
  const route = routes.find((r) => r.path === form && r.method === method)
  return route ? { route, id: id ?? '' } : 'no-method'
}

/** The revision of an If-Match header; null where the plan is to be new. */
const over = (request: IncomingMessage): string | null => {
  const match = /^"([0-9a-f]{32})"$/.exec(request.headers['if-match'] ?? '')
  return match ? match[1]! : null
}

async function answerRoute(
  served: Served,
  hosts: ReadonlySet<string>,
  request: IncomingMessage,
  path: string,
): Promise<Answer> {
  const found = routeOf(request.method ?? '', path)
  if (found === null) return { status: 404, json: { problem: 'not-found' } }
  if (found === 'no-method') return { status: 405, json: { problem: 'no-method' } }
  const asked: Asked = { id: found.id, body: '', over: over(request) }
  if (!found.route.changes) return found.route.answer(served.folder, asked)
  const allowed = changeAllowed(request, hosts)
  if (allowed === 'not-json') return { status: 415, json: { problem: 'not-json' } }
  if (allowed === 'foreign') return { status: 403, json: { problem: 'foreign' } }
  const body = await bodyText(request)
  if (body === null) return { status: 413, json: { problem: 'too-large' }, headers: { Connection: 'close' } }
  return found.route.answer(served.folder, { ...asked, body })
}

const NO_SPACE = new Set(['ENOSPC', 'EDQUOT'])

function failure(error: unknown): Answer {
  const code = (error as NodeJS.ErrnoException).code ?? ''
  if (NO_SPACE.has(code)) return { status: 507, json: { problem: 'disk-full' } }
  if (code === 'EACCES' || code === 'EROFS' || code === 'EPERM')
    return { status: 403, json: { problem: 'not-writable' } }
  return { status: 500, json: { problem: 'failed' } }
}

async function handle(
  served: Served,
  hosts: ReadonlySet<string>,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const refuse = (answer: Answer) =>
    sendJson(response, { ...answer, headers: { Connection: 'close', ...answer.headers } })
  if (!hostAllowed(request, hosts)) return refuse({ status: 421, json: { problem: 'wrong-host' } })
  const path = (request.url ?? '').split('?')[0]!
  if (!path.startsWith('/api/')) {
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return refuse({ status: 405, json: { problem: 'no-method' } })
    const file = served.files.get(path)
    return file
      ? sendFile(request, response, file)
      : sendJson(response, { status: 404, json: { problem: 'not-found' } })
  }
  const answer = await answerRoute(served, hosts, request, path).catch((error: unknown) => {
    served.say(`${request.method} ${path.replace(/[\r\n]/g, ' ').slice(0, 80)}: ${String((error as Error).message)}`)
    return failure(error)
  })
  // A body that was refused is not read to its end.
  if (answer.status >= 400 && request.method !== 'GET') return refuse(answer)
  sendJson(response, answer)
}

/** A server that is not listening yet; `hosts` are known once it is. */
export function workbenchServer(served: Served): Server {
  let hosts: ReadonlySet<string> = new Set()
  const server = createServer(
    { requireHostHeader: false, connectionsCheckingInterval: LIMITS.check_ms, maxHeaderSize: 16_384 },
    (request, response) => {
      void handle(served, hosts, request, response).catch((error: unknown) => {
        served.say(String(error))
        response.destroy()
      })
    },
  )
  server.headersTimeout = LIMITS.headers_ms
  server.requestTimeout = LIMITS.request_ms
  server.maxConnections = LIMITS.connections
  server.maxRequestsPerSocket = LIMITS.requests
  server.on('clientError', (_error, socket) => socket.destroy())
  server.on('upgrade', (_request, socket) => socket.destroy())
  server.on('listening', () => {
    const address = server.address()
    if (typeof address === 'object' && address !== null) hosts = allowedHosts(address.port)
  })
  return server
}

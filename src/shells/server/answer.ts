import type { IncomingMessage, ServerResponse } from 'node:http'
import { SECURITY_HEADERS } from './headers.ts'
import type { StaticFile } from './static.ts'

/** What a route gives back: written in one place, so that no answer can lack the headers. */
export interface Answer {
  readonly status: number
  readonly json?: unknown
  readonly headers?: Readonly<Record<string, string>>
}

export function sendJson(response: ServerResponse, answer: Answer): void {
  const body = answer.json === undefined ? '' : JSON.stringify(answer.json)
  response.writeHead(answer.status, {
    ...SECURITY_HEADERS,
    'Content-Type': 'application/json; charset=utf-8',
    'Content-Length': String(Buffer.byteLength(body)),
    'Cache-Control': 'no-store',
    ...answer.headers,
  })
  response.end(body)
}

export function sendFile(request: IncomingMessage, response: ServerResponse, file: StaticFile): void {
  const cache = file.hashed ? 'public, max-age=31536000, immutable' : 'no-cache'
  const head = { ...SECURITY_HEADERS, ETag: file.etag, 'Cache-Control': cache, Vary: 'Accept-Encoding' }
  if (request.headers['if-none-match'] === file.etag) {
    response.writeHead(304, head)
    response.end()
    return
  }
  const packed = file.packed !== null && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '') ? file.packed : null
  const body = packed ?? file.plain
  response.writeHead(200, {
    ...head,
    'Content-Type': file.type,
    'Content-Length': String(body.length),
    ...(packed ? { 'Content-Encoding': 'gzip' } : {}),
  })
  response.end(request.method === 'HEAD' ? undefined : body)
}

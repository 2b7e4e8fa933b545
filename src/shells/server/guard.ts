import type { IncomingMessage } from 'node:http'

const NAMES = ['localhost', '127.0.0.1', '[::1]']

/** The Host values under which this server may be reached: a name from outside that points here is none of them. */
export const allowedHosts = (port: number): ReadonlySet<string> =>
  new Set(NAMES.flatMap((name) => (port === 80 ? [name, `${name}:80`] : [`${name}:${port}`])))

/** Whether the request names this server, exactly, once. */
export function hostAllowed(request: IncomingMessage, hosts: ReadonlySet<string>): boolean {
  const given = request.headersDistinct['host'] ?? []
  return given.length === 1 && hosts.has(given[0]!)
}

/**
 * Whether a request that changes something comes from our own page: JSON only, and the browser says same origin; a
 * browser that says nothing must name an origin of ours.
 */
export function changeAllowed(request: IncomingMessage, hosts: ReadonlySet<string>): 'yes' | 'not-json' | 'foreign' {
  const type = (request.headers['content-type'] ?? '').split(';')[0]!.trim().toLowerCase()
  if (type !== 'application/json') return 'not-json'
  const site = request.headers['sec-fetch-site']
  const origin = request.headers.origin
  const ours = origin === undefined ? null : origin.startsWith('http://') && hosts.has(origin.slice('http://'.length))
  if (ours === false) return 'foreign'
  if (site !== undefined) return site === 'same-origin' || site === 'none' ? 'yes' : 'foreign'
  return ours === true ? 'yes' : 'foreign'
}

import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { connect } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { planFolder, revisionOf } from '../store/plan-folder.ts'
import { SECURITY_HEADERS } from './headers.ts'
import { listen } from './listen.ts'
import { routes } from './routes.ts'
import { staticTable } from './static.ts'

const folder = mkdtempSync(join(tmpdir(), 'rootfall-plans-'))
const page = mkdtempSync(join(tmpdir(), 'rootfall-page-'))
writeFileSync(join(page, 'index.html'), '<!doctype html><title>page</title>')
writeFileSync(join(folder, '..', 'outside.plan.json'), '{"secret":true}')

let port = 0
let close = async (): Promise<void> => undefined

beforeAll(async () => {
  const server = await listen({ folder: planFolder(folder), files: staticTable(page), say: () => undefined }, 0)
  port = server.port
  close = server.close
})
afterAll(() => close())

/** A request byte by byte, as no browser would send it. */
const raw = (text: string, wait_ms = 5000): Promise<string> =>
  new Promise((done) => {
    const socket = connect(port, '127.0.0.1', () => socket.write(text))
    let answer = ''
    socket.on('data', (d) => {
      answer += d.toString('latin1')
      if (answer.includes('\r\n\r\n')) socket.end()
    })
    socket.on('error', () => done(answer))
    socket.on('close', () => done(answer))
    socket.setTimeout(wait_ms, () => socket.destroy())
  })

const status = (answer: string): number => Number(/^HTTP\/1\.1 (\d+)/.exec(answer)?.[1] ?? 0)
const get = (path: string, headers: string): Promise<string> =>
  raw(`GET ${path} HTTP/1.1\r\n${headers}Connection: close\r\n\r\n`)
const own = (): string => `Host: localhost:${port}\r\n`

const put = (id: string, body: string, headers: Readonly<Record<string, string>>): Promise<Response> =>
  fetch(`http://localhost:${port}/api/plans/${id}`, { method: 'PUT', body, headers })
const ours = (): Record<string, string> => ({ 'Content-Type': 'application/json', Origin: `http://localhost:${port}` })

describe('the name under which the server is reached', () => {
  it('is one of its own, exactly', async () => {
    for (const host of [`localhost:${port}`, `127.0.0.1:${port}`, `[::1]:${port}`])
      expect(status(await get('/', `Host: ${host}\r\n`)), host).toBe(200)
  })

  it('is refused in thirty other forms, before anything else', async () => {
    const p = port
    const hosts = [
      ...[
        'evil.example',
        `evil.example:${p}`,
        `localhost.evil.example:${p}`,
        `localhost:${p}.evil.example`,
        'localhost',
      ],
      ...['127.0.0.1', '[::1]', `localhost.:${p}`, `LOCALHOST:${p}`, `Localhost:${p}`, `127.1:${p}`, `2130706433:${p}`],
      ...[
        `0x7f.1:${p}`,
        `0.0.0.0:${p}`,
        `127.0.0.2:${p}`,
        `::1:${p}`,
        `[0:0:0:0:0:0:0:1]:${p}`,
        `[::ffff:127.0.0.1]:${p}`,
      ],
      ...[`localhost:${p + 1}`, `localhost:0${p}`, `localhost:${p}/`, `user@localhost:${p}`, `localhost:${p}#`, ''],
      ...[
        `localhost,evil:${p}`,
        `localhost:${p},evil`,
        `xn--localhost:${p}`,
        `localhost%00:${p}`,
        `127.0.0.1.nip.io:${p}`,
      ],
      `loca1host:${p}`,
    ]
    expect(hosts.length).toBeGreaterThanOrEqual(30)
    for (const path of ['/', '/api/plans'])
      for (const host of hosts) expect([400, 421], host).toContain(status(await get(path, `Host: ${host}\r\n`)))
  })

  it('must be given, and once', async () => {
    expect([400, 421]).toContain(status(await get('/', '')))
    expect([400, 421]).toContain(status(await get('/', `${own()}Host: evil.example\r\n`)))
    expect([400, 421]).toContain(status(await get('/', `${own()}${own()}`)))
  })

  it('is refused on an upgrade', async () => {
    expect(status(await raw(`GET / HTTP/1.1\r\n${own()}Connection: Upgrade\r\nUpgrade: websocket\r\n\r\n`))).toBe(0)
  })
})

describe('requests that change something', () => {
  const types = [
    'application/json',
    'application/json; charset=utf-8',
    'text/plain',
    'application/x-www-form-urlencoded',
    null,
  ]
  const origins = ['own', 'http://evil.example', 'null', null]
  const sites = ['same-origin', 'none', 'same-site', 'cross-site', null]

  it('come from our own page as JSON: every combination of type, origin and fetch site', async () => {
    let cases = 0
    for (const route of routes.filter((r) => r.changes))
      for (const type of types)
        for (const origin of origins)
          for (const site of sites) {
            cases++
            const named = origin === 'own' ? `http://localhost:${port}` : origin
            const headers = [
              type === null ? '' : `Content-Type: ${type}\r\n`,
              named === null ? '' : `Origin: ${named}\r\n`,
              site === null ? '' : `Sec-Fetch-Site: ${site}\r\n`,
            ].join('')
            const path = route.path.replace(':id', 'matrix')
            const answer = await raw(
              `${route.method} ${path} HTTP/1.1\r\n${own()}${headers}Content-Length: 2\r\nConnection: close\r\n\r\n{}`,
            )
            const json = type?.startsWith('application/json') ?? false
            const foreign = origin !== 'own' && origin !== null
            const trusted = site === null ? origin === 'own' : site === 'same-origin' || site === 'none'
            const allowed = json && !foreign && trusted
            const what = `${type} ${origin} ${site}`
            if (allowed) expect([200, 409], what).toContain(status(answer))
            else expect([403, 415], what).toContain(status(answer))
          }
    expect(cases).toBe(100)
  })

  it('are never GET, and other methods are refused', async () => {
    expect(routes.filter((r) => r.changes && r.method === 'GET')).toEqual([])
    for (const method of ['POST', 'DELETE', 'PATCH', 'OPTIONS', 'TRACE'])
      expect(status(await raw(`${method} /api/plans/a HTTP/1.1\r\n${own()}Connection: close\r\n\r\n`)), method).toBe(
        405,
      )
  })
})

describe('every answer', () => {
  it('carries the headers and allows no other origin', async () => {
    for (const path of ['/', '/none', '/api/plans', '/api/plans/none', '/api/none']) {
      const answer = await fetch(`http://localhost:${port}${path}`, { headers: { Origin: 'http://evil.example' } })
      for (const [name, value] of Object.entries(SECURITY_HEADERS)) expect(answer.headers.get(name), path).toBe(value)
      expect(answer.headers.get('access-control-allow-origin')).toBeNull()
    }
    const refused = await get('/', 'Host: evil.example\r\n')
    for (const name of Object.keys(SECURITY_HEADERS)) expect(refused.toLowerCase()).toContain(`${name.toLowerCase()}: `)
  })
})

describe('ids and paths', () => {
  it('never lead outside the folder', async () => {
    const ways = [
      ...[
        '../outside',
        '..%2foutside',
        '%2e%2e%2foutside',
        '..%5coutside',
        '%2e%2e/outside',
        '....//outside',
        '.%2e/outside',
      ],
      ...[
        '..;/outside',
        '%252e%252e%252foutside',
        '..%c0%afoutside',
        '..%00/outside',
        'a%00',
        '/etc/passwd',
        '%2fetc%2fpasswd',
      ],
      ...[
        'A',
        'a_b',
        'a.b',
        'a b',
        'a%20b',
        'ä',
        '%C3%A4',
        '.',
        '..',
        '-'.repeat(65),
        'a'.repeat(65),
        'a'.repeat(4000),
        'con.plan',
      ],
      ...[
        'a/b',
        'a%2fb',
        'a\\b',
        "a'b",
        'a"b',
        'a;b',
        'a|b',
        'a&b=c',
        '__proto__',
        '~root',
        '$HOME',
        '%',
        '%zz',
        'a?../../b',
      ].slice(0, 12),
    ]
    for (const way of ways) {
      const answer = await get(`/api/plans/${way}`, own())
      // What is no request at all is cut off without an answer.
      expect([0, 400, 404], way).toContain(status(answer))
      expect(answer).not.toContain('secret')
    }
    for (const way of ['/../outside.plan.json', '/%2e%2e/outside.plan.json', '/..%2f..%2fetc/passwd', '//etc/passwd'])
      expect([400, 404], way).toContain(status(await get(way, own())))
  })
})

describe('limits', () => {
  it('refuses a body that is larger, also where its length is not told', async () => {
    expect((await put('big', 'x'.repeat(1_000_001), ours())).status).toBe(413)
    const chunk = `10000\r\n${'x'.repeat(0x10000)}\r\n`
    const head = `PUT /api/plans/big HTTP/1.1\r\n${own()}Content-Type: application/json\r\nOrigin: http://localhost:${port}\r\n`
    const answer = await raw(`${head}Transfer-Encoding: chunked\r\n\r\n${chunk.repeat(20)}`)
    expect(status(answer)).toBe(413)
    expect(readdirSync(folder).filter((n) => n.startsWith('big'))).toEqual([])
  })

  it('refuses what is no JSON object', async () => {
    for (const body of ['', 'x', '[]', '1', '"a"', 'null', '{"a":'])
      expect((await put('bad', body, ours())).status, body).toBe(400)
  })
})

describe('a plan file', () => {
  it('is written over exactly the text that was read', async () => {
    const first = await put('kept', '{"rootfall":1}\n', ours())
    expect(first.status).toBe(200)
    const { revision } = (await first.json()) as { revision: string }
    expect(revision).toBe(revisionOf(readFileSync(join(folder, 'kept.plan.json'), 'utf8')))
    const mine = await put('kept', '{"rootfall":1,"name":"a"}\n', { ...ours(), 'If-Match': `"${revision}"` })
    expect(mine.status).toBe(200)
    const late = await put('kept', '{"rootfall":1,"name":"b"}\n', { ...ours(), 'If-Match': `"${revision}"` })
    expect(late.status).toBe(409)
    expect(((await late.json()) as { text: string }).text).toContain('"a"')
    expect((await put('kept', '{}', ours())).status).toBe(409)
  })

  it('loses no revision to two writers in a thousand tries', async () => {
    let written = 0
    const writer = async (name: string) => {
      for (let i = 0; i < 500; i++) {
        const now = await fetch(`http://localhost:${port}/api/plans/race`)
        const kept = now.status === 404 ? null : ((await now.json()) as { text: string; revision: string })
        const log = kept === null ? [] : (JSON.parse(kept.text) as { log: string[] }).log
        const headers = { ...ours(), ...(kept ? { 'If-Match': `"${kept.revision}"` } : {}) }
        const answer = await put('race', JSON.stringify({ log: [...log, `${name}${i}`] }), headers)
        if (answer.status === 200) written++
      }
    }
    await Promise.all([writer('a'), writer('b')])
    const end = JSON.parse(readFileSync(join(folder, 'race.plan.json'), 'utf8')) as { log: string[] }
    expect(end.log.length).toBe(written)
    expect(new Set(end.log).size).toBe(written)
  })
})

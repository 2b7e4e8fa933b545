import type { Server } from 'node:http'
import { type Served, workbenchServer } from './server.ts'

const PORTS_TRIED = 20

function listening(server: Server, port: number, host: string): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen({ port, host, ipv6Only: host === '::1' }, () => {
      server.off('error', reject)
      const address = server.address()
      resolve(typeof address === 'object' && address !== null ? address.port : port)
    })
  })
}

const closed = (server: Server): Promise<void> =>
  new Promise((done) => {
    server.close(() => done())
    server.closeAllConnections()
  })

const code = (error: unknown): string => (error as NodeJS.ErrnoException).code ?? ''

/** Listens on this machine only, by both of its loopback addresses; takes the next port where one is in use. */
export async function listen(
  served: Served,
  wanted: number,
): Promise<{ readonly port: number; readonly close: () => Promise<void> }> {
  for (let port = wanted, tries = 0; ; port++, tries++) {
    const four = workbenchServer(served)
    try {
      const bound = await listening(four, port, '127.0.0.1')
      const six = workbenchServer(served)
      // A machine without IPv6 is served by the other address alone.
      const both = await listening(six, bound, '::1').then(
        () => true,
        () => false,
      )
      const servers = both ? [four, six] : [four]
      const close = async () => {
        await Promise.all(servers.map(closed))
      }
      return { port: bound, close }
    } catch (error) {
      four.close()
      if (code(error) !== 'EADDRINUSE' || wanted === 0 || tries >= PORTS_TRIED) throw error
    }
  }
}

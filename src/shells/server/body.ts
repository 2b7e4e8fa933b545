import type { IncomingMessage } from 'node:http'

/** Largest body of a request that carries a plan. */
export const BODY_LIMIT = 1_000_000

/** The text of a body, counted while it streams; null once it is larger than the limit or is no UTF-8. */
export async function bodyText(request: IncomingMessage, limit = BODY_LIMIT): Promise<string | null> {
  if (Number(request.headers['content-length'] ?? 0) > limit) return null
  const parts: Buffer[] = []
  let size = 0
  for await (const part of request as AsyncIterable<Buffer>) {
    size += part.length
    if (size > limit) return null
    parts.push(part)
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(parts))
  } catch {
    return null
  }
}

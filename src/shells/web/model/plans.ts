export interface Kept {
  readonly text: string
  readonly revision: string
}

export interface Listed {
  readonly id: string
  readonly name: string
  readonly changed_ms: number
}

export type Saved =
  | { readonly kind: 'saved'; readonly revision: string }
  | { readonly kind: 'conflict'; readonly theirs: Kept | null }
  | { readonly kind: 'failed'; readonly problem: string }

const base = (): URL => new URL('api/plans', document.baseURI)
const address = (id: string): URL => new URL(`plans/${id}`, base())

export async function listPlans(): Promise<readonly Listed[]> {
  const answer = await fetch(base())
  return answer.ok ? ((await answer.json()) as readonly Listed[]) : []
}

export async function readPlan(id: string): Promise<Kept | null> {
  const answer = await fetch(address(id))
  return answer.ok ? ((await answer.json()) as Kept) : null
}

/** Saves over exactly the revision that was read; null makes a new file. */
export async function savePlan(id: string, text: string, over: string | null): Promise<Saved> {
  try {
    const answer = await fetch(address(id), {
      method: 'PUT',
      headers: { 'Content-Type': 'application/json', ...(over === null ? {} : { 'If-Match': `"${over}"` }) },
      body: text,
    })
    const json = (await answer.json()) as { revision?: string; text?: string; problem?: string }
    if (answer.ok && json.revision) return { kind: 'saved', revision: json.revision }
    if (answer.status !== 409) return { kind: 'failed', problem: json.problem ?? String(answer.status) }
    const theirs = json.text && json.revision ? { text: json.text, revision: json.revision } : null
    return { kind: 'conflict', theirs }
  } catch {
    return { kind: 'failed', problem: 'no-server' }
  }
}

/** An id for a plan of this name that no plan has yet. */
export function freshId(name: string, taken: readonly string[]): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/ł/g, 'l')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 56)
  const stem = plain === '' ? 'plan' : plain
  for (let n = 1; ; n++) {
    const id = n === 1 ? stem : `${stem}-${n}`
    if (!taken.includes(id)) return id
  }
}

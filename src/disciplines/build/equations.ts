/** A piece of work, and what must be done before it starts. */
export interface Task<Id extends string = string> {
  readonly id: Id
  /** From start to end. */
  readonly lasts_s: number
  /** Part of it in which the builder is held. */
  readonly holds_s: number
  readonly needs: readonly { readonly step: Id; readonly wait_s: number }[]
}

export interface Timed<Id extends string = string> {
  readonly id: Id
  readonly start_s: number
  readonly end_s: number
  /** The need that holds the start, null where nothing does. */
  readonly held: Id | null
}

/** Tasks in an order in which each comes after all it needs; equal ones stay as listed. */
function inOrder<Id extends string>(of: string, tasks: readonly Task<Id>[]): readonly Task<Id>[] {
  const ids = new Set(tasks.map((t) => t.id))
  if (ids.size !== tasks.length) throw new RangeError(`${of}: two tasks of one id`)
  const done = new Set<Id>()
  const order: Task<Id>[] = []
  for (const t of tasks) {
    if (!(t.lasts_s >= t.holds_s && t.holds_s >= 0)) throw new RangeError(`${of}: ${t.id} lasts ${t.lasts_s}`)
    for (const n of t.needs) {
      if (!ids.has(n.step)) throw new RangeError(`${of}: ${t.id} needs ${n.step}, which is not there`)
      if (!(n.wait_s >= 0)) throw new RangeError(`${of}: ${t.id} waits ${n.wait_s} for ${n.step}`)
    }
  }
  const waiting = new Set(tasks)
  const ready = (): Task<Id> | undefined => {
    for (const t of waiting) if (t.needs.every((n) => done.has(n.step))) return t
    return undefined
  }
  while (waiting.size > 0) {
    const next = ready()
    if (next === undefined) throw new RangeError(`${of}: tasks wait for each other: ${[...waiting].map((t) => t.id)}`)
    waiting.delete(next)
    done.add(next.id)
    order.push(next)
  }
  return order
}

/**
 * Earliest start and end of every task where as many hands as needed are there: the longest way through the plan.
 *
 *   start(j) = max over needs i of [ end(i) + wait(i, j) ],  end(j) = start(j) + lasts(j)
 *
 * Symbols  wait(i, j) time that must pass between the end of i and the start of j [s], lasts(j) [s]
 * Valid    plans without circles
 * Source   KelleyWalker1959
 * Throws   RangeError where tasks wait for each other, one is needed that is not there, or a time is negative
 */
export function earliestStarts<Id extends string>(tasks: readonly Task<Id>[]): readonly Timed<Id>[] {
  const timed = new Map<Id, Timed<Id>>()
  for (const t of inOrder('earliestStarts', tasks)) {
    let start_s = 0
    let held: Id | null = null
    for (const n of t.needs) {
      const at = timed.get(n.step)!.end_s + n.wait_s
      if (held === null || at > start_s) [start_s, held] = [at, n.step]
    }
    timed.set(t.id, { id: t.id, start_s, end_s: start_s + t.lasts_s, held })
  }
  return tasks.map((t) => timed.get(t.id)!)
}

/**
 * Ids on the longest way through the plan, from its start to its last end.
 *
 *   from the task that ends last, back along the need that holds each start
 *
 * Symbols  none
 * Valid    plans without circles
 * Source   KelleyWalker1959
 * Throws   RangeError as `earliestStarts`
 */
export function criticalPath<Id extends string>(tasks: readonly Task<Id>[]): readonly Id[] {
  const timed = earliestStarts(tasks)
  const byId = new Map(timed.map((t) => [t.id, t]))
  let at: Timed<Id> | undefined = timed.reduce<Timed<Id> | undefined>(
    (last, t) => (last === undefined || t.end_s > last.end_s ? t : last),
    undefined,
  )
  const path: Id[] = []
  while (at !== undefined) {
    path.unshift(at.id)
    at = at.held === null ? undefined : byId.get(at.held)
  }
  return path
}

/**
 * Start and end of every task where one builder works alone: while a task holds them, no other may start.
 * Of the tasks that may start first, the one with the longest way still behind it is taken.
 *
 *   start(j) = max[ builder free, max over needs i of ( end(i) + wait(i, j) ) ],  builder free = start(j) + holds(j)
 *
 * Symbols  holds(j) time for which the builder is held by j [s]
 * Valid    plans without circles; the order is good, not proved shortest
 * Source   KelleyWalker1959
 * Throws   RangeError as `earliestStarts`
 */
export function oneBuilder<Id extends string>(tasks: readonly Task<Id>[]): readonly Timed<Id>[] {
  const order = inOrder('oneBuilder', tasks)
  const behind = new Map<Id, number>(order.map((t) => [t.id, t.lasts_s]))
  const lasts = new Map<Id, number>(behind)
  for (const t of [...order].reverse())
    for (const n of t.needs) {
      const way = lasts.get(n.step)! + n.wait_s + behind.get(t.id)!
      if (way > behind.get(n.step)!) behind.set(n.step, way)
    }
  const timed = new Map<Id, Timed<Id>>()
  let waiting = order
  let ready: readonly { readonly task: Task<Id>; readonly from_s: number }[] = []
  let free_s = 0
  while (timed.size < tasks.length) {
    const met = waiting.filter((t) => t.needs.every((n) => timed.has(n.step)))
    waiting = waiting.filter((t) => !met.includes(t))
    const from = (t: Task<Id>) => Math.max(0, ...t.needs.map((n) => timed.get(n.step)!.end_s + n.wait_s))
    ready = [...ready, ...met.map((task) => ({ task, from_s: from(task) }))]
    const at = (r: { readonly from_s: number }) => Math.max(free_s, r.from_s)
    const next = ready.reduce((a, b) =>
      at(b) < at(a) || (at(b) === at(a) && behind.get(b.task.id)! > behind.get(a.task.id)!) ? b : a,
    )
    const { task } = next
    const start_s = at(next)
    const held = task.needs.find((n) => timed.get(n.step)!.end_s + n.wait_s === start_s)?.step ?? null
    timed.set(task.id, { id: task.id, start_s, end_s: start_s + task.lasts_s, held })
    ready = ready.filter((r) => r !== next)
    if (task.holds_s > 0) free_s = start_s + task.holds_s
  }
  return tasks.map((t) => timed.get(t.id)!)
}

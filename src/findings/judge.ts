import { ends, type Quantity } from '../kernel/units.ts'
import type { SourceId } from '../tables/sources.ts'
import type { Band, Finding, FindingSlot, Lever, Verdict } from './finding.ts'

interface Terms {
  readonly at: string
  readonly must?: Band
  readonly want?: Band
  readonly source: SourceId
  readonly slots?: Readonly<Record<string, FindingSlot>>
  readonly safety?: boolean
  /** As a function where they are costly to list: it is called once, when somebody asks how to cure a finding. */
  readonly levers?: readonly Lever[] | (() => readonly Lever[])
}

/** Relative slack for numbers that should meet a limit exactly but carry the rounding of floating point. */
const ROUNDING = 1e-9

/** The same where the limit is zero: a picometre, a microlitre in a million litres. */
const ROUNDING_AT_ZERO = 1e-12

function share(low: number, high: number, limits: Band): 'whole' | 'part' | 'none' {
  const slack = Math.max(ROUNDING_AT_ZERO, ROUNDING * Math.max(Math.abs(limits.min ?? 0), Math.abs(limits.max ?? 0)))
  const min = (limits.min ?? Number.NEGATIVE_INFINITY) - slack
  const max = (limits.max ?? Number.POSITIVE_INFINITY) + slack
  if (low >= min && high <= max) return 'whole'
  return high < min || low > max ? 'none' : 'part'
}

function verdictOf(must: 'whole' | 'part' | 'none', want: 'whole' | 'part' | 'none'): Verdict {
  if (must === 'none') return 'fail'
  return must === 'whole' && want === 'whole' ? 'pass' : 'watch'
}

/** A list as it is, or made when first asked for. */
function listed(levers: readonly Lever[] | (() => readonly Lever[])): () => readonly Lever[] {
  let list = typeof levers === 'function' ? null : levers
  return () => {
    list ??= typeof levers === 'function' ? levers() : levers
    return list
  }
}

/**
 * Turns a number and two bands into a verdict; the only place where one is made.
 * Outside `must` fails, outside `want` is to be watched. A measured band that lies in part outside `must` is to be
 * watched, and `holds` says so; one that lies wholly outside fails.
 *
 * Throws RangeError where the number is not finite: that is our bug, not the user's.
 */
export function judge(id: Finding['id'], measured: Quantity, terms: Terms): Finding {
  const [low, high] = ends(measured)
  if (!Number.isFinite(low) || !Number.isFinite(high))
    throw new RangeError(`judge ${id}: ${low} to ${high} is no number`)
  const must = share(low, high, terms.must ?? {})
  const want = share(low, high, terms.want ?? {})
  const verdict = verdictOf(must, want)
  const levers = listed(verdict === 'pass' && typeof terms.levers === 'function' ? [] : (terms.levers ?? []))
  return {
    id,
    at: terms.at,
    verdict,
    measured,
    must: terms.must ?? {},
    want: terms.want ?? {},
    source: terms.source,
    ...('low' in measured ? { holds: must } : {}),
    needs: [],
    slots: terms.slots ?? {},
    safety: terms.safety ?? false,
    get levers() {
      return levers()
    },
    remedies: [],
  }
}

/** A finding that cannot be judged yet: `needs` names the fields to fill in, worst gap first. */
export function unknown(id: Finding['id'], terms: Terms & { readonly needs: readonly string[] }): Finding {
  return {
    id,
    at: terms.at,
    verdict: 'unknown',
    measured: null,
    must: terms.must ?? {},
    want: terms.want ?? {},
    source: terms.source,
    needs: terms.needs,
    slots: terms.slots ?? {},
    safety: terms.safety ?? false,
    levers: [],
    remedies: [],
  }
}

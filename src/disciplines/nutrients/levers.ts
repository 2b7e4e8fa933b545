import type { Lever } from '../../findings/finding.ts'
import { along, among } from '../../findings/levers.ts'
import type { Plan } from '../../plan/plan.ts'

/** Step in which waters are blended with a bucket. */
const SHARE_STEP = 0.05

/** More of each water whose share can be turned while another takes the rest. */
export function shareLevers(plan: Plan): readonly Lever[] {
  const sources = plan.water?.sources ?? []
  const open = sources.filter((s) => s.share === undefined).length
  if (open !== 1) return []
  return sources.flatMap(({ share, kind }, i) => {
    const soft = kind === 'rain' || kind === 'distilled'
    return share === undefined || !soft ? [] : [along(`water/sources/${i}/share`, 1, '1', SHARE_STEP, share)]
  })
}

const STRENGTHS = [200, 150, 100, 80, 50, 40, 25, 20, 10] as const

/** Weaker stocks, the nearest first. */
export const weakerStock = (now: number): Lever =>
  among(
    'feed/stock/strength',
    STRENGTHS.filter((s) => s < now),
  )

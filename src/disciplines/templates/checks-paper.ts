import type { Finding } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { quantity } from '../../kernel/units.ts'
import type { Plan } from '../../plan/plan.ts'
import { practiceLengths, practiceRatios } from '../../tables/practice.ts'

const bars = [
  { at: 'tools/barAcross', key: 'barAcross_m' },
  { at: 'tools/barUp', key: 'barUp_m' },
] as const

/** The printed bars as measured: what a correction may cure, and what needs none. */
export function paperFindings(plan: Plan): readonly Finding[] {
  const bar_m = practiceLengths.rows['printed-bar'].low_m
  const { low, high } = practiceRatios.rows['paper-correction']
  const { low_m, high_m } = practiceLengths.rows['check-bar']
  return bars.map(({ at, key }) => {
    const terms = { at, source: practiceLengths.source }
    const shown_m = plan.tools?.[key]
    if (shown_m === undefined) return unknown('templates/paper-scale', { ...terms, needs: [at] })
    return judge('templates/paper-scale', quantity(shown_m, 'm'), {
      ...terms,
      must: { min: low * bar_m, max: high * bar_m },
      want: { min: bar_m + low_m, max: bar_m + high_m },
      slots: { bar: quantity(bar_m, 'm'), scale: quantity(shown_m / bar_m, 'share') },
    })
  })
}

import type { Page } from '../drawing/primitives.ts'
import { stretched } from '../drawing/transform.ts'

/** What a drawing is multiplied by so that this printer puts out true lengths; 1 is a true printer. */
export interface Correction {
  readonly x: number
  readonly y: number
}

/** A factor outside these bounds is not a printer a little off but a page fitted to the paper. */
export const CORRECTION_BOUNDS = { low: 0.97, high: 1.03 } as const

export interface CorrectionIssue {
  readonly at: 'correction/x' | 'correction/y'
  readonly expected: { readonly low: number; readonly high: number }
  readonly received: number
}

export const UNCORRECTED: Correction = { x: 1, y: 1 }

/** The factor that follows from a bar as printed; a bar that came out short needs more than 1. */
export const correctionFactor = ({ nominal_mm, measured_mm }: { nominal_mm: number; measured_mm: number }): number =>
  nominal_mm / measured_mm

/** What is wrong with a pair of factors; nothing for one that may be used. */
export function correctionIssues(correction: Correction): readonly CorrectionIssue[] {
  const axes = ['x', 'y'] as const
  return axes.flatMap((axis) => {
    const received = correction[axis]
    const holds = received >= CORRECTION_BOUNDS.low && received <= CORRECTION_BOUNDS.high
    return holds ? [] : [{ at: `correction/${axis}` as const, expected: CORRECTION_BOUNDS, received }]
  })
}

/** A page stretched about its middle, or the issues that forbid it. The paper itself keeps its size. */
export function corrected(given: { page: Page; correction: Correction }): {
  readonly page: Page | null
  readonly issues: readonly CorrectionIssue[]
} {
  const { page, correction } = given
  const issues = correctionIssues(correction)
  if (issues.length > 0) return { page: null, issues }
  const drawing = stretched(page.drawing, correction, [page.width_mm / 2, page.height_mm / 2])
  return { page: { ...page, drawing }, issues }
}

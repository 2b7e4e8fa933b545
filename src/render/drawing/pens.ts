import type { Pen } from './primitives.ts'

/**
 * Weights on paper: 0.35 for what is cut, 0.18 for what is seen, 0.13 for what explains (the step of ISO 128 line
 * groups is √2; 0.13, 0.18, 0.25 and 0.35 are of its series). Dashes are lengths drawn and left out, in mm.
 */
export const pens: Readonly<Record<Pen, { readonly width_mm: number; readonly dash_mm: readonly number[] }>> = {
  cut: { width_mm: 0.35, dash_mm: [] },
  visible: { width_mm: 0.25, dash_mm: [] },
  hidden: { width_mm: 0.18, dash_mm: [2.4, 1.1] },
  centre: { width_mm: 0.13, dash_mm: [5.5, 1, 0.8, 1] },
  dimension: { width_mm: 0.13, dash_mm: [] },
  hatch: { width_mm: 0.13, dash_mm: [] },
  thin: { width_mm: 0.13, dash_mm: [] },
  ornament: { width_mm: 0.09, dash_mm: [] },
}

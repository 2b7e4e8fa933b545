import type { Drawing, Rect } from '../../../render/drawing/primitives.ts'

/** Figures of the drawing that are fields of the plan. */
export function LiveDimensions(_props: { readonly box: Rect; readonly drawing: Drawing }) {
  return null
}

import type { Drawing, Rect } from '../../../render/drawing/primitives.ts'

/** Balloons on the drawing, each with a leader to the very place. */
export function Pins(_props: { readonly view: string; readonly box: Rect; readonly drawing: Drawing }) {
  return null
}

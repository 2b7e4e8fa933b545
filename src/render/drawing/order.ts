import type { Drawing } from './primitives.ts'

/** Lettering last, so that no line runs through a figure; otherwise in the order of the list. */
export const letteringOnTop = (drawing: Drawing): Drawing => [
  ...drawing.filter((p) => p.kind !== 'text'),
  ...drawing.filter((p) => p.kind === 'text'),
]

import type { Rect } from '../drawing/primitives.ts'

export type PaperName = 'A4' | 'Letter'

/** ISO 216 A4; ANSI Letter is 8 1/2 × 11 in. */
export const papers: Readonly<Record<PaperName, { readonly width_mm: number; readonly height_mm: number }>> = {
  A4: { width_mm: 210, height_mm: 297 },
  Letter: { width_mm: 215.9, height_mm: 279.4 },
}

/** Common printers reach to 6 mm or less of the edge; the rest is room for a thumb and for a stretched print. */
export const MARGIN_mm = 14
const HEADING_mm = 19.5
const FOOT_mm = 21
/** Between the foot and what stands above it. */
const GAP_mm = 8
/** Taken from the right of the body by the upright bar. */
const BAR_STRIP_mm = 14

export interface Areas {
  readonly whole: Rect
  /** Within the margins. */
  readonly page: Rect
  readonly heading: Rect
  readonly foot: Rect
  /** All between heading and foot; the upright bar stands in its lower right corner. */
  readonly body: Rect
  /** The body clear of the strip with the upright bar, all the way up. */
  readonly drawing: Rect
  /** The body above the upright bar, full width. */
  readonly upper: Rect
}

/** Where things may stand on a sheet; x to the right, y upwards from the lower left corner of the paper. */
export function areas(paper: PaperName): Areas {
  const { width_mm, height_mm } = papers[paper]
  const page = { left: MARGIN_mm, bottom: MARGIN_mm, right: width_mm - MARGIN_mm, top: height_mm - MARGIN_mm }
  const body = { ...page, bottom: page.bottom + FOOT_mm + GAP_mm, top: page.top - HEADING_mm }
  return {
    whole: { left: 0, bottom: 0, right: width_mm, top: height_mm },
    page,
    heading: { ...page, bottom: body.top },
    foot: { ...page, top: page.bottom + FOOT_mm },
    body,
    drawing: { ...body, right: body.right - BAR_STRIP_mm },
    upper: { ...body, bottom: body.bottom + 100 + 8 },
  }
}

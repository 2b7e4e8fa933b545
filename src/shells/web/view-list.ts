import type { PageWords } from '../../render/words/en/page.ts'

/** A view of the tower. */
export interface ViewOf {
  readonly id: string
  readonly short: keyof PageWords
}

/** Views that the foot offers; a new view is entered here and in the sheet that draws it. */
export const viewList: readonly ViewOf[] = [
  { id: 'elevation', short: 'view-elevation' },
  { id: 'unrolled', short: 'view-unrolled' },
  { id: 'section', short: 'view-section' },
  { id: 'flow', short: 'flow' },
  { id: 'solid', short: 'solid' },
  { id: 'feed', short: 'view-feed' },
  { id: 'water', short: 'view-water' },
]

/** Views of a first visit; what it shows first of them is drawn when the page is built. */
export const firstViews: readonly string[] = ['elevation', 'unrolled', 'section', 'feed', 'water']

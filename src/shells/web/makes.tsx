import type { JSX } from 'solid-js'
import { Marks } from './views/Make.tsx'
import type { Evaluated } from './workers/protocol.ts'

/** A thing of the second act; the list is the only place where one is entered. */
export interface MakeOf {
  readonly id: string
  readonly exists: (e: Evaluated) => boolean
  readonly view: (e: Evaluated) => JSX.Element
}

export const makeList: readonly MakeOf[] = [
  {
    id: 'marks',
    exists: ({ facts }) => 'known' in facts.layout,
    view: ({ facts }) => ('known' in facts.layout ? <Marks layout={facts.layout.known} /> : null),
  },
]

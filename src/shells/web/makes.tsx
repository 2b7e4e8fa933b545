import type { JSX } from 'solid-js'
import { Booklet } from './views/Booklet.tsx'
import { Cuts, Parts, Steps } from './views/MakeTables.tsx'
import { Marks } from './views/Marks.tsx'
import { Sheets } from './views/Sheets.tsx'
import type { Told } from './workers/protocol.ts'

/** A thing of the second act; the list is the only place where one is entered. */
export interface MakeOf {
  readonly id: string
  readonly exists: (e: Told) => boolean
  readonly view: (e: Told) => JSX.Element
}

export const makeList: readonly MakeOf[] = [
  {
    id: 'marks',
    exists: ({ facts }) => 'known' in facts.layout,
    view: ({ facts }) => ('known' in facts.layout ? <Marks layout={facts.layout.known} /> : null),
  },
  { id: 'booklet', exists: ({ facts }) => 'known' in facts.layout, view: () => <Booklet /> },
  { id: 'sheets', exists: ({ facts }) => 'known' in facts.layout, view: () => <Sheets /> },
  {
    id: 'cuts',
    exists: ({ facts }) => facts.cuts.materials.length > 0,
    view: ({ facts }) => <Cuts cuts={facts.cuts} />,
  },
  {
    id: 'parts',
    exists: ({ facts }) => 'known' in facts.parts,
    view: ({ facts }) => ('known' in facts.parts ? <Parts parts={facts.parts.known} feed={facts} /> : null),
  },
  {
    id: 'steps',
    exists: ({ facts }) => 'known' in facts.build,
    view: ({ facts }) => ('known' in facts.build ? <Steps build={facts.build.known} /> : null),
  },
]

import type { Language } from '../language.ts'
import { bookletSentences } from './booklet.ts'
import { pupilSentences } from './booklet-pupils.ts'
import { flowWords } from './flow.ts'
import { page } from './page-facts.ts'
import { sheetSentences } from './sheets.ts'
import { solidViewWords } from './solid-view.ts'
import { solidSentences } from './solids.ts'
import { spanish } from './spanish.ts'
import { tendWords } from './tend.ts'

export const language: Language = {
  words: spanish,
  sheets: sheetSentences,
  solids: solidSentences,
  booklet: bookletSentences,
  pupils: pupilSentences,
  flow: flowWords,
  solidView: solidViewWords,
  facts: page,
  tend: tendWords,
}

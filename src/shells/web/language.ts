import { english } from '../../render/words/en/english.ts'

/** The language of the page, all of it; what the first screen says is in `words.ts` and in the first answer. */
export const words = english

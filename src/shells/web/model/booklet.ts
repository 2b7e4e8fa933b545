import type { BookletAnswer, BookletAsk } from '../workers/booklet.ts'
import { made } from './made.ts'

/** The booklet made in a worker of its own; `cancel` ends it at once. */
export const bookletMade = (ask: BookletAsk) => made<BookletAsk, BookletAnswer>('assets/booklet.js', ask)

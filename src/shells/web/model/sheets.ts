import type { SheetsAnswer, SheetsAsk } from '../workers/sheets.ts'
import { made } from './made.ts'

/** A set of files made in a worker of its own; `cancel` ends it at once. */
export const sheetsMade = (ask: SheetsAsk) => made<SheetsAsk, SheetsAnswer>('assets/sheets.js', ask)

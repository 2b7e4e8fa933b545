import type { TapeMarks } from '../../disciplines/build/index.ts'
import type { Drilled } from '../../findings/finding.ts'
import type { Quantity } from '../../kernel/units.ts'
import { shownText, telling } from '../display.ts'
import { drillText } from '../drill.ts'
import { finerThanTape, tradeSlot } from '../tape.ts'
import type { Context } from './context.ts'

const DATUM = new Set(['foot', 'top'])

/** Slots as texts in the owner's units; what the plan does not say is a blank to be filled in by pen. */
export function slotTextOf(
  c: Context,
  slots: Readonly<
    Record<string, Quantity | Drilled | TapeMarks | string | number | null | { readonly phrase: string }>
  >,
): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(slots).map(([key, slot]) => {
      if (slot === null) return [key, c.say('number-blank')]
      const own = tradeSlot(key, slot, c.words, c.display)
      if (own !== null) return [key, own]
      if (typeof slot === 'string')
        return [key, DATUM.has(slot) ? c.say(slot as 'foot' | 'top').replace('the ', '') : slot]
      if (typeof slot === 'number') return [key, String(slot).replace('.', c.display.decimal)]
      if ('marks_m' in slot) return [key, '']
      if ('phrase' in slot) return [key, c.words.phrases[slot.phrase] ?? slot.phrase]
      if ('drilled' in slot) return [key, drillText(slot.drilled, c.display)]
      if (slot.unit !== 'm' || !('value' in slot)) return [key, shownText(slot, telling('mark', c.display))]
      return [key, finerThanTape(slot.value, c.display) ?? c.length(slot.value)]
    }),
  )
}

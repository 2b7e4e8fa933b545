import type { Check } from '../../findings/check.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { atLeast, together } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import type { PacksFacts } from './packs.ts'

/** What is missing is told to the gram. */
const GRAM_kg = 0.001

/** What stands on the shelf against what the batch and the stock bottles take of it. */
const pack: Check<PacksFacts> = {
  id: 'nutrients/pack',
  at: 'feed/shelf',
  source: 'Balance.solution',
  applies: (plan) => (plan.feed?.shelf ?? []).length > 0,
  judged: ({ packs, untold }, _, { source, at }) => [
    ...packs.map(({ id, at: entry, onHand_kg, dose_kg, batch_kg, bottles_kg, batches, short_kg }) => {
      const set = `${entry}/onHand`
      const need_kg = batch_kg + bottles_kg
      return judge(pack.id, quantity(onHand_kg, 'kg'), {
        ...{ at: set, source, must: { min: batch_kg }, want: { min: need_kg } },
        slots: {
          ...{
            name: id,
            batches,
            dose: quantity(dose_kg, 'kg'),
            batch: quantity(batch_kg, 'kg'),
            need: quantity(need_kg, 'kg'),
          },
          ...{ bottles: quantity(bottles_kg, 'kg'), short: quantity(short_kg, 'kg') },
        },
        levers: () => together([[{ set, to: atLeast(need_kg, 'kg', GRAM_kg) }]]),
      })
    }),
    ...(untold.length === 0
      ? []
      : [unknown(pack.id, { at, source, needs: [`${untold[0]!.at}/pack`], slots: { list: namesOf(untold) } })]),
  ],
}

const namesOf = (untold: PacksFacts['untold']): string => untold.map(({ id }) => id).join(', ')

export const packChecks: readonly Check<PacksFacts>[] = [pack]

import { isKnown, orNull } from '../../../plan/known.ts'
import type { Evaluated, Told } from './protocol.ts'

/** What the page is told of an evaluation: a message stops the page for as long as it takes to unpack. */
export function told({ facts, ...rest }: Evaluated): Told {
  const { layout, templates, nutrients, cuts, build, parts } = facts
  return {
    ...rest,
    facts: {
      ...{ layout, cuts, build, parts },
      packs: nutrients.packs,
      mouthReach_m: isKnown(templates) ? templates.known.stub.mouthReach_m : null,
      alkalinity_eq_m3: orNull(nutrients.blend)?.alkalinity_eq_m3 ?? null,
      conductivity_S_m: orNull(nutrients.batch)?.predicted.conductivity_S_m ?? null,
    },
  }
}

import { completeElliptic } from './elliptic.ts'
import { value } from './published.ts'

/** K and E at k² = 1/2, as the tables print them by the parameter m = k². */
const half = Math.SQRT1_2
const table = { absolute: true, source: 'AbramowitzStegun1972.elliptic' }

export default [
  value(completeElliptic, half, 1.85407467730137, {
    ...table,
    within: 5e-15,
    why: 'half of the last digit',
    pick: 'first',
  }),
  value(completeElliptic, half, 1.350643881, {
    ...table,
    within: 5e-10,
    why: 'half of the last digit',
    pick: 'second',
  }),
]

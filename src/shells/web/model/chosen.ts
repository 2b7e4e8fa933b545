import type { Change } from '../../../findings/finding.ts'
import type { Quantity } from '../../../kernel/units.ts'

/** What the program itself put into a new plan, or left open in it, as data; the sentence is made in the words. */
export type Chosen =
  | {
      readonly kind: 'said'
      /** Key of the sentence. */
      readonly key: ChosenKey
      readonly slots: Readonly<Record<string, string | number | Quantity>>
      /** What the plan would hold once the grower says that it will be done. */
      readonly promise?: Change & { readonly with: readonly Change[] }
    }
  /** A change that was made so that a finding holds. */
  | {
      readonly kind: 'changed'
      readonly finding: string
      readonly change: Change & { readonly with: readonly Change[] }
    }
  /** A finding that fails, left to the grower. */
  | { readonly kind: 'fails'; readonly finding: string }

export type ChosenKey =
  | 'gust'
  | 'sizes'
  | 'rings'
  | 'tank'
  | 'towers'
  | 'stub'
  | 'pump-any'
  | 'pump-open'
  | 'tie'
  | 'tie-open'
  | 'crops-apart'
  | 'blank'

export const chosen = (key: ChosenKey, slots: Extract<Chosen, { kind: 'said' }>['slots'] = {}): Chosen => ({
  kind: 'said',
  key,
  slots,
})

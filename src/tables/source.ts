export type SourceKind =
  | 'standard'
  | 'handbook'
  | 'paper'
  | 'bulletin'
  | 'dataset'
  | 'derived'
  | 'common-practice'
  | 'from-memory'

/** One entry of the register of citations. */
export interface Source {
  readonly kind: SourceKind
  /** Who, what, when: enough to find it. */
  readonly cite: string
  /** Table, equation, page or section; for derived relations where the derivation stands. */
  readonly where: string
  /** Date on which one of us saw the page, or null: an open debt. */
  readonly read: string | null
}

/** Keeps the ids of a part of the register as literal types. */
export const sourcesOf = <Id extends string>(entries: Readonly<Record<Id, Source>>): Readonly<Record<Id, Source>> =>
  entries

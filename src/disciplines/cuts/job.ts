/** How the ends of a piece are cut. */
export type Cut =
  /** Both ends square. */
  | { readonly kind: 'square' }
  /** One end mitred, one square; `length_m` is measured on the centre line. */
  | { readonly kind: 'mitre'; readonly angle_rad: number; readonly radius_m: number }
  /** Both ends mitred and parallel; `length_m` is measured on the centre line. */
  | { readonly kind: 'parallel'; readonly angle_rad: number; readonly radius_m: number }
  /** One end coped to a curve; `length_m` is the shortest line, the blank is longer by the extent of the curve. */
  | { readonly kind: 'cope'; readonly extent_m: number }

/** Equal pieces wanted. */
export interface Piece {
  readonly id: string
  readonly count: number
  readonly length_m: number
  readonly cut: Cut
}

/** A length that the shop sells, any number of it. */
export interface Purchase {
  readonly id: string
  readonly length_m: number
  /** Depth of a socket that is cut away; 0 for plain ends. */
  readonly socket_m: number
  /** Price of one, or null where it is not known. */
  readonly price_money: number | null
}

/** A length already on hand. */
export interface Offcut {
  readonly id: string
  readonly length_m: number
  readonly count: number
  /** Ends that still are factory ends and get trimmed. */
  readonly ends_count: 0 | 1 | 2
}

/** One material to cut: one pipe or one hose. */
export interface CutJob {
  readonly pieces: readonly Piece[]
  readonly purchase: readonly Purchase[]
  readonly offcuts: readonly Offcut[]
  readonly kerf_m: number
  /** Length cut away from each factory end, besides the kerf; 0 where ends are used as they come. */
  readonly trim_m: number
  /** Whether every second mitred stub may be turned end for end to share its mitre. */
  readonly share: boolean
  /** Bound on the steps of the search; the plan says what gap is left. Same steps, same plan. */
  readonly steps_count?: number
}

/** A piece that cannot be cut, as data. */
export type CutIssue =
  | {
      readonly reason: 'longer-than-stock'
      readonly id: string
      readonly length_m: number
      /** Shortest stick that it could be cut from, wedges included. */
      readonly takes_m: number
      /** Longest stick there is, without socket and trimmed ends. */
      readonly longest_m: number
    }
  | {
      readonly reason: 'mitre-longer-than-piece'
      readonly id: string
      readonly length_m: number
      readonly reach_m: number
    }
  | { readonly reason: 'stock-used-up'; readonly id: string; readonly count: number }
  | { readonly reason: 'not-a-number'; readonly id: string; readonly field: string; readonly value: number }

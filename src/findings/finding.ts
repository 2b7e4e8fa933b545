import type { Quantity, Unit } from '../kernel/units.ts'
import type { SourceId } from '../tables/sources.ts'

export type Verdict = 'pass' | 'watch' | 'fail' | 'unknown'

/** Limits of a number, both ends allowed; an absent end is open. */
export interface Band {
  readonly min?: number
  readonly max?: number
}

/** A hole as it is drilled: told by the drill, never by the marks of a tape. */
export interface Drilled {
  readonly drilled: Quantity
}

/** A flow as a bucket tells it: told by the time in which one fills, the plan's own or one that people have. */
export interface Filling {
  readonly filled: Quantity
  readonly bucket_m3?: number
}

/** What a sentence may be filled with. */
export type Slot = Quantity | Drilled | string | number

/** A phrase of the language by its key, with slots of its own. */
export interface Phrase {
  readonly phrase: string
  readonly with?: Readonly<Record<string, FindingSlot>>
}

export type FindingSlot = Slot | Filling | Phrase

/**
 * A thing of the plan that a person could change to cure a finding. The engine searches it for the smallest change
 * that holds; checks name only what may be turned and how far.
 *
 * `along`: a quantity field, from its present value to `to` (the end that helps), in steps a tape or a shop can give.
 * `among`: a few values to try in the order in which a grower would.
 * `together`: the same for several fields that only help hand in hand; the first of them is `set`.
 */
export type Lever =
  | {
      readonly set: string
      readonly along: {
        readonly to: number
        readonly unit: Unit
        readonly step: number
        /** Where the quantity stands while the plan leaves it out. */
        readonly from?: number
      }
    }
  | { readonly set: string; readonly among: readonly Typed[] }
  | { readonly set: string; readonly together: readonly (readonly Wish[])[] }

/** A measure to be set no smaller (`up`) or no larger (`down`) than it is, in steps that a person can set. */
export interface Measure {
  readonly value: number
  readonly unit: Unit
  readonly step: number
  readonly round: 'up' | 'down'
}

/** One field and what it should become; null takes it out. */
export interface Wish {
  readonly set: string
  readonly to: Typed | Measure | null
}

/** What a person may type into a field. */
export type Typed = string | number | boolean

/** One field of the document set to a value, or taken out (null). */
export interface Setting {
  /** Path of the field in the document, `column/sites/pitch`. */
  readonly set: string
  readonly to: Typed | null
}

/** A setting with what stood there before, a section told by its name or measures; null where nothing did. */
export interface Change extends Setting {
  readonly from: Typed | null
}

/** A change of the plan document that was proved: re-evaluated, it cures the finding and worsens none. */
export interface Remedy extends Change {
  readonly to: Typed
  /** What has to be changed in the same step; mostly nothing. */
  readonly with: readonly Change[]
  /** The finding's verdict after the change: `watch` only where no value was found with which it holds altogether. */
  readonly leaves: 'pass' | 'watch'
  /** The finding's number after the change; null where the question no longer arises. */
  readonly gives: Quantity | null
  /** The limits of that number after the change, which may have moved them; open where the question no longer arises. */
  readonly within: Band
  /** Other findings that the same change cures. */
  readonly alsoCures: readonly string[]
  /** Findings that could not be known before and turn out to fail: faults that the cured one had hidden. */
  readonly reveals: readonly string[]
}

/** The record of a verdict: plain data, no sentence and no display unit inside. */
export interface Finding {
  /** `discipline/what`, stable, documented in `docs/checks/`. */
  readonly id: `${string}/${string}`
  /** Place in the plan document: `column/sites/pitch`. */
  readonly at: string
  readonly verdict: Verdict
  /** The number; null only with `unknown`. */
  readonly measured: Quantity | null
  /** Outside → fail: physics, standard, safety. */
  readonly must: Band
  /** Outside → watch: good practice. */
  readonly want: Band
  /** Where the limit comes from. */
  readonly source: SourceId
  /** Only with a band: whether the limits hold over the whole of it or in part. */
  readonly holds?: 'whole' | 'part' | 'none'
  /** Fields of the plan that are missing; only with `unknown`. */
  readonly needs: readonly string[]
  /** Further numbers and names for the sentence. */
  readonly slots: Readonly<Record<string, FindingSlot>>
  /** Safety findings cannot be put aside. */
  readonly safety: boolean
  readonly levers: readonly Lever[]
  readonly remedies: readonly Remedy[]
}

import type { Unit } from '../kernel/units.ts'

/**
 * The vocabulary in which the plan document is defined once. Parsing, the JSON Schema, the reference page and the
 * fields on the page are all derived from these definitions.
 */
interface About {
  /** What the field holds, in one plain sentence: shown in the schema and the reference. */
  readonly about: string
}

/** Text with its unit in the document, a number with its unit in the name inside. */
export interface QuantityField<U extends Unit = Unit> extends About {
  readonly kind: 'quantity'
  readonly unit: U
  /** Bounds in the engine's unit beyond which the text is surely a slip. */
  readonly min: number
  readonly max: number
  readonly example: string
}

export interface CountField extends About {
  readonly kind: 'count'
  readonly min: number
  readonly max: number
}

/** A plain number without a dimension: pH, a loss coefficient, a price. */
export interface NumberField extends About {
  readonly kind: 'number'
  readonly min: number
  readonly max: number
}

export interface TextField extends About {
  readonly kind: 'text'
  readonly longest: number
}

export interface FlagField extends About {
  readonly kind: 'flag'
}

export interface ChoiceField<C extends string = string> extends About {
  readonly kind: 'choice'
  readonly of: readonly C[]
}

/** Text that names a row of a table, or a section that states the same by measure. */
export interface NamedField<T = unknown> extends About {
  readonly kind: 'named'
  readonly example: string
  /** Text → the thing, or the nearest names. */
  readonly find: (text: string) => { readonly found: T } | { readonly nearest: readonly string[] }
  readonly section: SectionField
  /** The stated measures → the thing, or the keys of the measures that are still missing. */
  readonly build: (
    values: Readonly<Record<string, unknown>>,
  ) => { readonly found: T } | { readonly missing: readonly string[] }
}

export interface ListField<F extends Field = Field> extends About {
  readonly kind: 'list'
  readonly of: F
  readonly longest: number
}

/** Keys chosen by the person (names of salts, ions), values all of one kind. */
export interface MapField<F extends Field = Field> extends About {
  readonly kind: 'map'
  readonly of: F
  readonly longest: number
}

export interface SectionField<S extends Fields = Fields> extends About {
  readonly kind: 'section'
  readonly fields: S
}

export type Field =
  | QuantityField
  | CountField
  | NumberField
  | TextField
  | FlagField
  | ChoiceField
  | NamedField
  | ListField
  | MapField
  | SectionField

export interface Fields {
  readonly [key: string]: Field
}

/** In memory a quantity's key carries its unit: `bore` → `bore_m`. Dimensionless ones keep their name. */
type Key<K extends string, F> = F extends QuantityField<infer U> ? (U extends '1' | 'count' ? K : `${K}_${U}`) : K

export type ValueOf<F> = F extends QuantityField
  ? number
  : F extends CountField | NumberField
    ? number
    : F extends TextField
      ? string
      : F extends FlagField
        ? boolean
        : F extends ChoiceField<infer C>
          ? C
          : F extends NamedField<infer T>
            ? T
            : F extends ListField<infer E>
              ? readonly ValueOf<E>[]
              : F extends MapField<infer E>
                ? Readonly<Record<string, ValueOf<E>>>
                : F extends SectionField<infer S>
                  ? ValuesOf<S>
                  : never

/** What a section of the plan holds in memory; every entry may be absent. */
export type ValuesOf<S extends Fields> = {
  readonly [K in keyof S & string as Key<K, S[K]>]?: ValueOf<S[K]>
}

export const quantity = <U extends Unit>(
  unit: U,
  given: Omit<QuantityField<U>, 'kind' | 'unit'>,
): QuantityField<U> => ({
  kind: 'quantity',
  unit,
  ...given,
})
export const count = (given: Omit<CountField, 'kind'>): CountField => ({ kind: 'count', ...given })
export const number = (given: Omit<NumberField, 'kind'>): NumberField => ({ kind: 'number', ...given })
export const text = (about: string, longest = 200): TextField => ({ kind: 'text', about, longest })
export const flag = (about: string): FlagField => ({ kind: 'flag', about })
export const choice = <const C extends string>(of: readonly C[], about: string): ChoiceField<C> => ({
  kind: 'choice',
  of,
  about,
})
export const named = <T>(given: Omit<NamedField<T>, 'kind'>): NamedField<T> => ({ kind: 'named', ...given })
export const list = <F extends Field>(of: F, longest: number, about: string): ListField<F> => ({
  kind: 'list',
  of,
  longest,
  about,
})
export const map = <F extends Field>(of: F, longest: number, about: string): MapField<F> => ({
  kind: 'map',
  of,
  longest,
  about,
})
export const section = <const S extends Fields>(about: string, fields: S): SectionField<S> => ({
  kind: 'section',
  about,
  fields,
})

/** Name of a field in memory. */
export const memoryKey = (key: string, field: Field): string =>
  field.kind === 'quantity' && field.unit !== '1' && field.unit !== 'count' ? `${key}_${field.unit}` : key

import { For, type JSX, Show } from 'solid-js'
import type { Reason } from '../model/reasons.ts'
import { useBench } from './bench.tsx'
import { roving } from './roving.ts'

/** A table whose numbers each open their why. */
export function NumberTable(props: {
  readonly class?: string
  readonly label: string
  readonly children: JSX.Element
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: its cells are gone through by arrow keys, which makes it a grid
    <table class={props.class} role="grid" aria-label={props.label} ref={roving}>
      {props.children}
    </table>
  )
}

/** Digits that are part of no name such as P120, with their signs, sizes like 110 × 3.2, whole inches with their fraction, and the unit behind them. */
const DIGITS = String.raw`(?<![\p{L}\d])[−+±~Ø]?\d+(?:[.,:/–−]\d+)*(?: \d+/\d+)?`
const UNITS = String.raw`[  ]?(?:°C|°|%|(?:[µmkcd]?(?:g|m|L|W|Wh|N|V|A|J|Pa|S|s)|min|h|d|in|ft|meq|kWh)(?:/[\p{L}³²]+)?(?![\p{L}\p{N}]))`
const NUMBER = new RegExp(`${DIGITS}(?: × ${DIGITS})*(?:${UNITS})?`, 'gu')

/** Pieces of a text, its numbers apart. */
export const numbersApart = (text: string): readonly { readonly text: string; readonly number: boolean }[] => {
  const out: { text: string; number: boolean }[] = []
  let at = 0
  for (const m of text.matchAll(NUMBER)) {
    if (m.index > at) out.push({ text: text.slice(at, m.index), number: false })
    out.push({ text: m[0], number: true })
    at = m.index + m[0].length
  }
  if (at < text.length) out.push({ text: text.slice(at), number: false })
  return out
}

/** A text whose numbers each open their why. */
export function Numbered(props: { readonly text: string; readonly why: Reason }) {
  const bench = useBench()
  return (
    <For each={numbersApart(props.text)}>
      {(piece) => (
        <Show when={piece.number} fallback={piece.text}>
          <button
            type="button"
            class="fig"
            tabindex="-1"
            data-why={props.why}
            onClick={(e) => bench.explain(props.why, e.currentTarget)}
          >
            <span class="q">{piece.text}</span>
          </button>
        </Show>
      )}
    </For>
  )
}

import { For, type JSX, onCleanup, onMount, Show } from 'solid-js'
import type { Reason } from '../model/reasons.ts'
import { useBench } from './bench.tsx'

const numbersOf = (group: Element): readonly HTMLElement[] => [...group.querySelectorAll<HTMLElement>('.fig')]

/** One number of a group is its stop of the tab key; the arrow keys go on from there. */
function settle(group: Element, wanted: HTMLElement | null): void {
  const all = numbersOf(group)
  const stop = wanted ?? all.find((el) => el.getAttribute('tabindex') === '0') ?? all[0]
  for (const el of all) {
    const order = el === stop ? '0' : '-1'
    if (el.getAttribute('tabindex') !== order) el.setAttribute('tabindex', order)
  }
}

/** The number above or below in a table, nearest to the same column; outside of a table the one before or after. */
function acrossRows(from: HTMLElement, all: readonly HTMLElement[], step: 1 | -1): HTMLElement | undefined {
  const row = from.closest('tr')
  if (row === null) return all[all.indexOf(from) + step]
  const x = from.getBoundingClientRect().right
  const rest = step > 0 ? all.slice(all.indexOf(from)) : all.slice(0, all.indexOf(from)).toReversed()
  const next = rest.find((el) => el.closest('tr') !== row)?.closest('tr')
  const there = all.filter((el) => el.closest('tr') === next)
  const away = (el: HTMLElement): number => Math.abs(el.getBoundingClientRect().right - x)
  return there.length === 0 ? undefined : there.reduce((a, b) => (away(b) < away(a) ? b : a))
}

function target(key: string, from: HTMLElement, all: readonly HTMLElement[]): HTMLElement | undefined {
  const here = all.indexOf(from)
  switch (key) {
    case 'ArrowRight':
      return all[here + 1]
    case 'ArrowLeft':
      return all[here - 1]
    case 'ArrowDown':
      return acrossRows(from, all, 1)
    case 'ArrowUp':
      return acrossRows(from, all, -1)
    case 'Home':
      return all[0]
    case 'End':
      return all.at(-1)
    default:
      return undefined
  }
}

/** Makes the numbers inside of an element one stop of the tab key, gone through by arrow keys; Enter opens the why. */
export function roving(group: HTMLElement): void {
  const onKey = (e: KeyboardEvent): void => {
    if (!(e.target instanceof HTMLElement) || !e.target.matches('.fig')) return
    const next = target(e.key, e.target, numbersOf(group))
    if (next === undefined) return
    e.preventDefault()
    next.focus()
  }
  const onFocus = (e: FocusEvent): void => {
    if (e.target instanceof HTMLElement && e.target.matches('.fig')) settle(group, e.target)
  }
  const watch = new MutationObserver(() => settle(group, null))
  group.addEventListener('keydown', onKey)
  group.addEventListener('focusin', onFocus)
  onMount(() => {
    settle(group, null)
    watch.observe(group, { childList: true, subtree: true })
  })
  onCleanup(() => watch.disconnect())
}

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

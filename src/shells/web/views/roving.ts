import { onCleanup, onMount } from 'solid-js'

type Stop = HTMLElement | SVGElement

/** Numbers that are buttons: those of texts and tables, and those of a drawing that are no field. */
const NUMBERS = '.fig, .live:not(.field)'

const numbersOf = (group: Element): readonly Stop[] => [...group.querySelectorAll<Stop>(NUMBERS)]

const isNumber = (target: EventTarget | null): target is Stop =>
  (target instanceof HTMLElement || target instanceof SVGElement) && target.matches(NUMBERS)

/** One number of a group is its stop of the tab key; the arrow keys go on from there. */
function settle(group: Element, wanted: Stop | null): void {
  const all = numbersOf(group)
  const stop = wanted ?? all.find((el) => el.getAttribute('tabindex') === '0') ?? all[0]
  for (const el of all) {
    const order = el === stop ? '0' : '-1'
    if (el.getAttribute('tabindex') !== order) el.setAttribute('tabindex', order)
  }
}

/** The number above or below in a table, nearest to the same column; outside of a table the one before or after. */
function acrossRows(from: Stop, all: readonly Stop[], step: 1 | -1): Stop | undefined {
  const row = from.closest('tr')
  if (row === null) return all[all.indexOf(from) + step]
  const x = from.getBoundingClientRect().right
  const rest = step > 0 ? all.slice(all.indexOf(from)) : all.slice(0, all.indexOf(from)).toReversed()
  const next = rest.find((el) => el.closest('tr') !== row)?.closest('tr')
  const there = all.filter((el) => el.closest('tr') === next)
  const away = (el: Stop): number => Math.abs(el.getBoundingClientRect().right - x)
  return there.length === 0 ? undefined : there.reduce((a, b) => (away(b) < away(a) ? b : a))
}

function target(key: string, from: Stop, all: readonly Stop[]): Stop | undefined {
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
export function roving(group: Element): void {
  const onKey = (e: Event): void => {
    if (!(e instanceof KeyboardEvent) || !isNumber(e.target)) return
    const next = target(e.key, e.target, numbersOf(group))
    if (next === undefined) return
    e.preventDefault()
    next.focus()
  }
  const onFocus = (e: Event): void => {
    if (isNumber(e.target)) settle(group, e.target)
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

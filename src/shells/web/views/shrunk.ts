import { type Accessor, createSignal, onCleanup, onMount } from 'solid-js'

/** What is lost to rounding to whole pixels is no shrinking. */
const ROUNDING = 0.01

/** How many times smaller than drawn a sheet is shown, where its column is too narrow for it; 1 where it fits. */
export function shrunk(drawn_px: () => number): readonly [Accessor<number>, (sheet: SVGSVGElement) => void] {
  const [times, setTimes] = createSignal(1)
  const watchOn = (sheet: SVGSVGElement): void => {
    onMount(() => {
      const watch = new ResizeObserver(([entry]) => {
        const shown_px = entry?.contentRect.width ?? 0
        const ratio = shown_px > 0 ? drawn_px() / shown_px : 1
        setTimes(ratio > 1 + ROUNDING ? ratio : 1)
      })
      watch.observe(sheet)
      onCleanup(() => watch.disconnect())
    })
  }
  return [times, watchOn]
}

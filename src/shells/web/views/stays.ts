import { onCleanup, onMount } from 'solid-js'

/** Free room above and below a column that stays, in CSS pixels. */
const FREE = 8

/**
 * A column of drawings stays in sight beside longer words, where the window is wide enough for both. Only one that fits
 * the window as a whole: of a taller one the end could not be scrolled to.
 */
export function stays(column: HTMLElement): void {
  const look = (): void => void column.classList.toggle('stays', column.offsetHeight + 2 * FREE <= innerHeight)
  onMount(() => {
    const watch = new ResizeObserver(look)
    watch.observe(column)
    addEventListener('resize', look)
    onCleanup(() => {
      watch.disconnect()
      removeEventListener('resize', look)
    })
  })
}

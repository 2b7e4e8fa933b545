import { type Component, createComponent, createMemo, createSignal, type JSX, untrack } from 'solid-js'
import { fetchLanguage, tongue } from '../language.ts'
import type * as lateModule from './late.ts'

type Late = typeof lateModule

const [late, setLate] = createSignal<Late | null>(null)

/** What is not on the first screen; null until it has arrived. */
export { late }

let fetched: (() => Promise<Late>) | null = null

/** Where it is fetched from is told by the page's entry: the views in it look back at this file. */
export const arriveFrom = (from: () => Promise<Late>): void => {
  fetched = from
}

/** Fetches what is not on the first screen; to be called once that is painted. */
export async function arrive(): Promise<Late> {
  const there = late()
  if (there) return there
  if (fetched === null) throw new RangeError('arrive: nobody told where from')
  const [module] = await Promise.all([fetched(), fetchLanguage(tongue())])
  setLate(() => module)
  return module
}

/** A browser that does not tell of its pictures, or a page that is hidden, is not waited for longer. */
const UNTOLD_ms = 5000

/** Once the first picture of the page is on the screen: what is fetched before would only come in its way. */
export const painted = (): Promise<void> =>
  new Promise((done) => {
    const late = setTimeout(done, UNTOLD_ms)
    const watch = new PerformanceObserver((list) => {
      if (list.getEntriesByName('first-contentful-paint').length === 0) return
      watch.disconnect()
      clearTimeout(late)
      done()
    })
    watch.observe({ type: 'paint', buffered: true })
  })

/** A view of a later screen: nothing until it has arrived. */
export const lateView =
  <P extends object>(pick: (late: Late) => Component<P>): Component<P> =>
  (props) => {
    const view = createMemo(() => {
      const there = late()
      return there ? untrack(() => createComponent(pick(there), props)) : undefined
    })
    return view as unknown as JSX.Element
  }

import { createContext, useContext } from 'solid-js'
import type { Workbench } from '../model/workbench.ts'

export const BenchContext = createContext<Workbench>()

/** The workbench of the page; a view outside of it is our bug. */
export function useBench(): Workbench {
  const bench = useContext(BenchContext)
  if (!bench) throw new RangeError('useBench: there is no workbench above this view')
  return bench
}

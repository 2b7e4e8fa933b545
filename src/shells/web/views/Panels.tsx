import { Match, Switch } from 'solid-js'
import { useBench } from './bench.tsx'
import { Changes } from './Changes.tsx'
import { Compare } from './Compare.tsx'
import { Conflict } from './Conflict.tsx'
import { NewPlan } from './NewPlan.tsx'
import { Plans } from './Plans.tsx'
import { Sensitivity } from './Sensitivity.tsx'

/** The panel that is asked for, in the place of the words. */
export function Panels() {
  const bench = useBench()
  return (
    <Switch>
      <Match when={bench.panel() === 'plans'}>
        <Plans />
      </Match>
      <Match when={bench.panel() === 'changes'}>
        <Changes />
      </Match>
      <Match when={bench.panel() === 'compare'}>
        <Compare />
      </Match>
      <Match when={bench.panel() === 'new'}>
        <NewPlan />
      </Match>
      <Match when={bench.panel() === 'sensitivity'}>
        <Sensitivity />
      </Match>
      <Match when={bench.panel() === 'conflict'}>
        <Conflict />
      </Match>
    </Switch>
  )
}

import { createSignal, Show } from 'solid-js'
import { render } from 'solid-js/web'
import './style/page.css'
import { fetchFirst } from './first.ts'
import { listPlans } from './model/plans.ts'
import { roomNow } from './model/room.ts'
import { keptLanguage } from './model/settings.ts'
import { createWorkbench } from './model/workbench.ts'
import { arrive, arriveFrom, painted } from './views/arriving.ts'
import { Page } from './views/Page.tsx'
import { fetchWords } from './words.ts'

arriveFrom(() => import('./views/late.ts'))

const root = document.getElementById('page')
if (root) {
  const tag = keptLanguage()
  document.documentElement.lang = tag
  const [first, plans] = await Promise.all([fetchFirst(tag, roomNow()), listPlans().catch(() => []), fetchWords(tag)])
  render(() => {
    const bench = createWorkbench(first)
    const [open, setOpen] = createSignal(false)
    void bench
      .openFirst(plans)
      .then(() => setOpen(true))
      .then(painted)
      .then(arrive)
      .then(bench.begin)
    return (
      <Show when={open()}>
        <Page bench={bench} />
      </Show>
    )
  }, root)
}

import { createEffect, Match, onCleanup, onMount, Show, Switch } from 'solid-js'
import { isReason } from '../model/reasons.ts'
import { roomNow } from '../model/room.ts'
import type { Workbench } from '../model/workbench.ts'
import { say } from '../words.ts'
import { arrive, lateView } from './arriving.ts'
import { BenchContext } from './bench.tsx'
import { Drawings } from './Drawings.tsx'
import { Fields } from './Fields.tsx'
import { Findings } from './Findings.tsx'
import { Foot } from './Foot.tsx'
import { Head } from './Head.tsx'
import { Loop } from './Loop.tsx'

const Make = lateView((l) => l.Make)
const Tend = lateView((l) => l.Tend)
const Begun = lateView((l) => l.Begun)
const Panels = lateView((l) => l.Panels)
const Slip = lateView((l) => l.Slip)

/** Any number opens its why where it is pressed; controls keep what they do themselves. */
function press(bench: Workbench, e: MouseEvent): void {
  if (
    !(e.target instanceof Element) ||
    e.target.closest('button, a, input, select, textarea, label, summary, svg, .slip')
  )
    return
  const el = e.target.closest<HTMLElement>('[data-why]')
  const reason = el?.dataset['why']
  if (el && reason !== undefined && isReason(reason)) bench.explain(reason, el)
}

/** Keeps the room for the drawings in step with the window. */
function watchRoom(bench: Workbench): void {
  const onResize = (): void => void bench.setRoom(roomNow())
  onMount(() => addEventListener('resize', onResize))
  onCleanup(() => removeEventListener('resize', onResize))
}

function keys(bench: Workbench, e: KeyboardEvent): void {
  const inText = e.target instanceof HTMLInputElement || e.target instanceof HTMLTextAreaElement
  if (!(e.ctrlKey || e.metaKey) || inText) return
  const key = e.key.toLowerCase()
  if (key === 'z' || key === 'y') {
    e.preventDefault()
    if (key === 'y' || e.shiftKey) bench.redo()
    else bench.undo()
  }
}

function drop(bench: Workbench, e: DragEvent): void {
  const file = e.dataTransfer?.files[0]
  if (!file) return
  e.preventDefault()
  void Promise.all([file.text(), arrive()]).then(([text, { taken }]) => taken(bench, text))
}

/** The whole page. */
export function Page(props: { readonly bench: Workbench }) {
  const bench = props.bench
  watchRoom(bench)
  const onKey = (e: KeyboardEvent): void => keys(bench, e)
  const onPress = (e: MouseEvent): void => press(bench, e)
  const onDrop = (e: DragEvent): void => drop(bench, e)
  const onOver = (e: DragEvent): void => e.preventDefault()
  onMount(() => {
    document.addEventListener('keydown', onKey)
    document.addEventListener('click', onPress)
    document.addEventListener('drop', onDrop)
    document.addEventListener('dragover', onOver)
  })
  onCleanup(() => {
    document.removeEventListener('keydown', onKey)
    document.removeEventListener('click', onPress)
    document.removeEventListener('drop', onDrop)
    document.removeEventListener('dragover', onOver)
  })
  createEffect(() => {
    document.documentElement.dataset['desk'] = bench.settings().desk
    document.title = `${String(bench.document()['name'] ?? '')} · rootfall`
  })
  return (
    <BenchContext.Provider value={bench}>
      <svg width="0" height="0" class="defs" aria-hidden="true">
        <defs>
          <pattern id="good" width="4.2" height="4.2" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path class="good" d="M0 0V4.2" />
          </pattern>
        </defs>
      </svg>
      <a class="skip" href="#words">
        {say('skip-to-words')}
      </a>
      <Head />
      <main data-act={bench.act()}>
        <Switch>
          <Match when={bench.act() === 'draw'}>
            <Loop />
            <Drawings />
          </Match>
          <Match when={bench.act() === 'make'}>
            <Make />
          </Match>
          <Match when={bench.act() === 'tend'}>
            <Tend />
          </Match>
        </Switch>
        <div class="words" id="words" tabindex="-1">
          <Show when={bench.panel() === null} fallback={<Panels />}>
            <Begun />
            <Findings />
            <Fields />
          </Show>
        </div>
      </main>
      <Foot />
      <Slip />
    </BenchContext.Provider>
  )
}

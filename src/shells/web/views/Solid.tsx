import { createEffect, createMemo, createSignal, For, onCleanup, onMount, Show } from 'solid-js'
import type { SolidViewKey } from '../../../render/words/en/solid-view.ts'
import { fill } from '../../../render/words/fill.ts'
import { placeName } from '../../../render/words/sentences.ts'
import { language } from '../language.ts'
import { solidMade } from '../model/solids.ts'
import type { Ink, InkColours, Sight } from '../solid/ink.ts'
import { createTurntable } from '../solid/turntable.ts'
import type { SolidAnswer } from '../workers/solids.ts'
import { useBench } from './bench.tsx'

const say = (key: SolidViewKey, slots: Readonly<Record<string, string>> = {}): string =>
  fill(language().solidView[key], slots)

/** Which shape of the solid a part of the loop is. */
const shapeOf: Readonly<Record<string, string>> = {
  column: 'column',
  stubs: 'stub',
  cups: 'cup',
  reservoir: 'reservoir',
  pump: 'pump',
  riser: 'riser',
  drain: 'base',
  distributor: 'distributor',
}

function colours(of: Element): InkColours {
  const style = getComputedStyle(of)
  const token = (name: string) => style.getPropertyValue(name).trim()
  return { ink: token('--ink'), accent: token('--acc'), paper: token('--paper'), solid: token('--solid') }
}

/** What is seen, in words. */
function described(a: SolidAnswer | null, s: Sight): string {
  const shapes = a?.kind === 'solid' ? a.shapes : []
  const parts = shapes.map(({ name, places }) =>
    fill(language().solidView[name as 'stub'] ?? name, { n: String(places.length) }),
  )
  const slots = { bearing: String(Math.round(s.bearing_deg)), tilt: String(s.tilt_deg), parts: parts.join(', ') }
  return say(s.cut ? 'alt-cut' : 'alt', slots)
}

/** Why there is no picture; null where there is one. */
function troubleOf(a: SolidAnswer | null, broken: boolean): string | null {
  if (broken) return say('no-gl')
  if (a === null) return say('working')
  if (a.kind === 'failed') return a.message
  if (a.kind === 'solid') return null
  if (a.because !== null) return say('because', { why: language().solids[a.because] })
  return say('empty', { needs: a.needs.map((n) => placeName(n, language().words)).join(', ') })
}

/** The meshes of the plan, worked out anew whenever it changes. */
function createSolid() {
  const bench = useBench()
  const [answer, setAnswer] = createSignal<SolidAnswer | null>(null)
  const plan = createMemo(() => bench.evaluated()?.document)
  createEffect(() => {
    const document = plan()
    if (!document) return
    const job = solidMade(document)
    onCleanup(job.cancel)
    void job.answer.then(setAnswer)
  })
  return answer
}

/** The pen that draws into a canvas; it comes later, with its library. */
function createPen(canvas: () => HTMLCanvasElement) {
  const [pen, setPen] = createSignal<Ink | null>(null)
  const [broken, setBroken] = createSignal(false)
  onMount(() => {
    void import('../solid/ink.ts').then(({ ink }) => setPen(ink(canvas()))).catch(() => setBroken(true))
  })
  onCleanup(() => pen()?.end())
  return { pen, broken }
}

/** Buttons for those who turn it without keys. */
function Turns(props: { readonly table: ReturnType<typeof createTurntable> }) {
  const { turn, tilt, zoom, cut, sight } = props.table
  const buttons: readonly (readonly [SolidViewKey, () => void])[] = [
    ['left', () => turn(-1)],
    ['right', () => turn(1)],
    ['up', () => tilt(1)],
    ['down', () => tilt(-1)],
    ['nearer', () => zoom(1)],
    ['further', () => zoom(-1)],
  ]
  return (
    <p class="turns">
      <For each={buttons}>
        {([key, act]) => (
          <button type="button" class="link" onClick={act}>
            {say(key)}
          </button>
        )}
      </For>
      <button type="button" class="link" aria-pressed={sight().cut} onClick={cut}>
        {say('cut')}
      </button>
    </p>
  )
}

const PX = 96 / 25.4

/** The tower in space, in ink: turned by arrow keys, by its buttons or with the pointer, cut open through its axis. */
export function Solid(props: { readonly wide_mm: number; readonly high_mm: number }) {
  const bench = useBench()
  let canvas!: HTMLCanvasElement
  const table = createTurntable()
  const answer = createSolid()
  const { pen, broken } = createPen(() => canvas)
  const size = () => [Math.round(props.wide_mm * PX), Math.round(props.high_mm * PX)] as const
  createEffect(() => {
    const [a, p] = [answer(), pen()]
    if (a?.kind === 'solid' && p) p.take(a.shapes)
  })
  createEffect(() => {
    const [a, p, seen, room] = [answer(), pen(), table.sight(), size()]
    const chosen = shapeOf[bench.part()] ?? ''
    bench.settings()
    if (a?.kind === 'solid' && p) requestAnimationFrame(() => p.draw(seen, room, colours(canvas), chosen))
  })
  const trouble = () => troubleOf(answer(), broken())
  return (
    <figure class="view solid" style={{ width: `${size()[0]}px` }}>
      <figcaption>
        <span class="title">{say('title')}</span>
      </figcaption>
      <fieldset class="turntable" onKeyDown={table.onKey}>
        <legend class="sr">{say('group')}</legend>
        <canvas
          ref={canvas}
          role="img"
          aria-label={described(answer(), table.sight())}
          data-why="fact:drawing"
          style={{ width: `${size()[0]}px`, 'aspect-ratio': `${size()[0]} / ${size()[1]}` }}
          hidden={trouble() !== null}
          onPointerMove={table.onPointer}
          onPointerDown={(e) => e.currentTarget.setPointerCapture(e.pointerId)}
        />
        <Show when={trouble()}>
          {(t) => (
            <p class="src" role="status">
              {t()}
            </p>
          )}
        </Show>
        <Turns table={table} />
      </fieldset>
    </figure>
  )
}

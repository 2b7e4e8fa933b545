import { createEffect, createMemo, createSignal, For, onCleanup, onMount, Show } from 'solid-js'
import { type SolidViewKey, solidViewWords as words } from '../../../render/words/en/solid-view.ts'
import { solidSentences } from '../../../render/words/en/solids.ts'
import { fill } from '../../../render/words/fill.ts'
import { placeName } from '../../../render/words/sentences.ts'
import { words as english } from '../language.ts'
import { solidMade } from '../model/solids.ts'
import type { Ink, InkColours, Sight } from '../solid/ink.ts'
import type { SolidAnswer } from '../workers/solids.ts'
import { useBench } from './bench.tsx'

const say = (key: SolidViewKey, slots: Readonly<Record<string, string>> = {}): string => fill(words[key], slots)

const STEP_deg = 15
const TILTS = [-30, -15, 0, 15, 30, 45, 60] as const
const ZOOMS = [1, 1.6, 2.5, 4] as const

/** Which shape of the solid a part of the loop is. */
const shapeOf: Readonly<Record<string, string>> = {
  column: 'column',
  stubs: 'stub',
  cups: 'stub',
  distributor: 'distributor',
}

function colours(of: Element): InkColours {
  const style = getComputedStyle(of)
  const token = (name: string) => style.getPropertyValue(name).trim()
  return { ink: token('--ink'), accent: token('--acc'), paper: token('--paper'), solid: token('--solid') }
}

/** The tower in space, in ink: turned by arrow keys, by its buttons or with the pointer, cut open through its axis. */
export function Solid(props: { readonly wide_mm: number; readonly high_mm: number }) {
  const bench = useBench()
  const [sight, setSight] = createSignal<Sight>({ bearing_deg: 30, tilt_deg: 15, cut: false, zoom: 1 })
  const [answer, setAnswer] = createSignal<SolidAnswer | null>(null)
  const [drawing, setDrawing] = createSignal<Ink | null>(null)
  const [broken, setBroken] = createSignal(false)
  let canvas!: HTMLCanvasElement
  const PX = 96 / 25.4
  const size = () => [Math.round(props.wide_mm * PX), Math.round(props.high_mm * PX)] as const
  onMount(() => {
    void import('../solid/ink.ts').then(({ ink }) => setDrawing(ink(canvas))).catch(() => setBroken(true))
  })
  onCleanup(() => drawing()?.end())
  const plan = createMemo(() => bench.evaluated()?.document)
  createEffect(() => {
    const document = plan()
    if (!document) return
    const job = solidMade(document)
    onCleanup(job.cancel)
    void job.answer.then(setAnswer)
  })
  createEffect(() => {
    const [a, d] = [answer(), drawing()]
    if (a?.kind === 'solid' && d) d.take(a.shapes)
  })
  createEffect(() => {
    const [a, d] = [answer(), drawing()]
    const seen = sight()
    bench.settings()
    if (a?.kind === 'solid' && d)
      requestAnimationFrame(() => d.draw(seen, size(), colours(canvas), shapeOf[bench.part()] ?? ''))
  })
  const turn = (by: number): void => void setSight((s) => ({ ...s, bearing_deg: (s.bearing_deg + by + 360) % 360 }))
  const stepped = (list: readonly number[], now: number, by: number): number =>
    list[Math.min(list.length - 1, Math.max(0, list.indexOf(now) + by))] ?? now
  const tilt = (by: number): void => void setSight((s) => ({ ...s, tilt_deg: stepped(TILTS, s.tilt_deg, by) }))
  const zoom = (by: number): void => void setSight((s) => ({ ...s, zoom: stepped(ZOOMS, s.zoom, by) }))
  const cut = (): void => void setSight((s) => ({ ...s, cut: !s.cut }))
  const acts: Readonly<Record<string, () => void>> = {
    ArrowLeft: () => turn(-STEP_deg),
    ArrowRight: () => turn(STEP_deg),
    ArrowUp: () => tilt(1),
    ArrowDown: () => tilt(-1),
    c: cut,
    C: cut,
    '+': () => zoom(1),
    '-': () => zoom(-1),
  }
  const onKey = (e: KeyboardEvent): void => {
    const act = acts[e.key]
    if (!act || e.ctrlKey || e.metaKey || e.altKey) return
    e.preventDefault()
    act()
  }
  const alt = (): string => {
    const a = answer()
    const shapes = a?.kind === 'solid' ? a.shapes : []
    const parts = shapes.map(({ name, places }) => fill(words[name as 'stub'] ?? name, { n: String(places.length) }))
    const s = sight()
    const slots = { bearing: String(s.bearing_deg), tilt: String(s.tilt_deg), parts: parts.join(', ') }
    return say(s.cut ? 'alt-cut' : 'alt', slots)
  }
  const trouble = (): string | null => {
    const a = answer()
    if (broken()) return say('no-gl')
    if (a === null) return say('working')
    if (a.kind === 'failed') return a.message
    if (a.kind === 'solid') return null
    if (a.because !== null) return say('because', { why: solidSentences[a.because] })
    return say('empty', { needs: a.needs.map((n) => placeName(n, english)).join(', ') })
  }
  const buttons: readonly (readonly [SolidViewKey, () => void])[] = [
    ['left', () => turn(-STEP_deg)],
    ['right', () => turn(STEP_deg)],
    ['up', () => tilt(1)],
    ['down', () => tilt(-1)],
    ['nearer', () => zoom(1)],
    ['further', () => zoom(-1)],
  ]
  const onPointer = (e: PointerEvent): void => {
    if (e.buttons !== 1) return
    setSight((s) => ({ ...s, bearing_deg: (s.bearing_deg - e.movementX / 2 + 360) % 360 }))
  }
  return (
    <figure class="view solid" style={{ width: `${size()[0]}px` }}>
      <figcaption>
        <span class="title">{say('title')}</span>
      </figcaption>
      <fieldset class="turntable" onKeyDown={onKey}>
        <legend class="sr">{say('group')}</legend>
        <canvas
          ref={canvas}
          role="img"
          aria-label={alt()}
          data-why="fact:drawing"
          style={{ width: `${size()[0]}px`, 'aspect-ratio': `${size()[0]} / ${size()[1]}` }}
          hidden={trouble() !== null}
          onPointerMove={onPointer}
          onPointerDown={(e) => e.currentTarget.setPointerCapture(e.pointerId)}
        />
        <Show when={trouble()}>
          {(t) => (
            <p class="src" role="status">
              {t()}
            </p>
          )}
        </Show>
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
      </fieldset>
    </figure>
  )
}

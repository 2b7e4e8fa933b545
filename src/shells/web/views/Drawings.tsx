import { createMemo, createSignal, For, Show } from 'solid-js'
import type { Drawing, Primitive, Rect } from '../../../render/drawing/primitives.ts'
import { svg } from '../../../render/drawing/svg.ts'
import { moved } from '../../../render/drawing/transform.ts'
import type { Sketch, SketchFigure } from '../../../render/tower/sketch.ts'
import { type Given, type SheetOf, sheetsOfDetail, sheetsOfTower } from '../drawings.ts'
import { type PartId, parts } from '../model/parts.ts'
import { say } from '../words.ts'
import type { Evaluated } from '../workers/protocol.ts'
import { late, lateView } from './arriving.ts'
import { useBench } from './bench.tsx'
import { LiveFigures } from './Live.tsx'
import { LiveInput } from './LiveInput.tsx'
import { Pins } from './Pins.tsx'

/** CSS pixels in a millimetre of the screen. */
const PX = 96 / 25.4

/** The part of the loop to which a mark belongs, before its own name: a site is of the stubs. */
function tagged(p: Primitive): Primitive {
  if (p.part === undefined) return p
  if (p.part.startsWith('site-')) return { ...p, part: `stubs ${p.part}` }
  return p.part === 'base' ? { ...p, part: 'drain' } : p
}

/** The inside of an SVG file: its elements, without the file around them. */
function marks(drawing: Drawing, box: Rect): string {
  const page = {
    width_mm: box.right - box.left,
    height_mm: box.top - box.bottom,
    drawing: moved(drawing.map(tagged), [-box.left, -box.bottom]),
  }
  const text = svg({ page, title: '', paint: 'class' })
  return text.slice(text.indexOf('</title>') + 8, text.lastIndexOf('</svg>'))
}

/** What a changed plan would draw otherwise: the marks and figures that the present drawing has not. */
function ghostly(now: Sketch, then: Sketch): Drawing {
  const here = new Set(now.marks.map((p) => JSON.stringify(p)))
  const figures = new Set(now.figures.map((f) => JSON.stringify(f.text)))
  return [
    ...then.marks.filter((p) => !(p.kind === 'path' && p.pen === null) && !here.has(JSON.stringify(p))),
    ...then.figures
      .map((f) => f.text)
      .filter((t) => !figures.has(JSON.stringify(t)))
      .map((t) => {
        const over = now.figures.some((f) => Math.hypot(f.text.at[0] - t.at[0], f.text.at[1] - t.at[1]) < 2)
        return over ? { ...t, text: `→ ${t.text}`, at: [t.at[0], t.at[1] - t.size_mm * 1.2] as const } : t
      }),
  ]
}

const isPart = (text: string): text is PartId => parts.some((p) => p.id === text)

/** Whether a sheet draws the chosen part by itself: then there is nothing in it to pick out. */
const ownPart = (sheet: string, part: PartId): boolean => part === sheet || (sheet === 'section' && part === 'stubs')

/** Lights one site in every drawing while it is pointed at. */
function light(target: EventTarget | null): void {
  const part = target instanceof Element ? (target.closest('[data-part]')?.getAttribute('data-part') ?? '') : ''
  const site = part.split(' ').find((t) => t.startsWith('site-'))
  for (const el of document.querySelectorAll('.hot')) el.classList.remove('hot')
  if (site) for (const el of document.querySelectorAll(`[data-part~="${site}"]`)) el.classList.add('hot')
}

function Sheet(props: { readonly sheet: SheetOf; readonly given: Given }) {
  const bench = useBench()
  const [edited, setEdited] = createSignal<SketchFigure | null>(null)
  const draw = (e: Evaluated | null): Sketch | null =>
    e && (e.whole || props.sheet.first) ? props.sheet.draw(e, props.given) : null
  const sketch = createMemo(() => draw(bench.evaluated()))
  const inside = createMemo(() => {
    const s = sketch()
    return s ? marks(s.marks, s.box) : ''
  })
  const ghost = createMemo(() => {
    const s = sketch()
    const then = draw(bench.ghost()?.evaluated ?? null)
    return s && then && then.scale === s.scale ? marks(ghostly(s, then), s.box) : ''
  })
  const pick = (target: EventTarget | null): void => {
    const part = target instanceof Element ? (target.closest('[data-part]')?.getAttribute('data-part') ?? '') : ''
    const id = part.split(' ').find(isPart)
    if (id) bench.choose(id)
  }
  const titles = () => props.sheet.titles(props.given)
  const scale = (n: number): string =>
    n <= 0 ? '' : say(n < 1 ? 'scale-up' : 'scale', { n: Number((n < 1 ? 1 / n : n).toFixed(1)) })
  return (
    <Show when={sketch()}>
      {(s) => {
        const w = () => s().box.right - s().box.left
        const h = () => s().box.top - s().box.bottom
        return (
          <figure class="view" classList={{ [props.sheet.id]: true }}>
            <figcaption>
              <For each={titles()}>
                {(title, i) => (
                  <span class="title" classList={{ on: title === bench.part(), second: i() > 0 }}>
                    {say(title)} <i data-why="fact:scale">{scale(s().scale)}</i>
                  </span>
                )}
              </For>
            </figcaption>
            <div class="paper">
              {/* biome-ignore lint/a11y: its figures are controls with names; every part can be chosen on the loop, in tab order */}
              <svg
                class="sheet"
                data-on={ownPart(props.sheet.id, bench.part()) ? undefined : bench.part()}
                viewBox={`0 0 ${w()} ${h()}`}
                width={w() * PX}
                height={h() * PX}
                onClick={(e) => pick(e.target)}
                onPointerOver={(e) => light(e.target)}
                onPointerLeave={() => light(null)}
              >
                <g innerHTML={inside()} />
                <LiveFigures sketch={s()} box={s().box} edit={setEdited} />
                <g class="ghost" data-why="fact:drawing" innerHTML={ghost()} />
                <Show when={props.sheet.id === 'tower'}>
                  <Pins sketch={s()} box={s().box} />
                </Show>
              </svg>
              <Show when={edited()}>
                {(figure) => <LiveInput box={s().box} figure={figure()} done={() => setEdited(null)} />}
              </Show>
            </div>
          </figure>
        )
      }}
    </Show>
  )
}

const Solid = lateView((l) => l.Solid)

/** The views that are asked for, those of the tower side by side on one height scale. */
export function Drawings(props: { readonly room_mm: number; readonly detail_mm: number }) {
  const bench = useBench()
  const given = createMemo<Given>(() => ({
    display: bench.display(),
    room_mm: props.room_mm,
    detail_mm: props.detail_mm,
    part: bench.part(),
    shown: (id) => bench.settings().views.includes(id),
  }))
  return (
    <div class="drawings" id="drawing" aria-busy={bench.stale()}>
      <Show when={bench.evaluated()} fallback={<p class="src">{say('computing')}</p>}>
        <div class="towers">
          <For each={[...sheetsOfTower, ...(late()?.sheetsOfFlow ?? [])]}>
            {(sheet) => <Sheet sheet={sheet} given={given()} />}
          </For>
          <Show when={given().shown('solid')}>
            <Solid wide_mm={props.detail_mm} high_mm={props.room_mm} />
          </Show>
        </div>
        <div class="details">
          <For each={[...(late()?.sheetsOfFeed ?? []), ...sheetsOfDetail]}>
            {(sheet) => <Sheet sheet={sheet} given={given()} />}
          </For>
        </div>
      </Show>
    </div>
  )
}

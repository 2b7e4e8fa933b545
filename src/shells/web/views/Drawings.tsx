import { createMemo, For, Show } from 'solid-js'
import type { Drawing, Rect } from '../../../render/drawing/primitives.ts'
import { svg } from '../../../render/drawing/svg.ts'
import { moved } from '../../../render/drawing/transform.ts'
import { type Sketch, type ViewOf, viewList } from '../drawings.ts'
import { type PartId, parts } from '../model/parts.ts'
import { say } from '../words.ts'
import { useBench } from './bench.tsx'
import { LiveDimensions } from './LiveDimensions.tsx'
import { Pins } from './Pins.tsx'

/** CSS pixels in a millimetre of the screen. */
const PX = 96 / 25.4

/** The inside of an SVG file: its elements, without the file around them. */
function marks(drawing: Drawing, box: Rect): string {
  const page = {
    width_mm: box.right - box.left,
    height_mm: box.top - box.bottom,
    drawing: moved(drawing, [-box.left, -box.bottom]),
  }
  const text = svg({ page, title: '', paint: 'class' })
  return text.slice(text.indexOf('</title>') + 8, text.lastIndexOf('</svg>'))
}

/** What a changed plan would draw otherwise: the marks that the present drawing has not. */
function ghostly(now: Drawing, then: Drawing): Drawing {
  const here = new Set(now.map((p) => JSON.stringify(p)))
  return then
    .filter((p) => p.kind !== 'path' || p.fill === 'none' || p.pen !== null)
    .filter((p) => !here.has(JSON.stringify(p)))
}

const isPart = (text: string | undefined): text is PartId => parts.some((p) => p.id === text)

function View(props: { readonly view: ViewOf; readonly room_mm: number }) {
  const bench = useBench()
  const draw = (e = bench.evaluated()): Sketch | null =>
    e ? props.view.draw(e, { display: bench.display(), room_mm: props.room_mm }) : null
  const sketch = createMemo(() => draw())
  const inside = createMemo(() => {
    const s = sketch()
    return s ? marks(s.drawing, s.box) : ''
  })
  const ghost = createMemo(() => {
    const [s, g] = [sketch(), bench.ghost()]
    const then = g ? draw(g.evaluated) : null
    return s && then ? marks(ghostly(s.drawing, then.drawing), s.box) : ''
  })
  const pick = (target: EventTarget | null): void => {
    const part = target instanceof Element ? target.closest('[data-part]')?.getAttribute('data-part') : null
    const id = part?.split(' ').find(isPart)
    if (id) bench.choose(id)
  }
  return (
    <figure class="view" classList={{ [props.view.id]: true }}>
      <figcaption>
        {say(props.view.title)}{' '}
        <Show when={sketch()}>{(s) => <i data-why="fact:scale">{say(s().scale.key, { n: s().scale.n })}</i>}</Show>
      </figcaption>
      <Show when={sketch()} fallback={<p class="src">{bench.evaluated() ? '' : say('computing')}</p>}>
        {(s) => {
          const w = () => s().box.right - s().box.left
          const h = () => s().box.top - s().box.bottom
          return (
            // biome-ignore lint/a11y/useKeyWithClickEvents: every part can be chosen on the loop, in tab order
            <svg
              class="sheet"
              role="img"
              aria-label={say(props.view.title)}
              data-on={bench.part()}
              data-why="fact:drawing"
              viewBox={`0 0 ${w()} ${h()}`}
              width={w() * PX}
              height={h() * PX}
              onClick={(e) => pick(e.target)}
            >
              <g innerHTML={inside()} />
              <g class="ghost" innerHTML={ghost()} />
              <Pins view={props.view.id} box={s().box} drawing={s().drawing} />
            </svg>
          )
        }}
      </Show>
      <Show when={sketch()}>{(s) => <LiveDimensions box={s().box} drawing={s().drawing} />}</Show>
    </figure>
  )
}

/** The views that are asked for, those of the tower side by side on one height scale. */
export function Drawings(props: { readonly room_mm: number }) {
  const bench = useBench()
  const shown = (group: ViewOf['group']) =>
    viewList.filter((v) => v.group === group && bench.settings().views.includes(v.id))
  return (
    <div class="drawings" id="drawing">
      <div class="tower">
        <For each={shown('tower')}>{(view) => <View view={view} room_mm={props.room_mm} />}</For>
      </div>
      <Show when={shown('detail').length > 0}>
        <div class="details">
          <For each={shown('detail')}>{(view) => <View view={view} room_mm={props.room_mm / 2} />}</For>
        </div>
      </Show>
    </div>
  )
}

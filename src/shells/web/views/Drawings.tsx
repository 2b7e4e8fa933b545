import { createMemo, createSignal, For, Show } from 'solid-js'
import type { SketchFigure } from '../../../render/tower/sketch.ts'
import { type PartId, parts } from '../model/parts.ts'
import type { Inked, Picture } from '../picture.ts'
import { say } from '../words.ts'
import { lateView } from './arriving.ts'
import { useBench } from './bench.tsx'
import { Ink } from './Ink.tsx'
import { LiveFigures } from './Live.tsx'
import { LiveInput } from './LiveInput.tsx'
import { Pins } from './Pins.tsx'
import { roving } from './roving.ts'
import { shrunk } from './shrunk.ts'
import { stays } from './stays.ts'

/** CSS pixels in a millimetre of the screen. */
const PX = 96 / 25.4

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

/** How many millimetres of the tower one of the drawing is, with its why; a chart has none. */
function Scale(props: { readonly of: number }) {
  const bench = useBench()
  const text = (): string => {
    const n = props.of
    return n <= 0 ? '' : say(n < 1 ? 'scale-up' : 'scale', { n: Number((n < 1 ? 1 / n : n).toFixed(1)) })
  }
  return (
    <Show when={text()}>
      {(said) => (
        <button
          type="button"
          class="fig"
          data-why="fact:scale"
          onClick={(e) => bench.explain('fact:scale', e.currentTarget)}
        >
          <span class="q">{said()}</span>
        </button>
      )}
    </Show>
  )
}

/** Whether a held change draws anything over a sheet. */
const drawnOver = (over: Inked | undefined): boolean =>
  over !== undefined && (over.strokes.length > 0 || over.letters !== '')

function Sheet(props: { readonly id: string }) {
  const bench = useBench()
  const [edited, setEdited] = createSignal<SketchFigure | null>(null)
  const sketch = createMemo(() => bench.pictures().find((p) => p.id === props.id) ?? null)
  const ghost = () => bench.ghost()?.over[props.id]
  const pick = (target: EventTarget | null): void => {
    const part = target instanceof Element ? (target.closest('[data-part]')?.getAttribute('data-part') ?? '') : ''
    const id = part.split(' ').find(isPart)
    if (id) bench.choose(id)
  }
  return (
    <Show when={sketch()}>
      {(s) => {
        const w = () => s().box.right - s().box.left
        const h = () => s().box.top - s().box.bottom
        const [times, watchOn] = shrunk(() => w() * PX)
        return (
          <figure class="view" classList={{ [props.id]: true }}>
            <figcaption>
              <For each={s().titles}>
                {(title, i) => (
                  <span class="title" classList={{ on: title === bench.part(), second: i() > 0 }}>
                    {say(title)} <Scale of={s().scale * times()} />
                  </span>
                )}
              </For>
              <Show when={drawnOver(ghost())}>
                <span class="src over-it" role="status">
                  {say('with-change')}
                </span>
              </Show>
            </figcaption>
            <div class="paper">
              {/* biome-ignore lint/a11y: its figures are controls with names; every part can be chosen on the loop, in tab order */}
              <svg
                class="sheet"
                ref={(sheet) => {
                  roving(sheet)
                  watchOn(sheet)
                }}
                data-on={ownPart(props.id, bench.part()) ? undefined : bench.part()}
                viewBox={`0 0 ${w()} ${h()}`}
                width={w() * PX}
                height={h() * PX}
                onClick={(e) => pick(e.target)}
                onPointerOver={(e) => light(e.target)}
                onPointerLeave={() => light(null)}
              >
                <g>
                  <Ink of={s()} />
                </g>
                <LiveFigures sketch={s()} box={s().box} edit={setEdited} />
                <g class="ghost" data-why="fact:drawing">
                  <Show when={ghost()}>{(over) => <Ink of={over()} />}</Show>
                </g>
                <Show when={props.id === 'tower'}>
                  <Pins sketch={s()} />
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

/** Sheets of the tower stand side by side on one height scale; all others beside them. */
const ofTower = (p: Picture): boolean => p.id === 'tower' || p.id === 'flow'

/** The views that are asked for. */
export function Drawings() {
  const bench = useBench()
  const ids = (tower: boolean) =>
    bench
      .pictures()
      .filter((p) => ofTower(p) === tower)
      .map((p) => p.id)
  return (
    <div class="drawings" id="drawing" aria-busy={bench.stale()}>
      <Show when={bench.evaluated()} fallback={<p class="src">{say('computing')}</p>}>
        <div class="towers" ref={stays}>
          <For each={ids(true)}>{(id) => <Sheet id={id} />}</For>
          <Show when={bench.settings().views.includes('solid')}>
            <Solid wide_mm={bench.room().detail_mm} high_mm={bench.room().room_mm} />
          </Show>
        </div>
        <div class="details" ref={stays}>
          <For each={ids(false)}>{(id) => <Sheet id={id} />}</For>
        </div>
      </Show>
    </div>
  )
}

import { For, Show } from 'solid-js'
import { stopFigure } from '../model/loop-figures.ts'
import { loop, type Part, type PartId, partOf } from '../model/parts.ts'
import { say } from '../words.ts'
import { Balloon } from './Balloon.tsx'
import { useBench } from './bench.tsx'

/** Stops of the racetrack on a phone: the upper row from left to right, the lower row on the way back. */
const racetrack: Readonly<Record<string, readonly [x: number, y: number]>> = {
  distributor: [0, 0],
  column: [1, 0],
  stubs: [2, 0],
  cups: [3, 0],
  roots: [4, 0],
  drain: [3, 1],
  reservoir: [2, 1],
  pump: [1, 1],
  riser: [0, 1],
  water: [-1, 2],
  shelf: [0, 2],
  batch: [1, 2],
}

/** Where a figure needs two lines it breaks after a comma, never between a number and its unit. */
const unbroken = (text: string): string => text.replaceAll(/(?<!,) /g, '\u00a0')

function Stop(props: { readonly part: Part & { readonly id: PartId } }) {
  const bench = useBench()
  const on = () => bench.part() === props.part.id
  const figure = () => {
    const e = bench.evaluated()
    return e ? stopFigure(props.part.id, e, bench.display()) : null
  }
  /** Keys of the part's own findings: as text they stay the same things from edit to edit. */
  const mine = () =>
    bench
      .order()
      .filter((key) => partOf(bench.findings().get(key)?.at ?? '-') === props.part.id)
      .slice(0, 3)
  const at = () => racetrack[props.part.id]!
  return (
    <li
      class={`stop ${props.part.stop!.side}`}
      classList={{ on: on() }}
      style={{ '--y': `${props.part.stop!.y}px`, '--px': `${at()[0]}`, '--py': `${at()[1]}` }}
    >
      <a
        href={`#${props.part.id}`}
        aria-current={on() ? 'true' : undefined}
        data-part={props.part.id}
        onClick={(e) => {
          e.preventDefault()
          bench.setAct('draw')
          bench.choose(props.part.id)
        }}
      >
        <i class="st" aria-hidden="true" />
        <b>{say(props.part.id)}</b>
        <span class="bals">
          <For each={mine()}>
            {(key) => (
              <Balloon
                number={bench.order().indexOf(key) + 1}
                verdict={bench.findings().get(key)?.verdict ?? 'pass'}
                on={bench.open() === key}
                finding={key}
              />
            )}
          </For>
        </span>
      </a>
      <Show when={figure()} fallback={<span class="fig blank" aria-hidden="true" />}>
        {(f) => (
          <button type="button" class="fig" data-why={f().why} onClick={(e) => bench.explain(f().why, e.currentTarget)}>
            {unbroken(f().text)}
          </button>
        )}
      </Show>
    </li>
  )
}

/** The way of the water is the way around: up the riser, down the column, home. Arrow keys go round and round. */
export function Loop() {
  const bench = useBench()
  const onKeyDown = (e: KeyboardEvent): void => {
    const step = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 }[e.key]
    const target = e.target instanceof HTMLElement ? e.target.closest('a') : null
    if (step === undefined || !target) return
    e.preventDefault()
    const here = loop.findIndex((p) => p.id === target.dataset['part'])
    const next = loop[(here + step + loop.length) % loop.length]!
    bench.choose(next.id)
    const links = e.currentTarget instanceof HTMLElement ? e.currentTarget.querySelectorAll('a') : []
    for (const link of links) if (link.dataset['part'] === next.id) link.focus()
  }
  return (
    <nav class="loop" aria-label={say('loop')} onKeyDown={onKeyDown}>
      <svg class="upright" viewBox="0 0 236 800" aria-hidden="true">
        <path class="lp" d="M86 706V62A18 18 0 0 1 122 62" />
        <path class="lp drops" d="M122 66V580" />
        <path class="lp" d="M122 580V734A18 18 0 0 1 104 752A18 18 0 0 1 86 734V706" />
        <path class="lp" d="M142 614V734A18 18 0 0 1 124 752H110" />
        <path class="ltip" d="M82.4 300l3.6 -9l3.6 9z" />
        <path class="ltip" d="M118.4 690l3.6 9l3.6 -9z" />
      </svg>
      <svg class="lying" viewBox="0 0 390 148" preserveAspectRatio="none" aria-hidden="true">
        <path class="lp drops" d="M40 31H350" />
        <path class="lp" d="M350 31A22 22 0 0 1 350 75H40A22 22 0 0 1 40 31" />
        <path class="lp" d="M47 123H210A22 22 0 0 0 232 101V82" />
      </svg>
      <ul>
        <For each={loop}>{(part) => <Stop part={part} />}</For>
      </ul>
    </nav>
  )
}

import { createMemo, For, Index, Show } from 'solid-js'
import type { Rect } from '../../../render/drawing/primitives.ts'
import { type Pin, pinsOf, RADIUS_mm } from '../model/pins.ts'
import { ofFinding } from '../model/reasons.ts'
import type { Picture } from '../picture.ts'
import { useBench } from './bench.tsx'

/** Balloons on the drawing, each with a leader that ends in a dot on the very place. */
export function Pins(props: { readonly sketch: Picture }) {
  const bench = useBench()
  const reach = (): number => {
    const reach_m = bench.evaluated()?.facts.mouthReach_m ?? 0.08
    return (reach_m * 1000) / props.sketch.scale + 11
  }
  const pins = createMemo(() => pinsOf(props.sketch, bench.order(), bench.findings(), reach()))
  return <Index each={pins()}>{(pin) => <PinView pin={pin()} box={props.sketch.box} />}</Index>
}

function PinView(props: { readonly pin: Pin; readonly box: Rect }) {
  const bench = useBench()
  const x = (n: number): number => n - props.box.left
  const y = (n: number): number => props.box.top - n
  const on = () => props.pin.keys.includes(bench.open() ?? '')
  const spot = (i: number) => {
    const at = props.pin.at[i] ?? props.pin.to
    return [x(at[0]), y(at[1])] as const
  }
  return (
    <g class="pin" classList={{ on: on() }}>
      <path class="lead" d={`M${spot(0)[0]} ${spot(0)[1]}L${x(props.pin.to[0])} ${y(props.pin.to[1])}`} />
      <circle class="dot" cx={x(props.pin.to[0])} cy={y(props.pin.to[1])} r="0.45" />
      <For each={props.pin.keys}>
        {(key, i) => {
          const number = () => bench.order().indexOf(key) + 1
          return (
            <Show when={bench.findings().get(key)}>
              {(finding) => (
                // biome-ignore lint/a11y: the same balloon stands in the list, in tab order
                <g
                  class={`bal ${finding().verdict}${bench.open() === key ? ' on' : ''}`}
                  classList={{ on: bench.open() === key }}
                  data-why={ofFinding(key)}
                  onClick={(e) => {
                    e.stopPropagation()
                    bench.openFinding(key)
                  }}
                >
                  <circle class="ring" cx={spot(i())[0]} cy={spot(i())[1]} r={RADIUS_mm} />
                  <text x={spot(i())[0]} y={spot(i())[1] + 1.05}>
                    {number()}
                  </text>
                </g>
              )}
            </Show>
          )
        }}
      </For>
    </g>
  )
}

import { createMemo, Index, Show } from 'solid-js'
import type { Finding } from '../../../findings/finding.ts'
import { ends, type Quantity } from '../../../kernel/units.ts'
import { decimals, show } from '../../../render/display.ts'
import { ofFinding } from '../model/reasons.ts'
import { type RulerScale, rulerScale } from '../model/ruler.ts'
import { say } from '../words.ts'
import { findingKey } from '../workers/protocol.ts'
import { useBench } from './bench.tsx'

const WIDTH = 300
const LEFT = 6
const AXIS = 34

/** The quantity's own scale: the value with its band, the must as a heavy stroke, the wanted dashed, the good side hatched. */
export function Ruler(props: { readonly finding: Finding; readonly gives: Quantity | null }) {
  const bench = useBench()
  const measured = (): Quantity => props.finding.measured!
  const bands = () => [props.finding.must, props.finding.want]
  const scale = createMemo(() =>
    rulerScale(props.gives ? [measured(), props.gives] : [measured()], bands(), measured().unit, bench.display()),
  )
  const x = (engine: number): number => at(scale().shown(engine))
  const at = (n: number): number => LEFT + ((n - scale().from) / (scale().to - scale().from)) * (WIDTH - LEFT - 4)
  const good = (): readonly [number, number] => {
    const { min, max } = props.finding.must
    return [
      min === undefined ? LEFT : Math.max(LEFT, x(min)),
      max === undefined ? WIDTH - 4 : Math.min(WIDTH - 4, x(max)),
    ]
  }
  const limits = (band: { readonly min?: number; readonly max?: number }): number[] =>
    [band.min, band.max].filter((n) => n !== undefined)
  return (
    <svg
      class="ruler"
      viewBox={`0 0 ${WIDTH} 58`}
      role="img"
      aria-label={say('ruler')}
      data-why={ofFinding(findingKey(props.finding))}
    >
      <rect class="okband" x={good()[0]} y={AXIS - 16} width={Math.max(0, good()[1] - good()[0])} height="16" />
      <Index each={limits(props.finding.want)}>
        {(p) => <path class="want" d={`M${x(p())} ${AXIS}V${AXIS - 16}`} />}
      </Index>
      <Index each={limits(props.finding.must)}>
        {(limit) => (
          <>
            <path class="must" d={`M${x(limit())} ${AXIS}V${AXIS - 22}`} />
            <text
              class="lt"
              classList={{ end: x(limit()) > WIDTH * 0.6 }}
              x={x(limit()) + (x(limit()) > WIDTH * 0.6 ? -4 : 4)}
              y={9}
            >
              {say('must')} {show({ unit: measured().unit, value: limit() }, bench.display()).figure}
            </text>
          </>
        )}
      </Index>
      <path class="rl" d={`M${LEFT} ${AXIS}H${WIDTH - 4}`} />
      <Strokes scale={scale()} at={at} />
      <text class="lt end" x={WIDTH - 4} y={9}>
        {scale().unit}
      </text>
      <Whisker of={measured()} x={x} ghost={false} />
      <Show when={props.gives}>{(g) => <Whisker of={g()} x={x} ghost={true} />}</Show>
    </svg>
  )
}

/** Numbered strokes and those between them. */
function Strokes(props: { readonly scale: RulerScale; readonly at: (n: number) => number }) {
  const bench = useBench()
  const digits = (): number => Math.max(0, -Math.floor(Math.log10(props.scale.minor * 5) + 1e-9))
  const minors = (): string => {
    const { from, to, minor } = props.scale
    const count = Math.min(200, Math.floor((to - from) / minor + 1e-9))
    return Array.from({ length: count }, (_, i) => `M${props.at(from + (i + 1) * minor)} ${AXIS}v4`).join('')
  }
  return (
    <>
      <path class="rt" d={minors()} />
      <Index each={props.scale.major}>
        {(n) => (
          <>
            <path class="rl" d={`M${props.at(n())} ${AXIS}v8`} />
            <text class="lt mid" x={props.at(n())} y={AXIS + 20}>
              {decimals(n(), digits(), bench.display().decimal)}
            </text>
          </>
        )}
      </Index>
    </>
  )
}

function Whisker(props: { readonly of: Quantity; readonly x: (n: number) => number; readonly ghost: boolean }) {
  const e = (): readonly [number, number] => [props.x(ends(props.of)[0]), props.x(ends(props.of)[1])]
  const y = AXIS - 8
  return (
    <g classList={{ g: props.ghost }}>
      <Show when={e()[1] - e()[0] > 1}>
        <path class="whisk" d={`M${e()[0]} ${y - 4}v8M${e()[0]} ${y}H${e()[1]}M${e()[1]} ${y - 4}v8`} />
      </Show>
      <circle class="pt" cx={(e()[0] + e()[1]) / 2} cy={y} r="4" />
    </g>
  )
}

import type { TemplatesFacts } from '../../disciplines/templates/index.ts'
import { orNull } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { type Display, decimals } from '../display.ts'
import { bounds } from '../drawing/bounds.ts'
import { type Drawing, line, type Point, polyline, rectangle } from '../drawing/primitives.ts'
import { stubSection } from '../views/section.ts'
import { figureOf } from './figures.ts'
import { plant } from './leaves.ts'
import { type FigureReason, SERIES, type Sketch } from './sketch.ts'

interface JointInput {
  readonly plan: Plan
  readonly templates: TemplatesFacts
  readonly display: Display
  readonly room: { readonly wide_mm: number; readonly high_mm: number }
  readonly texts: { readonly mark: string }
}

/** What the figures of the section show, in the order in which they are drawn. */
const SHOWN: readonly FigureReason[] = [
  { field: 'column/stub/lowerSide' },
  { field: 'column/stub/pipe' },
  { field: 'column/pipe' },
  { field: 'column/stub/angle' },
  { fact: 'templates/joint' },
]

/** Figures of the section that stand far out and would shrink the whole: the wall, and the rise of the lip. */
const LEFT_OUT = [3, 5]

/** The section without some of its dimensions; each ends with its figure. */
function trimmed(drawing: Drawing): Drawing {
  const ends = drawing.flatMap((p, i) => (p.kind === 'text' ? [i] : []))
  if (ends.length < 7) return drawing
  return drawing.filter((_, i) => !LEFT_OUT.some((n) => i > ends[n - 1]! && i <= ends[n]!))
}

/** Riser, falling water and film, a plant and its roots: ornament but for the sizes of pipe, bore and stub. */
function alive({ plan, templates: t }: JointInput, k: number): { readonly back: Drawing; readonly front: Drawing } {
  const { stub, axisLength_m: L } = t.joint
  const Ri = (stub.columnRadius_m - stub.columnWall_m) * k
  const { angle_rad: th, stubRadius_m: r } = stub
  const at = (s: number, u: number): Point => [
    (s * Math.sin(th) - u * Math.cos(th)) * k,
    (s * Math.cos(th) + u * Math.sin(th)) * k,
  ]
  const low = -0.2 * stub.columnRadius_m * k
  const high = (L * Math.cos(th) + 0.6 * r) * k
  const hose = plan.riser?.bore_m === undefined ? 0 : (plan.riser.bore_m / 2) * k
  const rain = Array.from({ length: 26 }, (_, i): Drawing => {
    const x = (((i * 0.618) % 1) * 2 - 1) * (Ri - 2)
    const y = low + ((i * 0.377) % 1) * (high - low)
    const long = 0.9 + ((i * 7) % 5) * 0.35
    return Math.abs(x) < hose + 1.6 ? [] : [line([x, y], [x, y - long], 'thin', { part: 'riser water' })]
  })
  const roots = Array.from({ length: 9 }, (_, i) => {
    const u = ((i - 4) / 4) * r * 0.62
    const s0 = L - 0.5 * (L - stub.columnRadius_m / Math.sin(th))
    const end = at(Math.max(0.25, 0.55 - ((i * 5) % 4) * 0.1) * s0, u * 0.5)
    const [x0, y0] = at(s0, u)
    const drop = 2 + ((i * 3) % 5) * 1.7
    return polyline(
      [0, 0.25, 0.5, 0.75, 1].map(
        (q): Point => [x0 + (end[0] - x0) * q, y0 + (end[1] - y0) * q - drop * q * q + 0.4 * Math.sin(9 * q + i)],
      ),
      'ornament',
      { part: 'roots' },
    )
  })
  const canopy_m = plan.column?.sites?.canopy_m ?? plan.crops?.[0]?.canopy_m ?? 0.15
  return {
    back: [
      ...(hose > 0
        ? [rectangle({ left: -hose, right: hose, bottom: low, top: high }, 'visible', { fill: 'water', part: 'riser' })]
        : []),
      ...rain.flat(),
      line([-Ri + 0.35, low], [-Ri + 0.35, high], 'thin', { part: 'riser water' }),
      ...plant({
        at: at(L * 0.97, 0),
        lean_rad: Math.PI / 2 - th + 0.25,
        size_mm: Math.min(22, canopy_m * k * 0.42),
        seed: 7,
      }),
    ],
    front: roots,
  }
}

function at(input: JointInput, scale: number): Sketch {
  const k = 1000 / scale
  const { plan, templates, display, texts } = input
  const drawn = trimmed(
    stubSection({
      plan,
      templates,
      cup: orNull(templates.cup),
      ratio: k,
      clear_mm: ((plan.riser?.bore_m ?? 0) / 2) * k,
      texts: { figure: figureOf(display), angle: (rad) => `${decimals((rad * 180) / Math.PI, 0)}°`, mark: texts.mark },
    }),
  )
  const { back, front } = alive(input, k)
  const box = bounds([...back, ...drawn, ...front]) ?? { left: 0, right: 1, bottom: 0, top: 1 }
  const lines = drawn
    .filter((p) => p.kind !== 'text')
    .map((p) => ({ ...p, part: p.part === 'cup' ? 'cups' : (p.part ?? 'section') }))
  return {
    marks: [...back, ...lines, ...front],
    figures: drawn
      .filter((p) => p.kind === 'text')
      .map((text, i) => ({ text, why: SHOWN[i] ?? { fact: 'templates/joint' } })),
    places: {},
    box: { left: box.left - 0.5, right: box.right + 0.5, bottom: box.bottom - 1, top: box.top + 1 },
    scale,
  }
}

/** A detail may stand between the scales of whole sheets: a third, a quarter and a sixth are workshop scales too. */
const JOINT_SERIES = [1, 1.5, 2, 2.5, 3, 4, 5, 6, ...SERIES.filter((n) => n > 6)] as const

/** A section through a stub as large as the room allows. */
export function jointSketch(input: JointInput): Sketch | null {
  for (const scale of JOINT_SERIES) {
    const sketch = at(input, scale)
    const { left, right, bottom, top } = sketch.box
    if (right - left <= input.room.wide_mm && top - bottom <= input.room.high_mm) return sketch
  }
  return null
}

import type { LayoutFacts } from '../../disciplines/layout/index.ts'
import type { Finding } from '../../findings/finding.ts'
import { balloon } from '../drawing/marks.ts'
import type { Drawing, Point, Primitive } from '../drawing/primitives.ts'
import { paragraph, subheading } from '../paper/words.ts'
import { findingText } from '../words/sentences.ts'
import type { Context } from './context.ts'

/** What is wrong first, then what is to be watched; what cannot be judged yet is not on paper. */
function openFindings(c: Context): readonly Finding[] {
  return (['fail', 'watch'] as const).flatMap((v) =>
    c.findings.filter((f) => f.verdict === v && c.words.findings[f.id] !== undefined),
  )
}

/** Balloons with the sentences of what fails or is to be watched, and how many found no room. */
export function findingList(
  c: Context,
  at: Point,
  width_mm: number,
  height_mm: number,
): { readonly drawing: Drawing; readonly height_mm: number } {
  const open = openFindings(c)
  const head = subheading({ at, text: c.say('findings-title'), width_mm })
  if (open.length === 0) {
    const none = paragraph({ at: [at[0], at[1] - head.height_mm], width_mm, text: c.say('findings-none') })
    return { drawing: [...head.drawing, ...none.drawing], height_mm: head.height_mm + none.height_mm }
  }
  const out: Primitive[] = [...head.drawing]
  let gone = head.height_mm + 1
  for (const [i, f] of open.entries()) {
    const { sentence } = findingText(f, c.words, c.display)
    const block = paragraph({ at: [at[0] + 8, at[1] - gone], width_mm: width_mm - 8, text: sentence, size_mm: 3.4 })
    const last = i === open.length - 1
    if (gone + block.height_mm > height_mm - (last ? 0 : 6)) {
      const more = paragraph({
        at: [at[0] + 8, at[1] - gone],
        width_mm: width_mm - 8,
        text: c.say('findings-more', { n: String(open.length - i) }),
        size_mm: 3.2,
        face: 'italic',
      })
      return { drawing: [...out, ...more.drawing], height_mm: gone + more.height_mm }
    }
    out.push(
      ...balloon({ centre: [at[0] + 2.6, at[1] - gone - 2.1], text: String(i + 1), solid: f.verdict === 'fail' }),
      ...block.drawing,
    )
    gone += block.height_mm + 2
  }
  return { drawing: out, height_mm: gone }
}

/** One line for each finding that is open, with the number that its balloon carries on the drawing. */
export function shortFindings(c: Context, at: Point, width_mm: number, height_mm: number): Drawing {
  const open = openFindings(c)
  if (open.length === 0 || height_mm < 20) return []
  const head = subheading({ at, text: c.say('findings-title'), width_mm })
  const out: Primitive[] = [...head.drawing]
  let gone = head.height_mm + 1
  let told = 0
  for (const [i, f] of open.entries()) {
    if (i >= MOST_BALLOONS) break
    const text = findingText(f, c.words, c.display)
    const block = paragraph({
      at: [at[0] + 7.4, at[1] - gone],
      width_mm: width_mm - 7.4,
      text: `${text.short}: ${text.measured}`,
      size_mm: 3.2,
    })
    if (gone + block.height_mm > height_mm - 6) break
    told = i + 1
    out.push(
      ...balloon({
        centre: [at[0] + 2.4, at[1] - gone - 1.9],
        text: String(i + 1),
        solid: f.verdict === 'fail',
        size_mm: 2.6,
      }),
      ...block.drawing,
    )
    gone += block.height_mm + 1.6
  }
  if (told < open.length) {
    const text = c.say('findings-next', { n: String(open.length - told) })
    const at2: Point = [at[0] + 7.4, at[1] - gone]
    out.push(...paragraph({ at: at2, width_mm: width_mm - 7.4, text, size_mm: 3.2, face: 'italic' }).drawing)
  }
  return out
}

/** Where on the elevation a finding belongs, as a share of the way to the right and a height above the floor. */
function spotOf(
  f: Finding,
  e: { readonly foot_m: number; readonly top_m: number; readonly lid_m: number | null; readonly radius_m: number },
  last_m: number,
): Point {
  const at = f.at
  if (/^distributor|^riser\/outlet/.test(at)) return [0, e.top_m - 0.02]
  if (/^(reservoir|drain|water)/.test(at)) return [0.7 * e.radius_m, e.foot_m + 0.5 * (e.lid_m ?? 0.1)]
  if (/^(pump|riser)/.test(at)) return [-0.9 * e.radius_m, e.foot_m + 0.2 * (e.lid_m ?? 0.2)]
  if (/^column\/(stub|cup|pocket|sites)/.test(at)) return [0, e.foot_m + last_m - 0.02]
  if (/^(place|column\/base)/.test(at)) return [e.radius_m, e.top_m - 0.05]
  return [e.radius_m, e.foot_m + 0.5 * (e.top_m - e.foot_m)]
}

/** Balloons to the right of the elevation, spread so that none covers another, each with a leader to its place. */
export function balloons(
  c: Context,
  e: Parameters<typeof spotOf>[1] & { readonly half_m: number },
  layout: LayoutFacts,
  ratio: number,
): Drawing {
  const x = e.half_m * ratio + 7
  const wanted = openFindings(c)
    .slice(0, MOST_BALLOONS)
    .map((f, i) => ({ f, number: i + 1, spot: spotOf(f, e, layout.lastMark_m) }))
    .sort((a, b) => a.spot[1] - b.spot[1])
  // Upwards each stands clear of the one below; then the highest comes down to the column's top and pushes back.
  const ys: number[] = []
  for (const w of wanted)
    ys.push(Math.max((ys.at(-1) ?? Number.NEGATIVE_INFINITY) + BALLOON_STEP_mm, w.spot[1] * ratio + 3))
  let cap = e.top_m * ratio
  for (let i = ys.length - 1; i >= 0; i--) {
    ys[i] = Math.min(ys[i]!, cap)
    cap = ys[i]! - BALLOON_STEP_mm
  }
  return wanted.flatMap(({ f, number, spot }, i) =>
    balloon({
      centre: [x, ys[i]!],
      to: [spot[0] * ratio, spot[1] * ratio],
      text: String(number),
      solid: f.verdict === 'fail',
      size_mm: 2.6,
    }),
  )
}

const BALLOON_STEP_mm = 6
/** More leaders than this hide the drawing. */
const MOST_BALLOONS = 9

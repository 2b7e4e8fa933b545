import { isKnown, orNull } from '../../plan/known.ts'
import { bounds } from '../drawing/bounds.ts'
import type { Drawing } from '../drawing/primitives.ts'
import { cupBlock } from '../sheets/gauge.ts'
import { tablesOf } from '../sheets/marking.ts'
import { fittingScale } from '../sheets/scale.ts'
import type { SetPage } from '../sheets/set.ts'
import { dayRows, tippingCaption, tippingRows } from '../sheets/stand.ts'
import { pumpCurve } from '../views/pump-curve.ts'
import { stubSection } from '../views/section.ts'
import { tippingChart } from '../views/tipping.ts'
import { atOrigin } from './frame.ts'
import { type Given, heading, text } from './input.ts'
import type { Block, Chapter } from './model.ts'
import { firstPages } from './pages-of-set.ts'
import { tankPicture } from './pictures-tank.ts'

const COLUMN_mm = 86
const SECTION = { width_mm: 70, height_mm: 84 }
/** Figures of the section stand outside its lines. */
const FIGURES_mm = 16
const UNDER_mm = 6
/** The chart without the figures beside its axes. */
const CHART = { width_mm: 76, height_mm: 38 }
const PUMP_CHART = { ...CHART, height_mm: 48 }

/** The section through a stub and, under it, how the cup sits. */
function section(g: Given): readonly Block[] {
  const t = orNull(g.facts.templates)
  if (t === null) return []
  const { stub } = t.joint
  const R = stub.columnRadius_m
  const { ratio, reduction } = fittingScale({
    width_m: R + t.stub.mouthReach_m + stub.stubRadius_m * Math.cos(stub.angle_rad),
    height_m: t.stub.mouthRise_m + stub.stubRadius_m * Math.sin(stub.angle_rad) + 0.6 * R,
    room: { ...SECTION, width_mm: SECTION.width_mm - FIGURES_mm },
    display: g.display,
  })
  const { figure, size, angle, say } = g.sheet
  const texts = { figure, size, angle, mark: say('note-mark') }
  const view = atOrigin(stubSection({ plan: g.plan, templates: t, cup: orNull(t.cup), ratio, texts }))
  const box = bounds(view)
  const cup: Drawing = box === null ? [] : cupBlock(g.sheet, t, [box.left, box.bottom - UNDER_mm], COLUMN_mm).drawing
  const scale = say('at-scale', { n: String(reduction) })
  const alt = `${say('section-title')}, ${scale}`
  return [heading(alt), { kind: 'picture', picture: { drawing: atOrigin([...view, ...cup]), alt } }]
}

/** Heights from one datum and arcs from one line, as they are marked. */
function marks(g: Given): readonly Block[] {
  if (!isKnown(g.facts.layout)) return []
  const layout = g.facts.layout.known
  const { heights, rows, arcs, arcRows } = tablesOf(g.sheet, layout)
  return [
    heading(g.sheet.say('marking-title')),
    text(g.sheet.say('marking-sub', { datum: g.sheet.say(layout.datum) })),
    { kind: 'table', id: 'heights', columns: heights, rows, ticked: true },
    { kind: 'table', id: 'arcs', columns: arcs, rows: arcRows, ticked: true },
    text(g.sheet.say('exact-off'), 'quiet'),
  ]
}

const shown = (title: string, drawing: Drawing | null): readonly Block[] =>
  drawing === null || drawing.length === 0
    ? []
    : [heading(title), { kind: 'picture', picture: { drawing: atOrigin(drawing), alt: title } }]

const numbers = (id: string, rows: readonly (readonly [string, string | null])[]): readonly Block[] => {
  const told = rows.flatMap(([name, figure]) => (figure === null ? [] : [[name, figure]]))
  const columns = [
    { heading: '', align: 'words' as const },
    { heading: '', align: 'figures' as const },
  ]
  return told.length === 0 ? [] : [{ kind: 'table', id, columns, rows: told, ticked: false }]
}

/** What the pump gives against what is lifted and lost, and the tank with its lines. */
function water(g: Given): readonly Block[] {
  const { facts, words, display, sheet } = g
  const needed_m3_s = g.plan.riser?.neededFlow_m3_s ?? null
  const chart = pumpCurve({ facts: facts.hydraulics, needed_m3_s, words: words.waterPath, display, ...PUMP_CHART })
  return [...shown(sheet.say('figure-pump'), chart), ...shown(sheet.say('figure-levels'), tankPicture(g))]
}

/** What the tower stands of wind and hands. */
function stand(g: Given): readonly Block[] {
  const { facts, words, display, sheet } = g
  const tipping = orNull(facts.structure.tipping)
  if (tipping === null) return []
  const chart = tippingChart({ facts: tipping, words: words.standCharts, display, ...CHART })
  return [...shown(sheet.say(tippingCaption(tipping)), chart), ...numbers('tipping', tippingRows(sheet, tipping))]
}

/** What a hot day makes of the water, and a cold one. */
function heat(g: Given): readonly Block[] {
  const day = g.facts.day === null ? null : orNull(g.facts.day)
  return day === null ? [] : [heading(g.sheet.say('figure-day')), ...numbers('day', dayRows(g.sheet, day))]
}

/** Drawings to look at: the whole, a joint and its marks, the water, what it stands. */
export function drawingsChapter(g: Given, pages: readonly SetPage[]): Chapter | null {
  const blocks = [...firstPages(pages, ['overview']), ...section(g), ...marks(g), ...heat(g), ...water(g), ...stand(g)]
  return blocks.length === 0 ? null : { id: 'drawings', title: g.tell('drawings-title'), blocks }
}

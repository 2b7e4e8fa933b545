import { shownText } from './letters.ts'
import { letteringOnTop } from './order.ts'
import { pens } from './pens.ts'
import type { Arc, Circle, Face, Fill, Lettering, Line, Page, Path, Pen, Point, Primitive } from './primitives.ts'
import { polar } from './vector.ts'

export interface SvgOptions {
  readonly page: Page
  /** Read out instead of the picture. */
  readonly title: string
  /**
   * `ink` writes weight, dash and black into each element, for paper and cutters. `class` writes only class names
   * (`pen-cut`, `fill-wash`, `face-drafting`, `tone-quiet`, `halo`) and `data-part`, for a page with its own style.
   */
  readonly paint?: 'ink' | 'class'
  /** Typefaces to carry inside the file, as the bytes in base 64 by face. */
  readonly embedded?: Partial<Readonly<Record<Face, string>>>
}

const families: Readonly<Record<Face, { readonly family: string; readonly weight: number; readonly italic: boolean }>> =
  {
    drafting: { family: "'Rootfall Drafting', 'Routed Gothic', sans-serif", weight: 400, italic: false },
    serif: { family: "'Source Serif 4', serif", weight: 400, italic: false },
    italic: { family: "'Source Serif 4', serif", weight: 400, italic: true },
    medium: { family: "'Source Serif 4', serif", weight: 500, italic: false },
    strong: { family: "'Source Serif 4', serif", weight: 600, italic: false },
  }

const INK = '#000'
const fills: Readonly<Record<Fill, string>> = {
  none: 'none',
  solid: INK,
  paper: '#fff',
  wash: '#e8e8e8',
  water: '#e4ecf0',
}
const tones: Readonly<Record<Lettering['tone'], string>> = { ink: INK, quiet: INK, paper: '#fff' }
/** Paper round a figure, both sides together. */
const HALO_mm = 0.8

/** Four places: a ten-thousandth of a millimetre, far below what a printer can show. */
export const figure = (n: number): string => {
  const s = n.toFixed(4).replace(/\.?0+$/, '')
  return s === '-0' ? '0' : s
}

// XML 1.0 knows no control characters besides tab and line ends; lone surrogates are no characters either.
const forbidden = /\p{Cc}|\p{Cs}|\ufffe|\uffff/gu

const escaped = (s: string): string =>
  s.replace(forbidden, '').replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;')

const attributes = (pairs: Readonly<Record<string, string | undefined>>): string =>
  Object.entries(pairs)
    .filter(([, v]) => v !== undefined)
    .map(([k, v]) => ` ${k}="${escaped(v!)}"`)
    .join('')

type Paint = 'ink' | 'class'

function lineStyle(pen: Pen | null, fill: Fill, paint: Paint): Readonly<Record<string, string | undefined>> {
  if (paint === 'class') return { class: [pen && `pen-${pen}`, `fill-${fill}`].filter(Boolean).join(' ') }
  if (pen === null) return { fill: fills[fill] }
  const { width_mm, dash_mm } = pens[pen]
  return {
    fill: fills[fill],
    stroke: INK,
    'stroke-width': figure(width_mm),
    'stroke-dasharray': dash_mm.length > 0 ? dash_mm.map(figure).join(' ') : undefined,
  }
}

const place = ([x, y]: Point): string => `${figure(x)} ${figure(y)}`

type Shape = Line | Path | Arc | Circle

function shape(p: Shape, down: (q: Point) => Point, paint: Paint): string {
  const style = attributes({ ...lineStyle(p.pen, 'fill' in p ? p.fill : 'none', paint), 'data-part': p.part })
  switch (p.kind) {
    case 'line': {
      const [x1, y1] = down(p.from)
      const [x2, y2] = down(p.to)
      return `<line x1="${figure(x1)}" y1="${figure(y1)}" x2="${figure(x2)}" y2="${figure(y2)}"${style}/>`
    }
    case 'circle': {
      const [cx, cy] = down(p.centre)
      return `<circle cx="${figure(cx)}" cy="${figure(cy)}" r="${figure(p.radius_mm)}"${style}/>`
    }
    case 'path':
      return `<path d="M${p.points.map((q) => place(down(q))).join('L')}${p.closed ? 'Z' : ''}"${style}/>`
    case 'arc': {
      const r = figure(p.radius_mm)
      const large = p.to_rad - p.from_rad > Math.PI ? 1 : 0
      const from = place(down(polar(p.centre, p.radius_mm, p.from_rad)))
      const to = place(down(polar(p.centre, p.radius_mm, p.to_rad)))
      // Counter-clockwise with y upwards is sweep 0 once y is turned over.
      return `<path d="M${from}A${r} ${r} 0 ${large} 0 ${to}"${style}/>`
    }
  }
}

function letters(p: Lettering, down: (q: Point) => Point, paint: Paint): string {
  const [x, y] = down(p.at)
  const { family, weight, italic } = families[p.face]
  const turn = (-p.turn_rad * 180) / Math.PI
  const look =
    paint === 'class'
      ? { class: [`face-${p.face}`, `tone-${p.tone}`, p.halo ? 'halo' : ''].filter(Boolean).join(' ') }
      : {
          'font-family': family,
          'font-weight': weight === 400 ? undefined : String(weight),
          'font-style': italic ? 'italic' : undefined,
          fill: tones[p.tone],
          ...(p.halo
            ? {
                stroke: fills.paper,
                'stroke-width': figure(HALO_mm),
                'stroke-linejoin': 'round',
                'paint-order': 'stroke',
              }
            : {}),
        }
  const style = attributes({
    x: figure(x),
    y: figure(y),
    'font-size': figure(p.size_mm),
    'text-anchor': p.anchor === 'start' ? undefined : p.anchor,
    transform: turn === 0 ? undefined : `rotate(${figure(turn)} ${figure(x)} ${figure(y)})`,
    ...look,
    'data-part': p.part,
  })
  return `<text${style}>${escaped(shownText({ text: p.text, face: p.face }))}</text>`
}

function typefaces(embedded: NonNullable<SvgOptions['embedded']>): string {
  const rules = Object.entries(embedded).map(([face, base64]) => {
    const { family, weight, italic } = families[face as Face]
    const style = `font-weight:${weight};font-style:${italic ? 'italic' : 'normal'}`
    const name = family.split(',')[0]
    return `@font-face{font-family:${name};${style};src:url(data:font/ttf;base64,${base64}) format("truetype")}`
  })
  return rules.length === 0 ? '' : `<style>${rules.join('')}</style>\n`
}

/** SVG 1.1 at true scale: size in mm, one user unit a millimetre. */
export function svg({ page, title, paint = 'ink', embedded = {} }: SvgOptions): string {
  const { width_mm: w, height_mm: h } = page
  const down = ([x, y]: Point): Point => [x, h - y]
  const element = (p: Primitive): string => (p.kind === 'text' ? letters(p, down, paint) : shape(p, down, paint))
  const size = `width="${figure(w)}mm" height="${figure(h)}mm" viewBox="0 0 ${figure(w)} ${figure(h)}"`
  const body = letteringOnTop(page.drawing).map(element).join('\n')
  return `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" ${size}>
<title>${escaped(title)}</title>
${typefaces(embedded)}${body}
</svg>
`
}

import { bounds } from './bounds.ts'
import { metrics, shownText } from './letters.ts'
import { pens } from './pens.ts'
import type { Drawing, Lettering, Pen, Point, Primitive } from './primitives.ts'

export interface DxfOptions {
  readonly drawing: Drawing
  /** Only what these pens draw, such as `['cut']` for a cutter; everything where left out. */
  readonly only?: readonly Pen[]
  /** Written beside the reference mark, such as "100 mm". */
  readonly reference: string
}

export const REFERENCE_LAYER = 'REFERENCE_100MM'

const layerName = (p: Primitive): string =>
  (p.layer ?? (p.kind === 'text' ? 'text' : (p.pen ?? 'fill')))
    .normalize('NFD')
    .toUpperCase()
    .replace(/[^A-Z0-9_$-]/g, '_')
    .slice(0, 31)

/** Group code and value on a line each. */
const pair = (code: number, value: string | number): string =>
  `${code}\r\n${typeof value === 'string' || Number.isInteger(value) ? value : decimal(value)}\r\n`
const decimal = (n: number): string => {
  const s = n.toFixed(6).replace(/0+$/, '').replace(/\.$/, '.0')
  return s === '-0.0' ? '0.0' : s
}
const real = (code: number, n: number): string => `${code}\r\n${decimal(n)}\r\n`
const point = (code: number, [x, y]: Point): string => real(code, x) + real(code + 10, y) + real(code + 20, 0)
const degrees = (rad: number): number => ((((rad * 180) / Math.PI) % 360) + 360) % 360

/** ASCII only: the signs that R12 knows by %% code, all else as \U+XXXX. */
function asciiText(text: string): string {
  const signs: Readonly<Record<string, string>> = { '°': '%%d', '±': '%%p', Ø: '%%c', '⌀': '%%c' }
  return [...text]
    .map((l) => {
      const code = l.codePointAt(0)!
      if (signs[l]) return signs[l]
      if (code < 0x20) return ' '
      if (code < 0x7f) return l
      return [...l].flatMap((u) => Array.from({ length: u.length }, (_, i) => unicode(u.charCodeAt(i)))).join('')
    })
    .join('')
    .slice(0, 255)
}
const unicode = (unitCode: number): string => `\\U+${unitCode.toString(16).toUpperCase().padStart(4, '0')}`

function textEntity(p: Lettering, layer: string): string {
  const height = p.size_mm * metrics(p.face).capital
  const how = p.anchor === 'start' ? 0 : p.anchor === 'middle' ? 1 : 2
  return (
    pair(0, 'TEXT') +
    pair(8, layer) +
    point(10, p.at) +
    real(40, height) +
    pair(1, asciiText(shownText({ text: p.text, face: p.face }))) +
    real(50, degrees(p.turn_rad)) +
    (how === 0 ? '' : pair(72, how) + point(11, p.at))
  )
}

function entity(p: Primitive): string {
  const layer = layerName(p)
  switch (p.kind) {
    case 'line':
      return pair(0, 'LINE') + pair(8, layer) + point(10, p.from) + point(11, p.to)
    case 'circle':
      return pair(0, 'CIRCLE') + pair(8, layer) + point(10, p.centre) + real(40, p.radius_mm)
    case 'arc':
      return (
        pair(0, 'ARC') +
        pair(8, layer) +
        point(10, p.centre) +
        real(40, p.radius_mm) +
        real(50, degrees(p.from_rad)) +
        real(51, degrees(p.to_rad))
      )
    case 'path': {
      const head = pair(0, 'POLYLINE') + pair(8, layer) + pair(66, 1) + point(10, [0, 0]) + pair(70, p.closed ? 1 : 0)
      const vertices = p.points.map((q) => pair(0, 'VERTEX') + pair(8, layer) + point(10, q)).join('')
      return head + vertices + pair(0, 'SEQEND') + pair(8, layer)
    }
    case 'text':
      return textEntity(p, layer)
  }
}

/** A line of 100 mm with ends, below the drawing, on a layer of its own: R12 cannot say what its unit is. */
function referenceMark(left: number, below: number, text: string): Drawing {
  const y = below - 10
  const layer = REFERENCE_LAYER
  const tick = (x: number): Primitive => ({ kind: 'line', from: [x, y - 2], to: [x, y + 2], pen: 'thin', layer })
  return [
    { kind: 'line', from: [left, y], to: [left + 100, y], pen: 'thin', layer },
    tick(left),
    tick(left + 100),
    {
      kind: 'text',
      at: [left, y - 6],
      text,
      face: 'drafting',
      size_mm: 3.5,
      anchor: 'start',
      turn_rad: 0,
      halo: false,
      tone: 'ink',
      layer,
    },
  ]
}

const colours: Readonly<Record<string, number>> = { CUT: 7, HIDDEN: 8, CENTRE: 8, [REFERENCE_LAYER]: 3 }
const lineType = (layer: string): string => (layer === 'HIDDEN' || layer === 'CENTRE' ? layer : 'CONTINUOUS')

function lineTypeRow(name: string, note: string, pattern_mm: readonly number[]): string {
  const total = pattern_mm.reduce((a, b) => a + b, 0)
  const dashes = pattern_mm.map((d, i) => real(49, i % 2 === 0 ? d : -d)).join('')
  return (
    pair(0, 'LTYPE') +
    pair(2, name) +
    pair(70, 0) +
    pair(3, note) +
    pair(72, 65) +
    pair(73, pattern_mm.length) +
    real(40, total) +
    dashes
  )
}

const table = (name: string, rows: readonly string[]): string =>
  pair(0, 'TABLE') + pair(2, name) + pair(70, rows.length) + rows.join('') + pair(0, 'ENDTAB')

/**
 * DXF release 12 (AC1009), ASCII, in millimetres: LINE, ARC, CIRCLE, POLYLINE with VERTEX and SEQEND, TEXT.
 * Closed contours are closed; the same entity is written once.
 */
export function dxf({ drawing, only, reference }: DxfOptions): string {
  const chosen = only
    ? drawing.filter((p) => p.kind !== 'text' && p.pen !== null && only.includes(p.pen))
    : drawing.filter((p) => p.kind !== 'path' || p.points.length > 1)
  const box = bounds(chosen) ?? { left: 0, bottom: 0, right: 0, top: 0 }
  const mark = referenceMark(box.left, box.bottom, reference)
  const whole = bounds([...chosen, ...mark])!
  const entities = [...new Set([...chosen, ...mark].map(entity))]
  const layers = [...new Set(['0', ...[...chosen, ...mark].map(layerName)])].sort()
  const layerRows = layers.map(
    (l) => pair(0, 'LAYER') + pair(2, l) + pair(70, 0) + pair(62, colours[l] ?? 7) + pair(6, lineType(l)),
  )
  const lineTypes = [
    lineTypeRow('CONTINUOUS', 'full', []),
    lineTypeRow('HIDDEN', 'dashed', pens.hidden.dash_mm),
    lineTypeRow('CENTRE', 'chain', pens.centre.dash_mm),
  ]
  const style =
    pair(0, 'STYLE') +
    pair(2, 'STANDARD') +
    pair(70, 0) +
    real(40, 0) +
    real(41, 1) +
    real(50, 0) +
    pair(71, 0) +
    real(42, 2.5) +
    pair(3, 'txt') +
    pair(4, '')
  return [
    pair(0, 'SECTION') + pair(2, 'HEADER') + pair(9, '$ACADVER') + pair(1, 'AC1009'),
    pair(9, '$EXTMIN') +
      point(10, [whole.left, whole.bottom]) +
      pair(9, '$EXTMAX') +
      point(10, [whole.right, whole.top]),
    pair(0, 'ENDSEC'),
    pair(0, 'SECTION') +
      pair(2, 'TABLES') +
      table('LTYPE', lineTypes) +
      table('LAYER', layerRows) +
      table('STYLE', [style]),
    pair(0, 'ENDSEC'),
    pair(0, 'SECTION') + pair(2, 'BLOCKS') + pair(0, 'ENDSEC'),
    pair(0, 'SECTION') + pair(2, 'ENTITIES') + entities.join('') + pair(0, 'ENDSEC') + pair(0, 'EOF'),
  ].join('')
}

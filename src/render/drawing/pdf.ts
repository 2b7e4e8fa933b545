import {
  PDFOperatorNames as Op,
  type PDFContext,
  PDFDocument,
  type PDFFont,
  PDFHexString,
  PDFName,
  PDFNumber,
  PDFOperator,
  PrintScaling,
} from '@cantoo/pdf-lib'
import * as fontkit from 'fontkit'
import { letteringBox } from './bounds.ts'
import { shownText } from './letters.ts'
import { letteringOnTop } from './order.ts'
import { pens } from './pens.ts'
import type { Arc, Circle, Drawing, Face, Fill, Lettering, Page, Pen, Point } from './primitives.ts'
import { polar } from './vector.ts'

export type FontBytes = Readonly<Record<Face, Uint8Array>>

export interface PdfOptions {
  readonly pages: readonly Page[]
  readonly fonts: FontBytes
  readonly title: string
  readonly author: string
  readonly subject: string
  readonly language: string
}

const POINTS_PER_mm = 72 / 25.4
/** Grey of each fill, 0 black to 1 white. */
const greys: Readonly<Record<Exclude<Fill, 'none'>, number>> = { solid: 0, paper: 1, wash: 0.91, water: 0.92 }
/** Paper left clear round a figure; less below, so that the line under a dimension's figure stays whole. */
const HALO_mm = { x: 0.5, y: 0.3 } as const
/** Ligatures off: one letter stays one glyph, as measured; kerning stays on. */
const features = { liga: false, clig: false, dlig: false, calt: false, kern: true }

interface Typeface {
  readonly key: PDFName
  readonly embedded: PDFFont
  readonly font: fontkit.LetterFont
}

const rounded = (n: number): number => Math.round(n * 1e5) / 1e5 + 0
const op = (name: Op, ...numbers: readonly number[]): PDFOperator =>
  PDFOperator.of(
    name,
    numbers.map((n) => PDFNumber.of(rounded(n))),
  )

function lineState(pen: Pen, context: PDFContext): readonly PDFOperator[] {
  const { width_mm, dash_mm } = pens[pen]
  return [
    op(Op.SetLineWidth, width_mm),
    PDFOperator.of(Op.SetLineDashPattern, [context.obj([...dash_mm]), PDFNumber.of(0)]),
  ]
}

/** The parts of an arc that one Bezier curve holds: a quarter is true to 3 in 10 000 of the radius, an eighth far closer. */
function arcCurves(curve: Arc | Circle): readonly PDFOperator[] {
  const { centre, radius_mm: r } = curve
  const from = curve.kind === 'arc' ? curve.from_rad : 0
  const to = curve.kind === 'arc' ? curve.to_rad : 2 * Math.PI
  const n = Math.max(1, Math.ceil((to - from) / (Math.PI / 4) - 1e-9))
  const step = (to - from) / n
  const k = (4 / 3) * Math.tan(step / 4) * r
  const out = [op(Op.MoveTo, ...polar(centre, r, from))]
  for (let i = 0; i < n; i++) {
    const a = from + i * step
    const b = a + step
    const p = polar(centre, r, a)
    const q = polar(centre, r, b)
    const c1: Point = [p[0] - k * Math.sin(a), p[1] + k * Math.cos(a)]
    const c2: Point = [q[0] + k * Math.sin(b), q[1] - k * Math.cos(b)]
    out.push(op(Op.AppendBezierCurve, ...c1, ...c2, ...q))
  }
  if (curve.kind === 'circle') out.push(op(Op.ClosePath))
  return out
}

const ring = (points: readonly Point[], closed: boolean): readonly PDFOperator[] => [
  ...points.map((p, i) => op(i === 0 ? Op.MoveTo : Op.LineTo, ...p)),
  ...(closed ? [op(Op.ClosePath)] : []),
]

/** A text set with kerning: glyphs of the subset, and between them what the pair is closer or wider. */
function setText(text: string, face: Typeface, context: PDFContext): { shown: PDFOperator; width: number } {
  const { glyphs, positions } = face.font.layout(text, features)
  const codes = face.embedded.encodeText(text).asString()
  const perThousand = 1000 / face.font.unitsPerEm
  const parts: (PDFHexString | PDFNumber)[] = []
  let run = ''
  let width = 0
  glyphs.forEach((glyph, i) => {
    run += codes.slice(4 * i, 4 * i + 4)
    const advance = positions[i]!.xAdvance
    width += (advance * perThousand) / 1000
    const kern = (glyph.advanceWidth - advance) * perThousand
    if (Math.abs(kern) < 0.5 || i === glyphs.length - 1) return
    parts.push(PDFHexString.of(run), PDFNumber.of(Math.round(kern)))
    run = ''
  })
  parts.push(PDFHexString.of(run))
  return { shown: PDFOperator.of(Op.ShowTextAdjusted, [context.obj(parts)]), width }
}

function lettersOperators(p: Lettering, face: Typeface, context: PDFContext): readonly PDFOperator[] {
  const text = shownText({ text: p.text, face: p.face })
  if (text === '') return []
  const { shown, width } = setText(text, face, context)
  const back = p.anchor === 'start' ? 0 : (p.anchor === 'middle' ? 0.5 : 1) * width * p.size_mm
  const c = Math.cos(p.turn_rad)
  const s = Math.sin(p.turn_rad)
  const halo = p.halo
    ? [op(Op.NonStrokingColorGray, 1), ...ring(letteringBox(p, HALO_mm), true), op(Op.FillNonZero)]
    : []
  return [
    ...halo,
    op(Op.NonStrokingColorGray, p.tone === 'paper' ? 1 : 0),
    op(Op.BeginText),
    PDFOperator.of(Op.SetFontAndSize, [face.key, PDFNumber.of(rounded(p.size_mm))]),
    op(Op.SetTextMatrix, c, s, -s, c, p.at[0] - back * c, p.at[1] - back * s),
    shown,
    op(Op.EndText),
  ]
}

function drawn(drawing: Drawing, faces: ReadonlyMap<Face, Typeface>, context: PDFContext): readonly PDFOperator[] {
  return letteringOnTop(drawing).flatMap((p): readonly PDFOperator[] => {
    if (p.kind === 'text') return lettersOperators(p, faces.get(p.face)!, context)
    const fill = 'fill' in p ? p.fill : 'none'
    const path =
      p.kind === 'line' ? ring([p.from, p.to], false) : p.kind === 'path' ? ring(p.points, p.closed) : arcCurves(p)
    const paint = fill === 'none' ? Op.StrokePath : p.pen === null ? Op.FillNonZero : Op.FillNonZeroAndStroke
    if (path.length === 0 || (p.pen === null && fill === 'none')) return []
    return [
      ...(p.pen === null ? [] : lineState(p.pen, context)),
      ...(fill === 'none' ? [] : [op(Op.NonStrokingColorGray, greys[fill])]),
      ...path,
      op(paint),
    ]
  })
}

async function typefaces(document: PDFDocument, given: PdfOptions): Promise<ReadonlyMap<Face, Typeface>> {
  const used = new Set(given.pages.flatMap((page) => page.drawing.flatMap((p) => (p.kind === 'text' ? [p.face] : []))))
  const out = new Map<Face, Typeface>()
  for (const face of [...used].sort()) {
    const bytes = given.fonts[face]
    const embedded = await document.embedFont(bytes, { subset: true, features })
    out.set(face, { key: PDFName.of(`F-${face}`), embedded, font: fontkit.create(bytes) })
  }
  return out
}

/**
 * PDF at true scale: page boxes exact, viewers asked not to fit the page, faces embedded as subsets.
 * The same pages give the same bytes: no date and no chance goes in.
 */
export async function pdf(given: PdfOptions): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false })
  document.registerFontkit(fontkit as unknown as Parameters<PDFDocument['registerFontkit']>[0])
  document.setTitle(given.title, { showInWindowTitleBar: true })
  document.setAuthor(given.author)
  document.setSubject(given.subject)
  document.setCreator('rootfall')
  document.setProducer('rootfall')
  document.setLanguage(given.language)
  document.catalog.getOrCreateViewerPreferences().setPrintScaling(PrintScaling.None)
  const faces = await typefaces(document, given)
  for (const { width_mm, height_mm, drawing } of given.pages) {
    const page = document.addPage([rounded(width_mm * POINTS_PER_mm), rounded(height_mm * POINTS_PER_mm)])
    for (const { key, embedded } of faces.values()) page.node.setFontDictionary(key, embedded.ref)
    page.pushOperators(
      op(Op.PushGraphicsState),
      op(Op.ConcatTransformationMatrix, POINTS_PER_mm, 0, 0, POINTS_PER_mm, 0, 0),
      op(Op.SetLineJoinStyle, 1),
      ...drawn(drawing, faces, document.context),
      op(Op.PopGraphicsState),
    )
  }
  return document.save({ useObjectStreams: false })
}

import { describe, expect, it } from 'vitest'
import { pdf } from '../../src/render/drawing/pdf.ts'
import { type Face, lettering, type Page } from '../../src/render/drawing/primitives.ts'
import { papers } from '../../src/render/paper/size.ts'
import { demoSheet, fonts } from './demo-sheet.ts'
import { pdfFonts, pdfInfo, pdfText } from './raster.ts'

const facts = { fonts, title: 'Hole Ø 50, łąka', author: 'a grower', subject: 'templates', language: 'en' }
const text = (rows: readonly string[], face: Face, halo = false): Page => ({
  width_mm: 210,
  height_mm: 297,
  drawing: rows.map((t, i) => lettering([20, 250 - 10 * i], t, { face, size_mm: 4, halo })),
})

describe('pdf', () => {
  it('gives the same bytes twice', async () => {
    const once = await pdf({ pages: [demoSheet('A4'), demoSheet('Letter')], ...facts })
    const twice = await pdf({ pages: [demoSheet('A4'), demoSheet('Letter')], ...facts })
    expect(Buffer.compare(Buffer.from(once), Buffer.from(twice))).toBe(0)
  })

  it('has exact page boxes, asks for no fitting, and names itself', async () => {
    const bytes = await pdf({ pages: [demoSheet('A4'), demoSheet('Letter')], ...facts })
    const raw = Buffer.from(bytes).toString('latin1')
    const boxes = [...raw.matchAll(/\/MediaBox \[ ?0 0 ([\d.]+) ([\d.]+) ?\]/g)].map((m) => [
      Number(m[1]),
      Number(m[2]),
    ])
    const wanted = [papers.A4, papers.Letter].map((p) => [(p.width_mm * 72) / 25.4, (p.height_mm * 72) / 25.4])
    expect(boxes).toHaveLength(2)
    boxes.forEach((box, i) => {
      box.forEach((side, k) => {
        expect(Math.abs(side - wanted[i]![k]!)).toBeLessThan(1e-4)
      })
    })
    expect(raw).toMatch(/\/ViewerPreferences[\s\S]*\/PrintScaling \/None/)
    expect(raw).not.toMatch(/CreationDate|ModDate/)
    const info = pdfInfo(bytes)
    expect(info).toMatch(/Title: +Hole Ø 50, łąka/)
    expect(info).toMatch(/Author: +a grower/)
    expect(info).toMatch(/Pages: +2/)
  })

  it('embeds and subsets every face it uses and no other', async () => {
    const rows = pdfFonts(await pdf({ pages: [demoSheet('A4')], ...facts }))
      .trim()
      .split('\n')
      .slice(2)
    expect(rows.map((r) => r.split(/-\d/)[0]).sort()).toEqual([
      'RootfallDrafting',
      'SourceSerif4-Italic',
      'SourceSerif4-Regular',
    ])
    for (const row of rows) expect(row).toMatch(/CID TrueType +Identity-H +yes (yes|no) +yes/)
    // A whole serif is 330 kB; the letters of one sheet are a small part of it.
    expect((await pdf({ pages: [demoSheet('A4')], ...facts })).length).toBeLessThan(60_000)
  })

  const faces: readonly Face[] = ['drafting', 'serif', 'italic', 'medium', 'strong']
  it.each(faces)('gives its text back, in %s', async (face) => {
    const rows = [
      'Ø 50 mm · 45° · ½ in ≤ ±0.5 ąęłż',
      'ZAŻÓŁĆ GĘŚLĄ JAŹŃ · Größe · água',
      '3 − 2 × 4 ≥ 1 ≈ µ²³ – first office To AV',
    ]
    const back = pdfText(await pdf({ pages: [text(rows, face)], ...facts }))
    expect(back.trim().split('\n')).toEqual(rows)
  })

  it('gives a text with a halo back once', async () => {
    const back = pdfText(await pdf({ pages: [text(['115.3, a third of the way'], 'drafting', true)], ...facts }))
    expect(back.trim()).toBe('115.3, a third of the way')
  })

  it('prints letters that no face has without falling over', async () => {
    const bytes = await pdf({ pages: [text(['漢字 \u{1f331} \u0000 \ud800 plan', '', ' '], 'serif')], ...facts })
    expect(pdfText(bytes)).toContain('plan')
  })

  it('makes a document of an empty page', async () => {
    expect(pdfInfo(await pdf({ pages: [{ width_mm: 50, height_mm: 50, drawing: [] }], ...facts }))).toMatch(/Pages: +1/)
  })
})

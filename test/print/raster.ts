import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** 508 dots an inch: one pixel is 0.05 mm. */
export const PIXELS_PER_mm = 20

export interface Raster {
  readonly width: number
  readonly height: number
  /** Whether the pixel is ink; rows from the top. */
  readonly ink: (column: number, row: number) => boolean
}

const inFolder = <T>(bytes: Uint8Array, work: (file: string, folder: string) => T): T => {
  const folder = mkdtempSync(join(tmpdir(), 'rootfall-print-'))
  try {
    const file = join(folder, 'sheet.pdf')
    writeFileSync(file, bytes)
    return work(file, folder)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** A page of a PDF as poppler paints it, without smoothing, read from its PGM file. */
export const raster = (bytes: Uint8Array, page = 1): Raster =>
  inFolder(bytes, (file, folder) => {
    const root = join(folder, 'page')
    const options = ['-r', '508', '-aa', 'no', '-aaVector', 'no', '-gray', '-singlefile', '-f', String(page)]
    execFileSync('pdftoppm', [...options, file, root])
    const pgm = readFileSync(`${root}.pgm`)
    const head = /^P5\s+(\d+)\s+(\d+)\s+(\d+)\s/.exec(pgm.subarray(0, 40).toString('latin1'))
    if (!head) throw new Error('raster: not a PGM file')
    const [whole, w, h] = head
    const pixels = pgm.subarray(whole.length)
    const width = Number(w)
    return { width, height: Number(h), ink: (column, row) => pixels[row * width + column]! < 128 }
  })

export const pdfText = (bytes: Uint8Array): string =>
  inFolder(bytes, (file) => execFileSync('pdftotext', ['-raw', '-enc', 'UTF-8', file, '-']).toString())

export const pdfFonts = (bytes: Uint8Array): string =>
  inFolder(bytes, (file) => execFileSync('pdffonts', [file]).toString())

export const pdfInfo = (bytes: Uint8Array): string =>
  inFolder(bytes, (file) => execFileSync('pdfinfo', ['-box', file]).toString())

/** Middles in mm of the runs of ink along a row or a column of pixels, from the left or from the top. */
export function strokes(r: Raster, along: 'row' | 'column', at_mm: number): readonly number[] {
  const fixed = Math.round(at_mm * PIXELS_PER_mm)
  const count = along === 'row' ? r.width : r.height
  const out: number[] = []
  let start = -1
  for (let i = 0; i <= count; i++) {
    const ink = i < count && (along === 'row' ? r.ink(i, fixed) : r.ink(fixed, i))
    if (ink && start < 0) start = i
    if (!ink && start >= 0) {
      out.push((start + i) / 2 / PIXELS_PER_mm)
      start = -1
    }
  }
  return out
}

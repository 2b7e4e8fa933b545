import type { CsvWords } from '../words.ts'

/** Headings of the tables for a spreadsheet. Slots in braces. */
export const csvWords: CsvWords = {
  marks: ['puesto', 'línea', 'anillo'],
  fromFoot: ['mm desde el pie'],
  fromTop: ['mm desde arriba'],
  marksOnTape: ['en la cinta', 'error mm', 'mm alrededor desde línea 1'],
  batch: ['producto', 'pesar g', 'exacto g', 'o mL', 'solución débil g en 1 L', 'de ella mL'],
  cuts: [
    ...['material', 'tubo', 'barra n.º', 'barra (mm)', 'origen', 'pieza', 'largo de pieza (mm)', 'desde (mm)'],
    ...['hasta (mm)', 'girada', 'extremo', 'sierra desde escuadra (grados)', 'sobrante de esta barra (mm)'],
  ],
  parts: [
    ...['id', 'pieza', 'clase', 'etiqueta', 'cantidad', 'unidad', 'repuestos', 'exterior o interior (mm)'],
    ...['pared (mm)', 'largo de cada una (mm)', 'norma', 'sustitutos', 'precio de una ({money})', 'precio ({money})'],
    ...['origen', 'pasos', 'nota'],
  ],
  money: 'dinero',
  pieces: 'piezas',
}

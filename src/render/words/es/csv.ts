import type { CsvWords } from '../words.ts'

/** Headings of the tables for a spreadsheet. Slots in braces. */
export const csvWords: CsvWords = {
  marks: ['puesto', 'línea', 'anillo'],
  fromFoot: ['mm desde el pie'],
  fromTop: ['mm desde arriba'],
  marksOnTape: ['en la cinta', 'error mm', 'mm alrededor desde línea 1'],
  batch: ['producto', 'pesar g', 'exacto g', 'o mL', 'solución débil g en 1 L', 'de ella mL'],
  packs: [
    ...[
      'producto',
      'hay en total (g)',
      'gasta una preparación (g)',
      'para empezar (g)',
      'botellas de solución madre (g)',
    ],
    ...['preparaciones que alcanza', 'falta (g)', 'envase (g)', 'envases por comprar', 'precio ({money})'],
  ],
  elements: ['elemento', 'deseado (mg/L)', 'en el agua (mg/L)', 'alcanzado (mg/L)', 'de lo deseado (%)'],
  stock: [
    ...['botella', 'veces la solución', 'por litro de solución (mL)', 'producto', 'en un litro de botella (g)'],
    ...['botella (L)', 'en la botella (g)'],
  ],
  steps: [
    ...['n.º', 'paso', 'empieza a las (h)', 'manos (min)', 'vigilar (min)', 'por sí solo (min)', 'tras los pasos'],
    ...['espera', 'tareas', 'precauciones', 'prueba'],
  ],
  tools: ['herramienta', 'a mano'],
  cuts: [
    ...['material', 'tubo', 'barra n.º', 'barra (mm)', 'origen', 'pieza', 'largo de pieza (mm)', 'desde (mm)'],
    ...['hasta (mm)', 'girada', 'extremo', 'sierra desde escuadra (grados)', 'sobrante de esta barra (mm)'],
  ],
  parts: [
    ...['id', 'pieza', 'clase', 'etiqueta', 'cantidad', 'unidad', 'repuestos', 'exterior o interior (mm)'],
    ...['pared (mm)', 'largo de cada una (mm)', 'norma', 'sustitutos', 'precio de una ({money})', 'precio ({money})'],
    ...['origen', 'pasos', 'nota'],
  ],
  findings: [
    'id',
    'comprobación',
    'lugar',
    'veredicto',
    'desde',
    'hasta',
    'unidad',
    'mínimo',
    'máximo',
    'frase',
    'fuente',
  ],
  dipStick: ['nivel (mm)', 'volumen (L)', 'línea'],
  stop: ['semana', 'aire (°C)', 'seco tras, mínimo (h)', 'seco tras, máximo (h)', 'descanso más largo (min)'],
  day: [
    ...['hora (h)', 'día cálido: aire (°C)', 'día cálido: lleno (°C)', 'día cálido: bajo (°C)'],
    ...['día cálido: oxígeno que puede contener, bajo (mg/L)', 'día frío: aire (°C)', 'día frío: lleno (°C)'],
    ...['día frío: bajo (°C)'],
  ],
  tipping: [
    ...['semana', 'solución (L)', 'nivel (mm)', 'masa (kg)', 'veces lo que empuja', 'vuelca con una racha de (m/s)'],
    ...['en pie sin sujetar hasta (m/s)', 'la cincha tira (N)'],
  ],
  ends: { square: 'a escuadra', mitre: 'inglete', parallel: 'dos ingletes', cope: 'boca de pez' },
  money: 'dinero',
  pieces: 'piezas',
}

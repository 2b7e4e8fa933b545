import type { WaterPathWords } from '../en/water-path.ts'

/** Short lettering on the drawings of the water's path. */
export const waterPathWords: WaterPathWords = {
  flow: 'caudal de la bomba',
  head: 'elevación',
  pumpBand: 'la bomba, entre estas curvas',
  system: 'elevación y manguera, agua mínima',
  needed: 'deseado',
  bucket: 'prueba del cubo {on}',
  fill: 'llenado {level}, {volume}',
  low: 'mínimo {level}, {volume}: reponer',
  afterStop: 'tras parar sube a {level}',
  afterStart: 'tras arrancar baja a {level}',
  cover: 'la bomba aspira aire bajo {level}',
  rim: 'borde {level}',
  stickFill: 'LLENO',
  stickLow: 'MÍN',
  stickFoot: 'se apoya en el fondo del depósito',
  stickUnit: 'de marca a marca {step}',
  wet: 'mojado en toda pared',
  doubtful: 'mojado con la pared rodada',
  dry: 'sin agua',
  strip: 'pared mojada: nueva, y rodada',
  free: 'chorro libre, lejos de la pared',
  hole: 'agujeros del distribuidor',
}

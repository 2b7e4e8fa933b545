import type { FlowWords } from '../en/flow.ts'

/** Names on the view of the flow: what the water does, part by part. Each is followed by its number. */
export const flowWords: FlowWords = {
  pump: 'la bomba da',
  pumpHead: 'contra',
  speed: 'en la subida',
  loss: 'perdido en la subida',
  lift: 'elevación',
  over: 'sobre los agujeros',
  full: 'rebosa con',
  column: 'una columna recibe',
  film: 'película',
  filmSpeed: 'baja a',
  fall: 'de arriba al pie en',
  foot: 'sobre los agujeros del pie',
  back: 'vuelve al parar',
  dry: 'raíces secas tras',
  rim: 'borde',
  afterStop: 'tras parar',
  fill: 'línea de llenado',
  low: 'línea mínima',
  afterStart: 'tras arrancar',
}

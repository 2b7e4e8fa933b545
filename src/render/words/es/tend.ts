import type { TendWords } from '../en/tend.ts'

/** What the third act says: care, bucket tests, today's correction. Slots in braces. */
export const tendWords: TendWords = {
  care: 'Lo que traen los días',
  'care-text': 'Lo peor primero; cada uno se juzga del plan y cambia con él.',
  bucket: 'Pruebas del cubo de la bomba',
  'bucket-text':
    'Deje que la bomba llene un cubo por la subida, a la altura que tiene, y anote cuánto tardó. La última prueba vale más que la caja.',
  'bucket-wants':
    'Una prueba pide tres cosas: el cubo hasta su marca, los segundos que tardó y a qué altura sobre el agua estaba la punta de la subida.',
  'bucket-add': 'Añadir una prueba',
  test: 'prueba {n}',
  today: 'Corrección de hoy',
  'today-text':
    'Remueva, lea y escriba lo que dicen los medidores y la varilla. Un número sin unidad va en litros, en la escala del propio medidor y en °C.',
  'today-wants':
    'Sin el agua, los productos y la preparación no hay nada que corregir. Dígalos, y vuelva después a escribir lo que dicen los medidores:',
  volume: 'en el depósito',
  ec: 'conductividad',
  ph: 'pH',
  temp: 'temperatura',
  fresh: 'recién preparada, aún sin plantar',
  work: 'Qué verter',
  unread: '{name}: “{typed}” no se puede leer. Escríbalo como {example}.',
  'too-high': 'El depósito tiene {most} de hondo; «{typed}» pasa del borde. Lea otra vez la varilla.',
  'wants-tank': 'Una altura da un volumen solo con las medidas del depósito: dígalas, o escriba litros.',
  wants: 'Hace falta lo que hay en el depósito: un volumen, o la altura en la varilla.',
  'wants-feed': 'El plan aún no tiene preparación: diga el agua, los productos y lo deseado en la solución.',
}

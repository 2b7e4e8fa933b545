import type { FactWords } from '../en/page-facts.ts'

/** Computed numbers of the page that are no finding: their name, and what they are. */
export const page: FactWords = {
  findings: [
    'Cuántos resultados',
    'Cada resultado es un número de su plan comparado con un límite; se cuentan según lo que salió.',
  ],
  saved: [
    'El archivo del plan',
    'Hora del último cambio, y cuántos cambios recuerda esta página; todos se pueden deshacer.',
  ],
  scale: ['Escala', 'Tantos milímetros de la torre equivalen a uno en el dibujo.'],
  'layout/circumference': ['Contorno del tubo', 'Diámetro exterior por π, o lo que dijo la cinta.'],
  'layout/marks': [
    'Marca corrida',
    'Altura de la marca del anillo desde un extremo del tubo, en la marca más próxima de la cinta; todas se cuentan desde el mismo extremo, para que los errores no se sumen.',
  ],
  'layout/lines': ['Línea a lo largo del tubo', 'Por dónde va una línea, medida por fuera alrededor desde la línea 1.'],
  'templates/joint': ['Medida en la unión', 'Resulta de los dos tubos, el ángulo y el largo del brazo.'],
  drawing: ['Medida en el dibujo', 'Calculada del plan; elija un campo de esta parte para cambiarla.'],
  changes: ['Cambios', 'Cada cambio del plan en orden; volver atrás es un cambio que se puede deshacer.'],
  'hydraulics/head': [
    'Agua sobre los agujeros',
    'Lo que hay en el distribuidor con el caudal deseado: bastante alto para empujarlo por los agujeros.',
  ],
  'feed/reached': [
    'Alcanzado',
    'Agua y dosis pesadas juntas, divididas por el volumen de la preparación; lo más próximo a todos los objetivos a la vez, comprobado con las condiciones de un óptimo.',
  ],
  'feed/band': [
    'Parte del objetivo',
    'Lo que la preparación alcanza sobre lo deseado. La caja es buena; la línea alimenta sin dañar; más allá el resultado no cumple.',
  ],
  'feed/charge': [
    'Carga de los iones',
    'Cantidad por carga al pH del depósito abierto, los pares contados con el ion que los retiene. Una solución tiene tantas cargas positivas como negativas: columnas de dos alturas serían un error.',
  ],
  'feed/ph': [
    'pH ahora y después',
    'El pH con que las cargas se anulan: cerrada, con todo el dióxido de carbono dentro, y en equilibrio con el aire, tras un día cayendo por la torre.',
  ],
  'hydraulics/over': [
    'Agua sobre los agujeros',
    'Altura sobre los agujeros del distribuidor con el caudal de la columna, de lo menos a lo más que puede dar la bomba; lo que pasaría del borde rebosa.',
  ],
  'hydraulics/full': [
    'Rebose del distribuidor',
    'Caudal con que el agua llega al borde, con todos los agujeros abiertos: la ley del orificio para cada agujero.',
  ],
  'hydraulics/flow': [
    'Caudal',
    'Donde la curva de la bomba encuentra elevación y pérdidas; una banda, pues la caja de una bomba da dos extremos de su curva y nada más. Una prueba del cubo la estrecha.',
  ],
  'hydraulics/lift': [
    'Elevación',
    'De la línea mínima al final de la subida: lo que la bomba debe elevar antes de que corra nada.',
  ],
  'hydraulics/riser': [
    'Subida',
    'Velocidad en el interior con ese caudal, y la altura que se llevan rozamiento, codos y extremos.',
  ],
  'hydraulics/film': [
    'Película en la pared',
    'Grueso y velocidad del agua que baja por todo el interior por igual, según el caudal por cada milímetro de contorno; los chorros son más gruesos y rápidos.',
  ],
  'hydraulics/drain': [
    'Agua en el pie',
    'Altura sobre los agujeros del pie para que pasen el caudal, limpios y tapados.',
  ],
  'hydraulics/held': [
    'Lo que vuelve',
    'Lo que cuelga en subida, distribuidor, película y raíces y vuelve al depósito cuando para la bomba.',
  ],
  'hydraulics/stop': [
    'De la parada a lo seco',
    'Cuánto tiempo el agua retenida en raíces y sustrato alimenta plantas crecidas con el aire más cálido del lugar.',
  ],
  'reservoir/levels': [
    'Nivel en el depósito',
    'La línea de llenado con lo que vuelve al parar, la línea mínima menos lo que se lleva un arranque, según la forma del depósito.',
  ],
  sensitivity: [
    'Qué número importa',
    'Las lecturas se llevan de una en una a los dos extremos de lo que suelen desviarse, y el resultado se calcula de nuevo; los cambios no se suman. Cuánto se desvían las lecturas consta en una sola tabla con sus fuentes.',
  ],
  tape: ['Marca más próxima', 'La longitud en la marca más próxima de una cinta en pulgadas, y cuánto se desvía.'],
  fields: ['Campos', 'Lo que además se podría decir al plan de esta parte.'],
  parts: ['Piezas', 'Contadas del plan; los precios son los que dice el plan.'],
  steps: ['Pasos', 'Orden, tiempos y huecos resultan del plan; una raya es un número para rellenar a bolígrafo.'],
  cuts: [
    'Plan de corte',
    'El mínimo de barras, con el ancho de corte y el despunte, comprobado contra una cota inferior.',
  ],
}

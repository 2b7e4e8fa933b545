import type { FindingWords } from '../../words.ts'

export const cuts: Readonly<Record<string, FindingWords>> = {
  'cuts/longest-piece': {
    short: 'La pieza mayor cabe',
    pass: 'La pieza más larga ({what}) necesita {measured}; de una barra se pueden cortar {must}.',
    watch: 'La pieza más larga ({what}) necesita {measured}; de una barra se pueden cortar {must}.',
    fail: 'Una pieza ({what}) necesita {measured}, y ninguna barra disponible da más de {must}: faltan {over}. Compre una más larga, una dos, o proyéctela más corta.',
    because: 'Una pieza sale de una sola barra, menos sus despuntes y lo que se lleva la sierra.',
  },
  'cuts/short-stub': {
    short: 'Brazo apto para inglete',
    pass: 'El brazo mide {measured} en su eje; su inglete necesita {must}.',
    watch: 'El brazo mide {measured} en su eje; su inglete necesita {must}.',
    fail: 'El brazo mide solo {measured} en su eje, y su inglete llega atrás {must}: el corte inclinado saldría por la boca. Haga el brazo más largo.',
    because: 'Un corte inclinado alcanza medio ancho del tubo, por la pendiente, a ambos lados de su centro.',
  },
  'cuts/proved': {
    short: 'Plan de corte óptimo',
    pass: 'Ningún plan para las piezas ({what}) usa menos que este; barras: {sticks}.',
    watch:
      'El plan para las piezas ({what}) usa {value}; quizá se puedan ahorrar {measured}, lo que ni se halló ni se descartó.',
    fail: 'El plan para las piezas ({what}) usa {value}; quizá se puedan ahorrar {measured}.',
    because: 'Una cota dice de qué no puede bajar ningún plan; donde plan y cota coinciden, la búsqueda termina.',
  },
  'cuts/stock-enough': {
    short: 'Hay bastante a mano',
    pass: 'Las barras indicadas dan todas las piezas ({what}: {wanted}).',
    watch: 'Con las barras indicadas quedan piezas sin cortar ({what}): {measured} de {wanted}.',
    fail: 'Las barras a mano se acaban y aún quedan piezas por cortar ({what}): {measured} de {wanted}. Añada barras, o una medida que venda la tienda.',
    because: 'Cada pieza debe salir de una barra que hay o que se puede comprar.',
  },
}

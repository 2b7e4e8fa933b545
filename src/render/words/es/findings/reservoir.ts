import type { FindingWords } from '../../words.ts'

export const reservoir: Readonly<Record<string, FindingWords>> = {
  'reservoir/fill-fits': {
    short: 'El llenado cabe',
    pass: 'El llenado de {measured} cabe en los {brim} del depósito.',
    watch: 'El llenado de {measured} llega a los {brim} del depósito.',
    fail: 'Un llenado de {measured} no cabe en un depósito de {brim}.',
    because: 'Volumen hasta el borde, menos lo que hay dentro del depósito.',
  },
  'reservoir/low-below-fill': {
    short: 'Mínimo bajo el llenado',
    pass: 'Entre la línea de llenado y la mínima hay {measured}.',
    watch: 'Entre la línea de llenado y la mínima hay {measured}.',
    fail: 'La línea mínima contiene {low} y la de llenado {fill}: no queda nada para usar.',
    because: 'Solo lo que hay entre las dos líneas alimenta las plantas.',
  },
  'reservoir/lines-agree': {
    short: 'Línea y litros coinciden',
    pass: '{which} a {line} contiene {there}; al lado se dice {measured}.',
    watch: '{which} a {line} contiene {there}; al lado se dice {measured}.',
    fail: '{which} a {line} contiene {there}, pero al lado se dice {measured}. Vale la línea. Mida otra vez y corrija una de las dos, o quite una.',
    because: 'Nivel y volumen se siguen uno de otro por las medidas del depósito, menos lo que está dentro.',
  },
  'reservoir/marks-rise': {
    short: 'Las marcas medidas suben',
    pass: 'En {marks} marcas el volumen crece con el nivel.',
    watch: 'En {marks} marcas el volumen crece con el nivel.',
    fail: 'A {highLevel} la marca dice {highVolume}, y más abajo, a {lowLevel}, dice {lowVolume}: el agua no puede menguar mientras sube. Vierta otra vez entre las dos. Las marcas no se cuentan.',
    because: 'Cada litro vertido sube el agua; dos marcas en un nivel dicen dos cosas.',
  },
  'reservoir/marks-reach': {
    short: 'Marcas bastante altas',
    pass: 'La marca más alta está a {measured}, de una profundidad de {depth}.',
    watch:
      'La marca más alta está a {measured}, de una profundidad de {depth}: el depósito se calcula por sus medidas hasta que haya marcas a {want}. Siga vertiendo.',
    fail: 'La marca más alta está a {measured}, por encima del borde a {depth}. Mida otra vez la profundidad o la marca.',
    because: 'Lo que está por encima de la marca más alta no se adivina por las de abajo.',
  },
  'reservoir/drain-back': {
    short: 'Cabe lo que vuelve',
    pass: 'Cuando la bomba para en la línea de llenado, el agua sube a {measured}; el borde está a {rim}.',
    watch:
      'Cuando la bomba para en la línea de llenado, el agua sube a {measured}; el borde está a {rim} y el borde libre acaba a {want}. Llene como máximo hasta {line} con la bomba en marcha.',
    fail: 'Cuando la bomba para en la línea de llenado, el agua pasa del borde, que está a {rim}; se derraman hasta {spilt}. Llene como máximo hasta {line} con la bomba en marcha.',
    because: 'Lo que hay en manguera, distribuidor, película y raíces vuelve al depósito.',
  },
  'reservoir/pump-covered': {
    short: 'Bomba siempre sumergida',
    pass: 'Tras un arranque en la línea mínima el agua baja a {measured}; la bomba aspira hasta {cover}.',
    watch:
      'Tras un arranque en la línea mínima el agua baja a {measured}; la bomba aspira hasta {cover}. Mantenga {line} antes de arrancar.',
    fail: 'Tras un arranque en la línea mínima el agua baja a {measured} y la bomba aspira aire por debajo de {cover}. Mantenga {line} antes de arrancar.',
    because:
      'Un arranque llena primero manguera, distribuidor, película y raíces con agua del depósito, tanto más cuanto más viejas las plantas.',
  },
  'reservoir/days': {
    short: 'Días entre reposiciones',
    pass: '{usable} duran {measured} a razón de {use}.',
    watch: '{usable} duran {measured} a razón de {use}; {want} deja un día libre.',
    fail: '{usable} duran {measured} a razón de {use}.',
    because: 'Extremo bajo: todas las plantas crecidas. Extremo alto: plantas de todas las edades juntas.',
  },
  'reservoir/room': {
    short: 'Sitio para el pie',
    pass: 'Columna y bomba ocupan {measured} de la planta del depósito.',
    watch: 'Columna y bomba ocupan {measured} de la planta del depósito.',
    fail: 'Columna y bomba ocupan {measured} de la planta del depósito; más allá de {must} no queda depósito. Las líneas se calculan sin ellas.',
    because: 'Lo que está dentro del depósito eleva el agua y ocupa su lugar.',
  },
}

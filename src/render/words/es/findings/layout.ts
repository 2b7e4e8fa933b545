import type { FindingWords } from '../../words.ts'

export const layout: Readonly<Record<string, FindingWords>> = {
  'layout/top-margin': {
    short: 'Tubo sobre el más alto',
    pass: 'Quedan {measured} de tubo entero sobre el agujero más alto.',
    watch: 'Quedan {measured} de tubo entero sobre el agujero más alto; {want} es cómodo.',
    fail: 'Solo quedan {measured} de tubo entero sobre el agujero más alto; deben ser {must}. Las marcas más altas están a {highest} de {length}.',
    because:
      'El agua necesita un tramo de pared para asentarse antes de la primera abertura, y aquí van el tapón y el distribuidor.',
  },
  'layout/first-hole': {
    short: 'Abertura sobre el desagüe',
    pass: 'La abertura más baja está {measured} sobre el nivel por el que sale el agua.',
    watch: 'La abertura más baja está {measured} sobre el nivel por el que sale el agua; {want} es mejor.',
    fail: 'La abertura más baja está {measured} sobre el nivel por el que sale el agua; deben ser {must}. La abertura empieza a {lowest} del pie de la columna, el nivel está a {level}.',
    because: 'El agua que se remansa en el desagüe, o salpica de él, sale por una abertura demasiado baja.',
  },
  'layout/canopy': {
    short: 'Sitio para planta crecida',
    pass: 'Las bocas más próximas están a {measured}; una planta crecida necesita {canopy}.',
    watch:
      'Las bocas más próximas están a {measured}, y una planta crecida necesita {canopy}: las vecinas se estorbarán.',
    fail: 'Las bocas más próximas están a {measured} y los brazos miden {stub} de ancho: chocan entre sí.',
    because:
      'Las plantas más juntas que su ancho se dan sombra, siguen húmedas y quedan más pequeñas de lo que dice el sobre.',
  },
  'layout/headroom': {
    short: 'Sitio para sacar un vaso',
    pass: '{measured} entre un brazo y el siguiente de su línea, bastante para el vaso de {depth}.',
    watch:
      '{measured} entre un brazo y el siguiente de su línea; el vaso mide {depth} de fondo y habrá que sacarlo con maña.',
    fail: 'Un brazo y el siguiente de su línea se solapan: {measured} entre ellos.',
    because: 'Un vaso debe salir con sus raíces, y una mano debe entrar con un plantón.',
  },
  'layout/ceiling': {
    short: 'Sitio bajo el techo',
    pass: 'La columna acaba a {top}, {measured} bajo el techo.',
    watch: 'La columna acaba a {top}, {measured} bajo el techo; hacen falta {want} para sacar el distribuidor.',
    fail: 'La columna acaba a {top} y el techo está a {ceiling}: no cabe de pie.',
    because: 'El distribuidor de arriba debe poder sacarse para limpiarlo con la columna de pie.',
  },
  'layout/reach': {
    short: 'Puesto alto al alcance',
    pass: 'La boca más alta está a {measured}, dentro del alcance de {want}.',
    watch: 'La boca más alta está a {measured}; quienes la cuidan alcanzan {want}.',
    fail: 'La boca más alta está a {measured}; quienes la cuidan alcanzan {want}.',
    because: 'Un puesto que exige un taburete es un puesto que nadie cuida, y los niños trepan.',
  },
  'layout/standing-room': {
    short: 'Paso alrededor',
    pass: 'Alrededor de la torre quedan libres {measured}.',
    watch: 'Alrededor de la torre quedan libres {measured}; con {want} se puede trabajar.',
    fail: 'Alrededor de la torre quedan libres {measured}; con {want} se puede trabajar.',
    because: 'Cada lado con plantas se planta, se mira y se cosecha de pie.',
  },
  'layout/marks': {
    short: 'Redondeo en la cinta',
    pass: 'En una cinta de {tape} ninguna marca se desvía más de {measured}, y ninguna línea alrededor del tubo más de {round}.',
    watch: 'En una cinta de {tape} una marca se desvía hasta {measured}.',
    fail: 'En una cinta de {tape} una marca se desvía hasta {measured}; se admiten {must}.',
    because:
      'Cada marca se redondea desde su propia distancia exacta, así los errores no se suman a lo largo del tubo.',
  },
  'layout/stagger': {
    short: 'Giro de anillos alternos',
    pass: 'Los anillos vecinos están girados {apart}, {measured} de medio paso.',
    watch: 'Los anillos vecinos están girados solo {apart}; medio paso son {half}.',
    fail: 'Los anillos vecinos están girados solo {apart}; medio paso son {half}.',
    because: 'Medio paso pone cada planta sobre un hueco: más luz, más sitio y más pared entre los agujeros.',
  },
  'layout/site-height': {
    short: 'Altura real de una marca',
    pass: 'El puesto {site} está a {measured} de lo previsto.',
    watch: 'El puesto {site} está a {measured} de sus {planned} previstos; el límite usual es {want}.',
    fail: 'El puesto {site} está a {measured} de sus {planned} previstos.',
    because: 'Un anillo cuyos labios están a distinta altura se desborda primero por el más bajo.',
  },
}

import type { FindingWords } from '../../words.ts'

export const structure: Readonly<Record<string, FindingWords>> = {
  'structure/tips-full': {
    short: 'Aguanta la racha, lleno',
    pass: 'Con {volume} en el depósito sus {mass} resisten {measured} veces una racha de {gust}.',
    watch:
      'Con {volume} en el depósito sus {mass} resisten solo {measured} veces una racha de {gust}; se desean {want}. Sin cincha cae con {falls}.',
    fail: 'Aun con {volume} en el depósito una racha de {gust} la vuelca: {measured} veces lo necesario. Cae con {falls}. Sujétela con {strap} a {strapHeight}, o añada {ballast} en su pie.',
    unknown: 'Una cincha a {strapHeight} debe soportar {strap}; con menos no se tiene.',
    because:
      'El viento en hojas, tubo y depósito gira la torre sobre el borde de su base; el peso por media base la sostiene. Donde alguien puede resultar herido deciden las normas locales y un técnico autorizado.',
  },
  'structure/tips-low': {
    short: 'Aguanta la racha, mínimo',
    pass: 'En su peor momento, cuando pesa {mass}, resiste {measured} veces una racha de {gust}.',
    watch:
      'En su peor momento, cuando pesa {mass}, resiste solo {measured} veces una racha de {gust}; se desean {want}. Sin cincha cae con {falls}.',
    fail: 'En su peor momento, cuando pesa {mass}, una racha de {gust} la vuelca: {measured} veces lo necesario. Cae con {falls}. Sujétela con {strap} a {strapHeight}, o añada {ballast} en su pie.',
    unknown: 'Una cincha a {strapHeight} debe soportar {strap}; con menos no se tiene.',
    because:
      'El depósito bajo y las plantas crecidas coinciden el día más cálido y ventoso, justo antes de reponer: el peso es mínimo cuando las hojas son mayores.',
  },
  'structure/child-pull': {
    short: 'Aguanta si un niño tira',
    pass: 'Con el depósito bajo resiste {measured} veces a un niño que se cuelga y tira hacia atrás.',
    watch:
      'Con el depósito bajo resiste {measured} veces a un niño que se cuelga y tira hacia atrás. Una cincha a {strapHeight} que aguante {strap} la sostiene con reserva.',
    fail: 'Un niño que se cuelga y tira hacia atrás la vuelca: resiste solo {measured} veces. Sujétela a {strapHeight} con una cincha que aguante {strap}, o mantenga alejados a los niños.',
    unknown: 'Una cincha a {strapHeight} debe soportar {strap}; con menos no se tiene.',
    because:
      'Un niño en edad escolar tira con {force} a una altura de {height}. Donde hay niños, nada más alto que ellos queda suelto.',
  },
  'structure/lean': {
    short: 'Aguanta si alguien se apoya',
    pass: 'Con el depósito bajo resiste {measured} veces a un adulto que tropieza contra ella.',
    watch:
      'Con el depósito bajo resiste {measured} veces a un adulto que tropieza contra ella. Una cincha a {strapHeight} que aguante {strap} la sostiene con reserva.',
    fail: 'Con el depósito bajo resiste {measured} veces a un adulto que tropieza contra ella.',
    unknown: 'Una cincha a {strapHeight} debe soportar {strap}; con menos no se tiene.',
    because: 'Quien tropieza empuja con {force} a {height}; pocas torres lo resisten sin una pared.',
  },
  'structure/strap': {
    short: 'Cincha y su anclaje',
    pass: 'En una racha de {gust} la cincha a {strapHeight} tira con {measured}; para cincha y anclaje se cuentan {capacity}.',
    watch: 'En una racha de {gust} la cincha a {strapHeight} tira con {measured}.',
    fail: 'En una racha de {gust} necesita una cincha a {strapHeight} que tire con {measured}, y solo hay {must}. Sujétela, o ponga {ballast} más en su pie, como agua o como lastre; sin ninguno cae con {falls}.',
    unknown: 'Una cincha a {strapHeight} debe soportar {strap}; con menos no se tiene.',
    because:
      'Una cincha a pared o armazón suple lo que falta de peso, con una reserva de la mitad. Los anclajes en paredes que se desmoronan y en barandillas aguantan menos: decide el dueño de la pared.',
  },
  'structure/base-width': {
    short: 'Ancho de la base',
    pass: 'La base mide {measured} de ancho; con {needed} quedaría suelta en una racha de {gust}.',
    watch:
      'La base mide {measured} de ancho; harían falta {needed} para quedar suelta en una racha de {gust}. Sujétela o lástrela.',
    fail: 'La base mide {measured} de ancho; harían falta {needed} para quedar suelta en una racha de {gust}.',
    unknown: 'Una cincha a {strapHeight} debe soportar {strap}; con menos no se tiene.',
    because: 'Mida la distancia más corta entre apoyos exteriores: la mitad es el brazo del peso.',
  },
  'structure/section': {
    short: 'Resistencia que queda',
    pass: 'En su anillo más bajo la pared soporta {stress}; a {wall} rompe con {strength}, {measured} veces eso.',
    watch: 'En su anillo más bajo la pared soporta {stress}; a {wall} rompe con {strength}, {measured} veces eso.',
    fail: 'En su anillo más bajo la pared soporta {stress} y, a {wall}, rompe con {strength}: solo {measured} veces eso, y hacen falta {must}. Los agujeros dejan {left} % de la sección. Sujete la columna más arriba, separe más los anillos o elija una pared más gruesa.',
    because:
      'Los agujeros quitan sección justo donde la columna más se dobla, sus bordes soportan más que la media, y el PVC caliente es débil: se puede usar un tercio de su resistencia. La parte con calor solo se conoce para el PVC.',
  },
  'structure/sway': {
    short: 'Vaivén del extremo',
    pass: 'En una racha de {gust} el extremo se mueve {measured}.',
    watch:
      'En una racha de {gust} el extremo del tubo, a {wall}, se mueve {measured}; más de {want} tira de la manguera y del distribuidor. Sujétela.',
    fail: 'En una racha de {gust} el extremo se mueve {measured}.',
    because: 'Un extremo que se mueve mucho derrama el distribuidor y afloja uniones y manguera.',
  },
  'structure/floor': {
    short: 'Carga sobre el suelo',
    pass: 'Sus {mass} cargan el suelo con {measured} ({pressure}, lo mismo que kN/m²); se admiten {must}. Bajo la base sola son {base} ({basePressure}).',
    watch: 'Sus {mass} cargan el suelo con {measured}; se admiten {must}.',
    fail: 'Sus {mass} cargan el suelo con {measured} ({pressure}, lo mismo que kN/m²), y se admiten {must}. Una tabla rígida cuadrada de {side} lo repartiría. Pregunte por escrito al administrador del edificio.',
    because:
      'El agua pesa, y un balcón está hecho para personas y sillas. Lo que un suelo soporta lo dice el administrador del edificio o un técnico de estructuras, no una página web; personas y nieve se suman.',
  },
}

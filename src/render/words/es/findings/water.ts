import type { FindingWords } from '../../words.ts'

export const water: Readonly<Record<string, FindingWords>> = {
  'water/hot': {
    short: 'Solución en día de calor',
    pass: 'El día más cálido la solución llega a {measured}.',
    watch:
      'El día más cálido la solución llega a {measured} y pasa {hours} por encima de {limit}. De lo calculado, lo que más ayuda: {measure}, {gain} menos.{buy}{all}',
    fail: 'El día más cálido la solución llega a {measured}, y por encima de {must} las raíces se ponen marrones. Pasa {hours} por encima de {limit}. De lo calculado, lo que más ayuda: {measure}, {gain} menos.{buy}{all}',
    because:
      'El agua caliente contiene menos oxígeno mientras las raíces respiran más, y la podredumbre avanza. La calientan el aire, el sol en depósito y columna, y cada vatio de la bomba; un depósito lleno es más lento que uno bajo.',
  },
  'water/cold': {
    short: 'Solución en día de frío',
    pass: 'El día más frío la solución baja a {measured}.',
    watch:
      'El día más frío la solución baja a {measured} y pasa {hours} por debajo de {limit}: crece despacio, las hojas se ponen moradas.',
    fail: 'El día más frío la solución baja a {measured}: por debajo de {must} el crecimiento se detiene.',
    because:
      'Las raíces frías toman poca agua y poco fósforo. La columna cede el calor de la solución al aire toda la noche.',
  },
  'water/ice': {
    short: 'Hielo para el depósito',
    pass: '{measured} de hielo al día, puestos a las {hours}, bajan la hora más cálida de {without} a {with}, y el agua no más que a {chilled}. Las horas deciden: sin hielo lo más cálido es a las {warmest}.',
    watch:
      '{measured} de hielo al día, puestos a las {hours}, entran en {water} de agua y la enfrían hasta {chilled}; la hora más cálida pasa de {without} a {with}. {more} A esas horas las raíces no quieren más de {enough}; el resto hace más a otras horas: sin hielo lo más cálido es a las {warmest}.',
    fail: '{measured} de hielo al día, puestos a las {hours}, entran en {water} de agua y la enfrían hasta {chilled}. {more} A esas horas las raíces no quieren más de {enough}; las horas deciden: sin hielo lo más cálido es a las {warmest}, {without}.',
    because:
      'Al fundirse, el hielo toma tanto calor como enfriar la misma agua desde 80 °C: un kilo da para mucho, y cerca de la helada las raíces se paran. El día se calcula con no más hielo del que puede fundirse.',
  },
  'water/room-noise': {
    short: 'Bomba bastante callada',
    pass: 'La etiqueta de la bomba dice {measured}.',
    watch:
      'La etiqueta de la bomba dice {measured}; una sala de estar pide {want}, un dormitorio {bedroom}. Póngala sobre goma, separe la manguera de las paredes, téngala cubierta de agua o déjela descansar de noche.',
    fail: 'La etiqueta de la bomba dice {measured}.',
    because:
      'Un zumbido continuo quita el sueño mucho antes de hacer daño; el agua que cae se suma. La etiqueta vale a un metro, 3 pies.',
  },
  'water/legionella-warm': {
    short: 'Banda de gérmenes de calor',
    pass: 'La solución llega a {measured}, por debajo de la banda en que crece la legionela.',
    watch:
      'La solución llega a {measured}, {hours} del día por encima de {want}: la legionela crece entre ahí y {high}. Evite que salpique en niebla, manténgala fresca y limpia; donde viven personas delicadas pregunte a quien responde de la seguridad del agua.',
    fail: 'La solución llega a {measured}.',
    because:
      'La legionela crece en agua tibia y quieta y daña a quien respira su niebla. Las reglas las ponen las autoridades; rootfall solo dice que se alcanza la banda.',
  },
  'water/oxygen': {
    short: 'Oxígeno en las raíces',
    pass: 'En lo más cálido, a {temperature}, el agua al pie de la columna aún tiene {measured} de oxígeno; podría tener {saturation}, y {sea} al nivel del mar.',
    watch:
      'En lo más cálido, a {temperature}, el agua al pie de la columna tiene {measured} de oxígeno; podría tener {saturation}, y {sea} al nivel del mar. Manténgala más fresca, o insufle aire.',
    fail: 'En lo más cálido, a {temperature}, el agua al pie de la columna tiene {measured} de oxígeno, menos que los {must} con que se vio crecer sin daño la lechuga. Podría tener como máximo {saturation}, y {sea} al nivel del mar. Manténgala más fresca.',
    because:
      'La película que cae toma oxígeno del aire y las raíces lo gastan. Cuánto respiran las raíces solo se sabe dentro de un factor de ocho, por eso la banda es ancha; una parte cuelga en aire húmedo y no necesita el del agua.',
  },
  'water/assumed': {
    short: 'Sol y colores indicados',
    pass: '',
    watch: '',
    fail: '',
    because:
      'Donde no se indican color, sol o altura se calculó el día con lo peor: paredes oscuras a pleno sol del día más soleado.',
  },
  'water/frost': {
    short: 'Helada en la manguera',
    pass: 'El aire baja a {measured}; no se hiela nada.',
    watch:
      'El aire baja a {measured}: una noche clara puede helar manguera y vasos. Deje la bomba en marcha o vacíela. {trapped}',
    fail: 'El aire baja a {measured}: el agua que queda en manguera, distribuidor, brazos y bomba se hiela y los revienta. {trapped} Antes: vacíe con la bomba, incline la columna, sople la subida, guarde la bomba bajo techo.',
    because: 'El agua crece una décima parte al helarse, y las raíces represan una bolsa bajo el labio de cada puesto.',
  },
  'water/mesh': {
    short: 'Nada entra en el depósito',
    pass: 'La entrada más ancha al depósito es de {measured}.',
    watch:
      'La entrada más ancha al depósito es de {measured}: cúbrala con malla de {want} como máximo. Los mosquitos ponen sus huevos por huecos más anchos; moscas, hojas y luz entran por el mismo sitio.',
    fail: 'La entrada más ancha al depósito es de {measured}.',
    because:
      'El agua tibia y quieta cría mosquitos en una semana, y la luz en ella cría algas. Cuentan muesca del cable, tapa, rebosadero y juntas.',
  },
  'water/room-air': {
    short: 'Humedad en la sala',
    pass: 'Las plantas dan {measured} al aire de la sala: ventile, o sale moho en las paredes frías. Bomba y lámparas la calientan con {warmth}.',
    watch: 'Las plantas dan {measured} al aire de la sala.',
    fail: 'Las plantas dan {measured} al aire de la sala.',
    because: 'Casi todo lo que las plantas beben lo exhalan.',
  },
}

import type { FindingWords } from '../../words.ts'

export const hydraulics: Readonly<Record<string, FindingWords>> = {
  'hydraulics/pump-lifts': {
    short: 'La bomba llega arriba',
    pass: 'La bomba eleva hasta {measured}; la salida está {lift} sobre el agua mínima.',
    watch: 'La bomba eleva {measured}; la salida está {lift} sobre el agua mínima.',
    fail: 'Esta bomba se detiene a {measured}; la salida está {lift} sobre el agua mínima. Nunca llegará nada.',
    because: 'En su elevación máxima una bomba no da caudal; por debajo el agua queda quieta en la manguera.',
  },
  'hydraulics/hose-reaches': {
    short: 'La manguera llega arriba',
    pass: 'La manguera de {measured} llega a su salida, {must} sobre el agua más baja.',
    watch: 'La manguera de {measured} apenas llega a su salida, {must} sobre el agua más baja.',
    fail: 'Una manguera de {measured} no llega a una salida {must} sobre el agua más baja, bajo la cual está la bomba. Mida el camino que seguirá, con sus curvas y hasta la bomba.',
    because: 'La bomba está bajo el agua más baja: la manguera mide al menos lo que se eleva el agua.',
  },
  'hydraulics/static-share': {
    short: 'Elevación dentro de bomba',
    pass: 'La elevación de {lift} toma {measured} de la elevación máxima de la bomba.',
    watch:
      'La elevación de {lift} toma {measured} de la elevación máxima de la bomba, {head}; más allá de {want} el caudal es inestable.',
    fail: 'La elevación de {lift} toma {measured} de la elevación máxima de la bomba.',
    because: 'Cerca de su elevación máxima el caudal de una bomba varía mucho con el nivel, el desgaste y la suciedad.',
  },
  'hydraulics/column-flow': {
    short: 'Caudal en cada columna',
    pass: 'La columna menos servida recibe {measured} con el agua mínima; se desean {wanted}.',
    watch:
      'La columna menos servida recibe {measured} con el agua mínima; se desean {wanted}, {margin} con reserva por desgaste. {advice}',
    fail: 'La columna menos servida recibe {measured} con el agua mínima; se desean {wanted}.',
    because:
      'El caudal resulta de bomba y mangueras juntas, con el nivel justo antes de reponer. Una bomba gastada daría {worn}.',
  },
  'hydraulics/starved-columns': {
    short: 'Ninguna columna sin agua',
    pass: 'El agua llega a todas las columnas.',
    watch: 'Columnas sin agua: {measured} ({which}).',
    fail: 'Columnas sin agua: {measured} ({which}). Baje sus salidas, cierre válvulas en otras, o use una bomba más fuerte.',
    because: 'El agua toma primero los caminos fáciles; una salida más alta que la presión que queda no recibe nada.',
  },
  'hydraulics/spread': {
    short: 'Reparto entre columnas',
    pass: 'Los caudales de las columnas difieren en {measured} de su media.',
    watch: 'Los caudales de las columnas difieren en {measured} de su media; {want} es justo. {how}',
    fail: 'Los caudales de las columnas difieren en {measured} de su media.',
    because:
      'Las columnas cercanas a la bomba toman más que las del final; las igualan las válvulas o un colector más ancho.',
  },
  'hydraulics/riser-speed': {
    short: 'Agua calma en la manguera',
    pass: 'El agua corre por la manguera a {measured}.',
    watch: 'El agua corre por la manguera a {measured}; por encima de {want} zumba y malgasta presión.',
    fail: 'El agua corre por la manguera a {measured}.',
    because: 'La presión perdida por rozamiento crece con el cuadrado de la velocidad.',
  },
  'hydraulics/bucket-test': {
    short: 'Prueba del cubo creíble',
    pass: 'La prueba muestra {measured}; la caja dice {box} como máximo.',
    watch: 'La prueba muestra {measured}; la caja dice {box} como máximo.',
    fail: 'Eso serían {measured} a una altura de {height}; la caja de la bomba dice {box} como máximo, y nada a {head}. ¿Fueron {meant} y no {time}, u otra altura?',
    because: 'Ninguna bomba da más con elevación de lo que su caja dice sin ella. Esta prueba no se cuenta.',
  },
  'hydraulics/pump-strength': {
    short: 'Bomba fuerte como antes',
    pass: 'La última prueba del cubo muestra {measured} de la primera.',
    watch: 'La última prueba del cubo muestra {measured} de la primera. {advice}',
    fail: 'La última prueba del cubo muestra {measured} de la primera.',
    because:
      'En {tests} pruebas, cada una llevada a su propia elevación, una caída indica desgaste, cal o limo. Ninguna bomba se hace más fuerte por sí sola.',
  },
  'hydraulics/tests-agree': {
    short: 'Pruebas de un día coinciden',
    pass: 'Las pruebas del cubo del {day} coinciden: la más fuerte muestra {measured} veces la más débil.',
    watch: 'Las pruebas del cubo del {day} difieren: la más fuerte muestra {measured} veces la más débil.',
    fail: 'Las pruebas del cubo del {day} se contradicen: la prueba {weak} dio {weakFlow} a {weakHeight}, la prueba {strong} dio {strongFlow} a {strongHeight}, como si la bomba fuera {measured} veces más fuerte. Hasta {must} lo explica un cronómetro. Repita ambas y tache la equivocada.',
    because: 'Una bomba tiene una sola fuerza en un día. Cubo y cronómetro yerran el caudal en un 5 % como máximo.',
  },
  'hydraulics/pump-curve': {
    short: 'Curva de bomba creíble',
    pass: 'La elevación de la curva del fabricante baja al crecer el caudal, en sus {points} puntos.',
    watch:
      'La curva del fabricante sube de {lowHead} con {lowFlow} a {highHead} con {highFlow}. La joroba se toma como llana.',
    fail: 'La curva del fabricante sube {measured}, de {lowHead} con {lowFlow} a {highHead} con {highFlow}; más de {must} es un error. Mire ambos puntos: ¿se cambió un caudal por otro, o una elevación? La curva no se cuenta.',
    because:
      'Cuanta más agua mueve una bomba, menos elevación queda; solo ocurre una pequeña joroba cerca del agua quieta.',
  },
  'hydraulics/loose-branches': {
    short: 'Mangueras bien enlazadas',
    pass: 'Cada ramal sale de la subida o de otro ramal.',
    watch: 'Ramales que no salen de nada: {measured} ({which}).',
    fail: 'Ramales que no salen de nada: {measured} ({which}). Nombre el tubo del que sale cada uno.',
    because: 'Un tubo que no sale de otro no recibe agua y no se cuenta.',
  },
  'hydraulics/siphon': {
    short: 'El depósito no sifona',
    pass: 'El extremo abierto más bajo está {measured} sobre la línea de llenado, o el aire corta el sifón.',
    watch:
      'El extremo abierto más bajo está solo {measured} sobre la línea de llenado. Deje {want}, o dé entrada de aire arriba.',
    fail: 'El extremo abierto más bajo está a {measured} de la línea de llenado: con la bomba parada el depósito se vacía por él. Dé entrada de aire arriba.',
    because: 'Una manguera llena cuyo extremo está más bajo que el agua vacía el depósito sin bomba alguna.',
  },
  'hydraulics/hole-size': {
    short: 'Agujeros que no se tapan',
    pass: 'Agujeros de {measured} siguen abiertos entre dos limpiezas.',
    watch: 'Agujeros de {measured} se tapan pronto; {want} o más dura.',
    fail: 'Agujeros de {measured} se tapan en días, y hacen falta {needed} para el trabajo de {count} de {usual}.',
    because: 'Costras de sal, raíces y limo cierran primero los agujeros pequeños.',
  },
  'hydraulics/hole-circle': {
    short: 'Agujeros lejos de la pared',
    pass: 'Entre los agujeros y la pared de la copa quedan {measured} de placa.',
    watch:
      'En un círculo de {circle} solo quedan {measured} de placa entre los agujeros y la pared; una broca se desvía más. Serviría hasta {most}.',
    fail: 'En un círculo de {circle} los agujeros cortan la pared de la copa (placa que queda: {measured}). El círculo mayor es {most}.',
    because:
      'Un agujero que toca la pared deja correr su agua por fuera de la copa, fuera de su línea, y la broca se sale.',
  },
  'hydraulics/distributor-overflow': {
    short: 'No rebosa arriba',
    pass: 'Con {flow} el agua está {measured} sobre los agujeros; el borde está a {must}.',
    watch:
      'Con {flow} el agua estaría {measured} sobre los agujeros; el borde está a {must}. Rebosa por encima de {full}.',
    fail: 'Con {flow} el agua estaría {measured} sobre los agujeros; el borde está a {must}. Rebosa por encima de {full}: bastarían {count} agujeros de {drill}.',
    because: 'El agua se acumula sobre los agujeros hasta que su peso empuja todo el caudal por ellos.',
  },
  'hydraulics/distributor-clogged': {
    short: 'Reserva si hay tapados',
    pass: 'Con {shut} de los agujeros tapados el agua está {measured} sobre ellos, {clear} con todos abiertos; el borde está a {must}.',
    watch: 'Con {shut} de los agujeros tapados el agua está {measured} sobre ellos.',
    fail: 'Con {shut} de los agujeros tapados el agua estaría {measured} sobre ellos, {clear} con todos abiertos; el borde está a {must}. Pruebe {count} agujeros de {drill}.',
    because:
      'Entre dos limpiezas se tapan algunos agujeros, y la altura sobre los demás crece con el cuadrado de lo que deben pasar.',
  },
  'hydraulics/drips-evenly': {
    short: 'Corren todos los agujeros',
    pass: 'Con el caudal mínimo el agua está {measured} sobre los agujeros; {start} abre un agujero seco.',
    watch:
      'Con el caudal mínimo el agua está {measured} sobre los agujeros; un agujero seco se abre con {start}, así que algunos siguen cerrados.',
    fail: 'Con el caudal mínimo el agua está {measured} sobre los agujeros; un agujero seco se abre con {start}. Unos pocos se llevan toda el agua. Ayudan menos agujeros o más pequeños.',
    because: 'La tensión superficial retiene el agua en un agujero hasta que la altura la vence.',
  },
  'hydraulics/tilt-effect': {
    short: 'Inclinación sin secar lado',
    pass: 'Con un desnivel de {lean} el lado bajo recibe {measured} del caudal medio más que el alto.',
    watch:
      'Con un desnivel de {lean}, {edge} de borde a borde, los lados difieren en {measured} del caudal medio; {want} es justo.',
    fail: 'Con un desnivel de {lean}, {edge} de borde a borde, el lado alto queda seco.',
    because: 'El agua está a nivel aunque la placa no; poca agua sobre los agujeros lo empeora.',
  },
  'hydraulics/dry-sites': {
    short: 'Agua en todos los puestos',
    pass: 'De {sites} puestos ninguno queda sin agua con {flow}; a {drops} de ellos solo les llegan gotas.',
    watch:
      'Con {flow}, puestos que pueden quedar sin agua: {measured} de {sites} ({which}). Pruebe con una tira de papel seco.',
    fail: 'Con {flow}, puestos a los que no llegan ni película ni gotas: {measured} de {sites} ({which}). Los chorros deben bajar por la pared sobre un puesto, o dar en su vaso.',
    because:
      'A plomo, con todos los agujeros abiertos. Un chorro muy cerca de la pared se pega a ella; uno más adentro cae en gotas, que dan en lo que encuentran y salpican, o pasan de largo.',
  },
  'hydraulics/drop-sites': {
    short: 'Película, no solo gotas',
    pass: 'Ningún puesto vive solo de gotas.',
    watch:
      'Puestos a los que solo llegan gotas: {measured} de {sites} ({which}). Dan en los extremos y vasos del interior y salpican. Moje los tacos a mano cada día hasta que {until}; una película los mojaría desde el primer día.',
    fail: 'Puestos a los que solo llegan gotas: {measured} de {sites} ({which}).',
    because:
      'Un plantón vive sus primeros días de lo que toca su taco. Cuánto de una salpicadura retiene un taco no lo midió nadie, por eso se distinguen gotas y película; una planta crecida bebe con raíces que cuelgan en la lluvia.',
  },
  'hydraulics/dry-sites-worst': {
    short: 'Agua aun ladeada y tapada',
    pass: 'Inclinada {lean}, con {shut} de los agujeros seguidos tapados, ningún puesto queda sin agua.',
    watch:
      'Inclinada {lean}, con {shut} de los agujeros seguidos tapados, puestos que pueden quedar sin agua: {measured} de {sites} ({which}).',
    fail: 'Inclinada {lean}, con {shut} de los agujeros seguidos tapados, quedan puestos sin agua: {measured} de {sites}.',
    because:
      'La suciedad se junta a un lado y las columnas se inclinan; esta es la posición que deja más puestos secos.',
  },
  'hydraulics/film-closes': {
    short: 'Película en toda la pared',
    pass: 'La columna recibe {measured}; desde {want} la película se cierra en una pared ya rodada.',
    watch:
      'La columna recibe {measured}; por debajo de {want} la película se rompe en franjas, y en tubo nuevo por debajo de {clean}. Los puestos entre franjas siguen secos hasta que las raíces les llevan agua.',
    fail: 'La columna recibe {measured}.',
    because: 'Una película fina se retira de las zonas secas; una pared rodada se moja mejor que una limpia.',
  },
  'hydraulics/splash-margin': {
    short: 'El labio retiene el agua',
    pass: 'El labio está {measured} sobre la salida más baja.',
    watch: 'El labio está {measured} sobre la salida más baja; salpicaduras y raíces piden {want}.',
    fail: 'El labio está solo {measured} sobre la salida más baja; por debajo de {must} se sale la propia película.',
    because: 'El agua se arrastra por los bordes por tensión superficial, y las gotas que dan en raíces salpican.',
  },
  'hydraulics/root-room': {
    short: 'Interior libre para el agua',
    pass: 'Las raíces de las plantas más viejas, de {oldest}, ocupan {measured} del interior; estaría medio lleno a los {day}.',
    watch:
      'Las raíces de las plantas más viejas, de {oldest}, ocupan {measured} del interior, sobre todo del anillo {ring} hacia abajo; está medio lleno a los {day}. Mire dentro cada semana; {deed}, o tome un interior de {bore}{pipe}.',
    fail: 'Las raíces de las plantas más viejas, de {oldest}, ocuparían {measured} del interior del anillo {ring} hacia abajo; la mitad está ocupada a los {day}. Córtelas antes; {deed}, o tome un interior de {bore}{pipe}.',
    because:
      'El agua solo necesita {film} del interior, pero las raíces que cuelgan juntas la represan y queda parada en los puestos más bajos. Nadie midió las raíces día a día: por eso la banda es ancha.',
  },
  'hydraulics/foot-water': {
    short: 'El pie deja salir el agua',
    pass: 'El agua está {measured} sobre el pie, hasta con {shut} de sus agujeros tapados.',
    watch:
      'El agua está {measured} sobre el pie, hasta con {shut} de sus agujeros tapados; {want} es tranquilo. Bastarían {enough} agujeros así.',
    fail: 'El agua está {measured} sobre el pie y la abertura más baja queda {room} por encima: se sale por ahí. Bastarían {enough} agujeros así.',
    because: 'El pie debe dejar salir todo lo que manda la bomba, con raíces de por medio.',
  },
  'hydraulics/return-pipe': {
    short: 'Retorno sin ir lleno',
    pass: 'El tubo de retorno va lleno en {measured}.',
    watch: 'El tubo de retorno va lleno en {measured}; {want} deja sitio a las raíces.',
    fail: 'El tubo de retorno va lleno en {measured}; por encima de {must} gorgotea y se remansa.',
    because: 'Un desagüe en pendiente necesita aire sobre el agua; el caudal resulta de interior y pendiente.',
  },
  'hydraulics/timer-off': {
    short: 'Descanso bastante corto',
    pass: 'La bomba descansa {measured}; las plantas crecidas a {air} aguantan {dry}.',
    watch:
      'La bomba descansa {measured}; a {air} las plantas crecidas aguantan {dry}. Descanse {want} como máximo. {from}',
    fail: 'La bomba descansa {measured}; las plantas crecidas a {air} aguantan {dry} como máximo. {from}',
    because:
      'Se guarda la mitad del tiempo de secado. La banda es ancha, pues vasos y raíces retienen cantidades muy distintas.',
  },
  'hydraulics/timer-on': {
    short: 'Marcha bastante larga',
    pass: 'La bomba funciona {measured}; el agua necesita menos para llenar la manguera y llegar al pie.',
    watch: 'La bomba funciona {measured}; el agua puede necesitar {want} para llenar la manguera y llegar al pie.',
    fail: 'La bomba funciona {measured}; el agua necesita {must} solo para llenar la manguera y llegar al pie.',
    because: 'Una marcha debe primero llenar manguera y distribuidor, y luego mojar toda la columna.',
  },
  'hydraulics/power-cut': {
    short: 'Aguante en corte de luz',
    pass: 'Las plantas crecidas a {air} aguantan {measured}; un corte dura {cut}.',
    watch:
      'A {air} las plantas crecidas aguantan {measured}; un corte dura {cut}. {from} Riegue a mano o ponga bomba con batería.',
    fail: 'A {air} las plantas crecidas aguantan {measured}; un corte dura {cut}. {from} Prevea una bomba con batería.',
    because: 'Vaso, taco y raíces retienen poco. Las plantas jóvenes duran más que las crecidas.',
  },
}

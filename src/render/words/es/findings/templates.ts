import type { FindingWords } from '../../words.ts'

const bore: Readonly<Record<string, FindingWords>> = {
  'templates/stub-fits': {
    short: 'El brazo entra en columna',
    pass: 'El brazo entra en el interior con {measured} de holgura a cada lado.',
    watch:
      'El brazo entra en el interior con solo {measured} de holgura a cada lado; el tubo almacenado se ovala, y {want} lo deja entrar.',
    fail: 'El brazo mide {stub} de ancho, su eje está a {offset} del centro y el interior de la columna {column} mide {bore}, así que ningún agujero lo admite. Ahí entra un brazo de {widest} o menos; si no, céntrelo o elija una columna más ancha.',
    because: 'Un brazo más ancho que el interior cortaría el tubo en dos.',
  },
  'templates/stubs-meet': {
    short: 'Extremos separados dentro',
    pass: 'Los {count} extremos de un anillo quedan a {measured} dentro del tubo.',
    watch: 'Los {count} extremos de un anillo quedan a solo {measured} dentro del tubo.',
    fail: 'Los {count} extremos de un anillo chocan en el interior de {bore}, por {measured}.',
    because: 'Los brazos cuyos extremos chocan no entran hasta su línea, y represan el agua y las raíces.',
  },
  'templates/free-core': {
    short: 'Paso para la subida',
    pass: 'Los extremos dejan un paso de {measured}; la manguera de subida mide {hose} de ancho.',
    watch: 'Los extremos dejan un paso de {measured}; la manguera de subida mide {hose} de ancho.',
    fail: 'Los extremos dejan un paso de {measured} y la manguera de subida mide {hose} de ancho: no pasa.',
    because: 'La manguera debe subir por todos los anillos, y volver a salir para limpiarla.',
  },
  'templates/mitre-seals': {
    short: 'El inglete toca la pared',
    pass: 'El extremo a inglete entra {measured}; sus lados tocan toda la pared desde {must}.',
    watch: 'El extremo a inglete entra {measured}; sus lados tocan toda la pared desde {must}.',
    fail: 'El extremo a inglete entra {measured}, y sus lados solo tocan toda la pared desde {must}: quedarían al aire y gotearían.',
    because:
      'Un corte plano toca un tubo redondo primero en el centro. Lo que sujeta y sella a los lados es el contacto con la pared.',
  },
}

const hole: Readonly<Record<string, FindingWords>> = {
  'templates/ring-web': {
    short: 'Pared entre agujeros',
    pass: '{count} agujeros ocupan {used} del contorno de {round} y dejan {measured} de pared entre ellos.',
    watch:
      '{count} agujeros ocupan {used} del contorno de {round} y dejan {measured} de pared entre ellos; se desean {want}.',
    fail: '{count} agujeros ocupan {used} del contorno de {round} y dejan {measured} de pared entre ellos; deben quedar al menos {must}. El tubo se rajaría.',
    because:
      'La pared entre los agujeros de un anillo soporta todo lo de arriba, y se dobla cuando se empuja la columna.',
  },
  'templates/ligament': {
    short: 'Pared al anillo siguiente',
    pass: 'Quedan {measured} de pared entre un agujero y el más próximo de los anillos siguientes.',
    watch: 'Quedan {measured} de pared entre un agujero y el más próximo de los anillos siguientes; se desean {want}.',
    fail: 'Quedan {measured} de pared entre un agujero y el más próximo de los anillos siguientes; deben quedar al menos {must}.',
    because: 'Los puentes finos se agrietan al cortar los agujeros y al llevar la columna.',
  },
  'templates/hole-saw': {
    short: 'Fondo de la sierra de copa',
    pass: 'Una sierra de copa sujeta en la dirección del brazo necesita {measured} de fondo; las corrientes lo tienen.',
    watch:
      'Una sierra de copa sujeta en la dirección del brazo necesita {measured} de fondo; una corta solo da {want}.',
    fail: 'Una sierra de copa sujeta en la dirección del brazo, a {angle}, necesita {measured} de fondo; las corrientes acaban en {must}. Dibuje el agujero y use una caladora o una herramienta rotativa.',
    because:
      'Una sierra de copa inclinada debe seguir cortando hasta que sale su último diente, mucho después del primero.',
  },
  'templates/hole-saw-size': {
    short: 'Sierra de copa adecuada',
    pass: 'La sierra de {saw} corta el agujero de {hole}.',
    watch: 'La sierra más próxima es de {saw} y el agujero de {hole}: sobran {measured}.',
    fail: 'La sierra más próxima es de {saw} y el agujero de {hole}: el brazo no entra.',
    because: 'Un agujero demasiado ancho deja alrededor una holgura que la unión tiene que salvar.',
  },
  'templates/tracing': {
    short: 'Error al calcar el extremo',
    pass: 'Calcar el extremo cortado de un brazo desviaría el borde hasta {measured}, con los lados {high} demasiado altos. Use la plantilla.',
    watch: 'Calcar el extremo cortado de un brazo desviaría el borde hasta {measured}.',
    fail: 'Calcar el extremo cortado de un brazo desviaría el borde hasta {measured}.',
    because: 'Un extremo plano contra un tubo redondo solo lo toca en el centro; el lápiz sigue su sombra.',
  },
}

const lip: Readonly<Record<string, FindingWords>> = {
  'templates/lip': {
    short: 'Altura del labio',
    pass: 'El labio está {measured} sobre el borde inferior del agujero.',
    watch: 'El labio está {measured} sobre el borde inferior del agujero; {want} retiene las salpicaduras.',
    fail: 'A {above} sobre la horizontal un brazo de {side} levanta el labio solo {measured}, y las salpicaduras salen; deben ser {must}. Use de {from} a {to} sobre la horizontal, o un brazo más largo.',
    because: 'Las gotas que dan en la abertura salpican hacia fuera; lo que no pasa el labio vuelve.',
  },
  'templates/angle': {
    short: 'Ángulo del brazo',
    pass: 'El brazo sube a {measured} sobre la horizontal ({between} desde la columna).',
    watch: 'El brazo sube a {measured} sobre la horizontal ({between} desde la columna); el límite usual es {want}.',
    fail: 'El brazo sube a {measured} sobre la horizontal.',
    because: 'Un brazo plano deja salir agua; uno empinado hace un agujero largo y débil y no deja sitio a la planta.',
  },
  'templates/freeboard': {
    short: 'Labio sobre la abertura',
    pass: 'El agua tendría que subir {measured} en la abertura antes de pasar el labio.',
    watch: 'El agua tendría que subir solo {measured} en la abertura antes de pasar el labio.',
    fail: 'El labio está {measured} sobre el punto más bajo de la abertura: sale agua de todos los brazos.',
    because: 'Raíces y hojas pueden retener el agua en una abertura; el labio debe quedar por encima.',
  },
  'templates/site-angle': {
    short: 'Ángulo real de un brazo',
    pass: 'El puesto {site} está a {built}, {measured} de lo previsto; su labio queda {lip} más alto (menos: más bajo).',
    watch:
      'El puesto {site} está a {built} en vez de {planned}; su labio queda {lip} más alto (menos: más bajo). Si queda más bajo, deje el puesto vacío y tápelo.',
    fail: 'El puesto {site} está a {built} en vez de {planned}; su labio queda {lip} más alto (menos: más bajo). Deje el puesto vacío y tápelo.',
    because: 'Un brazo más inclinado que sus vecinos es el primero que se desborda.',
  },
}

const cup: Readonly<Record<string, FindingWords>> = {
  'templates/cup-ledge': {
    short: 'El borde del vaso sujeta',
    pass: 'El borde es {measured} más ancho que el interior del brazo y cuelga de él.',
    watch: 'El borde es solo {measured} más ancho que el interior del brazo; {want} lo sujeta seguro.',
    fail: 'El borde mide {rim} de ancho y el interior del brazo {bore}: el vaso se cae dentro.',
    because: 'Los vasos de red no siguen norma alguna. Un vaso mojado con planta crecida cuelga solo de su borde.',
  },
  'templates/cup-play': {
    short: 'El cuerpo del vaso entra',
    pass: 'El cuerpo tiene {measured} de holgura en el brazo.',
    watch:
      'El cuerpo mide {body} de ancho y el interior {bore}: corte el vaso {slit} por un lado, y se cierra con {overlap} de solape.',
    fail: 'El cuerpo mide {body} de ancho y el interior {bore}, y ni el pie entra.',
    because: 'Un vaso metido a la fuerza sobresale de la boca y no se saca sin romper raíces.',
  },
  'templates/cup-reach': {
    short: 'Pie en el agua que cae',
    pass: 'El pie del vaso pasa {measured} de la pared interior, en el agua que cae.',
    watch:
      'El pie del vaso acaba {short} antes del interior: un taco joven queda seco. Acorte el brazo, use un vaso más hondo o una mecha.',
    fail: 'El pie del vaso acaba {short} antes del interior.',
    because: 'Los primeros días el taco no tiene raíces que lleguen al agua; el agua debe llegar a él.',
  },
  'templates/cups-meet': {
    short: 'Vasos separados dentro',
    pass: 'Los pies de los {count} vasos de un anillo quedan a {measured}.',
    watch: 'Los pies de los {count} vasos de un anillo quedan a solo {measured}.',
    fail: 'Los pies de los {count} vasos de un anillo chocan por {measured}.',
    because: 'Los vasos que chocan se levantan unos a otros y represan el agua.',
  },
}

const pipe: Readonly<Record<string, FindingWords>> = {
  'templates/known-pipe': {
    short: 'Tubo conocido en la tabla',
    pass: 'Un tubo de la tabla mide {listed} de ancho, a {measured} de este: {first}.',
    watch:
      'Ningún tubo de la tabla mide {outside} de ancho. Si {round} fue la cinta alrededor, déjelo; si {outside} es el interior o un nombre, elija el tubo que lo lleva impreso. Los más próximos son {first} y {second}.',
    fail: 'Ningún tubo de la tabla mide {outside} de ancho. Los más próximos son {first} y {second}.',
    because:
      'La medida en el nombre de la tienda es un interior en un país y un exterior en otro; una plantilla necesita el exterior real.',
  },
  'templates/pipe-marking': {
    short: 'Tubo según su marcado',
    pass: 'Solo una medida de la tabla tiene {outside} de ancho: {names}.',
    watch:
      '{measured} medidas de la tabla están a un error de cinta de {outside}: {names}. Lea el marcado impreso en el tubo.',
    fail: '{measured} medidas de la tabla están a un error de cinta de {outside}: {names}.',
    because: 'Tapones y manguitos de uno no sellan en el otro, aunque la cinta no los distinga.',
  },
  'templates/joint-gap': {
    short: 'Holgura de la unión',
    pass: 'La holgura de {measured} en el radio va bien para {joint} ({from} a {to}).',
    watch: 'La holgura de {measured} en el radio está fuera de lo que va bien para {joint}: {from} a {to}.',
    fail: 'La holgura de {measured} en el radio está fuera de lo que va bien para {joint}: {from} a {to}.',
    because:
      'En una holgura fina no entra el sellador, una ancha se puentea y se abre poco a poco; el agua la encuentra con poco caudal.',
  },
  'templates/paper-scale': {
    short: 'Impresión a tamaño real',
    pass: 'La barra impresa mide {measured}.',
    watch:
      'La barra impresa mide {measured} en vez de {bar}: las plantillas se estiran para esta impresora; imprímalas otra vez, y la barra saldrá bien.',
    fail: 'La barra impresa mide {measured} en vez de {bar}: más de lo que una corrección debe ocultar. Quite “ajustar a la página” e imprima otra vez.',
    because: 'Una página ajustada a sus márgenes hace todos los agujeros pequeños, y la envoltura no cierra.',
  },
}

const others: Readonly<Record<string, FindingWords>> = {
  'templates/plain-hole': {
    short: 'Agujero para vaso solo',
    pass: 'El agujero de {hole} es {measured} del ancho del tubo.',
    watch: 'El agujero de {hole} es {measured} del ancho del tubo.',
    fail: 'El agujero de {hole} es {measured} de los {outside} del tubo; como máximo {must} deja tubo.',
    because:
      'Un agujero ancho en una pared redonda deja el borde colgado de dos puntos, con hueco a los lados, y poco tubo detrás.',
  },
  'templates/plain-hole-depth': {
    short: 'Vaso solo y pared opuesta',
    pass: 'Un vaso de {depth} acaba {measured} antes de la pared opuesta.',
    watch: 'Un vaso de {depth} acaba {measured} antes de la pared opuesta.',
    fail: 'Un vaso de {depth} es demasiado hondo: la pared opuesta está a {deepest}.',
    because: 'Un vaso que toca la pared opuesta corta la película de agua y no deja sitio a las raíces.',
  },
  'templates/fitting-pitch': {
    short: 'Paso de las derivaciones',
    pass: 'El paso de {measured} admite un accesorio de {laying} y {between} de tubo.',
    watch: 'El paso de {measured} es justo para un accesorio de {laying}.',
    fail: 'El paso es de {measured}, y un accesorio de {laying} con {between} de tubo necesita {must}.',
    because: 'Una derivación añade su longitud montada a la columna, se dibuje lo que se dibuje.',
  },
  'templates/fitting-branches': {
    short: 'Derivaciones por anillo',
    pass: 'Un anillo de {measured} cabe en las {branches} derivaciones de un accesorio.',
    watch: 'Un anillo de {measured} es más que las {branches} derivaciones de un accesorio.',
    fail: 'Un anillo de {measured} es más que las {branches} derivaciones de un accesorio.',
    because: 'Un accesorio da a cada altura tantos puestos como derivaciones tiene.',
  },
  'pocket/slit': {
    short: 'Largo de la ranura',
    pass: 'La ranura de {measured} se abre sobre la horma de {former}.',
    watch:
      'La ranura de {measured} solo se abre sobre la horma de {former} con más estirado que el {strain} previsto; hacen falta {want}.',
    fail: 'La ranura de {measured} no se abre sobre la horma de {former} sin rasgarse; hacen falta al menos {must}.',
    because: 'Una ranura se abre en un lazo del doble de su largo; lo que la horma pide de más se estira.',
  },
  'pocket/stretch': {
    short: 'Estirado de los labios',
    pass: 'Los labios se estiran {measured}.',
    watch: 'Los labios se estiran {measured}.',
    fail: 'Los labios se estiran {measured}; lo máximo que aguanta es {must}.',
    because: 'El tubo caliente demasiado estirado blanquea, adelgaza y se rasga en los extremos de la ranura.',
  },
  'pocket/wall': {
    short: 'Pared que queda en labios',
    pass: 'En los labios quedan {measured} de la pared de {wall}.',
    watch: 'En los labios quedan {measured} de la pared de {wall}.',
    fail: 'En los labios quedan {measured} de la pared de {wall}; deben quedar {must}.',
    because: 'Un labio fino se dobla bajo una planta mojada y deja pasar el agua por su borde.',
  },
  'pocket/share': {
    short: 'Pared junto a las ranuras',
    pass: '{measured} del contorno queda entero junto a las ranuras.',
    watch: '{measured} del contorno queda entero junto a las ranuras.',
    fail: '{count} ranuras de {slit} dejan {left} alrededor del tubo, {measured} de él; debe quedar al menos {must}.',
    because: 'En caliente, lo que queda entre las ranuras es lo único que mantiene recto el tubo.',
  },
  'pocket/pitch': {
    short: 'Paso de los bolsillos',
    pass: 'Los bolsillos de una línea están a {measured} hormas.',
    watch: 'Los bolsillos de una línea están a {measured} hormas; {want} mantiene el calor de uno lejos del otro.',
    fail: 'Los bolsillos de una línea están a {measured} hormas; lo mínimo son {must}.',
    because: 'El calor para un bolsillo deja que su vecino vuelva hacia el tubo.',
  },
}

export const templates: Readonly<Record<string, FindingWords>> = {
  ...bore,
  ...hole,
  ...lip,
  ...cup,
  ...pipe,
  ...others,
}

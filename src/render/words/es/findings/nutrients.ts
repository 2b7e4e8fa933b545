import type { FindingWords } from '../../words.ts'
import { nutrientsCare } from './nutrients-care.ts'

const ballast = (ion: string, short: string, because: string): FindingWords => ({
  short,
  pass: `El agua mezclada tiene {measured} de ${ion}; hasta {want} no hace daño.`,
  watch: `El agua mezclada tiene {measured} de ${ion}; desde {want} hay que vigilar. Agua más blanda en la mezcla lo baja.`,
  fail: `El agua mezclada tiene {measured} de ${ion}; {must} es el límite para un depósito que se repone. Mezcle más agua de lluvia o destilada.`,
  because,
})

const water: Readonly<Record<string, FindingWords>> = {
  'nutrients/shares': {
    short: 'Las partes suman el todo',
    pass: 'Las partes de las aguas suman el total.',
    watch: 'Las partes de las aguas suman {measured}.',
    fail: 'Las partes de las aguas suman {measured} y deben sumar 1 (100 %). Omita una parte y tomará el resto.',
    because: 'Una mezcla se compone de todas sus partes.',
  },
  'nutrients/charge-balance': {
    short: 'El análisis cuadra',
    pass: '{name}: los iones positivos suman {plus} y los negativos {minus}; concuerdan.',
    watch: '{name}: los iones positivos suman {plus} y los negativos {minus}. {hint}',
    fail: '{name}: los iones positivos suman {plus} y los negativos {minus}. Falta un valor o está en otra unidad. {hint}',
    because: 'El agua no lleva carga, así que un análisis cuyos iones no cuadran está mal en algo.',
  },
  'nutrients/unit-slip': {
    short: 'Unidad de un ion',
    pass: 'Ninguna otra unidad explicaría mejor el análisis.',
    watch: '{ion} con {typed}: leído como {basis} el análisis cuadra.',
    fail: '{ion} con {typed} no concuerda con lo demás; leído como {basis} el análisis cuadra. Escriba {instead} si es eso lo que dice.',
    because: 'El error más común es un número en meq/L o como nitrógeno anotado como mg/L del ion.',
  },
  'nutrients/source-conductivity': {
    short: 'Iones y conductividad',
    pass: '{name}: los iones del análisis dan {computed}, el análisis dice {reported}.',
    watch: '{name}: los iones del análisis dan {computed}, el análisis dice {reported}. Algo falta o es viejo.',
    fail: '{name}: los iones del análisis dan {computed}, el análisis dice {reported}. Uno de los dos está en otra unidad (mS/cm o µS/cm), o falta la mayoría de los iones.',
    because: 'La conductividad es la suma de lo que transportan los iones.',
  },
  'nutrients/sodium': ballast(
    'sodio',
    'Sodio en el agua',
    'Las plantas dejan el sodio en el depósito, y cada reposición añade más.',
  ),
  'nutrients/chloride': ballast(
    'cloruro',
    'Cloruro en el agua',
    'Las plantas toman poco cloruro, y cada reposición añade más.',
  ),
  'nutrients/calcium': ballast(
    'calcio',
    'Calcio en el agua',
    'El calcio que ya está en el agua no deja sitio al nitrato de calcio, y con él al nitrógeno.',
  ),
  'nutrients/sulfate': ballast(
    'sulfato',
    'Sulfato en el agua',
    'El sulfato que las plantas dejan llena la conductividad y no alimenta nada.',
  ),
  'nutrients/fluoride': {
    short: 'Fluoruro en el agua',
    pass: 'La mezcla tiene {measured} de fluoruro, por debajo de los {want} para agua potable. Lo que toman las hojas no se calcula aquí.',
    watch:
      'La mezcla tiene {measured} de fluoruro ({undiluted} sin mezclar), por encima de los {want} para agua potable. No sirve para lavar hojas ni beber; lo que toman las hojas queda fuera de este modelo: pregunte a un laboratorio o a la oficina de salud.',
    fail: 'La mezcla tiene {measured} de fluoruro.',
    because: 'El fluoruro no es parte del modelo de la nutrición; solo se compara con la guía del agua potable.',
  },
  'nutrients/alkalinity-low': {
    short: 'Alcalinidad suficiente',
    pass: 'El agua tiene {measured} de alcalinidad; desde {want} sostiene el pH.',
    watch:
      'El agua tiene solo {measured} de alcalinidad; por debajo de {want} el pH oscila con cada dosis. Dosifique el ácido en tercios, lea cada día, o tenga a mano bicarbonato de potasio.',
    fail: 'El agua tiene solo {measured} de alcalinidad.',
    because: 'La alcalinidad es lo que sostiene el pH cuando lo empujan raíces o ácido.',
  },
  'nutrients/alkalinity-high': {
    short: 'Alcalinidad al reponer',
    pass: 'El agua tiene {measured} de alcalinidad; hasta {want} raíces y amonio pueden con ella.',
    watch:
      'El agua tiene {measured} de alcalinidad, por encima de {want}: el pH sube con cada reposición. Dé a cada litro su ácido según la alcalinidad, no según el pH, o mezcle agua más blanda.',
    fail: 'El agua tiene {measured} de alcalinidad.',
    because: 'Toda el agua repuesta trae su alcalinidad al depósito.',
  },
  'nutrients/unread-ion': {
    short: 'Nombres del análisis',
    pass: 'Todos los nombres del análisis se conocen.',
    watch: 'No se conocen y se omiten: {list}. Escriba Ca, Mg, K, Na, NH4, HCO3, Cl, SO4, NO3, NO3-N …',
    fail: 'No se conocen y se omiten: {list}.',
    because: 'Lo que no se lee no cuenta en el balance.',
  },
}

const batch: Readonly<Record<string, FindingWords>> = {
  'nutrients/shelf-entry': {
    short: 'Productos legibles',
    pass: 'Todos los productos se pueden usar.',
    watch: '“{name}”: {problem}',
    fail: '“{name}”: {problem}',
    because: 'Un producto cuenta por su fórmula o su etiqueta, nunca por suposición.',
  },
  'nutrients/element': {
    short: 'Elemento frente a objetivo',
    pass: '{nutrient} llega a {measured}; se desean {target}.',
    watch: '{nutrient} llega a {measured}; se desean {target}. {reason}',
    fail: '{nutrient} llega a {measured}; se desean {target} y lo máximo admitido es {must}. {reason}',
    because: 'La receta se acerca a todos los objetivos a la vez tanto como permiten agua y productos.',
  },
  'nutrients/bounds': {
    short: 'Límites que se cumplen',
    pass: 'Todos los límites se cumplen a la vez.',
    watch: '{list} no se puede cumplir.',
    fail: 'Ningún producto puede cumplir {list}. Mezcle otra agua, añada un ácido o una base a los productos, o amplíe el límite.',
    because: 'Los límites que se contradicen entre sí o con el agua no dejan receta que los cumpla todos.',
  },
  'nutrients/cheapest': {
    short: 'Lo más barato en la banda',
    pass: 'La preparación cuesta {cost}, lo mínimo con cada elemento a menos del {within} % de lo deseado; la más cercana a lo deseado cuesta {nearest}.',
    watch:
      'Ninguna mezcla de los productos deja cada elemento a menos del {within} % de lo deseado, así que la preparación es la más cercana. Amplíe la banda o añada otra sal.',
    fail: 'Ninguna mezcla de los productos deja cada elemento a menos del {within} %.',
    because: 'Lo más barato se busca solo donde a ninguna planta le falta nada.',
  },
  'nutrients/proof': {
    short: 'Receta óptima comprobada',
    pass: 'Ninguna otra mezcla de los productos se acerca más; la prueba cierra en {measured}.',
    watch: 'La prueba deja abierto {measured}.',
    fail: 'La prueba deja abierto {measured}.',
    because: 'Una receta solo se acepta donde su prueba de óptimo cierra.',
  },
  'nutrients/ammonium-share': {
    short: 'Amonio en el nitrógeno',
    pass: '{measured} del nitrógeno es amonio; hasta {want} es seguro.',
    watch: '{measured} del nitrógeno es amonio; por encima de {want} el pH cae rápido y las raíces sufren.',
    fail: '{measured} del nitrógeno es amonio.',
    because: 'Las raíces que toman amonio sueltan ácido.',
  },
  'nutrients/traces': {
    short: 'Oligoelementos presentes',
    pass: 'Hierro, manganeso, zinc, boro, cobre y molibdeno están todos.',
    watch:
      'Nada aporta {list}, y ningún objetivo lo pide. Añada objetivos, o copie los oligoelementos de la etiqueta del saco.',
    fail: 'Nada aporta {list}.',
    because: 'Las hojas palidecen en semanas donde falta un oligoelemento.',
  },
  'nutrients/unread-target': {
    short: 'Nombres de los objetivos',
    pass: 'Cada objetivo es un elemento.',
    watch: 'No se conocen y se omiten: {list}. Escriba N, P, K, Ca, Mg, S, Fe, Mn, Zn, B, Cu, Mo.',
    fail: 'No se conocen y se omiten: {list}.',
    because: 'A un objetivo que no se lee no se apunta.',
  },
  'nutrients/weighable': {
    short: 'Dosis que se pueden pesar',
    pass: 'Cada dosis es al menos veinte pasos de una balanza a mano.',
    watch:
      '{measured} dosis son demasiado pequeñas para la balanza. {name}: {dose} con pasos de {step} no se puede pesar; disuelva {dissolve} en {volume}, {thinned}y tome {draw}.',
    fail: '{measured} dosis son demasiado pequeñas para la balanza.',
    because: 'Una dosis de pocos pasos yerra por muchos por ciento, y los oligoelementos pronto se vuelven veneno.',
  },
  'nutrients/pack': {
    short: 'Producto suficiente',
    pass: 'Hay {measured} de {name}; una preparación gasta {dose}, y alcanza para {batches} preparaciones.',
    watch:
      '{measured} de {name} alcanzan para una preparación ({batch}), y faltan {short} para llenar además las botellas de solución madre, que llevan {bottles}.',
    fail: 'Hay {measured} de {name} y una preparación lleva {batch}: faltan {short}, contando las botellas de solución madre.',
    unknown: 'Por eso no se sabe cuánto durará {list}.',
    because:
      'Una preparación a la que le falta una sal es otra receta, y la tienda no está abierta el día del vaciado.',
  },
  'nutrients/acid-phosphorus': {
    short: 'Fósforo por el ácido',
    pass: '{acid} solo traería {measured} de fósforo al neutralizar {alkalinity}; encaja.',
    watch:
      'Si {acid} solo neutraliza la alcalinidad de {alkalinity}, trae {measured} de fósforo; lo máximo deseado es {want}. Reparta el trabajo con ácido nítrico, o mezcle agua de lluvia.',
    fail: '{acid} solo traería {measured} de fósforo.',
    because: 'El ácido fosfórico cede un protón por molécula, así que mucha alcalinidad significa mucho fósforo.',
  },
}

const solution: Readonly<Record<string, FindingWords>> = {
  'nutrients/ph': {
    short: 'pH que dura',
    pass: 'El depósito se asienta en pH {measured}; se desea {wanted}. {buffer} de ácido lo mueven en uno.',
    watch: 'El depósito se asienta en pH {measured}; se desea {wanted}. {buffer} de ácido lo mueven en uno.',
    fail: 'El depósito se asienta en pH {measured}, fuera de {must}; se desea {wanted}. Entre los productos no hay ácido o base que lo sostenga, o no basta.',
    because:
      'Por debajo de 5 sufren raíces y bombas; por encima de 6,8 precipitan hierro, manganeso y fosfato de calcio.',
  },
  'nutrients/ph-rise': {
    short: 'Subida al salir el gas',
    pass: 'Recién mezclada el medidor indica {now}, un día después {later}.',
    watch:
      'Recién mezclada el medidor indica {now}, un día después {later}. No corrija el primer número: sube {measured} al salir el dióxido de carbono.',
    fail: 'Recién mezclada el medidor indica {now}, un día después {later}.',
    because: 'El ácido convierte bicarbonato en dióxido de carbono, y una película que cae lo suelta en horas.',
  },
  'nutrients/chelate': {
    short: 'El hierro sigue disuelto',
    pass: '{chelate} retiene el hierro hasta pH {want}; el depósito se asienta en {measured}.',
    watch:
      '{chelate} retiene el hierro hasta pH {want}; el depósito se asienta en {measured}. Use un quelato más fuerte, o mantenga bajo el pH.',
    fail: '{chelate} retiene el hierro hasta pH {want}; el depósito se asienta en {measured}.',
    because: 'El hierro que su quelato suelta precipita como óxido.',
  },
  'nutrients/conductivity': {
    short: 'Conductividad de la mezcla',
    pass: 'El medidor debe indicar {measured}; se prevén {expected}.',
    watch:
      'El medidor debe indicar {measured}; se prevén {expected}. Objetivos y conductividad prevista no van juntos.',
    fail: 'El medidor debe indicar {measured}; se prevén {expected}. Objetivos y conductividad prevista no van juntos.',
    because: 'La conductividad resulta de los iones; no se puede elegir aparte de los objetivos.',
  },
  'nutrients/tank-solids': {
    short: 'Nada precipita: depósito',
    pass: 'Nada está cerca de precipitar; lo más próximo es {mineral}, con {measured}.',
    watch:
      '{mineral} supera su saturación en {measured} (una potencia de diez); puede precipitar como costra o lodo. Baje el pH, el fósforo o el calcio.',
    fail: '{mineral} supera su saturación en {measured}.',
    because: 'Lo que precipita no alimenta nada y tapa el distribuidor.',
  },
  'nutrients/stock-load': {
    short: 'Botellas transparentes',
    pass: 'A {coldest} la botella {bottle} usa {measured} de lo que se disuelve; servirían hasta {strongest} veces.',
    watch:
      'A {coldest} la botella {bottle} usa {measured} de lo que se disuelve ({by}). Haga la solución madre como máximo {strongest} veces más fuerte.',
    fail: 'A {coldest} la botella {bottle} tiene {measured} veces lo que se disuelve ({by}): salen cristales. Haga la solución madre como máximo {strongest} veces más fuerte.',
    because: 'Las sales cristalizan con el frío, y la dosis siguiente queda débil.',
  },
  'nutrients/bottle-clash': {
    short: 'Botellas sin conflicto',
    pass: 'En ninguna botella se junta lo que no debe.',
    watch: '{one} y {other} en la botella {bottle} dan {gives}.',
    fail: '{one} y {other} en la botella {bottle} dan {gives} con esa concentración. El calcio va en A; sulfatos y fosfatos en B.',
    because: 'A cien veces de concentración el calcio encuentra sulfato y fosfato muy por encima de la saturación.',
  },
  'nutrients/bottle-solids': {
    short: 'Nada precipita: botella',
    pass: 'En la botella {bottle}, {mineral} sigue disuelto ({measured}).',
    watch:
      'En la botella {bottle} puede precipitar {mineral} ({measured} sobre su saturación, una estimación). Haga la solución madre más débil, o añádale un poco de ácido.',
    fail: 'En la botella {bottle} precipita {mineral}.',
    because: 'Una solución madre lechosa dosifica desigual y tapa las jeringas.',
  },
}

export const nutrients: Readonly<Record<string, FindingWords>> = { ...water, ...batch, ...solution, ...nutrientsCare }

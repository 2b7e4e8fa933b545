/** Headings and lines of the batch sheet and of the correction. */
export const feedTables: Readonly<Record<string, string>> = {
  'feed-batch': 'Preparación de {volume} a {temperature}',
  'feed-water': 'Agua: {blend}; alcalinidad {alkalinity}.',
  'feed-water-part': '{share} % {name}',
  'feed-least-soft':
    'De {name} hace falta al menos el {share} %: con menos, {ion} pasa de {limit}. Con esa parte queda una alcalinidad de {alkalinity}.',
  'feed-product': 'Producto',
  'feed-mass': 'Pese',
  'feed-volume': 'o mida',
  'feed-per-litre': 'Por litro',
  'feed-bottle': 'Botella',
  'feed-cost': 'Coste',
  'feed-element': 'Elemento',
  'feed-wanted': 'Deseado',
  'feed-reached': 'Alcanzado',
  'feed-share': 'De ello',
  'feed-reason': 'Por qué',
  'feed-weak': '{name}: disuelva {dissolve} en {volume}, {thinned}tome {draw} para esta preparación.',
  'feed-pen':
    'El medidor debe indicar {conductivity} (25 °C){scale}. pH {now} recién mezclada, {later} tras un día al aire.',
  'feed-pen-scale': ', es decir {reading} {name}',
  'feed-pen-by':
    'Estas bandas cuentan el modelo (± {model} %), las etiquetas y el análisis del agua (± {labels} %), la balanza (± {weighed} %) y el medidor (± {pen} %); del pH, el modelo (± {phModel}), la alcalinidad y el ácido (± {phAlkalinity}) y {phPen}.',
  'feed-pen-ph': 'el medidor (± {by})',
  'feed-pen-unknown': 'ningún medidor, pues nadie dijo cuándo se calibró',
  'feed-acid': '{acid} solo necesitaría {amount} para esta preparación, y traería {brings}.',
  'feed-acid-passing':
    '{acid} solo necesitaría {amount}, pero los microbios lo consumen en días: solo para corregir un único día.',
  'feed-brings-nothing': 'ningún nutriente',
  'feed-stock':
    'Botella {bottle}, {factor} veces más fuerte, para {volume}: {contents}. {dose} por cada litro de solución.',
  'feed-price': 'Coste {sum}.',
  'feed-price-open': 'Coste {sum}; sin precio: {list}.',
  'feed-cheapest':
    'Lo más barato con cada elemento a menos del {within} % de lo deseado: {cost}. Lo más cercano a lo deseado cuesta {nearest}.',
  'feed-cheapest-none':
    'Ninguna mezcla de los productos deja cada elemento a menos del {within} % de lo deseado: esta es la más cercana.',
  'feed-cheapest-prices': 'Sin {needs} no se puede buscar lo más barato: esta es la receta más cercana a lo deseado.',
  'feed-gain': 'Con {name} entre los productos la receta yerra un {share} % menos.',
  'feed-gain-none': 'Ninguna sal por sí sola acercaría más la receta a sus objetivos.',
  'feed-refill':
    'Para empezar reponga con el {strength} % de la receta: eso toman {crops} con el agua bajo luz fuerte. Después según el medidor: más débil donde sube, más fuerte donde baja.',
  'feed-refill-assumed': 'Tomados como lechuga, pues nadie los ha medido: {crops}.',
  'feed-refill-lettuce': 'lechugas',
  'feed-order': 'Orden de mezcla',
  'feed-order-water': 'Llene el depósito a nueve décimos con el agua mezclada. Temperatura anotada.',
  'feed-order-acid':
    'Vierta {amount} de {name} despacio en un cubo lleno de esa agua, y luego el cubo en el depósito. Remueva.',
  'feed-order-salt': 'Disuelva {amount} de {name} en un cubo de agua del depósito, viértalo, remueva.',
  'feed-order-weak': 'Añada {amount} de la solución débil de {name}, remueva.',
  'feed-order-fill': 'Llene hasta {volume}, remueva diez minutos, espere veinte.',
  'feed-order-read':
    'Lea el medidor: {conductivity}. Si difiere más de una décima parte: pare, busque la causa, no plante.',
  'feed-order-ph': 'Lea el pH: {now} ahora. No lo corrija todavía; léalo otra vez mañana: {later}.',
  'feed-running':
    'Dura {days}; lo acaba {by}. Un depósito que se tira contiene {nitrogen} de nitrógeno y {phosphorus} de fósforo.',
  'feed-running-watch': 'A los {days}, {ion} pasa de {limit}: mire los bordes de las hojas viejas.',
  'correct-top-up': 'Reponga {volume} con el {strength} % de la receta.',
  'correct-plain': 'Reponga {volume} de agua mezclada sola.',
  'correct-stronger': 'El depósito está lleno y débil: disuelva esto en un cubo de agua del depósito y remueva.',
  'correct-exchange': 'Aun así es demasiado fuerte: saque {volume} y ponga agua sola en su lugar.',
  'correct-nothing': 'La concentración está bien; nada que añadir.',
  'correct-stock': 'o {volume} de cada botella',
  'correct-acid':
    'pH {from} → {to}: de {low} a {high} de {name} por la imprecisión del medidor. Dé primero {first}, diluido en un cubo, remueva una hora, lea otra vez.',
  'correct-acid-none': 'pH {from} → {to}: ningún ácido entre los productos lo logra; hacen falta {charge}.',
  'correct-base':
    'El pH {from} está por debajo de {to}: {charge} de base, por ejemplo {grams} de bicarbonato de potasio, primero dos tercios. A menudo basta con cambiar la mitad del agua.',
  'correct-weak': '{amount} de la disolución débil de',
  'correct-pen-unknown':
    'Nadie dijo cuándo se calibró el medidor de pH: ningún ácido según él. Calíbrelo con dos tampones frescos, anótelo en el plan y vuelva a leer.',
  'correct-which-scale':
    '«{typed}»: ¿en qué escala? Como ppm, 500 da {on500}, 640 da {on640}, 700 da {on700}. Escriba la unidad o diga en el plan la escala del medidor.',
  'correct-no-feed': '«{typed}»: ninguna solución tiene {read}. ¿Quizá {perhaps}? Mire la unidad.',
  'correct-no-temperature': '«{typed}» no es temperatura de un depósito.',
  'correct-unread': '«{typed}» no se puede leer. Escríbalo como {example}.',
  'correct-ph-right': 'El pH está dentro de la imprecisión del medidor: déjelo.',
  'correct-pen':
    'El medidor de pH yerra ± {width}: nada de ácido según él. Calíbrelo en dos soluciones patrón frescas, y lea otra vez.',
}

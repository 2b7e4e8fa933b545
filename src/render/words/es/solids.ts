import type { SolidSentences } from '../en/solids.ts'

/** What is said about solids to print or to look at. Slots in braces. */
export const solidSentences: SolidSentences = {
  // names
  stub: 'brazo',
  guide: 'guía de taladrado',
  'guide-1': 'guía de taladrado, pieza 1',
  'guide-2': 'guía de taladrado, pieza 2',
  'guide-3': 'guía de taladrado, pieza 3',
  'guide-4': 'guía de taladrado, pieza 4',
  'guide-5': 'guía de taladrado, pieza 5',
  'guide-6': 'guía de taladrado, pieza 6',
  'guide-7': 'guía de taladrado, pieza 7',
  'guide-8': 'guía de taladrado, pieza 8',
  'guide-9': 'guía de taladrado, pieza 9',
  'guide-10': 'guía de taladrado, pieza 10',
  'guide-11': 'guía de taladrado, pieza 11',
  'guide-12': 'guía de taladrado, pieza 12',
  gauge: 'plantilla de ángulo',
  distributor: 'copa del distribuidor',
  'base-ring': 'aro de base',
  lid: 'tapa',
  column: 'columna con sus agujeros',
  tower: 'torre',
  // lines
  size: '{name}: {x} × {y} × {z}',
  'bed-exceeded':
    '{name}: es mayor que la cama de {bed}; encárguela a un servicio de impresión, o hágala de tubo y plancha.',
  'bed-unknown': 'El plan no dice lo grande que es la cama de la impresora, así que nada se partió para ella.',
  split:
    'La guía es mayor que la cama en una pieza, así que viene en {count} piezas. Trozos de filamento son los pasadores: uno en cada agujero de {hole} de una cara de corte. Pegue las piezas cara con cara sobre el tubo, con film debajo; el film evita que se pegue a él.',
  support: '{name}: el collar se inclina {angle} de la vertical; imprímalo con soporte bajo el collar.',
  'guide-use':
    'Las dos muescas de la guía van en la línea, su borde inferior {below} por debajo de la marca del puesto. Átela al tubo, luego marque o corte.',
  'guide-square':
    'El agujero se corta a escuadra con la pared, así que la guía solo lleva su contorno; el ángulo lo da la plantilla.',
  'gauge-use': 'La plantilla va sobre el brazo con su hueco largo en la columna, mientras la unión fragua.',
  'distributor-middle': 'El centro de la copa queda entero: taládrelo para el accesorio que tenga.',
  'ring-closed': 'El aro no tiene ventanas, pues los agujeros del desagüe no caben; el pie debe desaguar de otro modo.',
  'lid-no-filler': 'No hay sitio para un agujero de llenado junto a la columna.',
  'lid-whole': 'La tapa no tiene abertura para la columna: taládrela para la brida o el retorno que tenga.',
  'sites-plain': 'La columna se muestra sin aberturas: sus puestos no son brazos.',
  // cautions
  'print-food':
    'Las capas impresas retienen gérmenes y el plástico de impresión no está hecho para alimentos. En contacto con el agua use un plástico que su fabricante venda para alimentos, selle la superficie con un recubrimiento hecho para ello y cambie la pieza cada temporada. Guías y plantillas quedan fuera del agua.',
  'print-heat':
    'El PLA se ablanda al sol desde unos 55 °C: al aire libre imprima en PETG o ASA lo que queda en la torre.',
  'print-fumes':
    'Ventile la sala mientras imprime; boquilla y cama queman. Los niños no trabajan en una impresora en marcha.',
  // why there is none
  'left-out': 'Se omite: {name}. Hace falta: {needs}.',
  'left-out-because': 'Se omite: {name}. {why}',
  'why-no-stub': 'Los puestos de este plan no son brazos.',
  'why-stub-short': 'La boca cortaría el extremo interior del brazo.',
  'why-holes-meet': 'Los agujeros se tocan entre sí o con un extremo del tubo.',
  'why-guide-wide':
    'El agujero ocupa tanto contorno del tubo que ninguna manga podría pasar por él; use la plantilla de papel.',
  'why-gauge-short': 'Junto al cordón de la unión el brazo no deja largo para una plantilla.',
  'why-no-cup': 'El agua la reparte una te o agujeros en el tubo, no una copa.',
  'why-cup-holes': 'Los agujeros se tocan entre sí, o con el centro o la pared de la copa.',
  'why-no-ring': 'La columna no pasa por la tapa, así que ningún aro sujeta su pie.',
  'why-no-lid': 'Solo se hacen tapas de depósitos redondos; corte esta de plancha.',
  'why-lid-tight': 'El agujero de la columna no deja tapa.',
  'why-nothing': 'De este plan aún no se puede hacer ningún sólido.',
}

import type { FindingWords } from '../../words.ts'

export const parts: Readonly<Record<string, FindingWords>> = {
  'parts/cement': {
    short: 'El pegamento une ambos',
    pass: 'Columna ({column}) y brazo ({stub}) se unen con pegamento {cement}.',
    watch:
      'Brazo de {stub} en columna de {column}: solo un pegamento de {cement} une ambos, en desagües y donde la norma local lo permite; {measured} uniones son dudosas. Compre los dos tubos de un mismo plástico, o use otra unión.',
    fail: 'Ningún pegamento une un brazo de {stub} a una columna de {column}: {measured} uniones se despegarían. Compre tubo de un solo plástico, o use otra unión.',
    because:
      'El pegamento de tubería funde dos caras en una; solo lo hace con algunos plásticos, y los parecidos no están entre ellos.',
  },
  'parts/prices': {
    short: 'Precios conocidos',
    pass: '{parts} piezas; las que tienen precio suman {sum}; {measured} no lo tienen.',
    watch: '{parts} piezas; las que tienen precio suman {sum}; {measured} no lo tienen.',
    fail: '{parts} piezas; las que tienen precio suman {sum}; {measured} no lo tienen.',
    because: 'Una suma que deja piezas fuera debe decirlo.',
  },
}

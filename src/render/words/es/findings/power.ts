import type { FindingWords } from '../../words.ts'

export const power: Readonly<Record<string, FindingWords>> = {
  'power/cost': {
    short: 'Coste de la electricidad',
    pass: 'Bombas y lámparas consumen {energy} al día, de ello {lamps} las lámparas: {day} al día, {measured} al mes. El temporizador ahorra {saved} al mes.',
    watch: 'Bombas y lámparas consumen {energy} al día: {measured} al mes.',
    fail: 'Bombas y lámparas consumen {energy} al día: {measured} al mes.',
    because: 'Potencia por tiempo por el precio de un kilovatio hora.',
  },
  'power/battery': {
    short: 'Batería en corte de luz',
    pass: 'La batería mantiene la bomba {measured}, con {current} mientras marcha. {against}',
    watch: 'La batería mantiene la bomba {measured}, con {current} mientras marcha. {against}',
    fail: 'La batería mantiene la bomba solo {measured}, y el corte más largo es de {cut}: necesita {needed}, es decir una batería de plomo marcada {size}.',
    because:
      'De la carga impresa en una batería de plomo se puede usar la mitad sin acortar su vida; el frío y la edad quitan más.',
  },
  'power/battery-voltage': {
    short: 'Batería apta para la bomba',
    pass: 'La batería de {voltage} puede alimentar la bomba.',
    watch: 'La batería de {voltage} puede alimentar la bomba.',
    fail: 'La bomba necesita {supply} y la batería da {voltage}. Hace falta un inversor, que pierde cerca de un 15 %, o una bomba de reserva para {voltage}: indique su corriente.',
    because:
      'Una bomba funciona con la tensión que indica su etiqueta y con ninguna otra. El cableado de red es para un electricista autorizado.',
  },
}

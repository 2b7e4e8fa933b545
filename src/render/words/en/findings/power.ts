import type { FindingWords } from '../../words.ts'

export const power: Readonly<Record<string, FindingWords>> = {
  'power/cost': {
    short: 'Cost of electricity',
    pass: 'Pumps and lamps take {energy} a day, {lamps} of it the lamps: {day} a day, {measured} a month. The timer saves {saved} a month.',
    watch: 'Pumps and lamps take {energy} a day: {measured} a month.',
    fail: 'Pumps and lamps take {energy} a day: {measured} a month.',
    because: 'Power times time times the price of a kilowatt-hour.',
  },
  'power/battery': {
    short: 'Battery through a power cut',
    pass: 'The battery keeps the pump going for {measured}, drawing {current} while it runs. {against}',
    watch: 'The battery keeps the pump going for {measured}, drawing {current} while it runs. {against}',
    fail: 'The battery keeps the pump going for {measured} only, and the longest cut is {cut}: that takes {needed}, so a lead battery marked {size}.',
    because:
      'Of the charge printed on a lead battery half may be used without shortening its life; cold and age take more.',
  },
  'power/battery-voltage': {
    short: 'Battery suits the pump',
    pass: 'The battery of {voltage} can feed the pump.',
    watch: 'The battery of {voltage} can feed the pump.',
    fail: 'The pump takes {supply} and the battery gives {voltage}. It needs an inverter, which loses about 15 %, or a stand-by pump for {voltage}: state its current.',
    because:
      'A pump runs on the voltage that its label names and no other. Mains wiring is for a licensed electrician.',
  },
}

/** What stands on the charts of tipping and of a day's heat. Slots in braces. */
export interface StandChartWords {
  readonly gust: string
  readonly tank: string
  readonly falls: string
  readonly free: string
  readonly week: string
  readonly place: string
  readonly refill: string
  readonly strapAlways: string
  readonly hour: string
  readonly solution: string
  readonly oxygen: string
  readonly air: string
  readonly full: string
  readonly low: string
  readonly wanted: string
  readonly limit: string
  readonly holds: string
  readonly foot: string
  readonly unhurt: string
  readonly advised: string
}

export const standChartWords: StandChartWords = {
  gust: 'gust',
  tank: 'in the tank',
  falls: 'falls over',
  free: 'strap or refill below here',
  week: 'week {week}',
  place: 'gust of the place',
  refill: 'strap or refill below {volume}',
  strapAlways: 'no filling is enough: strap',
  hour: 'hour of the day, by the sun',
  solution: 'temperature',
  oxygen: 'oxygen',
  air: 'air',
  full: 'tank full',
  low: 'tank low',
  wanted: 'wanted',
  limit: 'roots suffer',
  holds: 'the water can hold',
  foot: 'at the column’s foot',
  unhurt: 'lettuce grew unhurt',
  advised: 'advised',
}

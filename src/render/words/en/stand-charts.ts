/** What stands on the charts of tipping and of a day's heat. Slots in braces. */
export interface StandChartWords {
  readonly gust: string
  readonly tank: string
  readonly age: string
  readonly falls: string
  readonly stands: string
  readonly strapped: string
  readonly week: string
  readonly place: string
  readonly refill: string
  readonly strapAlways: string
  readonly hour: string
  readonly hourInside: string
  readonly solution: string
  readonly oxygen: string
  readonly air: string
  readonly full: string
  readonly low: string
  readonly wantedFrom: string
  readonly wantedTo: string
  readonly limit: string
  readonly holds: string
  readonly foot: string
  readonly unhurt: string
  readonly advised: string
}

export const standChartWords: StandChartWords = {
  gust: 'gust',
  tank: 'in the tank',
  age: 'age of the plants, weeks',
  falls: 'falls over',
  stands: 'stands free',
  strapped: 'strap',
  week: 'plants, week {week}',
  place: 'gust of the place',
  refill: 'strap or refill below {volume}',
  strapAlways: 'no filling is enough: strap',
  hour: 'hour of the day, by the sun',
  hourInside: 'hour of the day',
  solution: 'temperature',
  oxygen: 'oxygen',
  air: 'air',
  full: 'tank full',
  low: 'tank low',
  wantedFrom: 'wanted, from here',
  wantedTo: 'wanted, to here',
  limit: 'roots suffer above',
  holds: 'the water can hold',
  foot: 'at the column’s foot',
  unhurt: 'lettuce grew unhurt down to here',
  advised: 'advised',
}

import { band, ends, type Quantity, quantity } from '../kernel/units.ts'
import { buckets } from '../tables/buckets.ts'
import { type Display, shownText } from './display.ts'

/** A flow by the bucket: its volume and the seconds in which it fills; a flow of nothing fills none. */
export function bucketFill(
  flow: Quantity,
  bucket_m3: number | undefined,
  display: Display,
): { readonly volume: string; readonly time: string } | null {
  const [low, high] = ends(flow)
  if (!(low > 0)) return null
  const { rows } = buckets
  const volume_m3 = bucket_m3 ?? (display.lengths === 'in' ? rows.gallon : rows.litres).volume_m3
  const [shortest, longest] = [Math.round(volume_m3 / high), Math.round(volume_m3 / low)]
  const time = shortest === longest ? quantity(longest, 's') : band(shortest, longest, 's')
  return { volume: volumeText(volume_m3, display), time: shownText(time, display) }
}

/** A bucket's size without figures that say nothing. */
const volumeText = (volume_m3: number, display: Display): string =>
  shownText(quantity(volume_m3, 'm3'), display).replace(/[.,]0+(?= )/, '')

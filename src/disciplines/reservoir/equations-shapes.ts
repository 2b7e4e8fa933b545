function positive(name: string, sizes: Readonly<Record<string, number>>): void {
  for (const [symbol, size] of Object.entries(sizes))
    if (!(size > 0)) throw new RangeError(`${name}: ${symbol} = ${size} must be positive`)
}

/**
 * Volume of a round pail or drum, filled from its bottom to a level. Bottom and top may differ.
 *
 *   d = d1 + (d2 - d1) h/H
 *   V = π h/12 (d1² + d1 d + d²)
 *
 * Symbols  V volume [m3], d1 inside diameter at the bottom [m], d2 at the rim [m], d at the level [m], H depth [m],
 *          h level over the bottom [m]
 * Valid    0 ≤ h ≤ H, straight walls
 * Source   derived.volumes, frustum of a cone
 * Throws   RangeError where a size is not positive or the level lies outside of the vessel
 */
export function frustumVolume(given: {
  readonly bottom_m: number
  readonly top_m: number
  readonly depth_m: number
  readonly level_m: number
}): number {
  const { bottom_m: d1, top_m: d2, depth_m: H, level_m: h } = given
  positive('frustumVolume', { d1, d2, H })
  within('frustumVolume', h, H)
  const d = d1 + ((d2 - d1) * h) / H
  return ((Math.PI * h) / 12) * (d1 * d1 + d1 * d + d * d)
}

/**
 * Level in a round pail or drum that holds a volume: the frustum solved for h.
 *
 *   k = (d2 - d1)/H
 *   h = (cbrt(d1³ + 12 k V/π) - d1)/k, and h = 4 V/(π d1²) where k = 0
 *
 * Symbols  h level [m], V volume [m3], d1 and d2 inside diameters at bottom and rim [m], H depth [m], k taper [1]
 * Valid    0 ≤ V ≤ volume to the rim
 * Source   derived.volumes, frustum of a cone, inverse
 * Throws   RangeError where a size is not positive or the volume is negative or more than the vessel holds
 */
export function frustumLevel(given: {
  readonly bottom_m: number
  readonly top_m: number
  readonly depth_m: number
  readonly volume_m3: number
}): number {
  const { bottom_m: d1, top_m: d2, depth_m: H, volume_m3: V } = given
  const brim = frustumVolume({ bottom_m: d1, top_m: d2, depth_m: H, level_m: H })
  within('frustumLevel', V, brim)
  const k = (d2 - d1) / H
  const straight = (4 * V) / (Math.PI * d1 * d1)
  // Without taper the cube roots cancel; below this taper the straight form is exact to the last digits.
  if (Math.abs(k) < 1e-9) return Math.min(H, straight)
  return Math.min(H, (Math.cbrt(d1 ** 3 + (12 * k * V) / Math.PI) - d1) / k)
}

/**
 * Volume of a box whose walls may lean outwards, filled from its bottom to a level.
 *
 *   l = l1 + (l2 - l1) h/H, w = w1 + (w2 - w1) h/H
 *   V = h/6 (l1 w1 + l w + (l1 + l)(w1 + w))
 *
 * Symbols  V volume [m3], l1 and w1 inside length and width at the bottom [m], l2 and w2 at the rim [m], l and w at the
 *          level [m], H depth [m], h level over the bottom [m]
 * Valid    0 ≤ h ≤ H, flat walls, square corners; rounded corners hold less
 * Source   derived.volumes, prismoid
 * Throws   RangeError where a size is not positive or the level lies outside of the vessel
 */
export function prismoidVolume(given: {
  readonly bottomLength_m: number
  readonly bottomWidth_m: number
  readonly topLength_m: number
  readonly topWidth_m: number
  readonly depth_m: number
  readonly level_m: number
}): number {
  const { bottomLength_m: l1, bottomWidth_m: w1, topLength_m: l2, topWidth_m: w2, depth_m: H, level_m: h } = given
  positive('prismoidVolume', { l1, w1, l2, w2, H })
  within('prismoidVolume', h, H)
  const l = l1 + ((l2 - l1) * h) / H
  const w = w1 + ((w2 - w1) * h) / H
  return (h / 6) * (l1 * w1 + l * w + (l1 + l) * (w1 + w))
}

/**
 * Volume in a drum that lies on its side.
 *
 *   V = L [r² acos((r - h)/r) - (r - h) sqrt(2 r h - h²)]
 *
 * Symbols  V volume [m3], L inside length [m], r inside radius [m], h level over the lowest line [m]
 * Valid    0 ≤ h ≤ 2 r, flat ends, lying level
 * Source   derived.volumes, segment of a circle times its length
 * Throws   RangeError where a size is not positive or the level lies outside of the vessel
 */
export function lyingDrumVolume(given: {
  readonly bore_m: number
  readonly length_m: number
  readonly level_m: number
}): number {
  const { bore_m: D, length_m: L, level_m: h } = given
  positive('lyingDrumVolume', { D, L })
  within('lyingDrumVolume', h, D)
  const r = D / 2
  return L * (r * r * Math.acos((r - h) / r) - (r - h) * Math.sqrt(Math.max(0, 2 * r * h - h * h)))
}

/** Rounding that a computed level or volume may carry past its end. */
const ROUNDING = 1e-9

function within(name: string, x: number, end: number): void {
  if (!(x >= -ROUNDING * end && x <= end * (1 + ROUNDING)))
    throw new RangeError(`${name}: ${x} lies outside of 0 to ${end}`)
}

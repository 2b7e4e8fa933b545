import { positive } from './possible.ts'

/** Head of a pump against its flow: a shape between two box numbers, or points of a printed or measured curve. */
export type PumpCurve =
  | {
      readonly kind: 'shape'
      /** Head at no flow. */
      readonly shutoff_m: number
      /** Flow at no head. */
      readonly runout_m3_s: number
      /** 1 a straight line, 2 a parabola. */
      readonly exponent: number
    }
  | { readonly kind: 'points'; readonly points: readonly PumpPoint[] }

export interface PumpPoint {
  readonly flow_m3_s: number
  readonly head_m: number
}

/** A head and how it changes with the flow. */
export interface HeadAndSlope {
  readonly head_m: number
  /** m per m³/s, never positive. */
  readonly slope: number
}

/**
 * Points of a curve put in order of flow, none higher than one before it: a pump starts from still water, so a hump above
 * its shut-off head is of no use to it.
 */
function orderedPoints(points: readonly PumpPoint[]): readonly PumpPoint[] {
  const sorted = [...points].sort((a, b) => a.flow_m3_s - b.flow_m3_s)
  if (sorted.length < 2) throw new RangeError(`orderedPoints: ${sorted.length} points make no curve`)
  let ceiling = Number.POSITIVE_INFINITY
  return sorted.map((point, i) => {
    if (i > 0 && point.flow_m3_s <= sorted[i - 1]!.flow_m3_s)
      throw new RangeError(`orderedPoints: two points at flow_m3_s = ${point.flow_m3_s}`)
    ceiling = Math.min(ceiling, point.head_m)
    return { flow_m3_s: point.flow_m3_s, head_m: ceiling }
  })
}

/** Made once for a curve, asked many times by the network: head and slope at a flow. */
export function compiledPump(curve: PumpCurve): (flow_m3_s: number) => HeadAndSlope {
  if (curve.kind === 'shape') {
    const { shutoff_m: H0, runout_m3_s: Q0, exponent: c } = curve
    positive('pumpHead', { H0, Q0, c })
    return (Q) => {
      const x = Math.max(Q, 0) / Q0
      return { head_m: H0 * (1 - x ** c), slope: x === 0 && c > 1 ? 0 : (-H0 * c * x ** (c - 1)) / Q0 }
    }
  }
  const points = orderedPoints(curve.points)
  return (Q) => {
    let i = 1
    while (i < points.length - 1 && points[i]!.flow_m3_s < Q) i++
    const [a, b] = [points[i - 1]!, points[i]!]
    const slope = (b.head_m - a.head_m) / (b.flow_m3_s - a.flow_m3_s)
    return { head_m: a.head_m + slope * (Q - a.flow_m3_s), slope }
  }
}

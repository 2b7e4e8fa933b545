import { curveLength, type Stub, type StubEnd, stubCrossing } from './joint.ts'

/** Distance along the axis at which the outer surface of a stub ends, without checks. */
export function endLength(stub: Stub, end: StubEnd, psi: number): number {
  const { stubRadius_m: r, angle_rad: th } = stub
  if (end.kind === 'mitre') return (end.depth_m + r * Math.cos(psi) * Math.cos(th)) / Math.sin(th)
  return curveLength(stubCrossing(stub, end.kind === 'saddle' ? 'outside' : 'bore', 'outside'), psi)
}

/** Distance along the axis at which the outer surface of a stub reaches its mouth, tilted from square toward level. */
export const mouthLength = (stub: Stub, axisLength_m: number, tilt_rad: number, psi: number): number =>
  axisLength_m - stub.stubRadius_m * Math.cos(psi) * Math.tan(tilt_rad)

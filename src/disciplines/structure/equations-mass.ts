/** A part of the tower as a weight at a height over the floor. */
export interface Body {
  readonly name: string
  readonly mass_kg: number
  readonly height_m: number
}

/**
 * Mass and height of the centre of gravity.
 *
 *   m = Σ m_i, z = Σ m_i z_i/m
 *
 * Symbols  m mass [kg], z height of the centre [m], m_i mass and z_i height of each body
 * Valid    upright tower
 * Source   derived.moments, centre of parallel weights
 * Throws   RangeError where a mass is negative or all are zero
 */
export function centreOfGravity({ bodies }: { readonly bodies: readonly Body[] }): {
  readonly mass_kg: number
  readonly height_m: number
} {
  let [m, moment] = [0, 0]
  for (const { name, mass_kg, height_m } of bodies) {
    if (!(mass_kg >= 0)) throw new RangeError(`centreOfGravity: m of ${name} = ${mass_kg} is negative`)
    m += mass_kg
    moment += mass_kg * height_m
  }
  if (!(m > 0)) throw new RangeError('centreOfGravity: m = 0')
  return { mass_kg: m, height_m: moment / m }
}

/**
 * The tower as bodies at a water level and an age of the crop: what does not change, the solution, what hangs in the
 * column, and one live mass at each site.
 *
 *   m_w = ρ V, z_w = z_0 + h/2
 *
 * Symbols  m_w mass and z_w height of the solution, ρ density [kg/m3], V volume in the tank [m3], z_0 height of the
 *          tank's bottom over the floor [m], h level [m]
 * Valid    walls nearly upright: of a tapered tank the true centre lies up to 5 % of the level higher
 * Source   derived.moments, bodies of a tower
 * Throws   RangeError where volume, level or a mass is negative
 */
export function towerBodies(given: {
  readonly fixed: readonly Body[]
  readonly solution: {
    readonly volume_m3: number
    readonly level_m: number
    readonly bottom_m: number
    readonly density_kg_m3: number
  }
  readonly siteHeights_m: readonly number[]
  readonly site_kg: number
}): readonly Body[] {
  const { fixed, solution, siteHeights_m, site_kg } = given
  const { volume_m3: V, level_m: h, bottom_m, density_kg_m3: ρ } = solution
  if (!(V >= 0 && h >= 0 && site_kg >= 0)) throw new RangeError(`towerBodies: V = ${V}, h = ${h}, site ${site_kg} kg`)
  return [
    ...fixed,
    { name: 'solution', mass_kg: ρ * V, height_m: bottom_m + h / 2 },
    ...siteHeights_m.map((height_m) => ({ name: 'site', mass_kg: site_kg, height_m })),
  ]
}

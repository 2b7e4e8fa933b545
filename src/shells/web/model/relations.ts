/** The equations behind a finding or a fact, by their names; the comment over each is shown with the why. */
export const relations: Readonly<Record<string, readonly string[]>> = {
  'hydraulics/head': ['orificeFlow'],
}

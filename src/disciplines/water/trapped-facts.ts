import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import type { LayoutFacts } from '../layout/index.ts'
import type { TemplatesFacts } from '../templates/index.ts'
import { formedPocket, stubPocket } from './equations-trapped.ts'

/** Water that stays where it stands when the pump is off, and bursts what it stands in when it freezes. */
export interface TrappedFacts {
  /** In one site, dammed by its roots up to the lip. */
  readonly site_m3: number
  /** In all sites of all columns. */
  readonly sites_m3: number
  /** In the riser, held by its check valve; none without one. */
  readonly riser_m3: number
}

function siteOf(plan: Plan, templates: TemplatesFacts | null): Known<number> {
  const method = plan.column?.sites?.method ?? 'stub'
  // A cup in a hole of the wall holds no water; a bought branch slants as a stub of its own bore would.
  if (method === 'hole') return { known: 0 }
  if (method === 'pocket') {
    const former_m = plan.column?.pocket?.former_m
    return former_m === undefined ? { needs: ['column/pocket/former'] } : { known: formedPocket({ former_m }) }
  }
  const lowerSide_m = plan.column?.stub?.lowerSide_m
  if (templates === null || lowerSide_m === undefined) return { needs: ['column/stub'] }
  const { stubRadius_m, stubWall_m, angle_rad } = templates.joint.stub
  // The lower side is measured outside; the lip of the bore lies a wall further in.
  const inside_m = Math.max(0.001, lowerSide_m - stubWall_m / Math.tan(angle_rad))
  return { known: stubPocket({ radius_m: stubRadius_m - stubWall_m, angle_rad, lowerSide_m: inside_m }) }
}

export function trappedFacts(
  plan: Plan,
  given: { readonly layout: Known<LayoutFacts>; readonly templates: TemplatesFacts | null },
): Known<TrappedFacts> {
  if (!isKnown(given.layout)) return given.layout
  const site = siteOf(plan, given.templates)
  if (!isKnown(site)) return site
  const { bore_m = 0, length_m = 0, checkValve, fittings = [] } = plan.riser ?? {}
  const held = checkValve === true || fittings.some((f) => f.kind === 'check valve')
  const riser_m3 = held ? (Math.PI / 4) * bore_m ** 2 * length_m : 0
  const empty = plan.column?.sites?.empty?.length ?? 0
  const sites = Math.max(0, given.layout.known.sites.length - empty) * given.layout.known.columns
  return { known: { site_m3: site.known, sites_m3: site.known * sites, riser_m3 } }
}

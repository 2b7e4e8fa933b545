import { sourcesOf } from '../source.ts'

/** Pipe, tube, joining, cutting and the safety figures of the build. */
export const buildSources = sourcesOf({
  'ASTM.D1785': {
    kind: 'standard',
    cite: 'ASTM D1785, Poly(vinyl chloride) (PVC) plastic pipe, Schedules 40, 80 and 120',
    where: 'outside diameter, minimum wall, average bore and lb/ft as printed in two copies of the table',
    read: '2026-11-25',
  },
  'ASTM.D1785.limits': {
    kind: 'bulletin',
    cite: 'Maker sheet with the limits of ASTM D1785 and D2665 in millimetres',
    where: 'limits of the outside diameter; purchase lengths',
    read: '2026-11-25',
  },
  'ASTM.D2665': {
    kind: 'standard',
    cite: 'ASTM D2665, PVC plastic drain, waste and vent pipe and fittings',
    where: 'limits of outside diameter and wall in a maker sheet in millimetres; mass as Schedule 40',
    read: '2026-11-25',
  },
  'ASTM.D2729': {
    kind: 'standard',
    cite: 'ASTM D2729, PVC sewer pipe and fittings',
    where: 'outside and inside diameter in a published size chart; sockets of table 4 in an extract agree',
    read: '2026-11-25',
  },
  'ASTM.D3034': {
    kind: 'standard',
    cite: 'ASTM D3034, Type PSM PVC sewer pipe and fittings, SDR 35',
    where: 'outside diameters; minimum wall and lb/ft of 4 in',
    read: '2026-11-25',
  },
  'ASTM.D3034.walls': {
    kind: 'from-memory',
    cite: 'ASTM D3034, Type PSM PVC sewer pipe and fittings, SDR 35',
    where: 'minimum walls of 6 and 8 in, outside diameter over 35',
    read: null,
  },
  'ASTM.D2949': {
    kind: 'from-memory',
    cite: 'ASTM D2949, 3.25 in outside diameter PVC plastic drain, waste and vent pipe',
    where: 'wall; the outside diameter stands in the title of the standard',
    read: null,
  },
  'ISO.1452-2': {
    kind: 'standard',
    cite: 'ISO 1452-2, Plastics piping systems for water supply: PVC-U pipes (walls of ISO 4065)',
    where: 'minimum walls in a maker data sheet',
    read: '2026-11-25',
  },
  'EN.1401': {
    kind: 'standard',
    cite: 'EN 1401-1, Plastics piping systems for non-pressure underground drainage: PVC-U',
    where: 'walls and kg/m by stiffness class in a maker table',
    read: '2026-11-25',
  },
  'EN.1329-1': {
    kind: 'from-memory',
    cite: 'EN 1329-1, Plastics piping systems for soil and waste discharge within buildings: PVC-U',
    where: 'outside diameters and walls, application areas B and BD',
    read: null,
  },
  'AS-NZS.1260': {
    kind: 'from-memory',
    cite: 'AS/NZS 1260, PVC-U pipes and fittings for drain, waste and vent application',
    where: 'outside diameters and small walls from memory; walls of DN 100 and 150 from the ring stiffness',
    read: null,
  },
  'AS-NZS.1477': {
    kind: 'from-memory',
    cite: 'AS/NZS 1477, PVC pipes and fittings for pressure applications, Series 1',
    where: 'mean outside diameters from memory; walls by T = P D / (2 S + P) with S = 11 MPa, to the nearest 0.1 mm',
    read: null,
  },
  'JIS.K6741': {
    kind: 'standard',
    cite: 'JIS K 6741, Unplasticized poly(vinyl chloride) pipes, VP and VU',
    where: 'outside diameter, minimum wall, approximate bore, g/m and length in three published copies of the tables',
    read: '2026-11-25',
  },
  'IS.4985': {
    kind: 'standard',
    cite: 'IS 4985:2000, Unplasticized PVC pipes for potable water supplies',
    where: 'minimum walls in a maker extract',
    read: '2026-11-25',
  },
  'IS.4985.rule': {
    kind: 'derived',
    cite: 'IS 4985:2000, class 5 of 63 mm, not confirmed',
    where: 'T = P D / (2 S + P) with S = 8.6 MPa, the rule of every other row of the class; the extract prints 3.3 mm',
    read: null,
  },
})

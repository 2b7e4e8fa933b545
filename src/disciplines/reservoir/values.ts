import { value } from '../../kernel/published.ts'
import { frustumVolume, prismoidVolume } from './equations-shapes.ts'

const pyramid = { bottomLength_m: 4, bottomWidth_m: 4, topLength_m: 2, topWidth_m: 2, depth_m: 6 }

export default [
  value(prismoidVolume, { ...pyramid, level_m: 6 }, 56, {
    within: 1e-12,
    source: 'MoscowPapyrus.14',
    why: 'exact; the oldest printed volume of a tapered body',
  }),
  value(frustumVolume, { bottom_m: 0.262, top_m: 0.286, depth_m: 0.362, level_m: 0.362 }, 21.4e-3, {
    within: 0.005,
    source: 'common-practice',
    why: 'brim of a listed 5 US gal pail; its diameters are rounded to 1 mm in 270, so 0.4 % either way',
  }),
]

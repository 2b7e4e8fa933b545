import { table } from './table.ts'

/** Reservoirs to choose from before the real one is measured. Round ones are frusta, rectangular ones prismoids. */
export const containers = table({
  title: 'Reservoirs, inside sizes',
  columns: {
    name: 'what the container is sold as',
    shape: 'round or rectangular',
    topLength_m: 'inside length at the rim; diameter of a round one',
    topWidth_m: 'inside width at the rim; diameter of a round one',
    footLength_m: 'inside length at the bottom; diameter of a round one',
    footWidth_m: 'inside width at the bottom; diameter of a round one',
    depth_m: 'inside depth to the brim',
    brim_m3: 'volume to the brim',
  },
  source: 'common-practice',
  // biome-ignore format: one row a line
  rows: {
    'pail-5gal': { name: '5 US gal pail', shape: 'round', topLength_m: 0.286, topWidth_m: 0.286, footLength_m: 0.262, footWidth_m: 0.262, depth_m: 0.362, brim_m3: 0.0214 },
    'pail-20L': { name: '20 L pail', shape: 'round', topLength_m: 0.29, topWidth_m: 0.29, footLength_m: 0.26, footWidth_m: 0.26, depth_m: 0.35, brim_m3: 0.0208 },
    'pail-10L': { name: '10 L pail', shape: 'round', topLength_m: 0.24, topWidth_m: 0.24, footLength_m: 0.21, footWidth_m: 0.21, depth_m: 0.25, brim_m3: 0.01 },
    'pail-3.5gal': { name: '3.5 US gal pail', shape: 'round', topLength_m: 0.286, topWidth_m: 0.286, footLength_m: 0.266, footWidth_m: 0.266, depth_m: 0.26, brim_m3: 0.0156 },
    'drum-30L': { name: '30 L open-top drum', shape: 'round', topLength_m: 0.31, topWidth_m: 0.31, footLength_m: 0.31, footWidth_m: 0.31, depth_m: 0.42, brim_m3: 0.0317 },
    'drum-60L': { name: '60 L open-top drum', shape: 'round', topLength_m: 0.39, topWidth_m: 0.39, footLength_m: 0.39, footWidth_m: 0.39, depth_m: 0.57, brim_m3: 0.0681 },
    'drum-120L': { name: '120 L open-top drum', shape: 'round', topLength_m: 0.47, topWidth_m: 0.47, footLength_m: 0.47, footWidth_m: 0.47, depth_m: 0.76, brim_m3: 0.1319 },
    'tote-27gal': { name: '27 US gal tote', shape: 'rectangular', topLength_m: 0.7, topWidth_m: 0.44, footLength_m: 0.61, footWidth_m: 0.35, depth_m: 0.35, brim_m3: 0.0908, note: 'holds less than its name by the listed sizes' },
    'tote-45L': { name: '45 L tote', shape: 'rectangular', topLength_m: 0.54, topWidth_m: 0.37, footLength_m: 0.47, footWidth_m: 0.3, depth_m: 0.28, brim_m3: 0.0475 },
    'tote-65L': { name: '65 L tote', shape: 'rectangular', topLength_m: 0.6, topWidth_m: 0.4, footLength_m: 0.52, footWidth_m: 0.33, depth_m: 0.34, brim_m3: 0.0697 },
  },
})

export type ContainerId = keyof typeof containers.rows

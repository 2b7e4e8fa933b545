import { sourcesOf } from '../source.ts'

/** How far a reading may be off. */
export const readingsSources = sourcesOf({
  'EU.2014-32.MI-008': {
    kind: 'standard',
    cite: 'Directive 2014/32/EU on measuring instruments, annex X (material measures of length)',
    where: 'largest permissible error a + b L of class II: a 0.3 mm, b 0.2 mm for each metre',
    read: null,
  },
  'ISO.9906': {
    kind: 'standard',
    cite: 'ISO 9906, Rotodynamic pumps: hydraulic performance acceptance tests',
    where: 'grade 3B: head within 7 %, flow within 9 % of what was promised',
    read: null,
  },
  'IEC.60335-1': {
    kind: 'standard',
    cite: 'IEC 60335-1, Household and similar electrical appliances, safety',
    where: '10.1: power of small motors may be 20 % above the rating plate',
    read: null,
  },
  'EU.2020-2184': {
    kind: 'standard',
    cite: 'Directive (EU) 2020/2184 on drinking water, annex III',
    where: 'uncertainty of measurement: 20 % for conductivity, 0.2 for pH',
    read: null,
  },
})

import type { Unit } from './units.ts'

/**
 * Units as people write them, one list per unit of the engine. A factor is kept as a fraction where that is exact:
 * 104 / 1000 is 0.104, 104 * 1e-3 is not.
 */
export interface EdgeUnit {
  /** First spelling is the one shown; the others are accepted. Matching ignores case only where no two units clash. */
  readonly spell: readonly string[]
  readonly times?: number
  readonly over?: number
  readonly offset?: number
}

const INCH = 0.0254
const FOOT = 0.3048
const US_GALLON = 0.003785411784
const IMPERIAL_GALLON = 0.00454609
const POUND = 0.45359237
const DEGREE = Math.PI / 180
const MINUTE = 60
const HOUR = 3600
const DAY = 86400

export const edgeUnits: Readonly<Partial<Record<Unit, readonly EdgeUnit[]>>> = {
  m: [
    { spell: ['mm', 'millimetre', 'millimeter', 'milímetro', 'milímetros'], over: 1000 },
    { spell: ['cm'], over: 100 },
    { spell: ['m', 'metre', 'meter', 'metro', 'metros'] },
    { spell: ['in', '"', '”', '″', 'inch', 'inches', "''", 'pulg', 'pulgada', 'pulgadas'], times: 254, over: 10_000 },
    { spell: ['ft', "'", '’', '′', 'foot', 'feet', 'pie', 'pies'], times: 3048, over: 10_000 },
    // Last, so that nobody is told to write micrometres: roughness alone is measured in them.
    { spell: ['um', 'µm', 'μm', 'micron'], over: 1e6 },
  ],
  m2: [
    { spell: ['m2', 'm²', 'sq m'] },
    { spell: ['cm2', 'cm²'], over: 10000 },
    { spell: ['mm2', 'mm²'], over: 1e6 },
    { spell: ['ft2', 'ft²', 'sq ft'], times: FOOT * FOOT },
  ],
  m3: [
    { spell: ['L', 'l', 'litre', 'liter', 'litres', 'liters', 'litro', 'litros'], over: 1000 },
    { spell: ['mL', 'ml'], over: 1e6 },
    { spell: ['m3', 'm³'] },
    { spell: ['US gal', 'US gallon', 'US gallons', 'gal US', 'gal (US)'], times: US_GALLON },
    { spell: ['imp gal', 'imperial gallon', 'UK gal', 'gal UK'], times: IMPERIAL_GALLON },
    { spell: ['US fl oz', 'fl oz US'], times: US_GALLON / 128 },
    { spell: ['US qt'], times: US_GALLON / 4 },
  ],
  m_s: [
    { spell: ['m/s'] },
    { spell: ['km/h', 'kph'], over: 3.6 },
    { spell: ['mph'], times: 0.44704 },
    { spell: ['ft/s'], times: FOOT },
    { spell: ['kn', 'knot', 'knots'], times: 1852 / HOUR },
  ],
  m3_s: [
    { spell: ['L/min', 'l/min', 'lpm', 'LPM'], over: 1000 * MINUTE },
    { spell: ['L/h', 'l/h', 'lph', 'LPH', 'L/hr', 'L/hour'], over: 1000 * HOUR },
    { spell: ['L/s', 'l/s'], over: 1000 },
    { spell: ['mL/min', 'ml/min'], over: 1e6 * MINUTE },
    { spell: ['m3/h', 'm³/h'], over: HOUR },
    { spell: ['m3/s', 'm³/s'] },
    { spell: ['US gph', 'US GPH', 'US gal/h', 'US gal/hr'], times: US_GALLON / HOUR },
    { spell: ['US gpm', 'US GPM', 'US gal/min'], times: US_GALLON / MINUTE },
    { spell: ['imp gph', 'imp gal/h'], times: IMPERIAL_GALLON / HOUR },
  ],
  s: [
    { spell: ['s', 'sec', 'second', 'seconds', 'segundo', 'segundos'] },
    { spell: ['min', 'minute', 'minutes', 'minuto', 'minutos'], times: MINUTE },
    { spell: ['h', 'hr', 'hour', 'hours', 'hora', 'horas'], times: HOUR },
    { spell: ['day', 'days', 'd', 'día', 'días', 'dia', 'dias'], times: DAY },
  ],
  d: [
    { spell: ['d', 'day', 'days', 'día', 'días', 'dia', 'dias'] },
    { spell: ['week', 'weeks', 'wk', 'semana', 'semanas'], times: 7 },
    { spell: ['h', 'hr', 'hour', 'hours', 'hora', 'horas'], over: 24 },
  ],
  kg: [
    { spell: ['kg'] },
    { spell: ['g'], over: 1000 },
    { spell: ['mg'], over: 1e6 },
    { spell: ['lb', 'lbs', 'pound', 'pounds'], times: POUND },
    { spell: ['oz', 'ounce', 'ounces'], times: POUND / 16 },
  ],
  kg_m: [{ spell: ['kg/m'] }, { spell: ['g/m'], over: 1000 }, { spell: ['lb/ft'], times: POUND / FOOT }],
  kg_m2: [
    { spell: ['kg/m2', 'kg/m²'] },
    { spell: ['kN/m2', 'kN/m²', 'kPa'], times: 1000 / 9.80665 },
    { spell: ['lb/ft2', 'lb/ft²', 'psf'], times: POUND / (FOOT * FOOT) },
  ],
  kg_m3: [{ spell: ['kg/m3', 'kg/m³', 'g/L'] }, { spell: ['g/mL', 'kg/L', 'g/cm3', 'g/cm³'], times: 1000 }],
  N: [{ spell: ['N'] }, { spell: ['kN'], times: 1000 }, { spell: ['lbf'], times: POUND * 9.80665 }],
  Pa: [
    { spell: ['Pa'] },
    { spell: ['kPa'], times: 1000 },
    { spell: ['MPa'], times: 1e6 },
    { spell: ['bar'], times: 1e5 },
    { spell: ['psi'], times: (POUND * 9.80665) / (INCH * INCH) },
  ],
  C: [
    { spell: ['°C', 'C', 'degC', 'deg C'] },
    { spell: ['°F', 'F', 'degF', 'deg F'], over: 1.8, offset: -32 },
    { spell: ['K', 'kelvin'], offset: -273.15 },
  ],
  g_m3: [
    { spell: ['mg/L', 'mg/l', 'g/m3', 'g/m³'] },
    { spell: ['g/L', 'g/l'], times: 1000 },
    { spell: ['ug/L', 'µg/L', 'μg/L'], over: 1000 },
  ],
  dB: [{ spell: ['dB', 'dB(A)', 'dBA'] }],
  K: [{ spell: ['K'] }, { spell: ['°F'], over: 1.8 }],
  N_m: [{ spell: ['N m'] }, { spell: ['lbf ft'], times: POUND * 9.80665 * FOOT }],
  mol_m3: [{ spell: ['mmol/L', 'mmol/l', 'mM', 'mol/m3', 'mol/m³'] }, { spell: ['mol/L', 'M'], times: 1000 }],
  eq_m3: [{ spell: ['meq/L', 'meq/l', 'me/L', 'mval/L', 'eq/m3', 'eq/m³'] }],
  S_m: [
    { spell: ['mS/cm'], over: 10 },
    { spell: ['uS/cm', 'µS/cm', 'μS/cm'], over: 10000 },
    { spell: ['mS/m'], over: 1000 },
    { spell: ['S/m'] },
    { spell: ['dS/m'], over: 10 },
  ],
  umol_m2_s: [{ spell: ['umol/m2/s', 'µmol/m²/s', 'μmol/m²/s', 'umol/(m2 s)', 'µmol/(m²·s)'] }],
  umol_s: [{ spell: ['umol/s', 'µmol/s', 'μmol/s'] }],
  umol_J: [{ spell: ['umol/J', 'µmol/J', 'μmol/J'] }],
  mol_m2_d: [{ spell: ['mol/m2/d', 'mol/m²/d', 'mol/(m2 d)'] }],
  W: [{ spell: ['W', 'watt', 'watts'] }, { spell: ['kW'], times: 1000 }],
  J: [
    { spell: ['kWh'], times: 3.6e6 },
    { spell: ['Wh'], times: 3600 },
    { spell: ['J'] },
    { spell: ['kJ'], times: 1000 },
  ],
  V: [{ spell: ['V', 'volt', 'volts'] }],
  A: [{ spell: ['A', 'amp', 'amps'] }, { spell: ['mA'], over: 1000 }],
  As: [
    { spell: ['Ah'], times: HOUR },
    { spell: ['mAh'], times: HOUR / 1000 },
  ],
  rad: [{ spell: ['deg', '°', 'degree', 'degrees', 'grado', 'grados'], times: DEGREE }, { spell: ['rad'] }],
  '1': [{ spell: ['%', 'percent', 'per cent', 'por ciento'], over: 100 }],
  m3_d: [
    { spell: ['L/day', 'L/d', 'L/día', 'L/dia'], over: 1000 },
    { spell: ['mL/day', 'mL/d'], over: 1e6 },
    { spell: ['US gal/day', 'US gal/d'], times: US_GALLON },
  ],
}

/** Spellings that name more than one thing; each asks which. */
export const ambiguousUnits: Readonly<Record<string, readonly string[]>> = {
  gal: ['US gal', 'imp gal'],
  gallon: ['US gal', 'imp gal'],
  gallons: ['US gal', 'imp gal'],
  gph: ['US gph', 'imp gph'],
  gpm: ['US gpm', 'L/min'],
  'gal/h': ['US gph', 'imp gph'],
  'gal/min': ['US gpm', 'L/min'],
  'fl oz': ['US fl oz', 'mL'],
  ppm: ['mg/L', 'mS/cm'],
  ton: ['kg', 'lb'],
}

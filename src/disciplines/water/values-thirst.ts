import { value } from '../../kernel/published.ts'
import {
  clearSun,
  daylight,
  netRadiation,
  skyLoss,
  sunAboveAir,
  sunAboveAirHour,
  sunOnGround,
} from './equations-sun.ts'
import {
  pressureFAO56,
  psychrometricConstant,
  referenceThirst,
  referenceThirstHargreaves,
  referenceThirstHour,
  saturationPressureFAO56,
  saturationSlope,
  windAt2m,
} from './equations-thirst.ts'

/** W/m2 of a megajoule per square metre and day, and per hour. */
const perDay = 1e6 / 86_400
const perHour = 1e6 / 3600
const degrees = Math.PI / 180

const example = (number: string, half: number) =>
  ({
    within: half,
    absolute: true,
    source: 'Allen1998.FAO56',
    why: `example ${number}, half of the last digit printed`,
  }) as const

const bangkok = { latitude_rad: 13.73 * degrees, dayOfYear: 105 }
const brussels = { latitude_rad: 50.8 * degrees, dayOfYear: 187 }
const rio = { latitude_rad: -22.9 * degrees, dayOfYear: 135 }

export default [
  value(pressureFAO56, { altitude_m: 1800 }, 81.8e3, example('2', 50)),
  value(psychrometricConstant, { pressure_Pa: 81.8e3 }, 54, example('2', 0.5)),
  value(saturationPressureFAO56, { temperature_C: 24.5 }, 3075, example('3', 0.5)),
  value(saturationPressureFAO56, { temperature_C: 15 }, 1705, example('3', 0.5)),
  value(saturationPressureFAO56, { temperature_C: 19.75 }, 2.3e3, example('3', 5)),
  value(saturationPressureFAO56, { temperature_C: 19.5 }, 2267, example('4', 0.5)),
  value(sunAboveAir, { latitude_rad: -20 * degrees, dayOfYear: 246 }, 32.2 * perDay, example('8', 0.05 * perDay)),
  value(daylight, { latitude_rad: -20 * degrees, dayOfYear: 246 }, 11.7 * 3600, example('9', 0.05 * 3600)),
  value(sunAboveAir, rio, 25.1 * perDay, example('10', 0.05 * perDay)),
  value(daylight, rio, 10.9 * 3600, example('10', 0.05 * 3600)),
  value(
    sunOnGround,
    { sunAboveAir_W_m2: 25.1 * perDay, sunshineShare: 7.1 / 10.9 },
    14.45 * perDay,
    example('10', 0.05 * perDay),
  ),
  value(
    skyLoss,
    { highest_C: 25.1, lowest_C: 19.1, vapour_Pa: 2100, clearShare: 14.5 / 18.8 },
    3.5 * perDay,
    example('11', 0.05 * perDay),
  ),
  value(netRadiation, { sun_W_m2: 14.5 * perDay, skyLoss_W_m2: 3.5 * perDay }, 7.6 * perDay, {
    ...example('12', 0.1 * perDay),
    why: 'example 12; its terms are rounded to 0.1 each before they are subtracted',
  }),
  value(windAt2m, { wind_m_s: 3.2, height_m: 10 }, 2.4, example('14', 0.05)),

  value(sunAboveAir, bangkok, 38.06 * perDay, example('17', 0.005 * perDay)),
  value(daylight, bangkok, 12.31 * 3600, example('17', 0.005 * 3600)),
  value(saturationSlope, { temperature_C: 30.2 }, 246, example('17', 0.5)),
  value(
    sunOnGround,
    { sunAboveAir_W_m2: 38.06 * perDay, sunshineShare: 8.5 / 12.31 },
    22.65 * perDay,
    example('17', 0.01 * perDay),
  ),
  value(clearSun, { sunAboveAir_W_m2: 38.06 * perDay, altitude_m: 2 }, 28.54 * perDay, example('17', 0.01 * perDay)),
  value(
    skyLoss,
    { highest_C: 34.8, lowest_C: 25.6, vapour_Pa: 2850, clearShare: 22.65 / 28.54 },
    3.11 * perDay,
    example('17', 0.005 * perDay),
  ),
  value(
    referenceThirst,
    {
      temperature_C: 30.2,
      wind2m_m_s: 2,
      deficit_Pa: 1570,
      netRadiation_W_m2: 14.33 * perDay,
      groundHeat_W_m2: 0.14 * perDay,
      pressure_Pa: 101.3e3,
    },
    5.72,
    example('17', 0.01),
  ),

  value(windAt2m, { wind_m_s: 10 / 3.6, height_m: 10 }, 2.078, example('18', 0.0005)),
  value(pressureFAO56, { altitude_m: 100 }, 100.1e3, example('18', 50)),
  value(saturationSlope, { temperature_C: 16.9 }, 122, example('18', 0.5)),
  value(sunAboveAir, brussels, 41.09 * perDay, example('18', 0.005 * perDay)),
  value(daylight, brussels, 16.1 * 3600, example('18', 0.05 * 3600)),
  value(clearSun, { sunAboveAir_W_m2: 41.09 * perDay, altitude_m: 100 }, 30.9 * perDay, example('18', 0.005 * perDay)),
  value(
    skyLoss,
    { highest_C: 21.5, lowest_C: 12.3, vapour_Pa: 1409, clearShare: 22.07 / 30.9 },
    3.71 * perDay,
    example('18', 0.005 * perDay),
  ),
  value(
    netRadiation,
    { sun_W_m2: 22.07 * perDay, skyLoss_W_m2: 3.71 * perDay },
    13.28 * perDay,
    example('18', 0.01 * perDay),
  ),
  value(
    referenceThirst,
    {
      temperature_C: 16.9,
      wind2m_m_s: 2.078,
      deficit_Pa: 589,
      netRadiation_W_m2: 13.28 * perDay,
      groundHeat_W_m2: 0,
      pressure_Pa: 100.1e3,
    },
    3.88,
    example('18', 0.005),
  ),

  value(
    sunAboveAirHour,
    {
      latitude_rad: 16.22 * degrees,
      dayOfYear: 274,
      clock_s: 14.5 * 3600,
      west_rad: 16.25 * degrees,
      clockWest_rad: 15 * degrees,
    },
    3.543 * perHour,
    example('19', 0.0005 * perHour),
  ),
  value(
    sunAboveAirHour,
    {
      latitude_rad: 16.22 * degrees,
      dayOfYear: 274,
      clock_s: 2.5 * 3600,
      west_rad: 16.25 * degrees,
      clockWest_rad: 15 * degrees,
    },
    0,
    example('19', 0.0005 * perHour),
  ),
  value(
    clearSun,
    { sunAboveAir_W_m2: 3.543 * perHour, altitude_m: 8 },
    2.658 * perHour,
    example('19', 0.0005 * perHour),
  ),
  value(
    skyLoss,
    { highest_C: 38, lowest_C: 38, vapour_Pa: 3445, clearShare: 0.922 },
    0.137 * perHour,
    example('19', 0.0005 * perHour),
  ),
  value(
    referenceThirstHour,
    {
      temperature_C: 38,
      wind2m_m_s: 3.3,
      deficit_Pa: 3180,
      netRadiation_W_m2: 1.749 * perHour,
      groundHeat_W_m2: 0.175 * perHour,
      pressure_Pa: pressureFAO56({ altitude_m: 8 }),
    },
    0.63,
    example('19', 0.005),
  ),
  value(
    referenceThirstHour,
    {
      temperature_C: 28,
      wind2m_m_s: 1.9,
      deficit_Pa: 378,
      netRadiation_W_m2: -0.1 * perHour,
      groundHeat_W_m2: -0.05 * perHour,
      pressure_Pa: pressureFAO56({ altitude_m: 8 }),
    },
    0,
    example('19', 0.005),
  ),
  value(
    referenceThirst,
    {
      temperature_C: 20.7,
      wind2m_m_s: 2,
      deficit_Pa: 900,
      netRadiation_W_m2: 13.48 * perDay,
      groundHeat_W_m2: 0,
      pressure_Pa: pressureFAO56({ altitude_m: 200 }),
    },
    4.56,
    { ...example('20', 0.02), why: 'example 20; es and ea are printed to 0.01 kPa, which is 0.02 mm/d' },
  ),
  value(
    referenceThirstHargreaves,
    { highest_C: 26.6, lowest_C: 14.8, sunAboveAir_W_m2: 40.55 * perDay },
    5,
    example('20', 0.05),
  ),
]

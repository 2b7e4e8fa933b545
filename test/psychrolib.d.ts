/** The open psychrometric library that our humid air is tested against; it ships no types. */
declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number
    SetUnitSystem(system: number): void
    GetSatVapPres(dryBulb_C: number): number
    GetTDewPointFromRelHum(dryBulb_C: number, relativeHumidity: number): number
    GetTWetBulbFromRelHum(dryBulb_C: number, relativeHumidity: number, pressure_Pa: number): number
    GetHumRatioFromRelHum(dryBulb_C: number, relativeHumidity: number, pressure_Pa: number): number
    GetMoistAirEnthalpy(dryBulb_C: number, humidityRatio: number): number
    GetMoistAirDensity(dryBulb_C: number, humidityRatio: number, pressure_Pa: number): number
  }
  export default psychrolib
}

import { table } from './table.ts'

/** Coefficients of the published formulas for water as a solvent; the formula stands with the equation of that name. */
export const solvent = table({
  title: 'Water as a solvent: coefficients of formulas',
  columns: { value: 'coefficient in the unit of its formula', role: 'where it stands in the formula' },
  source: 'from-memory',
  rows: {
    permittivity0: { value: 2727.586, role: 'constant', source: 'USGS.permittivity' },
    permittivity1: { value: 0.6224107, role: 'of T', source: 'USGS.permittivity' },
    permittivity2: { value: -466.9151, role: 'of ln T', source: 'USGS.permittivity' },
    permittivity3: { value: -52000.87, role: 'of 1/T', source: 'USGS.permittivity' },
    viscosity20: { value: 1.002e-3, role: 'viscosity at 20 °C, Pa s', source: 'Kestin1978' },
    viscosityPole: { value: 96, role: '°C added below the line', source: 'Kestin1978' },
    viscosity0: { value: 1.2364, role: 'constant', source: 'Kestin1978' },
    viscosity1: { value: -1.37e-3, role: 'of 20 - t', source: 'Kestin1978' },
    viscosity2: { value: 5.7e-6, role: 'of (20 - t)²', source: 'Kestin1978' },
    density0: { value: 999.83952, role: 'constant', source: 'Kell1975' },
    density1: { value: 16.945176, role: 'of t', source: 'Kell1975' },
    density2: { value: -7.9870401e-3, role: 'of t²', source: 'Kell1975' },
    density3: { value: -46.170461e-6, role: 'of t³', source: 'Kell1975' },
    density4: { value: 105.56302e-9, role: 'of t⁴', source: 'Kell1975' },
    density5: { value: -280.54253e-12, role: 'of t⁵', source: 'Kell1975' },
    densityBelow: { value: 16.87985e-3, role: 'of t below the line', source: 'Kell1975' },
    debyeSlope: { value: 1.82483e6, role: 'A = this √ρ / (ε T)^1.5, ρ in kg/L', source: 'Davies1938' },
    daviesLinear: {
      value: 0.2,
      role: 'linear term: 0.3 would put phosphate buffers 0.014 too high',
      source: 'Davies1938',
    },
    relaxation: { value: 2.801e6, role: 'B1 = this / (ε T)^1.5', source: 'RobinsonStokes1959' },
    electrophoresis: { value: 41.25, role: 'B2 = this / (η √(ε T)), η in poise', source: 'RobinsonStokes1959' },
    screening: { value: 50.29, role: 'B = this / √(ε T), per ångström', source: 'RobinsonStokes1959' },
    ionSize: { value: 4, role: 'ångström, for all ions, not fitted', source: 'RobinsonStokes1959' },
  },
})

/** Conditions and conventions that equations of the feed share. */
export const feedConstants = table({
  title: 'Constants of the feed',
  columns: { value: 'number', role: 'what it is' },
  source: 'common-practice',
  rows: {
    zeroCelsius: { value: 273.15, role: 'kelvin at 0 °C', source: 'Stoichiometry' },
    gasConstant: { value: 8.31446, role: 'J/(mol K)', source: 'Stoichiometry' },
    atmosphere: { value: 101325, role: 'Pa in one standard atmosphere', source: 'Stoichiometry' },
    referenceTemperature: { value: 25, role: '°C to which EC is compensated', source: 'CRC.KCl' },
    roomTemperature: { value: 20, role: '°C of the densities of acids as sold' },
    carbonDioxideInAir: {
      value: 42.6,
      role: 'Pa of CO2 in open air, 420 ppm of one atmosphere',
      source: 'USGS.PHREEQC3',
    },
    compensation: { value: 0.019, role: 'rise of EC per K at 25 °C for feed', source: 'Hayashi2004' },
    stockShare: { value: 0.8, role: 'highest share of the solubility at the coldest store to use in a stock' },
    weighable: { value: 20, role: 'smallest dose to weigh, in steps of the scale' },
    conductivityAccuracy: { value: 0.03, role: 'accuracy of the predicted EC', source: 'USGS.PHREEQC3' },
    phAccuracy: { value: 0.1, role: 'accuracy of the predicted pH of a feed whose alkalinity is known' },
    ammoniumShare: { value: 0.15, role: 'highest share of ammonium in the nitrogen of a feed' },
    sulfurWeight: { value: 0.05, role: 'weight of sulfur in a recipe: a wide range feeds as well' },
  },
})

import { sourcesOf } from '../source.ts'

/** Heat, air, sun, oxygen and roots. */
export const heatSources = sourcesOf({
  BensonKrause1984: {
    kind: 'paper',
    cite: 'Benson, B. B. & Krause, D. 1984, Limnology and Oceanography 29(3):620-632',
    where:
      'equation for mg/L in fresh and sea water with pressure, form read in the documentation of an open water-quality library',
    read: '2026-11-25',
  },
  'APHA.4500-O': {
    kind: 'handbook',
    cite: 'Standard Methods for the Examination of Water and Wastewater, method 4500-O',
    where: 'table of oxygen solubility in water exposed to saturated air at 101.325 kPa',
    read: null,
  },
  Montgomery1964: {
    kind: 'paper',
    cite: 'Montgomery, H. A. C., Thom, N. S. & Cockburn, A. 1964, Journal of Applied Chemistry 14:280-296',
    where: 'table of oxygen solubility in fresh water',
    read: '2026-11-25',
  },
  'USGS.conductivity-salinity': {
    kind: 'bulletin',
    cite: 'US Geological Survey, Office of Water Quality, Technical Memorandum 2011.03',
    where: 'equation 4, salinity as a quadratic in specific conductance, read in an open implementation',
    read: '2026-11-25',
  },
  'ASCE.2-06': {
    kind: 'standard',
    cite: 'ASCE/EWRI 2-06, Measurement of Oxygen Transfer in Clean Water',
    where: 'temperature correction 1.024 and standard oxygen transfer rate, read in summaries',
    read: '2026-11-25',
  },
  Higbie1935: {
    kind: 'paper',
    cite: 'Higbie, R. 1935, Transactions of the AIChE 31:365-389',
    where: 'penetration theory of absorption',
    read: null,
  },
  TUDarmstadt2020: {
    kind: 'paper',
    cite: 'Fine-bubble aeration, modern deep-tank tests, Water Practice and Technology 2020',
    where: 'share of oxygen transferred per metre of submergence',
    read: '2026-11-25',
  },
  vanKeulen1982: {
    kind: 'paper',
    cite: 'van Keulen, Penning de Vries & Drees 1982, as constants of a published lettuce growth model',
    where: 'maintenance respiration of roots, 25 °C, doubling in 10 K',
    read: '2026-11-25',
  },
  Scheurwater1998: {
    kind: 'paper',
    cite: 'Scheurwater et al. 1998, respiration of roots of two grasses',
    where: 'abstract: maintenance is about half of total root respiration',
    read: '2026-11-25',
  },
  Goto1996: {
    kind: 'paper',
    cite: 'Goto, Both, Albright, Langhans & Leed 1996, Acta Horticulturae 440',
    where: 'lettuce growth at dissolved oxygen 2.1 to 16.8 mg/L, 24 °C',
    read: '2026-11-25',
  },
  Yoshida1997: {
    kind: 'paper',
    cite: 'Yoshida et al. 1997, lettuce in solution at several oxygen levels',
    where: '0.01 mM hurts, 0.10 mM equals 0.20 mM',
    read: '2026-11-25',
  },
  'ASHRAE.F2017.1': {
    kind: 'handbook',
    cite: 'ASHRAE Handbook Fundamentals 2017',
    where: 'chapter 1 Psychrometrics, equations and tables as asserted by an open psychrometric library',
    read: '2026-11-25',
  },
  'ASHRAE.F.films': {
    kind: 'handbook',
    cite: 'ASHRAE Handbook Fundamentals, surface film resistances',
    where: 'quoted by a state energy code, Washington WAC 51-11-0526',
    read: '2026-11-25',
  },
  'ISO.6946': {
    kind: 'standard',
    cite: 'ISO 6946, thermal resistance of building components',
    where: 'conventional surface resistances 0.13 and 0.04 m2 K/W',
    read: '2026-11-25',
  },
  Stull2011: {
    kind: 'paper',
    cite: 'Stull, R. 2011, Journal of Applied Meteorology and Climatology 50:2267-2269',
    where: 'wet-bulb temperature at sea level from temperature and relative humidity',
    read: null,
  },
  'Allen1998.FAO56': {
    kind: 'bulletin',
    cite: 'Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56',
    where: 'chapters 2 to 4, equations and worked examples',
    read: '2026-11-25',
  },
  'SCIRP.88555': {
    kind: 'paper',
    cite: 'Table of solar absorptance and infrared emittance of coatings, open-access paper SCIRP 88555',
    where: 'table of coatings',
    read: '2026-11-25',
  },
  Incropera: {
    kind: 'handbook',
    cite: 'Incropera & DeWitt, Fundamentals of Heat and Mass Transfer',
    where: 'conduction shape factors, exchanger effectiveness, analogy of heat and mass transfer',
    read: null,
  },
  StefanBoltzmann: {
    kind: 'handbook',
    cite: 'CODATA recommended values of the fundamental constants',
    where: 'Stefan-Boltzmann constant',
    read: null,
  },
  'IAPWS.R6-95': {
    kind: 'standard',
    cite: 'IAPWS R6-95, properties of water, computed with an open library',
    where: 'specific heat and heat of evaporation, 0 to 40 °C',
    read: '2026-11-25',
  },
  'derived.volumes': {
    kind: 'derived',
    cite: 'Volumes of prism, frustum, prismoid and lying cylinder by level',
    where: 'integral of the area over the level',
    read: null,
  },
  'derived.heat-balance': {
    kind: 'derived',
    cite: 'Balance of heat of a stirred body with constant conductances',
    where: 'exact solution of the linear equation over a step; mean over the step from its integral',
    read: null,
  },
  'derived.oxygen-balance': {
    kind: 'derived',
    cite: 'Balance of oxygen of a stirred body',
    where: 'exact solution of dC/dt = KLa (C* - C) - r',
    read: null,
  },
  'derived.trapped': {
    kind: 'derived',
    cite: 'Water that stands in a slanted tube between its inner end and its lip',
    where: 'integral over chords of the bore; for a formed pocket the cone that its former leaves at most',
    read: null,
  },
  'USNO.sun-position': {
    kind: 'handbook',
    cite: 'US Naval Observatory, approximate solar coordinates; bearing from hour angle and declination',
    where: 'spherical triangle of pole, zenith and sun',
    read: '2026-11-25',
  },
  'RedaAndreas.SPA': {
    kind: 'handbook',
    cite: 'Reda, I. & Andreas, A. 2004, Solar position algorithm for solar radiation applications, NREL/TP-560-34302',
    where: 'worked example in the appendix, output of the sample program',
    read: '2026-11-25',
  },
  'astronomy-engine.2.1.19': {
    kind: 'dataset',
    cite: 'astronomy-engine 2.1.19, an open library of positions of sun and planets',
    where: 'topocentric bearing of the sun, without refraction',
    read: '2026-11-25',
  },
  'WHO.noise': {
    kind: 'handbook',
    cite: 'Berglund, B., Lindvall, T. & Schwela, D. H. 1999, Guidelines for community noise, World Health Organization',
    where: 'table of levels by room: bedrooms 30 dB(A), dwellings and class rooms 35 dB(A), from memory',
    read: null,
  },
  'derived.root-mat': {
    kind: 'derived',
    cite: 'Room that hanging roots take in a bore',
    where: 'mass over density and share of the mat that is not air; spread over the length of the roots',
    read: null,
  },
  'derived.round-wall': {
    kind: 'derived',
    cite: 'Sun on an upright round or straight wall, mean of its outside',
    where:
      'a convex outline throws a shadow of its girth over π on the mean of all directions; sky and ground each fill half of what a wall sees',
    read: null,
  },
  'derived.energy': {
    kind: 'derived',
    cite: 'Energy, charge and cost from power and time',
    where: 'definition of watt, ampere and price per energy',
    read: null,
  },
  'ICAO.atmosphere': {
    kind: 'standard',
    cite: 'ICAO standard atmosphere, ISO 2533',
    where: 'sea-level pressure and temperature, gas constant of dry air',
    read: null,
  },
  'MoscowPapyrus.14': {
    kind: 'paper',
    cite: 'Moscow Mathematical Papyrus, about 1850 BC, problem 14',
    where: 'truncated pyramid with sides 4 and 2 and height 6 holds 56',
    read: null,
  },
  GarciaGordon1992: {
    kind: 'paper',
    cite: 'García, H. E. & Gordon, L. I. 1992, Limnology and Oceanography 37:1307-1312',
    where:
      'oxygen solubility of sea water, another fit; value at 5 °C and salinity 28 read in the documentation of an open library',
    read: '2026-11-25',
  },
  'UNESCO.PSS-78': {
    kind: 'standard',
    cite: 'UNESCO 1981, Practical Salinity Scale 1978',
    where: 'sea water of salinity 35 conducts 42.914 mS/cm at 15 °C and 53.087 at 25 °C',
    read: null,
  },
})

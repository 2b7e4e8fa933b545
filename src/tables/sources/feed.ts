import { sourcesOf } from '../source.ts'

/** Recipes, crops, uptake, acids as bulletins dose them, and limits of running tanks. */
export const feedSources = sourcesOf({
  HoaglandArnon1950: {
    kind: 'bulletin',
    cite: 'Hoagland & Arnon, California Agricultural Experiment Station Circular 347, 1950',
    where: 'solution 1: a teaching sheet and an encyclopaedia; solution 2 from memory but for its calcium',
    read: '2026-11-25',
  },
  Steiner1984: {
    kind: 'paper',
    cite: 'Steiner, universal nutrient solution: Plant and Soil 15:134, 1961 (title page read) and the form of 1984',
    where: 'ratios from memory',
    read: null,
  },
  Cooper1979: {
    kind: 'handbook',
    cite: 'Cooper, The ABC of NFT, 1979',
    where: 'g per 1000 L, from memory',
    read: null,
  },
  MattsonPeters: {
    kind: 'bulletin',
    cite: 'Mattson & Peters, A Recipe for Hydroponic Success, Cornell University',
    where: 'modified Sonneveld recipe for lettuce; article read, its table from memory',
    read: '2026-11-25',
  },
  SonneveldStraver1994: {
    kind: 'handbook',
    cite: 'Sonneveld & Straver, Voedingsoplossingen voor groenten en bloemen, 1994',
    where: 'lettuce recirculating and tomato, from memory',
    read: null,
  },
  'Yamazaki.strawberry': {
    kind: 'handbook',
    cite: 'Yamazaki, strawberry solution',
    where: 'composition from memory; strength as Univ. of Arizona',
    read: null,
  },
  'UArizona.strawberry': {
    kind: 'bulletin',
    cite: 'University of Arizona CEAC, hydroponic strawberry, irrigation',
    where: 'EC 1.0 dS/m or less, flush above 1.2, pH 5.5 to 6.0',
    read: '2026-11-25',
  },
  'UFIFAS.AE610': {
    kind: 'bulletin',
    cite: 'University of Florida IFAS Extension AE610, lettuce in NFT',
    where: 'EC 1.2 at germination, 1.5 to 1.8 in production',
    read: '2026-11-25',
  },
  'OSU.HLA6722': {
    kind: 'bulletin',
    cite: 'Oklahoma State University Extension HLA-6722, Electrical Conductivity and pH Guide for Hydroponics',
    where: 'Table 1, limits of source water',
    read: '2026-11-25',
  },
  'OSU.HLA6722.crops': {
    kind: 'bulletin',
    cite: 'Oklahoma State University Extension HLA-6722, Electrical Conductivity and pH Guide for Hydroponics',
    where: 'crop table from memory',
    read: null,
  },
  Currey2019: {
    kind: 'paper',
    cite: 'Currey, Walters & Flax, Agronomy 9:389, 2019, cilantro, dill, parsley',
    where: 'no effect of EC 0.5 to 4.0 on growth',
    read: '2026-11-25',
  },
  'Samarakoon2020.feed': {
    kind: 'paper',
    cite: 'Samarakoon, Palmer, Ling & Altland, HortScience 55(8):1265, 2020, lettuce in NFT',
    where: 'abstract: EC 1.4 to 2.0, pH 5.8 to 6.4',
    read: '2026-11-25',
  },
  'Yang2021.feed': {
    kind: 'paper',
    cite: 'Yang, Samarakoon, Altland & Ling, Agronomy 11(7):1340, 2021, arugula',
    where: 'EC 1.2 to 1.8, 2.1 worse',
    read: '2026-11-25',
  },
  'Yang2024.feed': {
    kind: 'paper',
    cite: 'Yang et al., Agronomy 14(11):2704, 2024, kale and collards',
    where: 'EC 1.2 to 2.1',
    read: '2026-11-25',
  },
  'PLoS2018.pakchoi': {
    kind: 'paper',
    cite: 'PLoS ONE 13(8):e0202090, 2018, EC of the solution for pak choi',
    where: 'abstract: 1.8 and 2.4 best',
    read: '2026-11-25',
  },
  'Benko2016.feed': {
    kind: 'paper',
    cite: 'Benko et al., Acta Hort. 1142:111, 2016, watercress',
    where: 'abstract: EC 2.5 and 3.2 tested',
    read: '2026-11-25',
  },
  Batavia2024: {
    kind: 'paper',
    cite: 'Front. Plant Sci. 15:1411572, 2024, closed hydroponic Batavia lettuce',
    where: 'uptake concentrations',
    read: '2026-11-25',
  },
  Recycled2020: {
    kind: 'paper',
    cite: 'Front. Plant Sci. 11:607643, 2020, recycled solution on tap water',
    where: 'loss of 22 to 36 % at a fixed EC of 1.8',
    read: '2026-11-25',
  },
  Langenfeld2022: {
    kind: 'paper',
    cite: 'Langenfeld, Pinto, Faust, Heins & Bugbee, Sustainability 14:10204, 2022',
    where: 'abstract: refill by mass balance',
    read: '2026-11-25',
  },
  Carmassi2003: {
    kind: 'paper',
    cite: 'Carmassi et al., Acta Hort. 614, 2003, salt accumulation in closed systems',
    where: 'abstract: EC rises mainly by the ions of the water',
    read: '2026-11-25',
  },
  'UMass.acids': {
    kind: 'bulletin',
    cite: 'UMass Extension, Adjusting Alkalinity with Acids',
    where: 'page; table and example in a garbled copy',
    read: '2026-11-25',
  },
  'Supplier.acids': {
    kind: 'bulletin',
    cite: 'Training note of a greenhouse supplier on acid injection',
    where: 'fl oz per 100 US gal for 50 ppm CaCO3',
    read: '2026-11-25',
  },
})

import type { FindingWords } from '../../words.ts'
import { nutrientsCare } from './nutrients-care.ts'

const ballast = (ion: string, short: string, because: string): FindingWords => ({
  short,
  pass: `The blended water holds {measured} of ${ion}; up to {want} does no harm.`,
  watch: `The blended water holds {measured} of ${ion}; {want} is where to watch. Softer water in the blend brings it down.`,
  fail: `The blended water holds {measured} of ${ion}; {must} is the limit for a tank that is topped up. Blend more rain or distilled water in.`,
  because,
})

const water: Readonly<Record<string, FindingWords>> = {
  'nutrients/shares': {
    short: 'Shares make the whole',
    pass: 'The shares of the waters sum to the whole.',
    watch: 'The shares of the waters sum to {measured}.',
    fail: 'The shares of the waters sum to {measured} and must sum to 1 (100 %). Leave one share out and it takes the rest.',
    because: 'A blend is made of all its parts.',
  },
  'nutrients/charge-balance': {
    short: 'Report balances',
    pass: '{name}: plus ions sum to {plus} and minus ions to {minus}; they agree.',
    watch: '{name}: plus ions sum to {plus} and minus ions to {minus}. {hint}',
    fail: '{name}: plus ions sum to {plus} and minus ions to {minus}. One value is missing or in other units. {hint}',
    because: 'Water carries no charge, so a report whose ions do not balance is wrong somewhere.',
  },
  'nutrients/unit-slip': {
    short: 'Unit of a reported ion',
    pass: 'No other unit would explain the report better.',
    watch: '{ion} of {typed}: read as {basis} the report balances.',
    fail: '{ion} of {typed} does not fit the rest; read as {basis} the report balances. Write {instead} if that is what the report says.',
    because: 'The commonest slip is a number in meq/L or as nitrogen written down as mg/L of the ion.',
  },
  'nutrients/source-conductivity': {
    short: 'Ions explain conductivity',
    pass: '{name}: the reported ions make {computed}, the report says {reported}.',
    watch: '{name}: the reported ions make {computed}, the report says {reported}. Something is missing or old.',
    fail: '{name}: the reported ions make {computed}, the report says {reported}. One of them is in another unit (mS/cm or µS/cm), or most ions are missing.',
    because: 'Conductivity is the sum of what the ions carry.',
  },
  'nutrients/sodium': ballast(
    'sodium',
    'Sodium in the water',
    'Plants leave sodium in the tank, and each top-up adds more.',
  ),
  'nutrients/chloride': ballast(
    'chloride',
    'Chloride in the water',
    'Plants take little chloride, and each top-up adds more.',
  ),
  'nutrients/calcium': ballast(
    'calcium',
    'Calcium in the water',
    'Calcium that is in the water already leaves no room for calcium nitrate, and with it for nitrogen.',
  ),
  'nutrients/sulfate': ballast(
    'sulfate',
    'Sulfate in the water',
    'Sulfate that plants leave fills the conductivity and feeds nothing.',
  ),
  'nutrients/fluoride': {
    short: 'Fluoride in the water',
    pass: 'The blend holds {measured} of fluoride, below the {want} for drinking water. What leaves take up is not computed here.',
    watch:
      'The blend holds {measured} of fluoride ({undiluted} before blending), above the {want} for drinking water. Not for washing leaves or drinking; what leaves take up is outside this model: ask a laboratory or the health office.',
    fail: 'The blend holds {measured} of fluoride.',
    because: 'Fluoride is not part of the model of the feed; only the guideline for drinking water is held against it.',
  },
  'nutrients/alkalinity-low': {
    short: 'Enough alkalinity',
    pass: 'The water has {measured} of alkalinity; from {want} on it holds the pH.',
    watch:
      'The water has only {measured} of alkalinity; below {want} the pH swings with every dose. Dose acid in thirds, read every day, or keep some potassium bicarbonate at hand.',
    fail: 'The water has only {measured} of alkalinity.',
    because: 'Alkalinity is what holds the pH when roots or acid push it.',
  },
  'nutrients/alkalinity-high': {
    short: 'Alkalinity of the top-up',
    pass: 'The water has {measured} of alkalinity; up to {want} roots and ammonium cope with it.',
    watch:
      'The water has {measured} of alkalinity, above {want}: the pH climbs with every top-up. Give each litre its acid by alkalinity, not by pH, or blend softer water in.',
    fail: 'The water has {measured} of alkalinity.',
    because: 'All water of a top-up brings its alkalinity into the tank.',
  },
  'nutrients/unread-ion': {
    short: 'Names in the report',
    pass: 'Every name in the report is known.',
    watch: 'Not known, and left out: {list}. Write Ca, Mg, K, Na, NH4, HCO3, Cl, SO4, NO3, NO3-N …',
    fail: 'Not known, and left out: {list}.',
    because: 'What is not read does not count in the balance.',
  },
}

const batch: Readonly<Record<string, FindingWords>> = {
  'nutrients/shelf-entry': {
    short: 'Shelf can be read',
    pass: 'Everything on the shelf can be used.',
    watch: '“{name}”: {problem}',
    fail: '“{name}”: {problem}',
    because: 'A product counts by its formula or its label, never by a guess.',
  },
  'nutrients/element': {
    short: 'Element against its target',
    pass: '{nutrient} reaches {measured}; {target} is wanted.',
    watch: '{nutrient} reaches {measured}; {target} is wanted. {reason}',
    fail: '{nutrient} reaches {measured}; {target} is wanted and {must} is as far as it may go. {reason}',
    because: 'The recipe comes as near to all targets together as water and shelf allow.',
  },
  'nutrients/bounds': {
    short: 'Limits can be kept',
    pass: 'All limits hold at once.',
    watch: '{list} cannot be kept.',
    fail: 'Nothing on the shelf can keep {list}. Blend other water in, add an acid or base to the shelf, or widen the limit.',
    because: 'Limits that contradict each other or the water leave no recipe that keeps them all.',
  },
  'nutrients/cheapest': {
    short: 'Cheapest within the band',
    pass: 'The batch costs {cost}, the least with every element within {within} % of its target; the nearest to the targets costs {nearest}.',
    watch:
      'No mix of the shelf keeps every element within {within} % of its target, so the batch is the nearest to the targets. Widen the band, or put another salt on the shelf.',
    fail: 'No mix of the shelf keeps every element within {within} %.',
    because: 'The cheapest is looked for only where no plant goes short.',
  },
  'nutrients/proof': {
    short: 'Recipe proved best',
    pass: 'No other mix of the shelf comes nearer; the proof closes to {measured}.',
    watch: 'The proof leaves {measured} open.',
    fail: 'The proof leaves {measured} open.',
    because: 'A recipe is trusted only where its optimality check closes.',
  },
  'nutrients/ammonium-share': {
    short: 'Ammonium in the nitrogen',
    pass: '{measured} of the nitrogen is ammonium; up to {want} is safe.',
    watch: '{measured} of the nitrogen is ammonium; above {want} the pH falls fast and roots suffer.',
    fail: '{measured} of the nitrogen is ammonium.',
    because: 'Roots that take ammonium give off acid.',
  },
  'nutrients/traces': {
    short: 'Trace elements present',
    pass: 'Iron, manganese, zinc, boron, copper and molybdenum are all there.',
    watch: 'Nothing brings {list}, and no target asks for it. Add targets, or copy the traces from the bag’s label.',
    fail: 'Nothing brings {list}.',
    because: 'Leaves pale within weeks where a trace element is missing.',
  },
  'nutrients/unread-target': {
    short: 'Names of targets',
    pass: 'Every target is an element.',
    watch: 'Not known, and left out: {list}. Write N, P, K, Ca, Mg, S, Fe, Mn, Zn, B, Cu, Mo.',
    fail: 'Not known, and left out: {list}.',
    because: 'A target that is not read is not aimed at.',
  },
  'nutrients/weighable': {
    short: 'Doses can be weighed',
    pass: 'Every dose is at least twenty steps of a scale at hand.',
    watch:
      '{measured} doses are too small for the scale. {name}: {dose} on steps of {step} cannot be weighed; dissolve {dissolve} in {volume}, {thinned}and take {draw}.',
    fail: '{measured} doses are too small for the scale.',
    because: 'A dose of few steps is wrong by many per cent, and traces turn to poison soon.',
  },
  'nutrients/pack': {
    short: 'Enough on the shelf',
    pass: '{measured} of {name} are there; a batch uses {dose}, and they last for {batches} batches.',
    watch:
      '{measured} of {name} are enough for a batch ({batch}), and short by {short} of filling the stock bottles as well, which take {bottles}.',
    fail: '{measured} of {name} are there and a batch takes {batch}: {short} are missing, the stock bottles counted in.',
    unknown: 'So it is not known how long {list} will last.',
    because: 'A batch that lacks a salt is another recipe, and the shop is not open on the day of the dump.',
  },
  'nutrients/acid-phosphorus': {
    short: 'Phosphorus by the acid',
    pass: '{acid} alone would bring {measured} of phosphorus while it takes {alkalinity}; that fits.',
    watch:
      'If {acid} alone takes the alkalinity of {alkalinity}, it brings {measured} of phosphorus; {want} is the most that is wanted. Share the work with nitric acid, or blend rain.',
    fail: '{acid} alone would bring {measured} of phosphorus.',
    because: 'Phosphoric acid gives up one proton a molecule, so that much alkalinity means much phosphorus.',
  },
}

const solution: Readonly<Record<string, FindingWords>> = {
  'nutrients/ph': {
    short: 'pH that lasts',
    pass: 'The tank settles at pH {measured}; {wanted} is wanted. {buffer} of acid moves it by one.',
    watch: 'The tank settles at pH {measured}; {wanted} is wanted. {buffer} of acid moves it by one.',
    fail: 'The tank settles at pH {measured}, outside {must}; {wanted} is wanted. The shelf has no acid or base that holds it, or not enough.',
    because: 'Below 5 roots and pumps suffer; above 6.8 iron, manganese and calcium phosphate fall out.',
  },
  'nutrients/ph-rise': {
    short: 'Rise while gas leaves',
    pass: 'Just mixed the pen shows {now}, a day later {later}.',
    watch:
      'Just mixed the pen shows {now}, a day later {later}. Do not correct the first number: it rises by {measured} as carbon dioxide leaves.',
    fail: 'Just mixed the pen shows {now}, a day later {later}.',
    because: 'Acid turns bicarbonate into carbon dioxide, and a falling film lets it out within hours.',
  },
  'nutrients/chelate': {
    short: 'Iron stays dissolved',
    pass: '{chelate} holds iron up to pH {want}; the tank settles at {measured}.',
    watch:
      '{chelate} holds iron up to pH {want}; the tank settles at {measured}. Take a stronger chelate, or keep the pH down.',
    fail: '{chelate} holds iron up to pH {want}; the tank settles at {measured}.',
    because: 'Iron that its chelate lets go falls out as rust.',
  },
  'nutrients/conductivity': {
    short: 'Conductivity of the batch',
    pass: 'The pen should show {measured}; {expected} is planned.',
    watch:
      'The pen should show {measured}; {expected} is planned. Targets and planned conductivity do not belong together.',
    fail: 'The pen should show {measured}; {expected} is planned. Targets and planned conductivity do not belong together.',
    because: 'The conductivity follows from the ions; it cannot be chosen besides the targets.',
  },
  'nutrients/tank-solids': {
    short: 'Nothing falls out: tank',
    pass: 'Nothing is near to falling out; {mineral} is nearest, at {measured}.',
    watch:
      '{mineral} is over its saturation by {measured} (a power of ten); it may fall out as scale or mud. Lower the pH, the phosphorus or the calcium.',
    fail: '{mineral} is over its saturation by {measured}.',
    because: 'What falls out feeds nothing and blocks the distributor.',
  },
  'nutrients/stock-load': {
    short: 'Bottles stay clear',
    pass: 'At {coldest} bottle {bottle} uses {measured} of what dissolves; up to {strongest} times would do.',
    watch:
      'At {coldest} bottle {bottle} uses {measured} of what dissolves ({by}). Make the stock {strongest} times strong at most.',
    fail: 'At {coldest} bottle {bottle} holds {measured} times what dissolves ({by}): crystals fall out. Make the stock {strongest} times strong at most.',
    because: 'Salts crystallise in the cold, and the next dose is too weak.',
  },
  'nutrients/bottle-clash': {
    short: 'Bottles do not clash',
    pass: 'Nothing meets in a bottle that should not.',
    watch: '{one} and {other} in bottle {bottle} make {gives}.',
    fail: '{one} and {other} in bottle {bottle} make {gives} at that strength. Calcium goes into A; sulfates and phosphates into B.',
    because: 'At a hundredfold strength calcium meets sulfate and phosphate far over saturation.',
  },
  'nutrients/bottle-solids': {
    short: 'Nothing falls out: bottle',
    pass: 'In bottle {bottle} {mineral} stays dissolved ({measured}).',
    watch:
      'In bottle {bottle} {mineral} may fall out ({measured} over its saturation, an estimate). Make the stock weaker, or add a little acid to it.',
    fail: 'In bottle {bottle} {mineral} falls out.',
    because: 'Milky stock feeds unevenly and blocks syringes.',
  },
}

export const nutrients: Readonly<Record<string, FindingWords>> = { ...water, ...batch, ...solution, ...nutrientsCare }

/** Headings and lines of the batch sheet and of the correction. */
export const feedTables: Readonly<Record<string, string>> = {
  'feed-batch': 'Batch of {volume} at {temperature}',
  'feed-water': 'Water: {blend}; alkalinity {alkalinity}.',
  'feed-water-part': '{share} % {name}',
  'feed-least-soft':
    'Of {name} it takes at least {share} %: with less, {ion} is above {limit}. At that share {alkalinity} of alkalinity is left.',
  'feed-product': 'Product',
  'feed-mass': 'Weigh',
  'feed-volume': 'or measure',
  'feed-per-litre': 'Per litre',
  'feed-bottle': 'Bottle',
  'feed-cost': 'Cost',
  'feed-element': 'Element',
  'feed-wanted': 'Wanted',
  'feed-reached': 'Reached',
  'feed-share': 'Of it',
  'feed-reason': 'Why',
  'feed-weak': '{name}: dissolve {dissolve} in {volume}, {thinned}take {draw} for this batch.',
  'feed-pen': 'The pen should show {conductivity} (25 °C){scale}. pH {now} just mixed, {later} after a day in the air.',
  'feed-pen-scale': ', that is {reading} {name}',
  'feed-pen-by':
    'These bands hold the model (± {model} %), labels and water report (± {labels} %), scale (± {weighed} %) and pen (± {pen} %); of the pH the model (± {phModel}), alkalinity and acid (± {phAlkalinity}) and {phPen}.',
  'feed-pen-ph': 'the pen (± {by})',
  'feed-pen-unknown': 'no pen, since nobody told when it was calibrated',
  'feed-acid': '{acid} alone would take {amount} for this batch, and bring {brings}.',
  'feed-acid-passing':
    '{acid} alone would take {amount}, but microbes eat it within days: for a single day’s correction only.',
  'feed-brings-nothing': 'no nutrient',
  'feed-stock': 'Bottle {bottle}, {factor} times strong, for {volume}: {contents}. {dose} for each litre of feed.',
  'feed-price': 'Cost {sum}.',
  'feed-price-open': 'Cost {sum}; without a price: {list}.',
  'feed-cheapest':
    'The cheapest with every element within {within} % of its target: {cost}. The nearest to the targets costs {nearest}.',
  'feed-cheapest-none':
    'No mix of the shelf keeps every element within {within} % of its target: this is the nearest to the targets.',
  'feed-cheapest-prices': 'The cheapest cannot be looked for without {needs}: this is the nearest to the targets.',
  'feed-gain': 'With {name} on the shelf the recipe misses {share} % less.',
  'feed-gain-none': 'No single salt would bring the recipe nearer to its targets.',
  'feed-refill':
    'Top up at {strength} % of the recipe to begin with: so much do {crops} take up with the water under strong light. Then by the pen: weaker where it climbs, stronger where it falls.',
  'feed-refill-assumed': 'Taken as lettuce, since nobody has measured them: {crops}.',
  'feed-refill-lettuce': 'lettuces',
  'feed-order': 'Order of mixing',
  'feed-order-water': 'Fill the tank to nine tenths with the blended water. Temperature noted.',
  'feed-order-acid':
    'Pour {amount} of {name} slowly into a full bucket of that water, then the bucket into the tank. Stir.',
  'feed-order-salt': 'Dissolve {amount} of {name} in a bucket of tank water, pour it in, stir.',
  'feed-order-weak': 'Add {amount} of the weak stock of {name}, stir.',
  'feed-order-fill': 'Fill up to {volume}, stir for ten minutes, wait for twenty.',
  'feed-order-read': 'Read the pen: {conductivity}. More than a tenth off: stop, look for the cause, do not plant.',
  'feed-order-ph': 'Read pH: {now} now. Do not correct it yet; read again tomorrow: {later}.',
  'feed-running':
    'Lasts {days}; {by} ends it. A dumped tank holds {nitrogen} of nitrogen and {phosphorus} of phosphorus.',
  'feed-running-watch': 'After {days} {ion} passes {limit}: look at the edges of old leaves.',
  'correct-top-up': 'Top up {volume} at {strength} % of the recipe.',
  'correct-plain': 'Top up {volume} of plain blended water.',
  'correct-stronger': 'The tank is full and weak: dissolve these in a bucket of tank water and stir in.',
  'correct-exchange': 'It is too strong even so: take {volume} out and put plain water in its place.',
  'correct-nothing': 'Strength is right; nothing to add.',
  'correct-stock': 'or {volume} of each bottle',
  'correct-acid':
    'pH {from} → {to}: {low} to {high} of {name} by the pen’s width. Give {first} first, diluted in a bucket, stir an hour, read again.',
  'correct-acid-none': 'pH {from} → {to}: no acid on the shelf that does it; {charge} are needed.',
  'correct-base':
    'pH {from} is below {to}: {charge} of base, such as {grams} of potassium bicarbonate, two thirds of it first. Often half a change of water does it as well.',
  'correct-weak': '{amount} of the weak stock of',
  'correct-pen-unknown':
    'Nobody told when the pH pen was calibrated: no acid by it. Calibrate it in two fresh buffers and write that into the plan, then read again.',
  'correct-which-scale':
    '“{typed}”: on which scale? As ppm, 500 gives {on500}, 640 gives {on640}, 700 gives {on700}. Write the unit, or tell the pen’s scale in the plan.',
  'correct-no-feed': '“{typed}”: no feed has {read}. {perhaps} perhaps? Look at the unit.',
  'correct-no-temperature': '“{typed}” is no temperature of a tank.',
  'correct-unread': '“{typed}” cannot be read. Write it like {example}.',
  'correct-ph-right': 'pH is within the pen’s width of what is wanted: leave it.',
  'correct-pen': 'The pH pen is off by ± {width}: no acid by it. Calibrate it in two fresh buffers, then read again.',
}

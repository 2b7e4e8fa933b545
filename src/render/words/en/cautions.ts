/**
 * Said at the step where the danger is. They name what to do; what is allowed is for local codes and for those who are
 * licensed to say.
 */
export const cautions: Readonly<Record<string, string>> = {
  acid: 'Goggles and gloves. Pour acid into water, never water into acid. Store acid and alkali apart, and both away from children. The label of the acid goes before this sheet.',
  'ask-building':
    'Ask the landlord or building manager before you drill into a wall, rail or slab; a railing may not be made to carry the tower.',
  backflow:
    'Never leave the filling hose in the tank. Keep its end at least {airGap} above the rim; the water rules of your place decide about fixed filling.',
  blade: 'Clamp the pipe. Keep hands behind the blade and gloves away from turning bits. Eye protection.',
  bleach: 'No bleach near acid or fertiliser: the gases are poisonous. Its label and the rules of your place go first.',
  children: 'Adults do this step. Children stay out of the room or yard until tools and cans are put away.',
  disposal:
    'Water from flushing goes to a drain for waste water; nutrient solution goes to plants or compost first, never into a storm drain or stream.',
  'drip-loop':
    'Let the cord hang below the socket before it rises to it, so that drops fall off. No joints of cords on the floor.',
  drowning: 'A small child can drown in an open tank. Latch or weigh down the lid whenever you turn away.',
  dust: 'Dust mask of class P2 or N95 and goggles. Cut wet or catch the dust; do not sweep it dry.',
  'dust-drain': 'Catch the swarf in a cloth or sieve; plastic dust does not belong in the drain.',
  'epoxy-skin': 'Gloves: epoxy that is not yet hard makes skin allergic to it.',
  flame: 'No flame, cigarette, pilot light or heater near: the vapour of cement and primer burns.',
  floor:
    'Ask whoever answers for the building how much the floor or balcony may carry; water weighs a kilogram a litre, 8.3 lb a US gallon.',
  food: 'Wash hands for 20 seconds before you touch plants or cups. Nobody who is ill tends or picks. Leaves do not touch the solution.',
  'heat-gloves': 'Leather gloves: the pipe and the former burn skin long after they look cold.',
  'hidden-cables': 'Find pipes and cables in the wall before you drill.',
  'hot-pvc':
    'Outdoors. Stop at the first browning or smell: above {fumes} PVC gives off hydrogen chloride. Never use a flame.',
  laser:
    'PVC must never go into a laser: it gives off hydrogen chloride, which harms lungs and machine. Use these sheets with a marker or a router.',
  legionella:
    'Keep the water below {cool}, shaded and under a closed cap; no mist. Bacteria that harm lungs grow in warm water and travel in spray.',
  'legionella-care': 'Where people with weak health live, ask for the house’s water-safety plan before the tower runs.',
  lifting: 'Fill where it stands; do not carry full pails alone. Move the tank empty.',
  'low-voltage': 'Keep the supply dry and above the water. A fuse belongs at the battery’s plus pole.',
  mains:
    'Only a socket behind an earth-leakage device ({trip} mA at most; {tripUS} mA where class A is the rule). Pull the plug before a hand goes into the tank. New sockets and outdoor wiring are work for a licensed electrician.',
  'not-drinking': 'Write “not drinking water” on the tank.',
  'old-pipe':
    'Leave old or unmarked pipe out: it may hold lead. Drain pipe carries no promise for drinking water; pipe with a potable mark does.',
  'sealant-air': 'Air the room while sealant cures and keep it off the skin.',
  'separate-cups': 'Keep cups and spoons for fertiliser marked and out of the kitchen.',
  'solvent-gloves': 'Goggles and gloves; change gloves when they swell, as solvents pass through nitrile.',
  tipping:
    'Two people, and one of them holds the column until it is tied or stands in its base. Above {strapAbove} it is tied to a wall or frame.',
  'unknown-plastic':
    'The plan does not say what a pipe is made of. Read the marking before you buy cement: grey polypropylene looks like PVC and cannot be glued.',
  vapours:
    'Outdoors or in a cross-draught: cement and primer hold solvents that harm at a few hundred parts in a million. Read the can.',
}

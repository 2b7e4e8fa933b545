/** Computed numbers of the page that are no finding: their name, and what they are. */
export const page = {
  findings: [
    'How many findings',
    'Each finding is a number of your plan held against a limit; they are counted by what came of it.',
  ],
  saved: [
    'The plan’s file',
    'Time of the last change, and how many changes this page remembers; all can be taken back.',
  ],
  scale: ['Scale', 'So many millimetres of the tower stand for one on the drawing.'],
  'layout/circumference': ['Round the pipe', 'Outside diameter times π, or what the tape said.'],
  'layout/marks': [
    'Running mark',
    'Height of the ring’s mark from one end of the pipe, on the nearest mark of the tape; all count from the same end, so that errors do not add up.',
  ],
  'layout/lines': ['Line along the pipe', 'Where a line runs, measured round the outside from line 1.'],
  'templates/joint': ['Size at the joint', 'Follows from the two pipes, the angle and the length of the stub.'],
  drawing: ['Size on the drawing', 'Computed from the plan; choose a field of this part to change it.'],
  changes: ['Changes', 'Every change of the plan in order; going back is a change that can be taken back.'],
  'hydraulics/head': [
    'Water over the holes',
    'What stands in the distributor at the flow that is wanted: high enough to push it through the holes.',
  ],
  'feed/reached': [
    'Reached',
    'Water and weighed doses together, divided by the volume of the batch; the nearest to all targets at once, proved against the conditions of an optimum.',
  ],
  'feed/band': [
    'Share of the target',
    'What the batch reaches over what is wanted. The box is good; the line feeds without harm; beyond it the finding fails.',
  ],
  'feed/charge': [
    'Charge of the ions',
    'Amount times charge at the pH of the open tank, pairs counted with the ion that holds them. A solution has as many positive charges as negative ones: columns of two heights would be a mistake.',
  ],
  'feed/ph': [
    'pH now and later',
    'The pH at which the charges cancel: closed, with all carbon dioxide still in it, and in balance with the air, after a day or so of falling through the tower.',
  ],
  'hydraulics/over': [
    'Water over the holes',
    'Depth over the distributor’s holes at the flow of the column, from the least to the most that the pump may give; what would stand higher than the rim runs over.',
  ],
  'hydraulics/full': [
    'Overflow of the distributor',
    'Flow at which the water stands at the rim, with every hole open: the orifice law for each hole.',
  ],
  'hydraulics/flow': [
    'Flow',
    'Where the pump’s curve meets lift and losses; a band, as the box of a pump tells two ends of its curve and no more. A bucket test narrows it.',
  ],
  'hydraulics/lift': [
    'Lift',
    'From the low line up to the end of the riser: what the pump must carry before anything flows.',
  ],
  'hydraulics/riser': ['Riser', 'Speed in the bore at that flow, and the head that friction, bends and ends take.'],
  'hydraulics/film': [
    'Film on the wall',
    'Thickness and speed of water that runs down the whole bore evenly, by the flow for each millimetre of its round; streams run thicker and faster.',
  ],
  'hydraulics/drain': [
    'Water at the foot',
    'Depth that stands over the foot’s holes so that they pass the flow, clean and clogged.',
  ],
  'hydraulics/held': [
    'Drain-back',
    'What hangs in riser, distributor, film and roots and returns to the tank when the pump stops.',
  ],
  'hydraulics/stop': [
    'Stop to dry',
    'How long the water held in roots and medium feeds grown plants in the hottest air of the place.',
  ],
  'reservoir/levels': [
    'Level in the tank',
    'The fill line with what runs back on a stop, the low line less what a start draws up, by the tank’s shape.',
  ],
  sensitivity: [
    'Which number matters',
    'One reading at a time is taken to either end of what such readings are off, and the result is computed again; swings are not added up. How far readings are off stands in one table with its sources.',
  ],
  tape: ['Nearest mark', 'The length on the nearest mark of an inch tape, and how far that is off.'],
  fields: ['Fields', 'What the plan could be told of this part besides.'],
  parts: ['Parts', 'Counted from the plan; prices are those that the plan tells.'],
  steps: ['Steps', 'Order, times and slots follow from the plan; a rule is a number to fill in by pen.'],
  cuts: ['Cutting plan', 'The fewest lengths, with the kerf and the trim, proved against a lower bound.'],
} as const satisfies Readonly<Record<string, readonly [name: string, about: string]>>

export type FactWords = Readonly<Record<keyof typeof page, readonly [name: string, about: string]>>

import { sourcesOf } from '../source.ts'

/** Sources of the cutting plan: the problem, its bounds, its published benchmark and the rules derived here. */
export const cuttingSources = sourcesOf({
  GilmoreGomory1961: {
    kind: 'paper',
    cite: 'P. C. Gilmore, R. E. Gomory, A linear programming approach to the cutting-stock problem, Operations Research 9 (1961) 849-859',
    where: 'linear relaxation over cutting patterns, columns priced by a knapsack',
    read: null,
  },
  MartelloToth1990: {
    kind: 'paper',
    cite: 'S. Martello, P. Toth, Lower bounds and reduction procedures for the bin packing problem, Discrete Applied Mathematics 28 (1990) 59-70',
    where: 'bound L2; dominance of one bin over another',
    read: null,
  },
  Farley1990: {
    kind: 'paper',
    cite: 'A. A. Farley, A note on bounding a class of linear programming problems, including cutting stock problems, Operations Research 38 (1990) 922-923',
    where: 'lower bound from duals that are not yet feasible',
    read: null,
  },
  'CuttingStock.benchmark': {
    kind: 'dataset',
    cite: 'Cutting stock problem, encyclopedia article: paper machine with 5600 mm rolls and 13 widths',
    where:
      'worked example: 308 patterns, 73 rolls, waste 0.401 %; the waste and the count reproduced by an integer program',
    read: '2026-11-25',
  },
  'Stick.reckoning': {
    kind: 'dataset',
    cite: 'Reckoned stock cases: mitred stubs of 60.325 mm pipe from 3 m, 10 ft and 6 m lengths',
    where: 'all patterns enumerated; an integer program and a breadth-first search agree (test/data/stock-cases.json)',
    read: '2026-11-25',
  },
  'Stick.rule': {
    kind: 'derived',
    cite: 'Length taken from a stick by square, mitred, parallel and coped pieces',
    where: 'docs/decisions/0005-cutting-plan.md, section on what a piece takes',
    read: null,
  },
})

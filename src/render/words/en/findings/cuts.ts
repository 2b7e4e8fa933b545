import type { FindingWords } from '../../words.ts'

export const cuts: Readonly<Record<string, FindingWords>> = {
  'cuts/longest-piece': {
    short: 'Longest piece fits stock',
    pass: 'The longest {what} piece takes {measured}; {must} can be cut from one length.',
    watch: 'The longest {what} piece takes {measured}; {must} can be cut from one length.',
    fail: 'A {what} piece takes {measured}, and no length in stock gives more than {must}: {over} short. Buy a longer one, couple two, or plan it shorter.',
    because: 'A piece comes from one length, less its trimmed ends and what the saw takes.',
  },
  'cuts/short-stub': {
    short: 'Stub long enough to mitre',
    pass: 'The stub is {measured} long on its centre line; its mitre needs {must}.',
    watch: 'The stub is {measured} long on its centre line; its mitre needs {must}.',
    fail: 'The stub is only {measured} long on its centre line, and its mitre runs back {must}: the slanted cut would come out at the mouth. Make the stub longer.',
    because: 'A slanted cut reaches half the pipe’s width, times the slope, to both sides of its middle.',
  },
  'cuts/proved': {
    short: 'Cutting plan proved best',
    pass: 'No plan for the {what} pieces takes less than this one; lengths: {sticks}.',
    watch:
      'The plan for the {what} pieces takes {value}; {measured} less may be possible, which was neither found nor ruled out.',
    fail: 'The plan for the {what} pieces takes {value}; {measured} less may be possible.',
    because: 'A bound says below what no plan can go; where plan and bound meet, the search may stop.',
  },
  'cuts/stock-enough': {
    short: 'Enough on hand',
    pass: 'The lengths listed give every {what} piece ({wanted}).',
    watch: 'The lengths listed leave {what} pieces uncut: {measured} of {wanted}.',
    fail: 'The lengths on hand are used up while {what} pieces are still to be cut: {measured} of {wanted}. Add lengths, or a length that the shop sells.',
    because: 'Every piece must come from a length that is there or can be bought.',
  },
}

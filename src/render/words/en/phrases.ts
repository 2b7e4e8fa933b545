export const phrases: Readonly<Record<string, string>> = {
  and: 'and',
  or: 'or',
  nothing: 'nothing',
  'the-plan': 'the plan',
  unknown: 'Not known yet; fill in {needs}.',
  'holds-in-part': 'It holds in part of the band only.',
  'did-you-mean': 'Did you mean {list}?',
  remedy: 'Change {place} from {from} to {to}: gives {gives}.',
  'remedy-ends': 'Change {place} from {from} to {to}: then the question no longer arises.',
  'also-cures': '(Cures as well: {list}.)',
  reveals: '(Then to be mended: {list}.)',
}

/**
 * Why a number is what it is. A shown number cannot be built without one: the component that shows numbers demands it,
 * and the page's test finds every figure that stands outside of one.
 */
export type Reason = `finding:${string}` | `field:${string}` | `fact:${string}`

export const ofFinding = (key: string): Reason => `finding:${key}`
export const ofField = (path: string): Reason => `field:${path}`
export const ofFact = (id: string): Reason => `fact:${id}`

export const reasonParts = (reason: Reason): readonly ['finding' | 'field' | 'fact', string] => {
  const at = reason.indexOf(':')
  return [reason.slice(0, at) as 'finding' | 'field' | 'fact', reason.slice(at + 1)]
}

export const isReason = (text: string): text is Reason => /^(finding|field|fact):/.test(text)

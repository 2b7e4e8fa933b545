import type { Verdict } from '../../../findings/finding.ts'
import { ofFinding, type Reason } from '../model/reasons.ts'

/** The number of a finding; its shape says the verdict. */
export function Balloon(props: {
  readonly number: number
  readonly verdict: Verdict
  readonly on: boolean
  readonly finding: string
}) {
  const why = (): Reason => ofFinding(props.finding)
  return (
    <svg
      class="bal"
      classList={{ [props.verdict]: true, on: props.on }}
      viewBox="-10.5 -10.5 21 21"
      aria-hidden="true"
      data-why={why()}
    >
      <circle class="ring" r="9" />
      <text y="4">{props.number}</text>
    </svg>
  )
}

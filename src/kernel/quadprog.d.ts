declare module 'quadprog' {
  /** Arrays count from 1; element 0 is unused. Minimises ½ xᵀDx - dᵀx with Aᵀx ≥ b; the first `equalities` hold as =. */
  export function solveQP(
    D: number[][],
    d: number[],
    A: number[][],
    b: number[],
    equalities?: number,
  ): {
    readonly solution: number[]
    readonly Lagrangian: number[]
    readonly value: number[]
    readonly message: string
  }
}

/**
 * Linear systems of 2x2 blocks on three diagonals, as a chain of nodes with two unknowns each gives them.
 * Blocks are stored row-major, four numbers a node: lower couples to the node before, upper to the node after.
 */
export interface BlockTridiagonal {
  readonly lower: Float64Array;
  readonly diagonal: Float64Array;
  readonly upper: Float64Array;
  /** Inverted pivots and pivot-times-upper, filled by `factor`. */
  readonly pivot: Float64Array;
  readonly swept: Float64Array;
}

export function blockTridiagonal(nodes: number): BlockTridiagonal {
  if (!(nodes >= 1)) throw new RangeError(`nodes must be >= 1, got ${nodes}`);
  const blocks = () => new Float64Array(4 * nodes);
  return { lower: blocks(), diagonal: blocks(), upper: blocks(), pivot: blocks(), swept: blocks() };
}

/**
 * Eliminates once; `solve` may then be called for any number of right-hand sides.
 * Returns the first node with a singular pivot, or -1.
 */
export function factor(system: BlockTridiagonal, nodes: number): number {
  const { lower, diagonal, upper, pivot, swept } = system;
  let e0 = 0;
  let e1 = 0;
  let e2 = 0;
  let e3 = 0;
  for (let i = 0, k = 0; i < nodes; i++, k += 4) {
    const a0 = lower[k]!;
    const a1 = lower[k + 1]!;
    const a2 = lower[k + 2]!;
    const a3 = lower[k + 3]!;
    const b0 = diagonal[k]! - a0 * e0 - a1 * e2;
    const b1 = diagonal[k + 1]! - a0 * e1 - a1 * e3;
    const b2 = diagonal[k + 2]! - a2 * e0 - a3 * e2;
    const b3 = diagonal[k + 3]! - a2 * e1 - a3 * e3;
    const determinant = b0 * b3 - b1 * b2;
    if (!(Math.abs(determinant) > 0) || determinant !== determinant) return i;
    const inverse = 1 / determinant;
    const d0 = b3 * inverse;
    const d1 = -b1 * inverse;
    const d2 = -b2 * inverse;
    const d3 = b0 * inverse;
    pivot[k] = d0;
    pivot[k + 1] = d1;
    pivot[k + 2] = d2;
    pivot[k + 3] = d3;
    const c0 = upper[k]!;
    const c1 = upper[k + 1]!;
    const c2 = upper[k + 2]!;
    const c3 = upper[k + 3]!;
    e0 = d0 * c0 + d1 * c2;
    e1 = d0 * c1 + d1 * c3;
    e2 = d2 * c0 + d3 * c2;
    e3 = d2 * c1 + d3 * c3;
    swept[k] = e0;
    swept[k + 1] = e1;
    swept[k + 2] = e2;
    swept[k + 3] = e3;
  }
  return -1;
}

/** Solves in place: `x` holds the right-hand side on entry, the answer on return; two numbers a node. */
export function solve(system: BlockTridiagonal, nodes: number, x: Float64Array): void {
  const { lower, pivot, swept } = system;
  let z0 = 0;
  let z1 = 0;
  for (let i = 0, k = 0, j = 0; i < nodes; i++, k += 4, j += 2) {
    const r0 = x[j]! - lower[k]! * z0 - lower[k + 1]! * z1;
    const r1 = x[j + 1]! - lower[k + 2]! * z0 - lower[k + 3]! * z1;
    z0 = pivot[k]! * r0 + pivot[k + 1]! * r1;
    z1 = pivot[k + 2]! * r0 + pivot[k + 3]! * r1;
    x[j] = z0;
    x[j + 1] = z1;
  }
  for (let i = nodes - 2, k = 4 * (nodes - 2), j = 2 * (nodes - 2); i >= 0; i--, k -= 4, j -= 2) {
    z0 = x[j]! - swept[k]! * z0 - swept[k + 1]! * z1;
    // z0 is already the new value of this node: the second row needs the old one of the node after.
    const after0 = x[j + 2]!;
    z1 = x[j + 1]! - swept[k + 2]! * after0 - swept[k + 3]! * z1;
    x[j] = z0;
    x[j + 1] = z1;
  }
}

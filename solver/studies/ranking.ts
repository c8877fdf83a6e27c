import { Matrix, SingularValueDecomposition } from "ml-matrix";

/** Weight of each input in a linear fit of the output, both scaled to their own spread, and the share of the spread that the fit explains. */
export interface Ranking {
  /** Standardised coefficient by input, -1..1 where inputs are independent; 0 for an input that did not vary. */
  readonly weights: readonly number[];
  readonly explained: number;
}

/**
 * Ranks inputs by linear regression on standardised values (least squares by singular values).
 *
 * @param inputs   one row a run
 * @param outputs  as many values
 * @returns null when there are fewer runs than inputs + 2, or the output does not vary
 * Source: standardised regression coefficients, Saltelli et al., Sensitivity Analysis, 2000.
 * Checked: tests/solver/studies/ranking.test.ts against a known linear function.
 */
export function rankInputs(inputs: readonly (readonly number[])[], outputs: readonly number[]): Ranking | null {
  const runs = outputs.length;
  const width = inputs[0]?.length ?? 0;
  if (inputs.length !== runs)
    throw new RangeError(`inputs and outputs must be of one length, got ${inputs.length} and ${runs}`);
  if (width === 0 || runs < width + 2) return null;
  const y = standardised(outputs);
  if (y === null) return null;
  const columns = Array.from({ length: width }, (_, column) => standardised(inputs.map((row) => row[column]!)));
  const varied = columns.flatMap((column, index) => (column === null ? [] : [index]));
  if (varied.length === 0) return null;
  const x = new Matrix(Array.from({ length: runs }, (_, run) => varied.map((column) => columns[column]![run]!)));
  const target = Matrix.columnVector([...y]);
  const solution = new SingularValueDecomposition(x, { autoTranspose: true }).solve(target);
  const fitted = x.mmul(solution);
  let missed = 0;
  let total = 0;
  for (let run = 0; run < runs; run += 1) {
    missed += (y[run]! - fitted.get(run, 0)) ** 2;
    total += y[run]! ** 2;
  }
  const weights = new Array<number>(width).fill(0);
  varied.forEach((column, row) => (weights[column] = solution.get(row, 0)));
  return { weights, explained: 1 - missed / total };
}

/** Values less their mean over their standard deviation; null when they do not vary. */
function standardised(values: readonly number[]): readonly number[] | null {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const spread = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
  return spread > 1e-12 * Math.max(1, Math.abs(mean)) ? values.map((value) => (value - mean) / spread) : null;
}

/** Value below which `share` (0..1) of the values lie, straight between ranks; NaN of nothing. */
export function quantile(values: readonly number[], share: number): number {
  if (values.length === 0) return Number.NaN;
  const sorted = [...values].sort((a, b) => a - b);
  const place = share * (sorted.length - 1);
  const low = Math.floor(place);
  const high = Math.min(low + 1, sorted.length - 1);
  return sorted[low]! + (sorted[high]! - sorted[low]!) * (place - low);
}

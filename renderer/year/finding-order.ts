import type { Finding } from "../../solver/index.ts";

/** How far a finding is from its limit as a share of the limit; what has none comes last. */
function closeness({ margin, limit }: Finding): number {
  if (margin === null || limit === null) return Number.POSITIVE_INFINITY;
  return limit === 0 ? margin : margin / Math.abs(limit);
}

/** What does not hold first, the worst of it before the rest; then what holds, the closest first. The assessment's order breaks ties. */
export const inOrder = (findings: readonly Finding[]): Finding[] =>
  [...findings].sort((one, other) => {
    const rank = (finding: Finding): number => (finding.holds === false ? 0 : finding.holds === true ? 1 : 2);
    const [a, b] = [closeness(one), closeness(other)];
    return rank(one) - rank(other) || (a === b ? 0 : a - b);
  });

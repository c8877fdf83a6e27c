import { passportProperties } from "../materials/index.ts";
import { catalogued } from "./appendix-inputs.ts";
import type { ReportInput } from "./report.ts";

/** Every source once: those of the limits first, in the order in which they are named, then those of the materials. */
export function sourcesOf(input: ReportInput): readonly string[] {
  const ofFindings = input.options.flatMap((option) =>
    option.paths.flatMap((path) => path.summary.findings.map((finding) => finding.source)),
  );
  const ofMaterials = catalogued(input).flatMap((material) =>
    passportProperties.flatMap((property) => material.passport[property]?.sources ?? []),
  );
  return [...new Set([...ofFindings, ...ofMaterials.sort()])];
}

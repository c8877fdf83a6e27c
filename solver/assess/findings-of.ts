import type { Case } from "../model/index.ts";
import type { RunResult } from "../run/index.ts";
import { assessmentOf } from "./assessment.ts";
import type { AssessOptions } from "./assessment.ts";
import type { Finding } from "./finding.ts";
import { swayedBy } from "./swayed-by.ts";
import { coldFindings } from "./told/cold-and-metal.ts";
import { condensingFindings } from "./told/condensing-plane.ts";
import { growthFindings } from "./told/surface-growth.ts";
import { woodFindings } from "./told/wood.ts";
import { waterPathFindings } from "./told/water-paths.ts";
import { yearFindings } from "./told/year-and-room.ts";

/**
 * What a run says about a path, over its judged year: each criterion a sentence with the numbers under it.
 * Criteria may disagree; all are given. An empty list: nothing was computed that could be judged. A run that did not finish
 * vouches for no limit: what holds so far is told as open.
 *
 * @param options units of the sentences, and the run's loads where they are at hand: without them the room's dew point is read
 * at the wall's room face and the surface factor has no limit to meet.
 */
export function findingsOf(aCase: Case, result: RunResult, options: AssessOptions = {}): Finding[] {
  if (result.judgedHours < 1 || result.probes.length === 0) return [];
  const assessment = assessmentOf(aCase, result, options);
  return [
    ...woodFindings(assessment),
    ...growthFindings(assessment),
    ...condensingFindings(assessment),
    ...waterPathFindings(assessment),
    ...coldFindings(assessment),
    ...yearFindings(assessment),
  ].map(({ sway, swayLayer, ...finding }) => ({
    ...vouchedFor(finding, result),
    swayedBy: swayedBy(aCase, swayLayer ?? assessment.governing.layer.id, sway),
  }));
}

function vouchedFor(finding: Omit<Finding, "swayedBy">, result: RunResult): Omit<Finding, "swayedBy"> {
  if (result.status === "finished") return finding;
  return {
    ...finding,
    holds: finding.holds === true ? null : finding.holds,
    when: `${finding.when}, of ${result.judgedHours} h computed`,
  };
}

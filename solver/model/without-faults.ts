import type { z } from "zod";
import { projectSchema, type Project } from "./project.ts";

type Container = Record<string | number, unknown>;

/** Values that stand in for a required field that was wrong, so that the rest of the file can still be checked. */
const standIns: Readonly<Record<string, unknown>> = {
  name: "",
  material: "gypsum_board_127",
  kind: "other",
  format: "wallyear",
  start: "10-01",
  weather: { city: "burlington-vt" },
  face: { azimuth_deg: 0 },
  azimuth_deg: 0,
  flow_m3hm2: 0,
  depth_m: 0,
  method: "en15026",
  indoor: { method: "en15026" },
  ach50: 3,
};

/**
 * A copy of the file with everything that the schema refused taken out or stood in for, or null if that does not make it whole.
 * It serves to report the remaining problems in one go, never to run.
 */
export function withoutFaults(
  file: Readonly<Record<string, unknown>>,
  found: readonly z.core.$ZodIssue[],
): Project | null {
  const copy = structuredCloneOf(file);
  let issues = found;
  for (let round = 0; round < 4; round++) {
    let serial = 0;
    for (const issue of issues) {
      const keys = issue.path as (string | number)[];
      const last = keys.at(-1);
      if (last === undefined) return null;
      let parent: unknown = copy;
      for (const key of keys.slice(0, -1))
        parent = typeof parent === "object" && parent !== null ? (parent as Container)[key] : undefined;
      if (typeof parent !== "object" || parent === null) continue;
      const holder = parent as Container;
      if (holder[last] !== undefined && round === 0 && !Array.isArray(holder)) delete holder[last];
      else if (last === "id") holder[last] = `unnamed${round}${serial++}`;
      else if (typeof last === "string" && last in standIns) holder[last] = standIns[last];
      else if (Array.isArray(holder)) holder.splice(Number(last), 1);
      else delete holder[last];
    }
    const again = projectSchema.safeParse(copy);
    if (again.success) return again.data;
    issues = again.error.issues;
  }
  return null;
}

/** A deep copy of parsed JSON. */
function structuredCloneOf<T>(value: T): T {
  return JSON.parse(JSON.stringify(value)) as T;
}

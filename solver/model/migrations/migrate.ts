import { formatVersion } from "../project.ts";
import type { Migration } from "./migration.ts";
import { fromVersion0 } from "./from-version-0.ts";

/** steps[n] leads from version n to n + 1. */
export const steps: readonly Migration[] = [fromVersion0];

/**
 * Brings a file of an older version to the present one, step by step. A file of this or a newer version is given back as it is.
 * Unknown fields pass through every step.
 */
export function migrate(file: Readonly<Record<string, unknown>>): Record<string, unknown> {
  let current: Record<string, unknown> = { ...file };
  const version =
    typeof file["formatVersion"] === "number" && Number.isInteger(file["formatVersion"])
      ? file["formatVersion"]
      : formatVersion;
  for (let n = Math.max(0, version); n < formatVersion; n++) current = steps[n]!(current);
  return current;
}

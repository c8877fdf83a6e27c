import type { Amendments } from "../codes/retarder-verdict.ts";
import type { Edition } from "../codes/edition.ts";

/** What the codes and the rule of thumb need to be told. */
export interface CodeSettings {
  readonly edition: Edition;
  /** The zone of the county table; the project's own when absent. */
  readonly zone?: string;
  readonly amendments?: Amendments;
  /** For the ratio rule: mean of the coldest three months outdoors, and the room. */
  readonly winter?: { readonly outdoorMean_C: number; readonly indoor_C?: number; readonly relativeHumidity?: number };
  /** Heating degree-days below 18 degC, for the Canadian effective R. */
  readonly canadianHeatingDegreeDays?: number;
}

export type CheckVerdict =
  | "meets"
  | "doesNotMeet"
  | "approvedDesign"
  | "offTable"
  | "notRequired"
  | "caution"
  | "holds"
  | "outOfScope"
  | "unknown";

/** One check that needs no run, as a sentence with its numbers and where they stand. */
export interface CheckLine {
  /** "vapourRetarder", "energy", "airTightness", "ratio", "scope", "twoVapourBarriers", "noDryingPath", "noDrainageGap", "foamBelowTable", "zone8Row", "boundary" ... */
  readonly id: string;
  readonly subject: "vapour" | "energy" | "moisture" | "boundary" | "scope";
  /** Path id, or "" for the whole option. */
  readonly path: string;
  readonly verdict: CheckVerdict;
  /** Null where the question has no yes or no. */
  readonly holds: boolean | null;
  readonly statement: string;
  readonly remedy: string | null;
  readonly edition: string | null;
  readonly section: string | null;
  readonly row: string | null;
  readonly measured: number | null;
  readonly limit: number | null;
  readonly unit: string;
  /** A local amendment was applied. */
  readonly amended: boolean;
  readonly source: string;
  readonly flag: string;
}

const blank = {
  path: "",
  remedy: null,
  edition: null,
  section: null,
  row: null,
  measured: null,
  limit: null,
  unit: "",
  amended: false,
} as const;

/** A line with what it does not mention left empty. */
export function checkLine(
  line: Pick<CheckLine, "id" | "subject" | "verdict" | "holds" | "statement" | "source" | "flag"> & Partial<CheckLine>,
): CheckLine {
  return { ...blank, ...line };
}

/** One sentence that the run supports, with the numbers under it. */
export interface Finding {
  /** Stable: "thirtyDayHumidity", "mouldIndex", "woodMoisture" ... */
  readonly id: string;
  /** Probe id, or "" for the whole path. */
  readonly probe: string;
  /** Present tense, the trade's words, subject a place in the wall, in the units asked for. */
  readonly statement: string;
  /** In SI and `unit`, whatever units the statement speaks. */
  readonly measured: number;
  readonly unit: string;
  readonly limit: number | null;
  /** Distance to the limit in `unit`, positive while it holds. */
  readonly margin: number | null;
  /** "30 days to 20 February". */
  readonly when: string;
  /** Null: there is no limit to hold, or not enough was computed to say. */
  readonly holds: boolean | null;
  /** Published source of the limit, with its flag. */
  readonly source: string;
  /** Low-confidence inputs that sway it, by layer and property. */
  readonly swayedBy: readonly string[];
}

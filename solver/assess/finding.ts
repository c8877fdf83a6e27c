/** One sentence that the run supports, with the numbers under it. */
export interface Finding {
  /** Stable: "thirtyDayHumidity", "mouldIndex", "woodMoisture" ... */
  readonly id: string;
  /** Probe id, or "" for the whole path. */
  readonly probe: string;
  /** Present tense, the trade's words, subject a place in the wall. Numbers in SI; `inUnits` of the report layer rewords for IP. */
  readonly statement: string;
  readonly measured: number;
  readonly unit: string;
  readonly limit: number | null;
  /** Distance to the limit in `unit`, positive while it holds. */
  readonly margin: number | null;
  /** "21 January to 20 February, year 3". */
  readonly when: string;
  readonly holds: boolean | null;
  /** Published source of the limit, with its flag. */
  readonly source: string;
  /** Low-confidence inputs that sway it, by layer and property. */
  readonly swayedBy: readonly string[];
}

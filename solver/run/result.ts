/** What a run gives: hourly series at every probe of the whole run, daily means through the wall, books, log. Plain data, transferable. */

export interface ProbeSeries {
  /** Stable within a path, safe in a CSV header: "osb-inside", "osb-mean", "d0.050". */
  readonly id: string;
  /** For people: "Inner face of strand board". */
  readonly label: string;
  /** The layer it belongs to; an interface belongs to the layer whose face it is (`side`). */
  readonly layer: string;
  readonly side: "outside" | "inside" | null;
  readonly depth_m: number;
  readonly kind: "interface" | "layerMean" | "depth";
  /** State at the end of each recorded hour (layer means: mean over the layer), length `hours`. [degC] [0..1] [kg/m3] */
  readonly T_C: Float32Array;
  readonly RH: Float32Array;
  readonly w_kgm3: Float32Array;
  /** Dry density for % by mass; null where the material is not wood. */
  readonly woodDensity_kgm3: number | null;
}

/** Daily means through the wall: row d starts at d * depths.length. */
export interface ThroughWallMap {
  readonly days: number;
  /** Depth of each column from the outside [m]. */
  readonly depth_m: Float32Array;
  readonly T_C: Float32Array;
  readonly RH: Float32Array;
  readonly w_kgm3: Float32Array;
}

export interface Book {
  readonly in: number;
  readonly out: number;
  readonly stored: number;
  /** |in - out - stored| / turnover, turnover the larger of in, out and |stored|. */
  readonly closure: number;
  /** Net gain of the wall by place and cause, positive into the wall: "outside vapour", "rain taken up", "rain run off" (not in the wall's sum), "leak of rain", "air leak", "cavity", "inside vapour", "sun and sky" ... */
  readonly byFaceAndSource: Readonly<Record<string, number>>;
}

/** Water that crosses the planes of the wall, month by month of the judged year [kg/m2], positive inward. */
export interface MonthlyFlows {
  /** One row per interface, in the order of `interfaces`; 12 values from the run's first month. */
  readonly interfaces: readonly {
    readonly probe: string;
    readonly vapour: readonly number[];
    readonly liquid: readonly number[];
  }[];
  /** Gains inside the wall by layer: leak of air, leak of rain, cavity. */
  readonly sources: readonly { readonly layer: string; readonly cause: string; readonly gain: readonly number[] }[];
  /** Water stored in each layer at the start and after each month, 13 values [kg/m2]. */
  readonly stored: readonly { readonly layer: string; readonly water: readonly number[] }[];
  /** Heat through the inner face, positive outward [MJ/m2], 12 values. */
  readonly heatFromRoom_MJm2: readonly number[];
}

export interface RunLog {
  readonly cells: number;
  readonly steps: number;
  readonly rejected: number;
  readonly iterations: number;
  readonly seconds: number;
}

export interface RunResult {
  readonly caseHash: string;
  readonly option: string;
  readonly path: string;
  /** "stopped": cancelled by the user; "failed": could not go on. What was computed is kept in both. */
  readonly status: "finished" | "stopped" | "failed";
  readonly failure: {
    readonly hour: number;
    readonly date: string;
    readonly layer: string;
    readonly cause: string;
    readonly remedy: string;
  } | null;
  /** Recorded hours; hour k ends (k + 1) h after the start. */
  readonly hours: number;
  readonly startDay: number;
  /** First hour of the judged (last whole) year; 0 for laboratory runs. */
  readonly judgedFrom: number;
  readonly judgedHours: number;
  readonly probes: readonly ProbeSeries[];
  /** Of the judged year. */
  readonly map: ThroughWallMap;
  readonly water: Book;
  readonly heat: Book;
  readonly monthly: MonthlyFlows | null;
  /** Water in the whole wall at each year's end [kg/m2], first value at the start. */
  readonly yearEndWater_kgm2: readonly number[];
  readonly log: RunLog;
}

export interface Progress {
  readonly caseHash: string;
  /** Hours done and to do. */
  readonly done: number;
  readonly of: number;
}

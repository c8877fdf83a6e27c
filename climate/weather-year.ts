import type { Issue } from "./issue.ts";

export interface Place {
  readonly name: string;
  /** North positive, -90..90. */
  readonly latitude_deg: number;
  /** East positive, -180..180. */
  readonly longitude_deg: number;
  /** Hours ahead of UTC, local standard time. */
  readonly utcOffset_h: number;
  readonly elevation_m: number;
}

/** The columns a weather file may lack. */
export type WeatherColumn =
  | "temperature_C"
  | "dewPoint_C"
  | "relativeHumidity"
  | "pressure_Pa"
  | "skyInfrared_Wm2"
  | "globalHorizontal_Wm2"
  | "directNormal_Wm2"
  | "diffuseHorizontal_Wm2"
  | "windSpeed_ms"
  | "windDirection_deg"
  | "cloudCover"
  | "rain_mm";

/**
 * Hours of outdoor weather, whatever they were made from.
 *
 * Hour k runs from k to k+1 hours after midnight of 1 January, local standard time, 365 days of 24 hours
 * (a leap day is left out and said so). Temperatures, humidity, pressure and wind are the state at the *end* of the hour; radiation
 * and rain are the amount *within* the hour.
 */
export interface WeatherYear {
  readonly place: Place;
  readonly kind: "file" | "synthetic" | "logged";
  /** Shown wherever the year is named; says "synthetic" where it is. */
  readonly label: string;
  /** SHA-256 of the text it was read from, or of the recipe's inputs, lower-case hex. */
  readonly sha256: string;
  /** Number of hours, 8760 for a whole year. */
  readonly hours: number;
  readonly temperature_C: Float64Array;
  /** Over liquid water, as weather stations report it. */
  readonly dewPoint_C: Float64Array;
  /** 0..1, over liquid water; from dew point and temperature. */
  readonly relativeHumidity: Float64Array;
  readonly pressure_Pa: Float64Array;
  /** Downward infrared on the horizontal [W/m2]. */
  readonly skyInfrared_Wm2: Float64Array;
  readonly globalHorizontal_Wm2: Float64Array;
  readonly directNormal_Wm2: Float64Array;
  readonly diffuseHorizontal_Wm2: Float64Array;
  /** At 10 m in open terrain [m/s]. */
  readonly windSpeed_ms: Float64Array;
  /** From where it blows, clockwise from north, 0..360. */
  readonly windDirection_deg: Float64Array;
  /** Opaque cloud, 0..1. */
  readonly cloudCover: Float64Array;
  /** Rain in the hour [mm = kg/m2]. */
  readonly rain_mm: Float64Array;
  /** Hours in which the source had no usable value, by column; an absent column counts 8760, an absent entry none. */
  readonly missingHours?: Readonly<Partial<Record<WeatherColumn, number>>>;
  /** Repairs made and doubts: each is shown before the year is used. */
  readonly issues: readonly Issue[];
}

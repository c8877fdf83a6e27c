/** One number, or twelve from January to December. */
export type Monthly = number | readonly number[];

/** How the air of the room is given: the choices a project can name. */
export type RoomSetting =
  | { readonly method: "fixed"; readonly temperature_C: Monthly; readonly relativeHumidity: Monthly }
  | {
      readonly method: "ashrae160";
      readonly variant: "simplified" | "intermediate";
      /** The house has air conditioning. */
      readonly cooled?: boolean | undefined;
      readonly bedrooms?: number | undefined;
      readonly volume_m3?: number | undefined;
      readonly airChangesPerHour?: number | undefined;
    }
  | { readonly method: "en15026"; readonly load: "normal" | "high" }
  | { readonly method: "iso13788"; readonly humidityClass: number; readonly temperature_C: number }
  | {
      readonly method: "seasonal";
      readonly winterTemperature_C: number;
      readonly summerTemperature_C: number;
      readonly winterRelativeHumidity: number;
      readonly summerRelativeHumidity: number;
    }
  | { readonly method: "logger"; readonly file: string };

/** Room air at the end of every hour of the weather year. */
export interface RoomAir {
  readonly temperature_C: Float64Array;
  readonly vapourPressure_Pa: Float64Array;
}

/** Logged room air, hour by hour, dated like a WeatherYear (hour 0 ends at 01:00 on 1 January). */
export interface LoggedAir {
  readonly name: string;
  readonly sha256: string;
  /** 8760 for a log that covers a whole year. */
  readonly hours: number;
  /** Hour of the year of the first value. */
  readonly firstHour: number;
  readonly temperature_C: Float64Array;
  /** 0..1 over liquid water. */
  readonly relativeHumidity: Float64Array;
}

import type { WeatherColumn } from "../weather-year.ts";

/** What a column is called in messages, and between what limits a value can be true in SI. */
export interface ColumnRule {
  readonly title: string;
  readonly unit: string;
  readonly low: number;
  readonly high: number;
}

/** Limits: beyond any value recorded at a weather station, with room to spare (common practice, no source). */
export const columnRules: Readonly<Record<WeatherColumn, ColumnRule>> = {
  temperature_C: { title: "dry-bulb", unit: "degC", low: -75, high: 60 },
  dewPoint_C: { title: "dew point", unit: "degC", low: -85, high: 40 },
  relativeHumidity: { title: "relative humidity", unit: "", low: 0, high: 1.1 },
  pressure_Pa: { title: "pressure", unit: "Pa", low: 31_000, high: 112_000 },
  skyInfrared_Wm2: { title: "horizontal infrared", unit: "W/m2", low: 40, high: 700 },
  globalHorizontal_Wm2: { title: "global horizontal sun", unit: "W/m2", low: 0, high: 1500 },
  directNormal_Wm2: { title: "direct normal sun", unit: "W/m2", low: 0, high: 1400 },
  diffuseHorizontal_Wm2: { title: "diffuse horizontal sun", unit: "W/m2", low: 0, high: 1200 },
  windSpeed_ms: { title: "wind speed", unit: "m/s", low: 0, high: 75 },
  windDirection_deg: { title: "wind direction", unit: "deg", low: 0, high: 360 },
  cloudCover: { title: "opaque cloud", unit: "", low: 0, high: 1 },
  rain_mm: { title: "rain", unit: "mm", low: 0, high: 300 },
};

export const weatherColumns = Object.keys(columnRules) as readonly WeatherColumn[];

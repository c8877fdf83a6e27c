/** The climate's door. Knows no wall. */
export type { Issue, Checked } from "./issue.ts";
export type { Place, WeatherYear } from "./weather-year.ts";
export type { FaceLoads, HourlyLoads, LoadSeries } from "./hourly-loads.ts";

/** The climate's door. Knows no wall. */
export type { Issue, Checked } from "./issue.ts";
export type { Place, WeatherColumn, WeatherYear } from "./weather-year.ts";
export type { FaceLoads, HourlyLoads, LoadSeries } from "./hourly-loads.ts";
export { sha256Hex } from "./sha256.ts";
export * from "./air/saturation.ts";
export * from "./air/moist-air.ts";
export { hourlyLoads, type LoadsInput } from "./loads/loads-of.ts";
export type { AirSetting } from "./loads/air-pressure.ts";
export type { FaceSetting, RainSetting } from "./loads/settings.ts";
export { roomAir } from "./rooms/room-air.ts";
export { roomPresets } from "./rooms/presets.ts";
export type { LoggedAir, Monthly, RoomAir, RoomSetting } from "./rooms/room-setting.ts";
export { readEpw } from "./readers/epw.ts";
export { annualRain_mm, placeName, places, type PlaceFlags, type PlaceNormals } from "./places/place-normals.ts";
export { distance_km, findPlaces, nearestPlace, placeById } from "./places/find-places.ts";
export { coldWinter_K, syntheticYear, wetYearRain, type SyntheticOptions } from "./synthesis/synthetic-year.ts";

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
export { readTmy3 } from "./readers/tmy3.ts";
export { readLoggerTable, type LoggerTable } from "./readers/logger-table.ts";
export { readLoggedWeather } from "./readers/logged-weather.ts";
/** A room's log by either name; an outdoor log goes through readWeatherFile. */
export { readLoggedRoom, readLoggedRoom as readLoggerCsv } from "./readers/logged-room.ts";
export { readWeatherFile, weatherFormatOf, type WeatherFormat } from "./readers/read-weather-file.ts";
export {
  weatherReport,
  type ColumnReport,
  type MonthlyReport,
  type RainReport,
  type WeatherReport,
} from "./report/weather-report.ts";
export { computedClimateZone, moistureLetter, thermalZone } from "./report/climate-zone.ts";
export { degreeDays, type DegreeDays } from "./report/degree-days.ts";
export { withMonthlyRain } from "./synthesis/monthly-rain.ts";
export { rankFaces, type RankedFace } from "./loads/rank-faces.ts";
export {
  depositionFactorAshrae160,
  depositionWords,
  drivingRainAshrae160_kgm2h,
  drivingRainIso15927_kgm2h,
  exposureFactorAshrae160,
  snowBelow_C,
  windOnWall,
} from "./rain/driving-rain.ts";
export {
  obstructionFactor,
  roughnessCoefficient,
  siteFactorIso15927,
  terrainCategories,
  wallFactors,
} from "./rain/wall-factor.ts";
export { colourNames, solarAbsorptanceOf, solarAbsorptances, type ColourName } from "./films/solar-absorptance.ts";
export { terrains, windFactor, type Shelter } from "./films/local-wind.ts";
export { indoorFilm, outdoorConvection_Wm2K, radiativeFilm_Wm2K, vapourFilm_kgm2sPa } from "./films/surface-films.ts";
export { sunAtHour, sunPosition, type SunPosition } from "./sun/sun-position.ts";
export {
  cosIncidence,
  faceIrradiance,
  solarConstant_Wm2,
  type FaceGeometry,
  type FaceIrradiance,
} from "./sun/face-irradiance.ts";
export { overhangMasks, skyView, type Overhang } from "./sun/overhang.ts";
export { longwaveOnFace_Wm2, skyInfrared_Wm2, skyTemperature_C, stefanBoltzmann_Wm2K4 } from "./sun/sky-longwave.ts";
export { diffuseShare, splitGlobal } from "./sun/diffuse-split.ts";
export { wallRain_kgm2 } from "./loads/wall-rain.ts";
export { wallSun_Wm2 } from "./loads/wall-sun.ts";
export {
  houseOf,
  stackPressure_Pa,
  windPressureCoefficient,
  dynamicPressure_Pa,
  roomPressureCoefficient,
} from "./loads/air-pressure.ts";
export { smoothedMeans } from "./loads/load-series.ts";
export {
  ashrae160Excess_Pa,
  ashrae160Moisture_kgday,
  ashrae160SimplifiedRelativeHumidity,
  ashrae160Temperature_C,
  en15026RelativeHumidity,
  en15026Temperature_C,
  iso13788Excess_Pa,
} from "./rooms/room-rules.ts";
export { daysInMonth, firstDayOfMonth, monthNames, monthOfDay, monthlyMeans, stampOfHour } from "./calendar.ts";

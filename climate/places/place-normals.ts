import table from "./normals.json" with { type: "json" };

/** Where a quantity of a place comes from: COMPUTED from an hourly file, SEEN in a published document, MEMORY. */
export interface PlaceFlags {
  readonly temperature: string;
  readonly dewPoint: string;
  readonly sun: string;
  readonly wind: string;
  readonly rain: string;
}

/**
 * Monthly normals of a place, January first.
 *
 * US temperature, dew point, sun, wind, cloud: computed from the place's typical-year file (NREL TMY3, Wilcox and Marion 2008,
 * NREL/TP-581-43156). US rain: NOAA station normals 1981-2010. Canada: CWEC files. The rest as `flags` and `source` say.
 */
export interface PlaceNormals {
  /** Like "burlington-vt". */
  readonly id: string;
  readonly name: string;
  /** State or province; empty elsewhere. */
  readonly region: string;
  readonly country: string;
  /** WMO number of the station. */
  readonly station: string;
  /** County assignment of the 2021 residential code; with "*" a thermal equivalent outside its reach. */
  readonly climateZone: string;
  readonly latitude_deg: number;
  readonly longitude_deg: number;
  readonly elevation_m: number;
  readonly utcOffset_h: number;
  readonly temperature_C: readonly number[];
  readonly dailyMaximum_C: readonly number[];
  readonly dailyMinimum_C: readonly number[];
  readonly dewPoint_C: readonly number[];
  readonly global_kWhm2day: readonly number[];
  readonly wind_ms: readonly number[];
  readonly rain_mm: readonly number[];
  readonly cloudTenths: readonly number[] | null;
  /** Standard deviation of the daily mean about the month's trend [K], and its correlation from day to day; null: not known. */
  readonly dayToDayDeviation_K: readonly number[] | null;
  readonly dayToDayCorrelation: readonly number[] | null;
  readonly flags: PlaceFlags;
  readonly source: string;
}

/** The 67 embedded places. */
export const places: readonly PlaceNormals[] = table;

/** "Burlington, VT". */
export const placeName = (place: PlaceNormals): string => `${place.name}, ${place.region || place.country}`;

/** Rain in a normal year [mm]. */
export const annualRain_mm = (place: PlaceNormals): number => place.rain_mm.reduce((sum, month) => sum + month, 0);

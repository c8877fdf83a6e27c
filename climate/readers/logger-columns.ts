import type { WeatherColumn } from "../weather-year.ts";

interface Conversion {
  readonly factor: number;
  readonly offset: number;
}
const times = (factor: number): Conversion => ({ factor, offset: 0 });

const temperatureUnits: Readonly<Record<string, Conversion>> = {
  c: times(1),
  f: { factor: 5 / 9, offset: (-32 * 5) / 9 },
  k: { factor: 1, offset: -273.15 },
};
const sunUnits: Readonly<Record<string, Conversion>> = {
  "w/m2": times(1),
  "w/m^2": times(1),
  "w/m²": times(1),
  "kw/m2": times(1000),
};

/** Units a column may be written in, in lower case, without "deg", "°" and spaces. Factors are exact or those of SI tables (NIST SP 811). */
const unitsOf: Readonly<Record<WeatherColumn, Readonly<Record<string, Conversion>>>> = {
  temperature_C: temperatureUnits,
  dewPoint_C: temperatureUnits,
  relativeHumidity: {
    "%": times(0.01),
    "%rh": times(0.01),
    percent: times(0.01),
    "-": times(1),
    "1": times(1),
    fraction: times(1),
  },
  pressure_Pa: {
    pa: times(1),
    hpa: times(100),
    mbar: times(100),
    mb: times(100),
    kpa: times(1000),
    inhg: times(3386.389),
    mmhg: times(133.3224),
  },
  skyInfrared_Wm2: sunUnits,
  globalHorizontal_Wm2: sunUnits,
  directNormal_Wm2: sunUnits,
  diffuseHorizontal_Wm2: sunUnits,
  windSpeed_ms: {
    "m/s": times(1),
    ms: times(1),
    "km/h": times(1 / 3.6),
    kph: times(1 / 3.6),
    mph: times(0.44704),
    kn: times(1852 / 3600),
    knots: times(1852 / 3600),
  },
  windDirection_deg: { "": times(1), degrees: times(1), "-": times(1) },
  cloudCover: {
    "%": times(0.01),
    tenths: times(0.1),
    oktas: times(0.125),
    "-": times(1),
    "1": times(1),
    fraction: times(1),
  },
  rain_mm: { mm: times(1), in: times(25.4), inch: times(25.4), inches: times(25.4), cm: times(10), "kg/m2": times(1) },
};

/** Column by the words of its heading; the first rule that fits wins. */
const headingRules: readonly (readonly [RegExp, WeatherColumn])[] = [
  [/dew/, "dewPoint_C"],
  [/hum|^rh\b|\brh\b/, "relativeHumidity"],
  [/wind.*dir|^dir/, "windDirection_deg"],
  [/wind|gust/, "windSpeed_ms"],
  [/rain|precip/, "rain_mm"],
  [/infrared|long.?wave/, "skyInfrared_Wm2"],
  [/diffuse|^dhi\b/, "diffuseHorizontal_Wm2"],
  [/direct|beam|^dni\b/, "directNormal_Wm2"],
  [/global|solar|sun|^ghi\b|radiation|irradiance/, "globalHorizontal_Wm2"],
  [/cloud/, "cloudCover"],
  [/pressure|baro/, "pressure_Pa"],
  [/temp|dry.?bulb|^air$|^t$/, "temperature_C"],
];

export const columnOfHeading = (heading: string): WeatherColumn | null =>
  headingRules.find(([pattern]) => pattern.test(heading.trim().toLowerCase()))?.[1] ?? null;

export const isTimeHeading = (heading: string): boolean =>
  /^(date|time|timestamp|clock|day)\b|date.?time|time.?stamp/i.test(heading.trim());

const plainUnit = (unit: string): string =>
  unit
    .trim()
    .toLowerCase()
    .replace(/^deg(rees?)?\.?\s*(?=[cfk]$)/, "")
    .replace(/^[°º]\s*/, "")
    .replace(/^deg$/, "");

export const conversionOf = (column: WeatherColumn, unit: string): Conversion | null =>
  unitsOf[column][plainUnit(unit)] ?? null;

export const isKnownUnit = (unit: string): boolean =>
  plainUnit(unit) === "" || Object.values(unitsOf).some((units) => plainUnit(unit) in units);

export const unitChoices = (column: WeatherColumn): string => {
  if (column === "temperature_C" || column === "dewPoint_C") return "degC, degF or K";
  return Object.keys(unitsOf[column])
    .filter((unit) => unit !== "" && unit !== "1")
    .join(", ");
};

export type { Conversion };

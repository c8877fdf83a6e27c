/** What decides a climate zone. Degree-days in K d. */
export interface ZoneClimate {
  readonly coolingDegreeDays10: number;
  /** Base 18.3 degC; SI tables print 18. */
  readonly heatingDegreeDays18: number;
  /** Twelve monthly means [degC] and sums of rain [mm], January first. */
  readonly monthlyMean_C: readonly number[];
  readonly monthlyRain_mm: readonly number[];
  readonly southern?: boolean;
}
export type ZoneRules = "2018" | "2021";

/** Thermal zone number. Sources: IRC 2021 and 2024 Table N1101.7.2; IRC 2018 Table N1101.7.2(2); adopted state texts (SEEN). */
export function thermalZone(
  climate: Pick<ZoneClimate, "coolingDegreeDays10" | "heatingDegreeDays18">,
  rules: ZoneRules,
  marine: boolean,
): number | null {
  const { coolingDegreeDays10: cdd, heatingDegreeDays18: hdd } = climate;
  if (hdd > 7000) return 8;
  if (hdd > 5000) return 7;
  if (hdd > 4000) return 6;
  if (rules === "2021") {
    if (cdd > 6000) return 0;
    if (cdd > 5000) return 1;
    if (cdd > 3500) return 2;
    if (hdd > 3000) return 5;
    return hdd > 2000 ? 4 : 3;
  }
  if (hdd > 3000) return 5;
  if (cdd > 5000) return 1;
  if (cdd > 3500) return 2;
  if (marine) return hdd <= 2000 ? 3 : 4;
  return cdd > 2500 ? 3 : 4;
}

const octoberToMarch = new Set([9, 10, 11, 0, 1, 2]);

/** Marine: all four tests of the table (SEEN, same wording 2018 to 2024). */
export function isMarine({ monthlyMean_C: t, monthlyRain_mm: rain, southern }: ZoneClimate): boolean {
  const coldest = Math.min(...t);
  const cold = (month: number): boolean => octoberToMarch.has(month) !== (southern ?? false);
  const wettestCold = Math.max(...rain.filter((_, month) => cold(month)));
  const driestWarm = Math.min(...rain.filter((_, month) => !cold(month)));
  return (
    coldest > -3 &&
    coldest < 18 &&
    Math.max(...t) < 22 &&
    t.filter((mean) => mean > 10).length >= 4 &&
    wettestCold >= 3 * driestWarm
  );
}

/** Dry: by annual rain and mean temperature; from 2021 in three cases by the share of rain in the high-sun half-year (the outer two formulas MEMORY). */
export function isDry({ monthlyMean_C: t, monthlyRain_mm: rain, southern }: ZoneClimate, rules: ZoneRules): boolean {
  const mean = t.reduce((sum, value) => sum + value, 0) / 12;
  const year = rain.reduce((sum, value) => sum + value, 0);
  const highSun = rain.reduce(
    (sum, value, month) => sum + ((month >= 3 && month <= 8) !== (southern ?? false) ? value : 0),
    0,
  );
  const share = year > 0 ? highSun / year : 0;
  const offset = rules === "2018" ? 7 : share >= 0.7 ? 14 : share <= 0.3 ? 0 : 7;
  return year < 20 * (mean + offset);
}

/** The zone a weather record falls in. Advice only: the county table of the code rules. Null where the record fits no row. */
export function climateZone(climate: ZoneClimate, rules: ZoneRules = "2021"): string | null {
  const marine = isMarine(climate);
  const number = thermalZone(climate, rules, marine);
  if (number === null) return null;
  if (number >= 7) return String(number);
  const letter = marine && number >= 3 && number <= 5 ? "C" : isDry(climate, rules) ? "B" : "A";
  return `${number}${letter}`;
}

/** Indoor conditions of the standards, each a function of an outdoor mean temperature. */

const ramp = (x: number, x0: number, x1: number, y0: number, y1: number): number =>
  y0 + (y1 - y0) * Math.min(1, Math.max(0, (x - x0) / (x1 - x0)));

/**
 * Indoor temperature of EN 15026:2007 annex C [degC]: 20 up to an outdoor daily mean of 10 degC, 25 from 20 degC (MEMORY).
 */
export const en15026Temperature_C = (outdoorDailyMean_C: number): number => ramp(outdoorDailyMean_C, 10, 20, 20, 25);

/** Indoor relative humidity of EN 15026:2007 annex C, 0..1; high occupancy adds 10 % (MEMORY). */
export const en15026RelativeHumidity = (outdoorDailyMean_C: number, load: "normal" | "high"): number =>
  ramp(outdoorDailyMean_C, -10, 20, 0.3, 0.6) + (load === "high" ? 0.1 : 0);

/**
 * Indoor temperature of ANSI/ASHRAE 160-2016, section 4.3.1 [degC] (MEMORY): heated to 21.1; with cooling not above 23.9;
 * without it the 24-h outdoor mean plus 2.8 K once that mean passes 18.3.
 */
export function ashrae160Temperature_C(outdoor24h_C: number, cooled: boolean): number {
  const free = outdoor24h_C + 2.8;
  return cooled ? Math.min(23.9, Math.max(21.1, free)) : Math.max(21.1, free);
}

/** Indoor relative humidity, simplified method of ANSI/ASHRAE 160-2016: 40 % to 70 % from -10 to 20 degC (MEMORY). */
export const ashrae160SimplifiedRelativeHumidity = (outdoor24h_C: number): number =>
  ramp(outdoor24h_C, -10, 20, 0.4, 0.7);

/** Moisture made in a dwelling [kg/day] by bedrooms: 8, 12, 14, 15, then 1 more each. Source: ANSI/ASHRAE 160-2016 (MEMORY). */
export function ashrae160Moisture_kgday(bedrooms: number): number {
  return bedrooms <= 1 ? 8 : bedrooms === 2 ? 12 : bedrooms === 3 ? 14 : 15 + (bedrooms - 4);
}

/** c in p_i = p_o + c m/Q [Pa m3/kg]. Source: ANSI/ASHRAE 160-2016, intermediate method (MEMORY). */
const moistureToPressure_Pam3kg = 1.36e5;

/** Vapour pressure excess indoors, intermediate method of ANSI/ASHRAE 160-2016, before the cap at 70 % [Pa]. */
export function ashrae160Excess_Pa(moisture_kgday: number, volume_m3: number, airChangesPerHour: number): number {
  return (moistureToPressure_Pam3kg * (moisture_kgday / 86_400)) / ((volume_m3 * airChangesPerHour) / 3600);
}

/** Cap of the intermediate method, 0..1. Source: ANSI/ASHRAE 160-2016 (MEMORY). */
export const ashrae160Cap = 0.7;

/** Upper limits of the ISO 13788 humidity classes at or below 0 degC [Pa]; class 5 has none in the standard, so one step more. */
const classExcess_Pa = [270, 540, 810, 1080, 1350] as const;

/**
 * Upper vapour-pressure excess of an ISO 13788 humidity class [Pa], falling to 0 at an outdoor monthly mean of 20 degC.
 * @param humidityClass  1 storage ... 5 laundry, pool
 * Source: ISO 13788:2012 annex A (MEMORY).
 */
export function iso13788Excess_Pa(outdoorMonthlyMean_C: number, humidityClass: number): number {
  return ramp(outdoorMonthlyMean_C, 0, 20, classExcess_Pa[humidityClass - 1] ?? 1350, 0);
}

/** Outdoor daily means between which the seasonal room goes from winter to summer [degC]: our choice, heating about off at 20. */
export const seasonalFrom_C = 0;
export const seasonalTo_C = 20;

export const seasonalValue = (outdoorDailyMean_C: number, winter: number, summer: number): number =>
  ramp(outdoorDailyMean_C, seasonalFrom_C, seasonalTo_C, winter, summer);

import { saturationPressure_Pa, saturationPressureOverIce_Pa } from "./saturation.ts";

/** Molar mass of water over that of dry air. Source: ASHRAE Handbook Fundamentals, psychrometrics chapter. */
export const massRatioWaterToAir = 0.621945;
/** Gas constant of water vapour [J/(kg K)]. Source: R/M with 8.314462618 J/(mol K) and 18.01528 g/mol. */
export const gasConstantVapour_JkgK = 461.52;

/** Relative humidity 0..1 over liquid water. */
export function relativeHumidity(vapourPressure_Pa: number, temperature_C: number): number {
  return vapourPressure_Pa / saturationPressure_Pa(temperature_C);
}

/** Vapour pressure [Pa] from relative humidity 0..1 over liquid water. */
export function vapourPressure_Pa(relativeHumidity: number, temperature_C: number): number {
  return relativeHumidity * saturationPressure_Pa(temperature_C);
}

/** Humidity ratio [kg of water per kg of dry air]; vapour pressure below the barometric pressure. */
export function humidityRatio(vapourPressure_Pa: number, pressure_Pa: number): number {
  return (massRatioWaterToAir * vapourPressure_Pa) / (pressure_Pa - vapourPressure_Pa);
}

/** Vapour pressure [Pa] of a humidity ratio [kg/kg]. */
export function vapourPressureOfHumidityRatio_Pa(ratio: number, pressure_Pa: number): number {
  return (pressure_Pa * ratio) / (massRatioWaterToAir + ratio);
}

/** Enthalpy of moist air [J per kg of dry air], zero for dry air at 0 degC. Source: ASHRAE Handbook Fundamentals. */
export function enthalpy_Jkg(temperature_C: number, ratio: number): number {
  return 1006 * temperature_C + ratio * (2_501_000 + 1860 * temperature_C);
}

/** Density of moist air [kg/m3] as a mixture of ideal gases. Gas constant of dry air 287.042 J/(kg K) (ASHRAE Fundamentals). */
export function airDensity_kgm3(temperature_C: number, vapourPressure_Pa: number, pressure_Pa: number): number {
  const T = temperature_C + 273.15;
  return (pressure_Pa - vapourPressure_Pa) / (287.042 * T) + vapourPressure_Pa / (gasConstantVapour_JkgK * T);
}

/** Barometric pressure of the standard atmosphere [Pa], -500..11000 m. Source: ASHRAE Handbook Fundamentals. */
export function standardPressure_Pa(elevation_m: number): number {
  return 101325 * (1 - 2.25577e-5 * elevation_m) ** 5.2559;
}

/**
 * Thermodynamic wet-bulb temperature [degC].
 *
 * At 0 degC the balances over ice and over water do not meet: for a narrow band of dry air both an iced bulb a little below and a wet
 * one a little above 0 satisfy theirs. The iced one is taken.
 * @param temperature_C      -60..80
 * @param vapourPressure_Pa  up to saturation
 * Source: ASHRAE Handbook Fundamentals, psychrometrics chapter, the two energy balances over water and ice.
 */
export function wetBulb_C(temperature_C: number, vapourPressure_Pa: number, pressure_Pa: number): number {
  const ratio = humidityRatio(vapourPressure_Pa, pressure_Pa);
  const iced = temperature_C <= 0 || ratioOverIce(temperature_C, 0, pressure_Pa) >= ratio;
  const balance = iced ? ratioOverIce : ratioOverWater;
  let low = iced ? temperature_C - 60 : 0;
  let high = iced ? Math.min(0, temperature_C) : temperature_C;
  // Either balance rises with the bulb's temperature, so halving cannot fail.
  for (let step = 0; step < 60 && high - low > 1e-9; step++) {
    const middle = 0.5 * (low + high);
    if (balance(temperature_C, middle, pressure_Pa) < ratio) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high);
}

function ratioOverWater(temperature_C: number, wetBulb: number, pressure_Pa: number): number {
  const saturated = humidityRatio(saturationPressure_Pa(wetBulb), pressure_Pa);
  return (
    ((2501 - 2.326 * wetBulb) * saturated - 1.006 * (temperature_C - wetBulb)) /
    (2501 + 1.86 * temperature_C - 4.186 * wetBulb)
  );
}

function ratioOverIce(temperature_C: number, wetBulb: number, pressure_Pa: number): number {
  const saturated = humidityRatio(saturationPressureOverIce_Pa(wetBulb), pressure_Pa);
  return (
    ((2830 - 0.24 * wetBulb) * saturated - 1.006 * (temperature_C - wetBulb)) /
    (2830 + 1.86 * temperature_C - 2.1 * wetBulb)
  );
}

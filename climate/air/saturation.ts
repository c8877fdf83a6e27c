/** 0 degC [K]. */
export const zeroCelsius_K = 273.15;

/**
 * Saturation vapour pressure over liquid water [Pa], also below freezing, as weather stations report humidity.
 * @param temperature_C  -100..200
 * Source: Hyland and Wexler 1983, as in ASHRAE Handbook Fundamentals, psychrometrics chapter (coefficients C8 to C13).
 */
export function saturationPressure_Pa(temperature_C: number): number {
  const T = temperature_C + zeroCelsius_K;
  return Math.exp(
    -5.8002206e3 / T +
      1.3914993 +
      T * (-4.8640239e-2 + T * (4.1764768e-5 - 1.4452093e-8 * T)) +
      6.5459673 * Math.log(T),
  );
}

/**
 * Saturation vapour pressure over ice [Pa].
 * @param temperature_C  -100..0.01
 * Source: Hyland and Wexler 1983, as in ASHRAE Handbook Fundamentals (coefficients C1 to C7).
 */
export function saturationPressureOverIce_Pa(temperature_C: number): number {
  const T = temperature_C + zeroCelsius_K;
  return Math.exp(
    -5.6745359e3 / T +
      6.3925247 +
      T * (-9.677843e-3 + T * (6.2215701e-7 + T * (2.0747825e-9 - 9.484024e-13 * T))) +
      4.1635019 * Math.log(T),
  );
}

/**
 * Saturation pressure in the form of ISO 13788: over water from 0 degC, over ice below [Pa].
 * Source: ISO 13788 annex on saturation pressure (coefficients from MEMORY; 260, 611 and 2337 Pa at -10, 0, 20 degC agree).
 */
export function saturationPressureIso13788_Pa(temperature_C: number): number {
  return temperature_C >= 0
    ? 610.5 * Math.exp((17.269 * temperature_C) / (237.3 + temperature_C))
    : 610.5 * Math.exp((21.875 * temperature_C) / (265.5 + temperature_C));
}

/** Dew point (frost point below 0 degC) by the inverse of the ISO 13788 form [degC]; pressure > 0. */
export function dewPointIso13788_C(vapourPressure_Pa: number): number {
  const l = Math.log(vapourPressure_Pa / 610.5);
  return l >= 0 ? (237.3 * l) / (17.269 - l) : (265.5 * l) / (21.875 - l);
}

/**
 * Dew point over liquid water [degC]: the inverse of `saturationPressure_Pa` to 1e-10 K.
 * @param vapourPressure_Pa  > 0; about 1e-3 to 1e6
 */
export function dewPoint_C(vapourPressure_Pa: number): number {
  return invert(vapourPressure_Pa, saturationPressure_Pa, dewPointIso13788_C(vapourPressure_Pa));
}

/** Frost point over ice [degC]; vapour pressure in 0..611.2 Pa. */
export function frostPoint_C(vapourPressure_Pa: number): number {
  return invert(vapourPressure_Pa, saturationPressureOverIce_Pa, dewPointIso13788_C(vapourPressure_Pa));
}

/** Newton on ln p, whose slope (Clausius-Clapeyron) hardly bends, so three or four steps do. */
function invert(pressure_Pa: number, saturation: (temperature_C: number) => number, first_C: number): number {
  if (!(pressure_Pa > 0)) throw new RangeError(`vapour pressure must be > 0 Pa, got ${pressure_Pa}`);
  const target = Math.log(pressure_Pa);
  let t = Math.min(Math.max(first_C, -150), 300);
  for (let step = 0; step < 30; step++) {
    const here = Math.log(saturation(t));
    const slope = (Math.log(saturation(t + 0.01)) - here) / 0.01;
    const change = (target - here) / slope;
    t = Math.max(t + change, -200);
    if (Math.abs(change) < 1e-10) break;
  }
  return t;
}

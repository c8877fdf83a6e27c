import { dewPoint_C, saturationPressure_Pa } from "./saturation-pressure.ts";

/** The first look at exterior insulation: resistance and dew point only. */
export interface RatioRule {
  /** Share of the resistance that must lie outside of the plane; 0 where the weather itself is above the dew point. */
  readonly leastRatio: number;
  readonly ratio: number;
  readonly plane_C: number;
  readonly roomDewPoint_C: number;
  /** plane_C - roomDewPoint_C [K]. */
  readonly margin_K: number;
  readonly holds: boolean;
  /** Coldest outdoor mean at which this wall's plane just meets the dew point [degC]. */
  readonly breakEvenOutdoor_C: number;
  /** Resistance outside of the plane that would just do, for the same resistance inside [m2 K/W]; Infinity if none does. */
  readonly leastOutside_m2KW: number;
}

/**
 * Keeps the condensing plane at or above the room's dew point in the coldest season's mean:
 * R_out / R_total >= (T_dew - T_out) / (T_in - T_out). Ignores storage, drying, sun and air leakage.
 *
 * @param outside_m2KW resistance outboard of the plane [m2 K/W], >= 0
 * @param inside_m2KW resistance inboard of it [m2 K/W], >= 0; nominal or with films and boards, as the caller says
 * @param indoor temperature [degC] and relative humidity [0..1]
 * @param outdoorMean_C mean of the coldest season [degC], below the room's temperature
 * Source: textbook steady state; practice asks for 21 degC, 35 % and the coldest three months (common practice, no source).
 * Checked: tests/solver/physics/steady/ratio-rule.test.ts, to the printed digits.
 */
export function ratioRule(
  outside_m2KW: number,
  inside_m2KW: number,
  indoor: { readonly temperature_C: number; readonly relativeHumidity: number },
  outdoorMean_C: number,
): RatioRule {
  const total_m2KW = outside_m2KW + inside_m2KW;
  if (!(outside_m2KW >= 0 && inside_m2KW >= 0 && total_m2KW > 0)) {
    throw new RangeError(`resistances must be >= 0 and not both 0, got ${outside_m2KW} and ${inside_m2KW}`);
  }
  if (!(outdoorMean_C < indoor.temperature_C)) {
    throw new RangeError(`outdoorMean_C must be below the room's ${indoor.temperature_C}, got ${outdoorMean_C}`);
  }
  const ratio = outside_m2KW / total_m2KW;
  const roomDewPoint_C = dewPoint_C(indoor.relativeHumidity * saturationPressure_Pa(indoor.temperature_C));
  const step_K = indoor.temperature_C - outdoorMean_C;
  const plane_C = outdoorMean_C + step_K * ratio;
  const leastRatio = Math.max(0, (roomDewPoint_C - outdoorMean_C) / step_K);
  return {
    leastRatio,
    ratio,
    plane_C,
    roomDewPoint_C,
    margin_K: plane_C - roomDewPoint_C,
    holds: plane_C >= roomDewPoint_C,
    breakEvenOutdoor_C: ratio < 1 ? (roomDewPoint_C - ratio * indoor.temperature_C) / (1 - ratio) : -Infinity,
    leastOutside_m2KW: leastRatio < 1 ? (inside_m2KW * leastRatio) / (1 - leastRatio) : Infinity,
  };
}

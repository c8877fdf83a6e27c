const degree = Math.PI / 180;

/** What a project says of the house's air tightness; only the geometry and the fan matter here. */
export interface AirSetting {
  readonly ach50: number;
  readonly volume_m3?: number | undefined;
  readonly envelopeArea_m2?: number | undefined;
  readonly storeys?: number | undefined;
  readonly height_m?: number | undefined;
  /** Positive: fans push the house outward [Pa]. */
  readonly fanPressure_Pa?: number | undefined;
}

/** Where nothing is said: two storeys of 2.7 m. Common practice, no source. */
const usualStoreys = 2;
const storeyHeight_m = 2.7;

export interface House {
  readonly height_m: number;
  /** Height above the neutral plane of the part of wall looked at [m]. */
  readonly aboveNeutral_m: number;
  readonly fanPressure_Pa: number;
}

/**
 * The house as the pressures see it. Leaks are even, so the neutral plane lies at mid-height; the wall is looked at
 * in the middle of the top storey, or a quarter of the height above the plane where that is higher (one storey):
 * there winter stack pushes indoor air outward, so it is the careful place for exfiltration.
 */
export function houseOf(air: AirSetting | undefined): House {
  const storeys =
    air?.storeys ?? (air?.height_m ? Math.max(1, Math.round(air.height_m / storeyHeight_m)) : usualStoreys);
  const height_m = air?.height_m ?? storeys * storeyHeight_m;
  return {
    height_m,
    aboveNeutral_m: Math.max(height_m / 4, height_m / 2 - height_m / (2 * storeys)),
    fanPressure_Pa: air?.fanPressure_Pa ?? 0,
  };
}

/** Air density times temperature [kg K/m3] at sea level: 1.29 kg/m3 at 0 degC. */
const densityTimesTemperature_kgKm3 = 1.29 * 273.15;
const gravity_ms2 = 9.80665;

/**
 * Stack pressure between two heights [Pa]: rho0 T0 g h (1/T_outside - 1/T_inside). Positive above the neutral plane when the
 * room is warmer: indoor air pushes outward. Source: ASHRAE Handbook Fundamentals, ventilation and infiltration chapter.
 */
export function stackPressure_Pa(height_m: number, inside_C: number, outside_C: number): number {
  return densityTimesTemperature_kgKm3 * gravity_ms2 * height_m * (1 / (outside_C + 273.15) - 1 / (inside_C + 273.15));
}

/** Pressure coefficient of a wall of a low house met square by the wind. Source: Swami and Chandra 1988 (MEMORY). */
const squareOn = 0.6;

/**
 * Wind pressure coefficient, averaged over a wall of a low-rise house of square plan [-].
 * @param fromNormal_deg  angle between wind and wall normal
 * Source: Swami and Chandra 1988, ASHRAE Transactions 94(1), normalised low-rise curve with side ratio 1 (MEMORY).
 */
export function windPressureCoefficient(fromNormal_deg: number): number {
  const a = Math.abs(((((fromNormal_deg + 180) % 360) + 360) % 360) - 180) * degree;
  return (
    squareOn *
    Math.log(
      1.248 -
        0.703 * Math.sin(a / 2) -
        1.175 * Math.sin(a) ** 2 +
        0.769 * Math.cos(a / 2) +
        0.717 * Math.cos(a / 2) ** 2,
    )
  );
}

/** Mean coefficient of the four walls: the share of wind pressure that the room takes on when leaks are even and flow linear. */
export function roomPressureCoefficient(fromNormal_deg: number): number {
  let sum = 0;
  for (let side = 0; side < 4; side++) sum += windPressureCoefficient(fromNormal_deg + 90 * side);
  return sum / 4;
}

/** Dynamic pressure of wind [Pa]; density from temperature. */
export function dynamicPressure_Pa(windSpeed_ms: number, outside_C: number): number {
  return (0.5 * densityTimesTemperature_kgKm3 * windSpeed_ms * windSpeed_ms) / (outside_C + 273.15);
}

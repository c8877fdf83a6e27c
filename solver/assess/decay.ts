/** Where the model speaks: humid air between freezing and 30 degC; warmer wood up to 40 degC is taken as 30. */
const leastHumidity_percent = 95;
const warmest_C = 30;
const tooHot_C = 40;
/** Two years in which an activated fungus falls back [h]. */
const recovery_h = 17520;

/** Hours at constant conditions until decay begins; Infinity where it does not. Humidity in %. */
export function decayActivation_h(temperature_C: number, humidity_percent: number): number {
  if (!(temperature_C > 0 && temperature_C <= tooHot_C && humidity_percent >= leastHumidity_percent)) return Infinity;
  const t = Math.min(temperature_C, warmest_C);
  const rh = Math.min(humidity_percent, 100);
  const slow = 2.3 * t + 0.035 * rh - 0.024 * t * rh;
  const fast = -42.9 + 0.14 * t + 0.45 * rh;
  return fast > 0 && slow > 0 ? (720 * slow) / fast : Infinity;
}

/** Dry mass lost per hour once decay is active [%/h], >= 0. Humidity in %. */
export function decayLoss_percentPerHour(temperature_C: number, humidity_percent: number): number {
  if (!(temperature_C > 0 && temperature_C <= tooHot_C)) return 0;
  const t = Math.min(temperature_C, warmest_C);
  return Math.max(0, -5.96e-2 + 1.96e-4 * t + 6.25e-4 * Math.min(humidity_percent, 100));
}

export interface DecayCourse {
  /** Highest activation, 1 when mass begins to go. */
  readonly activation: number;
  readonly hourOfActivation: number;
  readonly massLoss_percent: number;
}

/**
 * Decay of pine sapwood from an hourly course.
 *
 * @param relativeHumidity 0..1
 * Source: Viitanen et al. 2010 (MEMORY). National limit curves for decay are under revision, so none is built in.
 * Checked: tests/solver/assess/decay.test.ts, to the printed digits.
 */
export function decay(temperature_C: ArrayLike<number>, relativeHumidity: ArrayLike<number>): DecayCourse {
  let alpha = 0;
  let activation = 0;
  let hourOfActivation = 0;
  let massLoss_percent = 0;
  for (let hour = 0; hour < temperature_C.length; hour += 1) {
    const humidity = Math.min(relativeHumidity[hour]! * 100, 100);
    const t = temperature_C[hour]!;
    const needed_h = decayActivation_h(t, humidity);
    if (Number.isFinite(needed_h)) {
      if (alpha >= 1) massLoss_percent += decayLoss_percentPerHour(t, humidity);
      alpha = Math.min(1, alpha + 1 / needed_h);
    } else {
      alpha = Math.max(0, alpha - 1 / recovery_h);
    }
    if (alpha > activation) {
      activation = alpha;
      hourOfActivation = hour;
    }
  }
  return { activation, hourOfActivation, massLoss_percent };
}

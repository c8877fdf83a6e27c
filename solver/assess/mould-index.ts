/** How readily a surface grows mould; which material sits where is a judgement that the user may change. */
export type MouldClass = "verySensitive" | "sensitive" | "mediumResistant" | "resistant";

export interface MouldCoefficients {
  /** Growth factor below and from index 1 on. */
  readonly k1Below1: number;
  readonly k1From1: number;
  /** Highest index: a + b x - c x^2. */
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly leastHumidity_percent: number;
  /** Timber species term of the response time. */
  readonly w: number;
}

/**
 * Source: Ojanen et al. 2010, after Hukka and Viitanen 1999 (k1Below1, a, b, c, leastHumidity SEEN in a secondary restatement;
 * k1From1 and w MEMORY).
 */
export const mouldCoefficients: Readonly<Record<MouldClass, MouldCoefficients>> = {
  verySensitive: { k1Below1: 1, k1From1: 2, a: 1, b: 7, c: 2, leastHumidity_percent: 80, w: 0 },
  sensitive: { k1Below1: 0.578, k1From1: 0.386, a: 0.3, b: 6, c: 1, leastHumidity_percent: 80, w: 1 },
  mediumResistant: { k1Below1: 0.072, k1From1: 0.097, a: 0, b: 5, c: 1.5, leastHumidity_percent: 85, w: 1 },
  resistant: { k1Below1: 0.033, k1From1: 0.014, a: 0, b: 3, c: 1, leastHumidity_percent: 85, w: 1 },
};

/** Visible growth. Source: ANSI/ASHRAE 160-2016 (that the index replaced the humidity rule SEEN; limit 3 MEMORY). */
export const visibleMouldIndex = 3;
/** Share of pine's decline when nothing is known of the material. Source: ANSI/ASHRAE 160 (MEMORY). */
export const cautiousDecline = 0.1;

/** Humidity below which nothing grows [%]; 100 at or below freezing. Source: Hukka and Viitanen 1999 (SEEN, secondary). */
export function criticalHumidity_percent(temperature_C: number, least_percent: number): number {
  if (temperature_C <= 0) return 100;
  if (temperature_C > 20) return least_percent;
  const t = temperature_C;
  return Math.max(-0.00267 * t * t * t + 0.16 * t * t - 3.13 * t + 100, least_percent);
}

/** Weeks to the first microscopic growth. Source: Hukka and Viitanen 1999 (MEMORY). T > 0 degC, humidity in %. */
export function weeksToFirstGrowth(temperature_C: number, humidity_percent: number, w = 0, surfaceQuality = 0): number {
  return Math.exp(
    -0.68 * Math.log(temperature_C) - 13.9 * Math.log(humidity_percent) + 0.14 * w - 0.33 * surfaceQuality + 66.02,
  );
}

/** Weeks to visible growth on pine. Source: Hukka and Viitanen 1999 (MEMORY). */
export function weeksToVisibleGrowth(temperature_C: number, humidity_percent: number, w = 0): number {
  return Math.exp(-0.74 * Math.log(temperature_C) - 12.72 * Math.log(humidity_percent) + 0.06 * w + 61.5);
}

export interface MouldCourse {
  /** Index at the end of each hour. */
  readonly index: Float64Array;
  readonly max: number;
  readonly hourOfMax: number;
  readonly end: number;
  /** Hours until the index first reaches 1 and 3; null if never. */
  readonly hoursTo1: number | null;
  readonly hoursTo3: number | null;
}

const hoursPerWeek = 168;
/** Loss per hour in the first six hours of a dry spell, none until 24, then slower (Hukka and Viitanen 1999, MEMORY). */
const decline = { first_perHour: 0.00133, firstUntil_h: 6, thenFrom_h: 24, then_perHour: 0.000667 };

/**
 * Mould index at a surface from an hourly course, in explicit steps of one hour.
 *
 * @param temperature_C, relativeHumidity (0..1) hourly, of equal length
 * @param declineFactor share of pine's decline that this material shows, 0..1
 * Source: Hukka and Viitanen 1999; Ojanen et al. 2010; as used by ANSI/ASHRAE 160-2016 (flags at the coefficients).
 * Checked: tests/solver/assess/mould-index.test.ts, to the printed digits.
 */
export function mouldIndex(
  temperature_C: ArrayLike<number>,
  relativeHumidity: ArrayLike<number>,
  coefficients: MouldCoefficients,
  declineFactor = cautiousDecline,
  startIndex = 0,
): MouldCourse {
  const hours = temperature_C.length;
  const index = new Float64Array(hours);
  let m = startIndex;
  let dryHours = 0;
  let max = startIndex;
  let hourOfMax = 0;
  let hoursTo1: number | null = null;
  let hoursTo3: number | null = null;
  for (let hour = 0; hour < hours; hour += 1) {
    const t = temperature_C[hour]!;
    const humidity = Math.min(relativeHumidity[hour]! * 100, 100);
    const critical = criticalHumidity_percent(t, coefficients.leastHumidity_percent);
    // A hair above freezing the critical humidity rounds to 100 %, and nothing is left between it and saturation.
    if (t > 0 && t <= 50 && humidity >= critical && critical < 100) {
      const x = (critical - humidity) / (critical - 100);
      const highest = coefficients.a + coefficients.b * x - coefficients.c * x * x;
      const k1 = m < 1 ? coefficients.k1Below1 : coefficients.k1From1;
      const k2 = Math.max(1 - Math.exp(2.3 * (m - highest)), 0);
      m += (k1 * k2) / (hoursPerWeek * weeksToFirstGrowth(t, humidity, coefficients.w));
      dryHours = 0;
    } else {
      dryHours += 1;
      const loss =
        dryHours <= decline.firstUntil_h
          ? decline.first_perHour
          : dryHours > decline.thenFrom_h
            ? decline.then_perHour
            : 0;
      m = Math.max(0, m - loss * declineFactor);
    }
    index[hour] = m;
    if (m > max) {
      max = m;
      hourOfMax = hour;
    }
    if (hoursTo1 === null && m >= 1) hoursTo1 = hour + 1;
    if (hoursTo3 === null && m >= visibleMouldIndex) hoursTo3 = hour + 1;
  }
  return { index, max, hourOfMax, end: m, hoursTo1, hoursTo3 };
}

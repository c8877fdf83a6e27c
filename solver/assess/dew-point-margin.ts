export interface DewPointMargin {
  /** Month with the lowest mean temperature of the plane: 0..11 and its means. */
  readonly coldestMonth: number;
  readonly coldestMonth_C: number;
  readonly coldestMonthDewPoint_C: number;
  /** Plane less dew point, means of that month [K]. */
  readonly coldestMonthMargin_K: number;
  /** Smallest daily mean of plane less dew point [K], and the first hour of that day. */
  readonly worstDayMargin_K: number;
  readonly worstDay: number;
  /** Hours in which the plane is below the room's dew point: air from the room would be saturated there. */
  readonly hoursBelow: number;
}

/**
 * How far a plane stays above the dew point of the room's air.
 *
 * @param monthOf month 0..11 of an hour
 * Months with fewer than 20 days in the course are left out.
 */
export function dewPointMargin(
  plane_C: ArrayLike<number>,
  roomDewPoint_C: ArrayLike<number>,
  monthOf: (hour: number) => number,
): DewPointMargin {
  const sums = Array.from({ length: 12 }, () => ({ plane: 0, dew: 0, hours: 0 }));
  let hoursBelow = 0;
  let worstDayMargin_K = Infinity;
  let worstDay = 0;
  let dayMargin = 0;
  for (let hour = 0; hour < plane_C.length; hour += 1) {
    const margin = plane_C[hour]! - roomDewPoint_C[hour]!;
    const month = sums[monthOf(hour)]!;
    month.plane += plane_C[hour]!;
    month.dew += roomDewPoint_C[hour]!;
    month.hours += 1;
    if (margin < 0) hoursBelow += 1;
    dayMargin += margin;
    if (hour % 24 === 23) {
      if (dayMargin / 24 < worstDayMargin_K) {
        worstDayMargin_K = dayMargin / 24;
        worstDay = hour - 23;
      }
      dayMargin = 0;
    }
  }
  const whole = sums.map((month, index) => ({ ...month, index })).filter((month) => month.hours >= 480);
  const coldest = whole.reduce<(typeof whole)[number] | null>(
    (best, month) => (best === null || month.plane / month.hours < best.plane / best.hours ? month : best),
    null,
  );
  return {
    coldestMonth: coldest?.index ?? 0,
    coldestMonth_C: coldest ? coldest.plane / coldest.hours : NaN,
    coldestMonthDewPoint_C: coldest ? coldest.dew / coldest.hours : NaN,
    coldestMonthMargin_K: coldest ? (coldest.plane - coldest.dew) / coldest.hours : NaN,
    worstDayMargin_K,
    worstDay,
    hoursBelow,
  };
}

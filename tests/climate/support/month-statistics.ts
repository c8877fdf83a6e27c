import {
  daysInMonth,
  firstDayOfMonth,
  monthlyMeans,
  saturationPressure_Pa,
  wallSun_Wm2,
  type WeatherYear,
} from "../../../climate/index.ts";

/** The twelve monthly figures that the synthetic years are held against. Sums in kWh/m2. */
export function monthStatistics(year: WeatherYear): Record<string, number[]> {
  const sums = (hourly: Float64Array): number[] =>
    monthlyMeans(hourly).map((mean, k) => (mean * daysInMonth[k]! * 24) / 1000);
  const wall = (azimuth_deg: number): number[] =>
    sums(wallSun_Wm2(year, { azimuth_deg, tilt_deg: 90, groundReflectance: 0.2 }));
  const rh = year.relativeHumidity.map((share) => 100 * share);
  const profile = (hourly: Float64Array, month: number): number[] => {
    const mean = new Array<number>(24).fill(0);
    const from = firstDayOfMonth[month]! * 24;
    const days = daysInMonth[month]!;
    for (let k = 0; k < days * 24; k++) mean[k % 24]! += hourly[from + k]! / days;
    return mean;
  };
  const range = (month: number): number => {
    let sum = 0;
    for (let day = firstDayOfMonth[month]!; day < firstDayOfMonth[month]! + daysInMonth[month]!; day++) {
      const hours = year.temperature_C.subarray(day * 24, day * 24 + 24);
      sum += Math.max(...hours) - Math.min(...hours);
    }
    return sum / daysInMonth[month]!;
  };
  const byMonth = (value: (month: number) => number): number[] =>
    Array.from({ length: 12 }, (_, month) => value(month));
  return {
    T: monthlyMeans(year.temperature_C),
    Td: monthlyMeans(year.dewPoint_C),
    RH: monthlyMeans(rh),
    pv: monthlyMeans(year.dewPoint_C.map((dew) => saturationPressure_Pa(dew))),
    GHI: sums(year.globalHorizontal_Wm2),
    DHI: sums(year.diffuseHorizontal_Wm2),
    DNI: sums(year.directNormal_Wm2),
    N: wall(0),
    E: wall(90),
    S: wall(180),
    W: wall(270),
    IR: monthlyMeans(year.skyInfrared_Wm2),
    WS: monthlyMeans(year.windSpeed_ms),
    range: byMonth(range),
    prof_range: byMonth(
      (month) => Math.max(...profile(year.temperature_C, month)) - Math.min(...profile(year.temperature_C, month)),
    ),
    RHmin: byMonth((month) => Math.min(...profile(rh, month))),
    RHmax: byMonth((month) => Math.max(...profile(rh, month))),
  };
}

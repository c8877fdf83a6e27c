const degree = Math.PI / 180;

/** Sun of one day in the recipe's own series. Enough here: the year is invented, only its statistics count. */
export interface SpencerDay {
  readonly declination: number;
  readonly equationOfTime_h: number;
  readonly distanceFactor: number;
}

/** @param dayNumber  1..365. Source: Spencer 1971, Search 2(5), Fourier series of the sun's position. */
export function spencerDay(dayNumber: number): SpencerDay {
  const g = (2 * Math.PI * (dayNumber - 1)) / 365;
  const [c1, s1, c2, s2] = [Math.cos(g), Math.sin(g), Math.cos(2 * g), Math.sin(2 * g)];
  return {
    declination:
      0.006918 -
      0.399912 * c1 +
      0.070257 * s1 -
      0.006758 * c2 +
      0.000907 * s2 -
      0.002697 * Math.cos(3 * g) +
      0.00148 * Math.sin(3 * g),
    equationOfTime_h: (229.18 * (0.000075 + 0.001868 * c1 - 0.032077 * s1 - 0.014615 * c2 - 0.04089 * s2)) / 60,
    distanceFactor: 1.00011 + 0.034221 * c1 + 0.00128 * s1 + 0.000719 * c2 + 0.000077 * s2,
  };
}

export interface SkyOfYear {
  /** Solar time minus standard time by day [h]. */
  readonly solarShift_h: Float64Array;
  /** Hour angle of sunset [rad], 0 in polar night, pi in polar day. */
  readonly sunset: Float64Array;
  /** Mean over each hour of max(0, cos z). */
  readonly cosZenith: Float64Array;
  /** Horizontal irradiance outside the atmosphere, mean over each hour [W/m2]. */
  readonly outside_Wm2: Float64Array;
  readonly outsideNormal_Wm2: Float64Array;
}

/** Steps within an hour for its mean. */
const instants = 6;

export function skyOfYear(latitude_deg: number, longitude_deg: number, utcOffset_h: number): SkyOfYear {
  const days = Array.from({ length: 365 }, (_, day) => spencerDay(day + 1));
  const latitude = latitude_deg * degree;
  const solarShift_h = Float64Array.from(days, (day) => day.equationOfTime_h + (longitude_deg - 15 * utcOffset_h) / 15);
  const sunset = Float64Array.from(days, ({ declination }) =>
    Math.acos(Math.min(1, Math.max(-1, -Math.tan(latitude) * Math.tan(declination)))),
  );
  const cosZenith = new Float64Array(8760);
  const outside_Wm2 = new Float64Array(8760);
  const outsideNormal_Wm2 = new Float64Array(8760);
  for (let k = 0; k < 8760; k++) {
    const day = Math.floor(k / 24);
    const { declination, distanceFactor } = days[day]!;
    let sum = 0;
    for (let i = 0; i < instants; i++) {
      const angle = ((k % 24) + (i + 0.5) / instants + solarShift_h[day]! - 12) * 15 * degree;
      sum += Math.max(
        0,
        Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.cos(angle),
      );
    }
    cosZenith[k] = sum / instants;
    outsideNormal_Wm2[k] = 1367 * distanceFactor;
    outside_Wm2[k] = outsideNormal_Wm2[k]! * cosZenith[k]!;
  }
  return { solarShift_h, sunset, cosZenith, outside_Wm2, outsideNormal_Wm2 };
}

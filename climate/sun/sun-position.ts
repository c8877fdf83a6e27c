const degree = Math.PI / 180;

export interface SunPosition {
  /** Height above the horizon, without refraction. */
  readonly altitude_deg: number;
  /** Clockwise from north, 0..360. */
  readonly azimuth_deg: number;
  /** Sine of the altitude, cosine of the zenith angle. */
  readonly cosZenith: number;
  /** (mean distance / distance)^2 of the sun. */
  readonly distanceFactor: number;
}

/** Julian day of noon UT on 1 January 2001 minus a half: the start of the 365-day year that a WeatherYear is dated in. */
const julianDayOfYearStart = 2451910.5;

/**
 * Where the sun stands, to 0.02 degree between 1950 and 2050.
 *
 * @param latitude_deg   north positive
 * @param longitude_deg  east positive
 * @param julianDay      days and fraction in UT (2451545.0 is noon of 1 January 2000)
 * Source: Meeus, Astronomical Algorithms, 2nd ed. 1998, chapter 25 (low accuracy) and chapter 12 (sidereal time).
 */
export function sunPosition(latitude_deg: number, longitude_deg: number, julianDay: number): SunPosition {
  const T = (julianDay - 2451545) / 36525;
  const meanLongitude_deg = 280.46646 + T * (36000.76983 + T * 0.0003032);
  const M = (357.52911 + T * (35999.05029 - T * 0.0001537)) * degree;
  const eccentricity = 0.016708634 - T * (0.000042037 + T * 0.0000001267);
  const centre_deg =
    (1.914602 - T * (0.004817 + T * 0.000014)) * Math.sin(M) +
    (0.019993 - T * 0.000101) * Math.sin(2 * M) +
    0.000289 * Math.sin(3 * M);
  const omega = (125.04 - 1934.136 * T) * degree;
  const apparent = (meanLongitude_deg + centre_deg - 0.00569 - 0.00478 * Math.sin(omega)) * degree;
  const obliquity = (23.4392911 - T * (0.0130042 + T * 1.64e-7) + 0.00256 * Math.cos(omega)) * degree;
  const rightAscension = Math.atan2(Math.cos(obliquity) * Math.sin(apparent), Math.cos(apparent));
  const sinDeclination = Math.sin(obliquity) * Math.sin(apparent);
  const cosDeclination = Math.sqrt(1 - sinDeclination * sinDeclination);
  const sidereal_deg = 280.46061837 + 360.98564736629 * (julianDay - 2451545) + T * T * 0.000387933;
  const hourAngle = (sidereal_deg + longitude_deg) * degree - rightAscension;
  const sinLatitude = Math.sin(latitude_deg * degree);
  const cosLatitude = Math.cos(latitude_deg * degree);
  const cosHour = Math.cos(hourAngle);
  const cosZenith = sinLatitude * sinDeclination + cosLatitude * cosDeclination * cosHour;
  const south = cosHour * sinLatitude * cosDeclination - sinDeclination * cosLatitude;
  const azimuth = Math.atan2(Math.sin(hourAngle) * cosDeclination, south) / degree + 180;
  const trueAnomaly = M + centre_deg * degree;
  const distance_au = (1.000001018 * (1 - eccentricity * eccentricity)) / (1 + eccentricity * Math.cos(trueAnomaly));
  return {
    altitude_deg: Math.asin(Math.min(1, Math.max(-1, cosZenith))) / degree,
    azimuth_deg: azimuth >= 360 ? azimuth - 360 : azimuth,
    cosZenith,
    distanceFactor: 1 / (distance_au * distance_au),
  };
}

/** The sun `hour` hours after midnight of 1 January, local standard time, in the 365-day year of a WeatherYear. */
export function sunAtHour(
  place: { readonly latitude_deg: number; readonly longitude_deg: number; readonly utcOffset_h: number },
  hour: number,
): SunPosition {
  return sunPosition(place.latitude_deg, place.longitude_deg, julianDayOfYearStart + (hour - place.utcOffset_h) / 24);
}

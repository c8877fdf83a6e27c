import { hoursOfYear } from "../calendar.ts";
import { annualRain_mm, placeName, type PlaceNormals } from "../places/place-normals.ts";
import { sha256Hex } from "../sha256.ts";
import { solarConstant_Wm2 } from "../sun/face-irradiance.ts";
import { sunAtHour } from "../sun/sun-position.ts";
import type { WeatherYear } from "../weather-year.ts";
import { hourlyRain, rainOfWetDay_mm } from "./rain.ts";
import { rounded, sixDecimals } from "./rounded.ts";
import { randomOf } from "./random.ts";

/** The days and hours of the rain are drawn, always the same for the same year and place. */
const seed = 1;

/**
 * The same year with the monthly rain of a place instead of its own: sums are the place's normals, wet days are the year's cloudiest,
 * amounts and hours are drawn. Everything else stays, so wind still blows as it did in those hours.
 */
export function withMonthlyRain(year: WeatherYear, place: PlaceNormals): WeatherYear {
  const clearness = new Float64Array(365);
  for (let day = 0; day < 365; day++) {
    let outside = 0;
    let received = 0;
    for (let k = day * 24; k < day * 24 + 24; k++) {
      const sun = sunAtHour(year.place, k + 0.5);
      outside += Math.max(0, sun.cosZenith) * solarConstant_Wm2 * sun.distanceFactor;
      received += year.globalHorizontal_Wm2[k]!;
    }
    clearness[day] = outside > 50 ? received / outside : 0.4;
  }
  const rain_mm = rounded(
    hourlyRain(place.rain_mm, rainOfWetDay_mm(place.climateZone, place.latitude_deg), clearness, randomOf(seed)),
    sixDecimals,
  );
  const missingHours = { ...year.missingHours };
  delete missingHours.rain_mm;
  return {
    ...year,
    label: `${year.label}, with the normal rain of ${placeName(place)}`,
    sha256: sha256Hex(
      JSON.stringify({ weather: year.sha256, rainOf: place.id, rain_mm: place.rain_mm, hours: hoursOfYear }),
    ),
    rain_mm,
    missingHours,
    issues: [
      ...year.issues.filter((issue) => !/\(rain\)$/.test(issue.path)),
      {
        path: "weather.rain_mm",
        severity: "warning",
        message: `Rain is the normal of ${placeName(place)} (${Math.round(annualRain_mm(place))} mm a year), laid on the cloudiest days; its hours are drawn, not recorded.`,
        remedy: "Use a record with hourly rain where the rain decides.",
      },
    ],
  };
}

import { describe, expect, test } from "vitest";
import {
  annualRain_mm,
  distance_km,
  findPlaces,
  nearestPlace,
  placeById,
  placeName,
  places,
} from "../../climate/index.ts";

describe("places", () => {
  test("there are 67, each whole, with its own id and flags", () => {
    expect(places).toHaveLength(67);
    expect(new Set(places.map((place) => place.id)).size).toBe(67);
    for (const place of places) {
      for (const months of [
        place.temperature_C,
        place.dailyMaximum_C,
        place.dailyMinimum_C,
        place.dewPoint_C,
        place.global_kWhm2day,
        place.wind_ms,
        place.rain_mm,
      ]) {
        expect(months).toHaveLength(12);
        expect(months.every(Number.isFinite)).toBe(true);
      }
      for (const flag of Object.values({ ...place.flags })) expect(flag).toMatch(/^(COMPUTED|SEEN|MEMORY)/);
      place.temperature_C.forEach((mean, k) => {
        expect(place.dailyMaximum_C[k]).toBeGreaterThan(mean);
        expect(place.dailyMinimum_C[k]).toBeLessThan(mean);
        expect(place.dewPoint_C[k]).toBeLessThan(mean);
      });
      expect(Math.abs(place.longitude_deg / 15 - place.utcOffset_h), place.id).toBeLessThan(2.6);
    }
  });

  test("annual rain meets the published 1981-2010 normals", () => {
    // NOAA station normals 1981-2010: Miami airport 1572, New York JFK 1086, Seattle airport 952 mm (SEEN; rounding of twelve months).
    expect(Math.abs(annualRain_mm(placeById("miami-fl")!) - 1572)).toBeLessThan(4);
    expect(Math.abs(annualRain_mm(placeById("new-york-ny")!) - 1086)).toBeLessThan(4);
    expect(Math.abs(annualRain_mm(placeById("seattle-wa")!) - 952)).toBeLessThan(4);
  });

  test("are found by words in any order, by zone, by state, without accents", () => {
    expect(findPlaces("burl").map((place) => place.id)).toEqual(["burlington-vt"]);
    expect(findPlaces("ME portland").map((place) => place.id)[0]).toBe("portland-me");
    expect(findPlaces("london").map(placeName)).toEqual(["London, ON", "London, GB"]);
    expect(findPlaces("Montréal")[0]!.id).toBe("montreal-qc");
    expect(findPlaces("6A VT")[0]!.id).toBe("burlington-vt");
    expect(findPlaces("726170")[0]!.id).toBe("burlington-vt");
    expect(findPlaces("")).toHaveLength(67);
    expect(findPlaces("atlantis")).toHaveLength(0);
  });

  test("the nearest to a file's coordinates is its own station, and the distance is right", () => {
    expect(nearestPlace(44.47, -73.15)).toMatchObject({ place: { id: "burlington-vt" } });
    expect(nearestPlace(44.47, -73.15).distance_km).toBeLessThan(1);
    // New York JFK to Los Angeles airport: 3983 km on the great circle (common knowledge of flight tables, MEMORY).
    expect(Math.abs(distance_km(40.65, -73.8, 33.933, -118.4) - 3975)).toBeLessThan(20);
    expect(distance_km(0, 179, 0, -179)).toBeCloseTo(222.39, 1);
  });
});

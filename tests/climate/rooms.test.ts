import { describe, expect, test } from "vitest";
import {
  ashrae160Excess_Pa,
  ashrae160Moisture_kgday,
  ashrae160SimplifiedRelativeHumidity,
  ashrae160Temperature_C,
  en15026RelativeHumidity,
  en15026Temperature_C,
  iso13788Excess_Pa,
  monthlyMeans,
  placeById,
  roomAir,
  roomPresets,
  saturationPressure_Pa,
  syntheticYear,
  type LoggedAir,
  type RoomSetting,
  type WeatherYear,
} from "../../climate/index.ts";
import { fixture, number } from "./support/files.ts";

const weather = syntheticYear(placeById("burlington-vt")!, { kind: "typical", seed: 1 });
const air = (room: RoomSetting, year: WeatherYear = weather, log?: LoggedAir) => {
  const result = roomAir(room, year, log);
  if (!result.ok) throw new Error(result.issues.map((issue) => `${issue.path}: ${issue.message}`).join("\n"));
  return { ...result.value, issues: result.issues };
};
const humidity = (room: { temperature_C: Float64Array; vapourPressure_Pa: Float64Array }, k: number): number =>
  room.vapourPressure_Pa[k]! / saturationPressure_Pa(room.temperature_C[k]!);
/** Weather that stands still, so that daily and monthly means are the value itself. */
const still = (outdoor_C: number, dewPoint_C = outdoor_C - 5): WeatherYear => ({
  ...weather,
  temperature_C: new Float64Array(8760).fill(outdoor_C),
  dewPoint_C: new Float64Array(8760).fill(dewPoint_C),
});

describe("indoor air by the standards", () => {
  test("EN 15026 normal and high, ANSI/ASHRAE 160 simplified and the ISO 13788 classes meet their points", () => {
    for (const row of fixture("indoor-climate-points.csv")) {
      const t = number(row, "t_out_mean_C");
      expect(en15026Temperature_C(t)).toBeCloseTo(number(row, "EN15026_theta_i_C"), 3);
      expect(100 * en15026RelativeHumidity(t, "normal")).toBeCloseTo(number(row, "EN15026_RH_normal"), 3);
      expect(100 * en15026RelativeHumidity(t, "high")).toBeCloseTo(number(row, "EN15026_RH_high"), 3);
      expect(100 * ashrae160SimplifiedRelativeHumidity(t)).toBeCloseTo(number(row, "ASHRAE160_simplified_RH"), 3);
      for (const upper of [1, 2, 3, 4])
        expect(iso13788Excess_Pa(t, upper)).toBeCloseTo(number(row, `dp_class${upper}_${upper + 1}_Pa`), 2);
      const year = still(t, t - 10);
      const en = air({ method: "en15026", load: "high" }, year);
      expect(en.temperature_C[4000]).toBeCloseTo(number(row, "EN15026_theta_i_C"), 9);
      expect(100 * humidity(en, 4000)).toBeCloseTo(number(row, "EN15026_RH_high"), 9);
      expect(100 * humidity(air({ method: "ashrae160", variant: "simplified" }, year), 77)).toBeCloseTo(
        number(row, "ASHRAE160_simplified_RH"),
        9,
      );
      const iso = air({ method: "iso13788", humidityClass: 3, temperature_C: 20 }, year);
      expect(iso.vapourPressure_Pa[500]! - saturationPressure_Pa(t - 10)).toBeCloseTo(number(row, "dp_class3_4_Pa"), 6);
    }
  });

  test("ANSI/ASHRAE 160 intermediate meets its points and its cap at 70 %", () => {
    for (const row of fixture("ashrae160-intermediate.csv")) {
      const excess = ashrae160Excess_Pa(number(row, "moisture_kg_day"), number(row, "volume_m3"), number(row, "ach"));
      expect(Math.abs(number(row, "po_Pa") + excess - number(row, "pi_Pa")), row["case"]).toBeLessThan(0.5);
    }
    expect([1, 2, 3, 4, 5].map(ashrae160Moisture_kgday)).toEqual([8, 12, 14, 15, 16]);
    const tight = air(
      { method: "ashrae160", variant: "intermediate", bedrooms: 3, volume_m3: 400, airChangesPerHour: 0.1 },
      still(-5, -8.5),
    );
    expect(humidity(tight, 10)).toBeCloseTo(0.7, 9);
    const leaky = air(
      { method: "ashrae160", variant: "intermediate", bedrooms: 3, volume_m3: 400, airChangesPerHour: 0.4 },
      still(-5, -8.5),
    );
    // 1.36e5 x 14/86400 / (400 x 0.4/3600) = 495.8 Pa over outdoors.
    expect(leaky.vapourPressure_Pa[10]! - saturationPressure_Pa(-8.5)).toBeCloseTo(495.8, 0);
  });

  test("ANSI/ASHRAE 160 temperature heats to 21.1, floats 2.8 K above outdoors without cooling, and stops at 23.9 with it", () => {
    expect(ashrae160Temperature_C(-20, false)).toBe(21.1);
    expect(ashrae160Temperature_C(18.3, false)).toBeCloseTo(21.1, 9);
    expect(ashrae160Temperature_C(26, false)).toBeCloseTo(28.8, 9);
    expect(ashrae160Temperature_C(26, true)).toBe(23.9);
  });
});

describe("the other rooms", () => {
  test("fixed air stays, monthly air passes through each month's value at its middle", () => {
    const fixed = air({ method: "fixed", temperature_C: 21, relativeHumidity: 0.35 });
    expect(fixed.temperature_C.every((t) => t === 21)).toBe(true);
    expect(fixed.vapourPressure_Pa[0]).toBeCloseTo(0.35 * saturationPressure_Pa(21), 9);
    const months = [0.3, 0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.55, 0.5, 0.45, 0.4, 0.35];
    const monthly = air({ method: "fixed", temperature_C: 20, relativeHumidity: months });
    // Middle of July: 15.5 days after 30 June.
    expect(humidity(monthly, (181 + 15.5) * 24 - 1)).toBeCloseTo(0.55, 9);
    expect(humidity(monthly, 212 * 24 - 1)).toBeCloseTo(0.55, 9);
    expect(humidity(monthly, 365 * 24 - 1)).toBeCloseTo((0.3 + 0.35) / 2, 9);
  });

  test("the seasonal room has its winter humidity in frost, its summer humidity in heat, and rises between", () => {
    const room: RoomSetting = {
      method: "seasonal",
      winterTemperature_C: 20,
      summerTemperature_C: 25,
      winterRelativeHumidity: 0.35,
      summerRelativeHumidity: 0.6,
    };
    for (const [outdoor, rh, t] of [
      [-15, 0.35, 20],
      [0, 0.35, 20],
      [10, 0.475, 22.5],
      [20, 0.6, 25],
      [30, 0.6, 25],
    ] as const) {
      const still1 = air(room, still(outdoor));
      expect(humidity(still1, 99)).toBeCloseTo(rh, 9);
      expect(still1.temperature_C[99]).toBeCloseTo(t, 9);
    }
    const year = air(room);
    const means = monthlyMeans(year.temperature_C.map((_, k) => humidity(year, k)));
    expect(means[0]).toBeLessThan(0.37);
    expect(means[6]).toBeGreaterThan(0.57);
  });

  test("a logged room gives its own hours, and one that is too short or absent is refused with the remedy", () => {
    const hours = Float64Array.from({ length: 8760 }, (_, k) => k / 1000);
    const log: LoggedAir = {
      name: "room.csv",
      sha256: "0".repeat(64),
      hours: 8760,
      firstHour: 4344,
      temperature_C: hours,
      relativeHumidity: new Float64Array(8760).fill(0.4),
    };
    const year = air({ method: "logger", file: "room.csv" }, weather, log);
    expect(year.temperature_C[4344]).toBe(0);
    expect(year.temperature_C[4343]).toBeCloseTo(8.759, 9);
    expect(humidity(year, 7)).toBeCloseTo(0.4, 9);
    const absent = roomAir({ method: "logger", file: "room.csv" }, weather);
    expect(absent.ok).toBe(false);
    const short = roomAir({ method: "logger", file: "room.csv" }, weather, { ...log, hours: 2160 });
    expect(short.ok || short.issues[0]!.message).toMatch(/covers 90\.0 days/);
  });

  test("values out of range are refused, all at once, each with its range", () => {
    const bad = roomAir(
      {
        method: "seasonal",
        winterTemperature_C: 200,
        summerTemperature_C: 24,
        winterRelativeHumidity: 35,
        summerRelativeHumidity: 0.6,
      },
      weather,
    );
    expect(bad.ok).toBe(false);
    expect(bad.issues.map((issue) => issue.path)).toEqual([
      "indoor.winterTemperature_C",
      "indoor.winterRelativeHumidity",
    ]);
    expect(roomAir({ method: "iso13788", humidityClass: 6, temperature_C: 20 }, weather).ok).toBe(false);
    expect(roomAir({ method: "fixed", temperature_C: [20, 20], relativeHumidity: 0.4 }, weather).ok).toBe(false);
    expect(roomAir({ method: "ashrae160", variant: "intermediate", airChangesPerHour: 0 }, weather).ok).toBe(false);
  });

  test("air that would be over-saturated is held at 100 % and said", () => {
    const cold = air({ method: "iso13788", humidityClass: 5, temperature_C: 8 });
    expect(Math.max(...cold.vapourPressure_Pa)).toBeLessThanOrEqual(saturationPressure_Pa(8) + 1e-9);
    expect(cold.issues[0]!.message).toMatch(/over-saturated/);
  });

  test("bathroom and pool are plain settings that work", () => {
    for (const preset of Object.values(roomPresets)) expect(air(preset).issues).toEqual([]);
    expect(humidity(air(roomPresets.pool), 0)).toBeCloseTo(0.55, 9);
  });
});

import { describe, expect, test } from "vitest";
import {
  drivingRainAshrae160_kgm2h,
  dynamicPressure_Pa,
  exposureFactorAshrae160,
  houseOf,
  hourlyLoads,
  indoorFilm,
  longwaveOnFace_Wm2,
  obstructionFactor,
  outdoorConvection_Wm2K,
  placeById,
  radiativeFilm_Wm2K,
  rankFaces,
  roomPressureCoefficient,
  roughnessCoefficient,
  saturationPressure_Pa,
  skyInfrared_Wm2,
  skyTemperature_C,
  smoothedMeans,
  solarAbsorptanceOf,
  stackPressure_Pa,
  stefanBoltzmann_Wm2K4,
  syntheticYear,
  vapourFilm_kgm2sPa,
  wallRain_kgm2,
  wallSun_Wm2,
  windFactor,
  windOnWall,
  windPressureCoefficient,
  type FaceSetting,
  type HourlyLoads,
  type LoadSeries,
  type LoadsInput,
  type WeatherYear,
} from "../../climate/index.ts";
import { fixture, number } from "./support/files.ts";

const weather = syntheticYear(placeById("burlington-vt")!, { kind: "typical", seed: 1 });
const face: FaceSetting = { azimuth_deg: 180, tilt_deg: 90, solarAbsorptance: 0.6, longwaveEmissivity: 0.9 };
const input: LoadsInput = {
  weather,
  face,
  rain: undefined,
  room: { method: "ashrae160", variant: "simplified" },
  air: undefined,
  startDay: 0,
};
const loads = (change: Partial<LoadsInput> = {}): HourlyLoads => {
  const result = hourlyLoads({ ...input, ...change });
  if (!result.ok) throw new Error(result.issues.map((issue) => `${issue.path}: ${issue.message}`).join("\n"));
  return result.value;
};
const seriesOf = (value: HourlyLoads): [string, LoadSeries][] =>
  [
    ...Object.entries(value.outside),
    ...Object.entries(value.inside),
    ["wind", value.windSpeed_ms],
    ["sky", value.outside.longwave!.incoming_Wm2],
  ].filter(
    (entry): entry is [string, LoadSeries] =>
      typeof entry[1] === "object" && entry[1] !== null && "bulge" in (entry[1] as object),
  );

describe("films", () => {
  test("vapour films meet the Lewis relation's points", () => {
    for (const row of fixture("lewis-points.csv")) {
      const h = number(row, "h_c_W_m2K");
      // R_v 461.5 or 461.52 J/(kg K): half a per mille.
      expect(vapourFilm_kgm2sPa(h, 20) / number(row, "beta_p_20C_kg_m2sPa")).toBeCloseTo(1, 3);
      expect(vapourFilm_kgm2sPa(h, 0) / number(row, "beta_p_0C_kg_m2sPa")).toBeCloseTo(1, 3);
    }
  });

  test("outdoor convection and radiation together give 0.04 m2K/W at 4 m/s, indoor films 0.13, 0.10 and 0.17", () => {
    // ISO 6946:2017: h_ce = 4 + 4v with v = 4 m/s, h_r = 0.9 x 5.1 at 10 degC; 1/(20 + 4.6) = 0.0407, rounded 0.04.
    const outdoor = outdoorConvection_Wm2K(4) + radiativeFilm_Wm2K(0.9, 10);
    expect(1 / outdoor).toBeCloseTo(0.04, 2);
    expect([0, 10, 20].map((t) => Number(radiativeFilm_Wm2K(1, t).toFixed(1)))).toEqual([4.6, 5.1, 5.7]);
    const iso = fixture("surface-coefficients.csv").filter((row) => row["standard"] === "ISO 6946");
    const resistance = (surface: string): number =>
      number(
        iso.find((row) => row["surface"] === surface)!,
        "R_m2K_W",
      );
    expect(1 / outdoor).toBeCloseTo(resistance("outside"), 2);
    for (const [tilt_deg, surface] of [
      [90, "inside, horizontal flow"],
      [20, "inside, upward"],
      [180, "inside, downward"],
    ] as const)
      expect(1 / indoorFilm(tilt_deg).combined_Wm2K).toBeCloseTo(resistance(surface), 9);
    // Convection and black-room radiation make up the combined film within the standard's rounding.
    expect(indoorFilm(90).convective_Wm2K + radiativeFilm_Wm2K(0.9, 20)).toBeCloseTo(indoorFilm(90).combined_Wm2K, 0);
  });

  test("wind near a wall falls with shelter and grows with height; open country at 10 m is the station itself", () => {
    expect(windFactor("severe", 10)).toBeCloseTo(1, 9);
    // ASHRAE Handbook Fundamentals, airflow around buildings: suburban terrain at 10 m about 0.72 of the airport's wind.
    expect(windFactor("medium", 10)).toBeCloseTo(0.715, 2);
    expect(windFactor("sheltered", 10)).toBeLessThan(windFactor("medium", 10));
    expect(windFactor("medium", 20)).toBeGreaterThan(windFactor("medium", 5));
  });

  test("colours have an absorptance, in either spelling, and no colour is guessed", () => {
    expect(solarAbsorptanceOf("light")).toBe(0.3);
    expect(solarAbsorptanceOf("Dark")).toBe(0.9);
    expect(solarAbsorptanceOf("light gray")).toBe(solarAbsorptanceOf("light grey"));
    expect(solarAbsorptanceOf("octarine")).toBeUndefined();
    expect(solarAbsorptanceOf("toString")).toBeUndefined();
  });
});

describe("longwave", () => {
  test("a wall in an overcast isothermal world gets what it sends", () => {
    const black = stefanBoltzmann_Wm2K4 * 283.15 ** 4;
    expect(longwaveOnFace_Wm2(black, 10, 0.5)).toBeCloseTo(black, 9);
    expect(skyTemperature_C(black)).toBeCloseTo(10, 9);
  });

  test("a clear sky is colder than the air by about 20 K, an overcast one by a few", () => {
    // Common range of measured clear-sky depressions, 10 to 30 K (ASHRAE Handbook Applications, solar energy use; MEMORY).
    const clear = 10 - skyTemperature_C(skyInfrared_Wm2(10, 2, 0));
    expect(clear).toBeGreaterThan(10);
    expect(clear).toBeLessThan(25);
    expect(10 - skyTemperature_C(skyInfrared_Wm2(10, 8, 1))).toBeLessThan(6);
  });
});

describe("driving rain", () => {
  test("ANSI/ASHRAE 160 meets its points", () => {
    for (const row of fixture("wind-driven-rain-points.csv")) {
      const onWall = windOnWall(number(row, "angle_deg"), 0);
      expect(
        drivingRainAshrae160_kgm2h(
          number(row, "FE"),
          number(row, "FD"),
          number(row, "U_m_s"),
          onWall,
          number(row, "rh_mm_h"),
        ),
      ).toBeCloseTo(number(row, "r_bv_kg_m2_h"), 5);
    }
  });

  test("exposure words give the factors of their height, and eaves halve the rain", () => {
    // ANSI/ASHRAE 160-2016 (MEMORY): up to 10 m 1.3, 1.0, 0.7; never above 1.5.
    expect((["severe", "medium", "sheltered"] as const).map((word) => exposureFactorAshrae160(word, 8))).toEqual([
      1.3, 1, 0.7,
    ]);
    expect(exposureFactorAshrae160("sheltered", 100)).toBe(1.5);
    const total = (change: Partial<FaceSetting>): number =>
      wallRain_kgm2(weather, { ...face, ...change }, undefined).reduce((a, b) => a + b, 0);
    expect(total({ overhang: { depth_m: 0.5, heightAbove_m: 2 } }) / total({})).toBeCloseTo(0.35 / 0.5, 9);
    expect(total({ shelter: "severe" }) / total({})).toBeCloseTo(1.3, 9);
  });

  test("ISO 15927-3 site factors meet the wind-profile law and shelter the wall", () => {
    // Terrain II, 10 m: 0.19 ln(10/0.05) = 1.007, the airfield itself.
    expect(roughnessCoefficient("II", 10)).toBeCloseTo(1.007, 3);
    expect(roughnessCoefficient("IV", 3)).toBe(roughnessCoefficient("IV", 16));
    expect([5, 30, 119, 200].map(obstructionFactor)).toEqual([0.2, 0.5, 0.9, 1]);
    const total = (shelter: "severe" | "medium" | "sheltered"): number =>
      wallRain_kgm2(weather, { ...face, shelter }, { method: "iso15927" }).reduce((a, b) => a + b, 0);
    expect(total("severe")).toBeGreaterThan(total("medium"));
    expect(total("medium")).toBeGreaterThan(total("sheltered"));
  });

  test("snow wets no wall, and a roof gets the rain that falls on it", () => {
    const cold: WeatherYear = { ...weather, temperature_C: new Float64Array(8760).fill(0.5) };
    expect(wallRain_kgm2(cold, face, undefined).every((kg) => kg === 0)).toBe(true);
    const mild: WeatherYear = { ...weather, temperature_C: new Float64Array(8760).fill(5) };
    expect(wallRain_kgm2(mild, { ...face, tilt_deg: 0 }, undefined).reduce((a, b) => a + b, 0)).toBeCloseTo(935, 3);
  });

  test("faces are ranked from the wettest to the driest, the wettest facing the wind", () => {
    const westerly: WeatherYear = { ...weather, windDirection_deg: new Float64Array(8760).fill(270) };
    const ranked = rankFaces(westerly);
    expect(ranked[0]!.name).toBe("W");
    expect(new Set([ranked[1]!.name, ranked[2]!.name])).toEqual(new Set(["NW", "SW"]));
    expect(ranked.at(-1)!.rain_kgm2).toBe(0);
    for (let k = 1; k < ranked.length; k++)
      expect(ranked[k - 1]!.rain_kgm2).toBeGreaterThanOrEqual(ranked[k]!.rain_kgm2);
    const south = ranked.find((one) => one.name === "S")!;
    const north = ranked.find((one) => one.name === "N")!;
    expect(south.sun_kWhm2).toBeGreaterThan(2 * north.sun_kWhm2);
    expect(south.monthlySun_kWhm2.reduce((a, b) => a + b, 0)).toBeCloseTo(south.sun_kWhm2, 9);
  });
});

describe("air pressure", () => {
  test("stack meets its points", () => {
    for (const row of fixture("stack-pressure-points.csv")) {
      const full = stackPressure_Pa(number(row, "height_m"), number(row, "ti_C"), number(row, "te_C"));
      // The points take g as 9.81, we as 9.80665 m/s2: 3.4 in 10,000.
      expect(Math.abs(full / number(row, "full_stack_Pa") - 1)).toBeLessThan(4e-4);
      const half = stackPressure_Pa(number(row, "height_m") / 2, number(row, "ti_C"), number(row, "te_C"));
      expect(Math.abs(half / number(row, "half_height_Pa") - 1)).toBeLessThan(4e-4);
    }
  });

  test("wind presses the windward wall and sucks at the others, evenly to both sides", () => {
    // Swami and Chandra 1988: 0.6 square on; about -0.4 to -0.5 at the side, -0.3 to -0.4 behind.
    expect(windPressureCoefficient(0)).toBeCloseTo(0.6, 2);
    for (const angle of [30, 75, 130])
      expect(windPressureCoefficient(-angle)).toBeCloseTo(windPressureCoefficient(360 + angle), 12);
    expect(windPressureCoefficient(90)).toBeLessThan(-0.3);
    expect(windPressureCoefficient(180)).toBeLessThan(-0.25);
    expect(roomPressureCoefficient(20)).toBeLessThan(0);
    // Dynamic pressure of 10 m/s at 0 degC: 64.5 Pa with 1.29 kg/m3.
    expect(dynamicPressure_Pa(10, 0)).toBeCloseTo(64.5, 9);
  });

  test("in still winter air the room pushes outward, more with a fan, by the stack of its house", () => {
    const calm: WeatherYear = {
      ...weather,
      windSpeed_ms: new Float64Array(8760),
      temperature_C: new Float64Array(8760).fill(-10),
      dewPoint_C: new Float64Array(8760).fill(-12),
    };
    const plain = loads({ weather: calm, room: { method: "fixed", temperature_C: 21, relativeHumidity: 0.4 } });
    // Two storeys of 2.7 m: 1.35 m above the neutral plane.
    expect(plain.inside.airPressure_Pa.end[0]).toBeCloseTo(stackPressure_Pa(1.35, 21, -10), 9);
    expect(plain.outside.airPressure_Pa.end[0]).toBeCloseTo(0, 12);
    const fan = loads({
      weather: calm,
      room: { method: "fixed", temperature_C: 21, relativeHumidity: 0.4 },
      air: { ach50: 3, fanPressure_Pa: 4, storeys: 3 },
    });
    expect(fan.inside.airPressure_Pa.end[0]).toBeCloseTo(4 + stackPressure_Pa(2.7, 21, -10), 9);
    expect(houseOf({ ach50: 1, storeys: 1, height_m: 4 }).aboveNeutral_m).toBeCloseTo(1, 12);
  });
});

describe("hourly loads", () => {
  const year = loads();

  test("have 8760 finite intervals that join without steps, rain apart, and come round", () => {
    expect(year.time_s).toHaveLength(8761);
    expect(year.time_s[8760]).toBe(8760 * 3600);
    expect(year.repeats).toBe(true);
    for (const [name, series] of seriesOf(year)) {
      for (const part of [series.start, series.end, series.bulge])
        expect(part.length === 8760 && part.every(Number.isFinite), name).toBe(true);
      if (name.startsWith("rain")) continue;
      for (let k = 0; k < 8760; k++)
        if (series.end[k] !== series.start[(k + 1) % 8760]) throw new Error(`${name} steps at ${k}`);
    }
  });

  test("give the weather's states at the ends of the hours", () => {
    for (const k of [0, 5, 4000, 8759]) {
      expect(year.outside.temperature_K.end[k]).toBe(weather.temperature_C[k]! + 273.15);
      expect(year.outside.vapourPressure_Pa.end[k]).toBeCloseTo(saturationPressure_Pa(weather.dewPoint_C[k]!), 9);
    }
    expect(year.outside.temperature_K.start[0]).toBe(weather.temperature_C[8759]! + 273.15);
  });

  test("keep the sun of every hour exactly and never go below zero", () => {
    const sun = wallSun_Wm2(weather, face);
    const { start, end, bulge } = year.outside.absorbedRadiation_Wm2;
    for (let k = 0; k < 8760; k++) {
      expect(Math.abs((start[k]! + end[k]!) / 2 + bulge[k]! - 0.6 * sun[k]!)).toBeLessThan(1e-9);
      for (let tau = 0; tau <= 1; tau += 0.125) {
        const value = start[k]! + (end[k]! - start[k]!) * tau + 6 * bulge[k]! * tau * (1 - tau);
        if (value < -1e-9) throw new Error(`sun ${value} in hour ${k}`);
      }
    }
  });

  test("smooth any non-negative hours without going below zero, the worst ones too", () => {
    for (const means of [
      [0, 1000, 0, 0],
      [1, 1000, 1, 1000],
      [0, 0, 5, 0],
      [1000, 1000, 0.001, 1000],
    ]) {
      const { start, end, bulge } = smoothedMeans(Float64Array.from(means));
      means.forEach((mean, k) => {
        expect((start[k]! + end[k]!) / 2 + bulge[k]!).toBeCloseTo(mean, 9);
        for (let tau = 0; tau <= 1; tau += 0.01)
          expect(start[k]! + (end[k]! - start[k]!) * tau + 6 * bulge[k]! * tau * (1 - tau)).toBeGreaterThan(-1e-9);
      });
    }
  });

  test("turn round so that hour 0 is midnight of the start day", () => {
    const october = loads({ startDay: 273 });
    expect(october.outside.temperature_K.start[0]).toBe(weather.temperature_C[273 * 24 - 1]! + 273.15);
    expect(october.outside.temperature_K.end[0]).toBe(weather.temperature_C[273 * 24]! + 273.15);
    expect(october.outside.absorbedRadiation_Wm2.end[12]).toBe(year.outside.absorbedRadiation_Wm2.end[273 * 24 + 12]);
    expect(october.inside.vapourPressure_Pa.end[100]).toBe(year.inside.vapourPressure_Pa.end[(273 * 24 + 100) % 8760]);
    expect(october.outside.rain_kgm2s.end.reduce((a, b) => a + b, 0)).toBeCloseTo(
      year.outside.rain_kgm2s.end.reduce((a, b) => a + b, 0),
      12,
    );
    expect(october.startDay).toBe(273);
  });

  test("carry the films, the longwave and the barometer", () => {
    expect(year.inside.longwave).toBeNull();
    expect(year.inside.heatFilm_Wm2K.end[0]).toBeCloseTo(1 / 0.13, 9);
    expect(year.outside.longwave!.emissivity).toBe(0.9);
    const k = 1000;
    const wind = windFactor("medium", 5) * weather.windSpeed_ms[k]!;
    expect(year.windSpeed_ms.end[k]).toBeCloseTo(wind, 9);
    expect(year.outside.heatFilm_Wm2K.end[k]).toBeCloseTo(4 + 4 * wind, 9);
    expect(year.outside.vapourFilm_kgm2sPa.end[k]).toBeCloseTo(
      vapourFilm_kgm2sPa(4 + 4 * wind, weather.temperature_C[k]!),
      15,
    );
    expect(year.outside.longwave!.incoming_Wm2.end[k]).toBeCloseTo(
      longwaveOnFace_Wm2(weather.skyInfrared_Wm2[k]!, weather.temperature_C[k]!, 0.5),
      9,
    );
    expect(year.barometricPressure_Pa).toBeCloseTo(100_117, -1);
  });

  test("refuse weather with a hole, a short year, a face out of range and a start outside the year, all at once", () => {
    const holed = weather.windSpeed_ms.slice();
    holed[77] = NaN;
    const bad = hourlyLoads({
      ...input,
      weather: { ...weather, windSpeed_ms: holed },
      face: { ...face, azimuth_deg: -10, solarAbsorptance: 60 },
      startDay: 400,
    });
    expect(bad.ok).toBe(false);
    expect(bad.issues.map((issue) => issue.path)).toEqual([
      "weather.windSpeed_ms",
      "site.face.azimuth_deg",
      "site.face.solarAbsorptance",
      "run.start",
    ]);
    expect(bad.issues[0]!.message).toContain("4 Jan 06:00");
    expect(hourlyLoads({ ...input, weather: { ...weather, hours: 4000 } }).ok).toBe(false);
  });

  test("hand on what is doubtful about the year", () => {
    const result = hourlyLoads(input);
    expect(result.issues.some((issue) => /synthetic/.test(issue.message))).toBe(true);
  });
});

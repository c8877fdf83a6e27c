import { describe, expect, test } from "vitest";
import {
  cosIncidence,
  diffuseShare,
  faceIrradiance,
  overhangMasks,
  skyView,
  splitGlobal,
  sunAtHour,
  sunPosition,
} from "../../climate/index.ts";
import { fixture, number } from "./support/files.ts";

const places = {
  duluth: { latitude_deg: 46.83, longitude_deg: -92.22, utcOffset_h: -6 },
  newyorkjfk: { latitude_deg: 40.65, longitude_deg: -73.8, utcOffset_h: -5 },
  seattle: { latitude_deg: 47.47, longitude_deg: -122.32, utcOffset_h: -8 },
};

describe("sun position", () => {
  test("meets the worked example of Reda and Andreas to 0.02 degree", () => {
    // Reda and Andreas 2003, NREL/TP-560-34302, appendix: 17 Oct 2003 12:30:30 (UTC-7), 39.742476 N 105.1786 W, topocentric zenith
    // 50.11162 with refraction (50.1279 without), azimuth 194.34024 (MEMORY).
    const sun = sunPosition(39.742476, -105.1786, 2452930.312847);
    expect(Math.abs(90 - sun.altitude_deg - 50.1279)).toBeLessThan(0.02);
    expect(Math.abs(sun.azimuth_deg - 194.34024)).toBeLessThan(0.02);
  });

  test("stands on the tropics at the solstices and over the equator at the equinoxes, to 0.03 degree", () => {
    // Almanac instants: June solstice 21 Jun 2001 07:38 UT, December 21 Dec 19:22, March equinox 20 Mar 13:31, obliquity 23.439.
    const zenithAtPole = (julianDay: number): number => sunPosition(90, 0, julianDay).altitude_deg;
    expect(Math.abs(zenithAtPole(2452081.818) - 23.439)).toBeLessThan(0.03);
    expect(Math.abs(zenithAtPole(2452265.307) + 23.439)).toBeLessThan(0.03);
    expect(Math.abs(zenithAtPole(2451989.063))).toBeLessThan(0.03);
  });

  test("agrees with an independent routine at three stations, morning to night, to 0.05 degree", () => {
    for (const [name, place] of Object.entries(places))
      for (const row of fixture(`${name}-hours.csv`)) {
        const day =
          [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334][number(row, "month") - 1]! + number(row, "day") - 1;
        const sun = sunAtHour(place, day * 24 + number(row, "hour") - 0.5);
        const altitude = (Math.asin(number(row, "cosz_mid_meeus")) * 180) / Math.PI;
        expect(Math.abs(sun.altitude_deg - altitude)).toBeLessThan(0.05);
        const turn = Math.abs(((sun.azimuth_deg - number(row, "azimuth_mid_meeus_deg") + 540) % 360) - 180);
        // Near the zenith a small angle is a wide turn.
        expect(turn * Math.cos((altitude * Math.PI) / 180)).toBeLessThan(0.05);
      }
  });

  test("is nearest in January and farthest in July by 3.4 % either way", () => {
    // Spencer 1971 series: E0 1.035 on 3 January, 0.967 on 5 July.
    expect(sunPosition(0, 0, 2451912.5).distanceFactor).toBeCloseTo(1.0345, 2);
    expect(sunPosition(0, 0, 2452095.5).distanceFactor).toBeCloseTo(0.967, 2);
  });
});

describe("sun on a face", () => {
  const sun = { altitude_deg: 30, azimuth_deg: 180, cosZenith: 0.5, distanceFactor: 1 };
  const wall = { azimuth_deg: 180, tilt_deg: 90, groundReflectance: 0.2 };

  test("a horizontal face gets the global sun, whatever the sky model", () => {
    for (const model of ["hdkr", "isotropic"] as const)
      expect(faceIrradiance(sun, 450, 700, 100, { ...wall, tilt_deg: 0 }, model).total_Wm2).toBeCloseTo(450, 9);
  });

  test("an isotropic sky gives a wall half the diffuse and half the reflected sun", () => {
    // Liu and Jordan 1963: DNI cos i + DHI/2 + rho GHI/2; cos i = cos 30.
    const lit = faceIrradiance(sun, 450, 700, 100, wall, "isotropic");
    expect(lit.total_Wm2).toBeCloseTo(700 * Math.cos(Math.PI / 6) + 50 + 0.2 * 225, 9);
  });

  test("HDKR meets its formula written out by hand", () => {
    // Duffie and Beckman, eq. 2.16.7, by hand: Ai = 700/1367, f = sqrt(350/450), Rb = cos 30/0.5.
    const ai = 700 / 1367;
    const rb = Math.cos(Math.PI / 6) / 0.5;
    const byHand =
      (350 + 100 * ai) * rb +
      100 * (1 - ai) * 0.5 * (1 + Math.sqrt(350 / 450) * Math.sin(Math.PI / 4) ** 3) +
      450 * 0.2 * 0.5;
    expect(faceIrradiance(sun, 450, 700, 100, wall).total_Wm2).toBeCloseTo(byHand, 9);
  });

  test("nothing direct reaches a face from behind or from below the horizon, and no small cosine blows up", () => {
    expect(faceIrradiance(sun, 450, 700, 100, { ...wall, azimuth_deg: 0 }).beam_Wm2).toBe(0);
    const low = { altitude_deg: 0.2, azimuth_deg: 180, cosZenith: 0.0035, distanceFactor: 1 };
    expect(faceIrradiance(low, 5, 900, 4, wall).sky_Wm2).toBeLessThan(4);
    const down = { altitude_deg: -3, azimuth_deg: 180, cosZenith: -0.05, distanceFactor: 1 };
    const dusk = faceIrradiance(down, 3, 10, 3, wall);
    expect(dusk.beam_Wm2).toBe(0);
    expect(dusk.total_Wm2).toBeCloseTo(1.5 + 0.3, 9);
  });

  test("incidence is square on when the sun stands on the normal of a tilted face", () => {
    expect(cosIncidence(sun, 180, 60)).toBeCloseTo(1, 12);
  });

  test("an overhang as deep as it is high shades the point above 45 degrees and keeps 71 % of the sky", () => {
    // Profile angle and Hottel's strips: sky view of a wall 0.5 h/sqrt(h2 + d2).
    const overhang = { depth_m: 1, heightAbove_m: 1 };
    expect(overhangMasks({ ...sun, altitude_deg: 44.9, cosZenith: Math.sin(0.7836) }, 180, overhang)).toBe(false);
    expect(overhangMasks({ ...sun, altitude_deg: 45.1, cosZenith: Math.sin(0.7871) }, 180, overhang)).toBe(true);
    // Seen at 60 degrees from the side the profile angle is steeper: tan 45 / cos 60 = 2.
    expect(
      overhangMasks({ ...sun, azimuth_deg: 240, altitude_deg: 30.1, cosZenith: Math.sin(0.5253) }, 180, overhang),
    ).toBe(true);
    expect(skyView(90, overhang)).toBeCloseTo(0.5 / Math.SQRT2, 12);
    expect(skyView(90, undefined)).toBeCloseTo(0.5, 12);
    expect(skyView(0, undefined)).toBeCloseTo(1, 12);
    expect(skyView(90, { depth_m: 1e-6, heightAbove_m: 1 })).toBeCloseTo(0.5, 6);
  });
});

describe("direct and diffuse", () => {
  test("the Erbs share meets its published marks and joins without steps", () => {
    // Erbs, Klein and Duffie 1982: 1 - 0.09 k below 0.22, 0.165 above 0.80.
    expect(diffuseShare(0.1)).toBeCloseTo(0.991, 9);
    expect(diffuseShare(0.9)).toBe(0.165);
    expect(Math.abs(diffuseShare(0.22) - diffuseShare(0.2200001))).toBeLessThan(1e-3);
    expect(Math.abs(diffuseShare(0.8) - 0.165)).toBeLessThan(5e-3);
  });

  test("the parts always make up the whole", () => {
    for (const cosZenith of [0.01, 0.05, 0.3, 1])
      for (const share of [0.05, 0.4, 0.75, 0.95]) {
        const global = share * 1367 * cosZenith;
        const parts = splitGlobal(global, cosZenith, 1367);
        expect(parts.directNormal_Wm2 * cosZenith + parts.diffuse_Wm2).toBeCloseTo(global, 9);
        expect(parts.diffuse_Wm2).toBeGreaterThanOrEqual(0);
      }
  });
});

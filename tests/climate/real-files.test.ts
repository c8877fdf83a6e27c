import { describe, expect, test } from "vitest";
import {
  degreeDays,
  drivingRainIso15927_kgm2h,
  monthlyMeans,
  daysInMonth,
  readEpw,
  readTmy3,
  readWeatherFile,
  saturationPressure_Pa,
  skyInfrared_Wm2,
  stefanBoltzmann_Wm2K4,
  wallSun_Wm2,
  weatherReport,
  wetBulb_C,
  windOnWall,
  type WeatherYear,
} from "../../climate/index.ts";
import { fixture, number, realFile, realFileNames } from "./support/files.ts";

const stations = {
  duluth: "USA_MN_Duluth.Intl.AP.727450_TMY3.epw",
  newyorkjfk: "USA_NY_New.York-J.F.Kennedy.Intl.AP.744860_TMY3.epw",
  seattle: "USA_WA_Seattle-Tacoma.Intl.AP.727930_TMY3.epw",
};

function yearOf(name: string): WeatherYear | null {
  const text = realFile(name);
  if (text === null) return null;
  const read = readWeatherFile(name, text);
  if (!read.ok) throw new Error(`${name}: ${read.issues.map((issue) => issue.message).join(" ")}`);
  return read.value;
}

const yearSum = (values: Iterable<number>): number => [...values].reduce((sum, value) => sum + value, 0);
const monthSums_k = (hourly: Float64Array): number[] =>
  monthlyMeans(hourly).map((mean, k) => (mean * daysInMonth[k]! * 24) / 1000);

describe("real typical-year files (NREL TMY3, Wilcox and Marion 2008)", () => {
  test("all files beside the checkout are read, whole and finite, and only rain is missing", () => {
    for (const name of realFileNames()) {
      const year = yearOf(name)!;
      for (const column of weatherReport(year).columns) {
        expect(year[column.column].every(Number.isFinite), `${name} ${column.column}`).toBe(true);
        if (column.column !== "rain_mm" && column.column !== "skyInfrared_Wm2")
          expect(column.complete, `${name} ${column.title}`).toBe(1);
      }
      expect(year.hours).toBe(8760);
      expect(year.issues.every((issue) => issue.severity === "warning")).toBe(true);
    }
    realFile(stations.seattle);
  });

  test("the Burlington EPW and TMY3 CSV hold the same year in all 8760 hours, rain apart", () => {
    const epwText = realFile("USA_VT_Burlington.Intl.AP.726170_TMY3.epw");
    const csvText = realFile("USA_VT_Burlington_726170_TMY3.csv");
    if (epwText === null || csvText === null) return;
    const epw = readEpw("a", epwText);
    const csv = readTmy3("b", csvText);
    if (!epw.ok || !csv.ok) throw new Error("not read");
    for (const column of [
      "temperature_C",
      "dewPoint_C",
      "relativeHumidity",
      "globalHorizontal_Wm2",
      "directNormal_Wm2",
      "diffuseHorizontal_Wm2",
      "windSpeed_ms",
      "windDirection_deg",
      "cloudCover",
    ] as const) {
      let most = 0;
      for (let k = 0; k < 8760; k++) most = Math.max(most, Math.abs(epw.value[column][k]! - csv.value[column][k]!));
      expect(most, column).toBe(0);
    }
    // mbar to Pa is a multiplication, so the last bit may differ.
    for (let k = 0; k < 8760; k++)
      expect(Math.abs(epw.value.pressure_Pa[k]! - csv.value.pressure_Pa[k]!)).toBeLessThan(1e-6);
    // The raw column sums to 6673 in tenths of a millimetre.
    expect(yearSum(csv.value.rain_mm)).toBeCloseTo(667.3, 1);
    expect(csv.issues.some((issue) => /divided by 10/.test(issue.message))).toBe(true);
  });

  test("the rain trap is recognised in the Greensboro file", () => {
    const year = yearOf("USA_NC_Greensboro_723170_TMY3.csv");
    if (year) expect(yearSum(year.rain_mm)).toBeCloseTo(834.5, 1);
  });

  test("the cloud formula repairs the infrared field to 0.5 W/m2 rmse", () => {
    // Clark and Allen 1978, Walton 1983; agreement with the producers' field 0.3 W/m2 rmse (COMPUTED elsewhere).
    for (const name of Object.values(stations)) {
      const year = yearOf(name);
      if (!year) return;
      let square = 0;
      for (let k = 0; k < 8760; k++)
        square +=
          (skyInfrared_Wm2(year.temperature_C[k]!, year.dewPoint_C[k]!, year.cloudCover[k]!) -
            year.skyInfrared_Wm2[k]!) **
            2 /
          8760;
      expect(Math.sqrt(square)).toBeLessThan(0.5);
    }
  });
});

describe.each(Object.entries(stations))("%s against independently computed values", (station, file) => {
  const months = fixture(`${station}-monthly.csv`);
  const column = (name: string): number[] => months.slice(0, 12).map((row) => number(row, name));

  test("sun on four walls agrees by month and year with both sky models", () => {
    const year = yearOf(file);
    if (!year) return;
    for (const [azimuth_deg, letter] of [
      [0, "N"],
      [90, "E"],
      [180, "S"],
      [270, "W"],
    ] as const) {
      for (const [model, reference, perMonth, perYear] of [
        // The same sun and the same instants: rounding only.
        ["isotropic", `iso_meeus_${letter}_kWh_m2`, 0.005, 0.002],
        // Other series for the sun: as far apart as the methods are.
        ["hdkr", `hdkr_mid_${letter}_kWh_m2`, 0.04, 0.02],
        ["isotropic", `iso_int12_${letter}_kWh_m2`, 0.04, 0.02],
      ] as const) {
        const ours = monthSums_k(wallSun_Wm2(year, { azimuth_deg, tilt_deg: 90, groundReflectance: 0.2 }, model));
        const theirs = column(reference);
        ours.forEach((value, k) =>
          expect(Math.abs(value / theirs[k]! - 1), `${reference} month ${k + 1}`).toBeLessThan(perMonth),
        );
        expect(Math.abs(yearSum(ours) / yearSum(theirs) - 1), reference).toBeLessThan(perYear);
      }
    }
  });

  test("hourly sun on the walls agrees to 5 W/m2 or 5 % with the sun above 5 degrees", () => {
    const year = yearOf(file);
    if (!year) return;
    for (const [azimuth_deg, letter] of [
      [0, "N"],
      [90, "E"],
      [180, "S"],
      [270, "W"],
    ] as const)
      for (const model of ["isotropic", "hdkr"] as const) {
        const ours = wallSun_Wm2(year, { azimuth_deg, tilt_deg: 90, groundReflectance: 0.2 }, model);
        for (const row of fixture(`${station}-hours.csv`)) {
          if (number(row, "cosz_mid_meeus") < Math.sin(5 * (Math.PI / 180))) continue;
          const theirs = number(row, `${model === "hdkr" ? "hdkr" : "iso"}_${letter}`);
          const value = ours[hourOf(row)]!;
          expect(
            Math.abs(value - theirs),
            `${letter} ${model} ${row["month"]}/${row["day"]} ${row["hour"]}`,
          ).toBeLessThan(Math.max(5, 0.05 * theirs));
        }
      }
  });

  test("degree days, means, vapour pressure and wet bulb agree", () => {
    const year = yearOf(file);
    if (!year) return;
    const days = degreeDays(year.temperature_C);
    column("HDD18_Kd").forEach((value, k) => expect(days.heating18_Kd[k]).toBeCloseTo(value, 2));
    column("CDD10_Kd").forEach((value, k) => expect(days.cooling10_Kd[k]).toBeCloseTo(value, 2));
    const means = monthlyMeans(year.temperature_C);
    column("Tmean_C").forEach((value, k) => expect(means[k]).toBeCloseTo(value, 2));
    const vapour = monthlyMeans(year.dewPoint_C.map((dew) => saturationPressure_Pa(dew)));
    column("vap_pressure_mean_Pa").forEach((value, k) => expect(Math.abs(vapour[k]! / value - 1)).toBeLessThan(1e-3));
    const wet = monthlyMeans(
      year.temperature_C.map((t, k) => wetBulb_C(t, saturationPressure_Pa(year.dewPoint_C[k]!), year.pressure_Pa[k]!)),
    );
    column("wetbulb_mean_C").forEach((value, k) => expect(Math.abs(wet[k]! - value)).toBeLessThan(0.03));
  });

  test("sol-air temperatures agree, longwave included", () => {
    const year = yearOf(file);
    if (!year) return;
    for (const [azimuth_deg, letter] of [
      [0, "N"],
      [90, "E"],
      [180, "S"],
      [270, "W"],
    ] as const) {
      const sun = wallSun_Wm2(year, { azimuth_deg, tilt_deg: 90, groundReflectance: 0.2 }, "isotropic");
      const solair = year.temperature_C.map((t, k) => t + (0.6 * sun[k]!) / 17);
      const withSky = solair.map(
        (t, k) =>
          t + (0.45 * (year.skyInfrared_Wm2[k]! - stefanBoltzmann_Wm2K4 * (year.temperature_C[k]! + 273.15) ** 4)) / 17,
      );
      column(`solair_${letter}_C`).forEach((value, k) =>
        expect(Math.abs(monthlyMeans(solair)[k]! - value)).toBeLessThan(0.05),
      );
      column(`solair_lw_${letter}_C`).forEach((value, k) =>
        expect(Math.abs(monthlyMeans(withSky)[k]! - value)).toBeLessThan(0.06),
      );
    }
  });
});

test("the annual airfield index of ISO 15927-3 at New York agrees in twelve directions", () => {
  const year = yearOf(stations.newyorkjfk);
  if (!year) return;
  for (const row of fixture("newyorkjfk-driving-rain.csv")) {
    const azimuth = number(row, "wall_azimuth_deg");
    let index = 0;
    let frostFree = 0;
    for (let k = 0; k < 8760; k++) {
      const r = drivingRainIso15927_kgm2h(
        year.windSpeed_ms[k]!,
        windOnWall(year.windDirection_deg[k]!, azimuth),
        year.rain_mm[k]!,
      );
      index += r;
      if (year.temperature_C[k]! >= 0) frostFree += r;
    }
    expect(Math.abs(index - number(row, "ISO15927_3_annual_airfield_index_mm"))).toBeLessThan(0.02);
    expect(Math.abs(frostFree - number(row, "same_excluding_hours_T_below_0C"))).toBeLessThan(0.02);
  }
});

function hourOf(row: Record<string, string>): number {
  const day =
    [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334][number(row, "month") - 1]! + number(row, "day") - 1;
  return day * 24 + number(row, "hour") - 1;
}

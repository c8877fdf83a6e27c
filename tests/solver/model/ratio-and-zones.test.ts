import { expect, test } from "vitest";
import { breakEvenOutdoor_C, leastOutsideShare, thermalZone2018 } from "../../../solver/model/index.ts";
import { roomDewPoint_C } from "../../../solver/model/checks/ratio-line.ts";
import { class3Row } from "../../../solver/model/codes/retarder-tables.ts";
import { zoneOf } from "../../../solver/model/codes/edition.ts";
import { csvRows } from "./csv-rows.ts";

test("the least share outside agrees with the formula's table at every temperature and humidity (COMPUTED, ISO 13788 dew point)", () => {
  for (const row of csvRows("insulation_ratio_formula.csv")) {
    const dew = roomDewPoint_C(Number(row["t_in_C"]), Number(row["rh_in_pct"]) / 100);
    expect(dew).toBeCloseTo(Number(row["dewpoint_C"]), 3);
    expect(leastOutsideShare(Number(row["t_in_C"]), dew, Number(row["t_out_mean_C"]))).toBeCloseTo(
      Number(row["min_Rout_over_Rtotal"]),
      4,
    );
  }
});

test("each ratio survives down to the outdoor mean of its table (COMPUTED)", () => {
  for (const row of csvRows("insulation_ratio_breakeven_outdoor_T.csv"))
    // The table gives the ratio to four digits and the temperature to two.
    expect(
      breakEvenOutdoor_C(21, roomDewPoint_C(21, Number(row["rh_in_pct"]) / 100), Number(row["ratio"])),
    ).toBeCloseTo(Number(row["t_out_at_which_interface_equals_dewpoint_C"]), 1);
});

test("the shares that the Class III table implies follow from its rows (COMPUTED from SEEN rows)", () => {
  for (const row of csvRows("insulation_ratio_implied_by_code.csv")) {
    const held = class3Row("IRC 2021", zoneOf(row["zone"]!)!)!;
    expect(held.over2x4 / (held.over2x4 + 13)).toBeCloseTo(Number(row["ratio_2x4"]), 4);
    for (const cavity of [20, 21, 23])
      expect(held.over2x6 / (held.over2x6 + cavity)).toBeCloseTo(Number(row[`ratio_2x6_R${cavity}`]), 4);
  }
});

test("to 2018 zone 3 parts from 4 by cooling degree-days, unless marine (IRC 2018 Table N1101.7.2(2), SEEN)", () => {
  expect(csvRows("climate_zone_thermal.csv").filter((row) => row["zone"]!.includes("2018"))).toHaveLength(7);
  expect(thermalZone2018(1500, 5200, false)).toBe(1);
  expect(thermalZone2018(1500, 4000, false)).toBe(2);
  expect(thermalZone2018(2200, 2600, false)).toBe(3);
  expect(thermalZone2018(2200, 2400, false)).toBe(4);
  expect(thermalZone2018(1900, 900, true)).toBe(3);
  expect(thermalZone2018(2700, 900, true)).toBe(4);
  expect([3500, 4500, 6000, 7500].map((hdd) => thermalZone2018(hdd, 1000, false))).toEqual([5, 6, 7, 8]);
});

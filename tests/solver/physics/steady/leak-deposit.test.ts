import { expect, it } from "vitest";
import { leakDeposit } from "../../../../solver/physics/steady/index.ts";
import { numberIn, rowsOf } from "./fixtures.ts";

it("leaves the listed water at a cold face, and none at a warm one", () => {
  for (const row of rowsOf("exfiltration_deposit_points.csv")) {
    const indoor = { temperature_C: numberIn(row, "ti_C"), relativeHumidity: numberIn(row, "rh_pct") / 100 };
    const leak = leakDeposit(numberIn(row, "q_L_s_m2") / 1000, indoor, numberIn(row, "t_sheathing_C"));
    // 461.5 against 461.52 J/(kg K) moves the fifth digit.
    expect(leak.roomVapour_kgm3 * 1000).toBeCloseTo(numberIn(row, "v_in_g_m3"), 3);
    expect(leak.faceSaturation_kgm3 * 1000).toBeCloseTo(numberIn(row, "v_sat_g_m3"), 3);
    expect(leak.deposit_kgm2s * 86400 * 1000).toBeCloseTo(numberIn(row, "deposit_g_m2_day"), 2);
  }
});

it("refuses air that leaks inward", () => {
  expect(() => leakDeposit(-1e-5, { temperature_C: 21, relativeHumidity: 0.4 }, -5)).toThrow(/>= 0, got -0.00001/);
});

import { describe, expect, it } from "vitest";
import { decay, decayActivation_h } from "../../../solver/assess/index.ts";
import { decayLoss_percentPerHour } from "../../../solver/assess/decay.ts";
import { hourly, numberIn, rowsOf, steady } from "./fixtures.ts";

describe("decay of pine sapwood", () => {
  it("needs the listed hours to start and then loses the listed mass", () => {
    for (const row of rowsOf("decay_points.csv")) {
      const t = numberIn(row, "T_C");
      const rh = numberIn(row, "RH_pct");
      expect(decayActivation_h(t, rh)).toBeCloseTo(numberIn(row, "activation_hours"), 2);
      expect(decayLoss_percentPerHour(t, rh) * 720).toBeCloseTo(
        numberIn(row, "mass_loss_pct_per_720h_after_activation"),
        4,
      );
    }
  });

  it("loses 4.9 % in the 30 days after its 220 hours at 20 degC in saturated air", () => {
    const course = decay(steady(20, 221 + 720), steady(1, 221 + 720));
    expect(course.activation).toBe(1);
    expect(course.hourOfActivation).toBe(220);
    expect(course.massLoss_percent).toBeCloseTo(4.9104, 2);
  });

  it("falls back by two years of dry air what it gained, and never starts in frost", () => {
    const wetThenDry = decay(
      steady(20, 110 + 17520),
      hourly(110 + 17520, (hour) => (hour < 110 ? 1 : 0.7)),
    );
    expect(wetThenDry.activation).toBeCloseTo(110 / 220.41, 4);
    expect(wetThenDry.massLoss_percent).toBe(0);
    expect(decay(steady(-2, 5000), steady(1, 5000)).activation).toBe(0);
    expect(decay(steady(20, 5000), steady(0.94, 5000)).activation).toBe(0);
  });

  it("has no denominator that turns time backwards", () => {
    for (let t = 0.1; t <= 40; t += 0.1) {
      for (let rh = 95; rh <= 100; rh += 0.1) expect(decayActivation_h(t, rh)).toBeGreaterThan(0);
    }
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  decay,
  mouldCoefficients,
  mouldIndex,
  thirtyDayHumidity,
  woodEquilibrium_percent,
} from "../../../solver/assess/index.ts";

const classes = Object.values(mouldCoefficients);
/** A course of days, each with its own temperature and humidity. */
const weather = fc.array(
  fc.record({ T: fc.double({ min: -10, max: 45, noNaN: true }), RH: fc.double({ min: 0.3, max: 1, noNaN: true }) }),
  { minLength: 31, maxLength: 60 },
);
const hours = (days: readonly { T: number; RH: number }[], shift = 0) => ({
  T: Float64Array.from({ length: days.length * 24 }, (_, hour) => days[Math.floor(hour / 24)]!.T),
  RH: Float64Array.from({ length: days.length * 24 }, (_, hour) =>
    Math.min(1, days[Math.floor(hour / 24)]!.RH + shift),
  ),
});
const runs = { seed: 160, numRuns: 60 };

describe("what every criterion keeps", () => {
  it("never judges damper air to grow less mould, rot less, or average lower", () => {
    fc.assert(
      fc.property(
        weather,
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        fc.constantFrom(...classes),
        (days, more, one) => {
          const dry = hours(days);
          const damp = hours(days, more);
          const less = mouldIndex(dry.T, dry.RH, one, 0.1).max;
          expect(mouldIndex(damp.T, damp.RH, one, 0.1).max).toBeGreaterThanOrEqual(less - 1e-9);
          expect(decay(damp.T, damp.RH).activation).toBeGreaterThanOrEqual(decay(dry.T, dry.RH).activation - 1e-9);
          const rule = thirtyDayHumidity(damp.T, damp.RH)!;
          expect(rule.worst ?? 1).toBeGreaterThanOrEqual((thirtyDayHumidity(dry.T, dry.RH)!.worst ?? 0) - 1e-12);
        },
      ),
      runs,
    );
  });

  it("keeps the index between nothing and the top of its class, and activation between 0 and 1", () => {
    fc.assert(
      fc.property(weather, fc.constantFrom(...classes), (days, one) => {
        const { T, RH } = hours(days);
        const course = mouldIndex(T, RH, one);
        const top = one.a + one.b - one.c;
        expect(Math.min(...course.index)).toBeGreaterThanOrEqual(0);
        expect(course.max).toBeLessThanOrEqual(top + 1e-9);
        const rot = decay(T, RH);
        expect(rot.activation).toBeGreaterThanOrEqual(0);
        expect(rot.activation).toBeLessThanOrEqual(1);
        expect(rot.massLoss_percent).toBeGreaterThanOrEqual(0);
      }),
      runs,
    );
  });

  it("never lets a faster decline leave more mould behind", () => {
    fc.assert(
      fc.property(weather, (days) => {
        const { T, RH } = hours(days);
        const slow = mouldIndex(T, RH, mouldCoefficients.sensitive, 0.1).end;
        expect(mouldIndex(T, RH, mouldCoefficients.sensitive, 1).end).toBeLessThanOrEqual(slow + 1e-9);
      }),
      runs,
    );
  });

  it("lets wood hold more in damper air", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -10, max: 60, noNaN: true }),
        fc.double({ min: 0.05, max: 0.98, noNaN: true }),
        (t, rh) => {
          expect(woodEquilibrium_percent(t, rh + 0.01)).toBeGreaterThan(woodEquilibrium_percent(t, rh));
        },
      ),
      runs,
    );
  });
});

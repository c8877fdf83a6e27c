import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { publishedCheckSteps } from "../../../renderer/published-checks/check-steps.ts";
import { figureWords, shareWords, unitWords } from "../../../renderer/published-checks/figure-words.ts";
import { proofsCsv } from "../../../renderer/published-checks/proofs-csv.ts";
import { publishedChecks, type CheckRow } from "../../../solver/index.ts";

const row = (got: number, tolerance: number): CheckRow => ({
  what: "T",
  unit: "degC",
  expected: 10,
  got,
  tolerance,
  holds: Math.abs(got - 10) <= tolerance,
});

describe("figures of published cases", () => {
  it("show a hundredth of their tolerance, so that a difference that matters is seen", () => {
    expect(figureWords(15.5512, 0.1)).toBe("15.551");
    expect(figureWords(15.5512, 5)).toBe("15.55");
    expect(figureWords(-0.5, 0.01)).toBe("−0.5000");
    expect(figureWords(1e-6, 1e-6)).toBe("1.0 × 10⁻⁶");
    expect(figureWords(0, 1e-6)).toBe("0.000000");
    expect(figureWords(Number.NaN, 1)).toBe("no figure");
  });

  it("tell how much of the tolerance is used", () => {
    expect(shareWords(row(10.05, 0.1))).toBe("50 %");
    expect(shareWords(row(10.2, 0.1))).toBe("200 %");
    expect(shareWords(row(10, 0.1))).toBe("under 1 %");
    expect(shareWords(row(Number.NaN, 0.1))).toBe("no figure");
  });

  it("print units as people write them", () => {
    expect(unitWords("degC")).toBe("°C");
    expect(unitWords("W/(m2 K)")).toBe("W/(m² K)");
    expect(unitWords("kg/m3")).toBe("kg/m³");
    expect(unitWords("-")).toBe("");
  });

  it("are computed step by step, and stop when they are told to", () => {
    const quick = publishedChecks[0]!;
    const steps = publishedCheckSteps(quick.id);
    let step = steps.next();
    let count = 0;
    while (step.done !== true) {
      count += 1;
      step = steps.next();
    }
    expect(count).toBeGreaterThan(0);
    expect(step.value.holds).toBe(true);

    // A longer one: a day is over before its second pause.
    const stopped = publishedCheckSteps(publishedChecks.find((check) => check.slow)!.id);
    stopped.next();
    let end = stopped.next("stop");
    while (end.done !== true) end = stopped.next("stop");
    expect(end.value.holds).toBe(false);
    expect(end.value.failures[0]).toMatch(/^stopped/);

    expect(() => publishedCheckSteps("none")).toThrow(/must be one of/);
  });

  it("are saved with one row a figure and every cell in its column", () => {
    const id = publishedChecks[0]!.id;
    const csv = proofsCsv([
      { id, rows: [row(10.05, 0.1), row(10.2, 0.1)], holds: false, closest: null, failures: [], logs: [] },
    ]);
    const { data, errors } = Papa.parse<Record<string, string>>(csv.trim(), { header: true });
    expect(errors).toEqual([]);
    expect(data.map((each) => each["holds"])).toEqual(["yes", "no"]);
    expect(data[0]!["source"]).toBe(publishedChecks[0]!.source);
  });
});

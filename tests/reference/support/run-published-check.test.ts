import { describe, expect, it } from "vitest";
import { runPublishedCheck, type PublishedCheck } from "../../../solver/studies/published-checks/index.ts";
import { checkNamed, drive } from "./run.ts";

describe("running a published check", () => {
  it("reports progress and names the row that comes closest to its tolerance", () => {
    const run = runPublishedCheck(checkNamed("hamstad-2"));
    let reports = 0;
    let step = run.next();
    while (!step.done) {
      expect(step.value.of).toBe(1000);
      reports += 1;
      step = run.next();
    }
    expect(reports).toBeGreaterThan(2);
    const { closest, rows, logs } = step.value;
    expect(rows).toContain(closest!.row);
    expect(closest!.share).toBeCloseTo(
      Math.max(...rows.map((row) => Math.abs(row.got - row.expected) / row.tolerance)),
      12,
    );
    expect(logs).toHaveLength(1);
  });

  it("does not hold when it is stopped", () => {
    const run = runPublishedCheck(checkNamed("hamstad-2"));
    expect(run.next().done).toBe(false);
    expect(run.next().done).toBe(false);
    let step = run.next("stop");
    while (!step.done) step = run.next("stop");
    expect(step.value.holds).toBe(false);
    expect(step.value.rows).toEqual([]);
    expect(step.value.failures[0]).toMatch(/^stopped after \d+ h$/);
  });

  it("does not hold when the wall is another one", () => {
    const check = checkNamed("slab-film");
    const wrong: PublishedCheck = {
      ...check,
      project: () => {
        const project = check.project();
        return {
          ...project,
          materials: project.materials!.map((material) => ({ ...material, conductivity_WmK: 0.13 })),
        };
      },
    };
    const result = drive(runPublishedCheck(wrong));
    expect(result.holds).toBe(false);
    expect(result.closest!.share).toBeGreaterThan(1);
    expect(result.rows.some((row) => row.holds)).toBe(true);
  });
});

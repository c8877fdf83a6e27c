import { describe, expect, it } from "vitest";
import { fields, totals } from "../../../solver/studies/published-checks/points/tight-roof-year.ts";
import { numbers } from "../support/fixture.ts";
import { expectCheckHolds } from "../support/run.ts";

describe("a roof that is vapour-tight outside", () => {
  it("ships the points of the independent answer", () => {
    const rows = numbers(import.meta.url, "fields.csv");
    expect(fields.map(([hour, , x, T, RH, w]) => [hour * 3600, x, T, RH, w])).toEqual(
      rows.map((row) => [row.time_s, row.x_in_layer_m, row.T_C, row.RH_pct, row.w_kg_m3]),
    );
    expect(totals.map(([hour, water]) => [hour * 3600, ...water])).toEqual(
      numbers(import.meta.url, "totals.csv").map((row) => [
        row.time_s,
        ...[1, 2, 3].map((k) => row[`M_layer${k}_kg_m2`]).filter((value) => value !== undefined),
      ]),
    );
  });

  it("meets the independent answer on the default grid", () => {
    expectCheckHolds("tight-roof-year");
  });
});

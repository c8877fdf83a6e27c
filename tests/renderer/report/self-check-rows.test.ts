import { expect, it } from "vitest";
import { selfCheckRows } from "../../../renderer/report/self-check-rows.ts";
import type { SelfCheck } from "../../../solver/index.ts";

const probe = (label: string, T_K: number, RH: number, w_kgm3: number): SelfCheck["probes"][number] => {
  const difference = (largest: number) => ({ largest, rootMeanSquare: largest / 2 });
  return { id: label, label, T_K: difference(T_K), RH: difference(RH), w_kgm3: difference(w_kgm3) };
};
const check: SelfCheck = {
  cells: 80,
  refinedCells: 160,
  seconds: 0,
  probes: [probe("outer face", 0.02, 0.001, 0.4), probe("inner face", 0.05, 0.004, 0.1)],
};

it("tells of each quantity the largest difference and where it is", () => {
  expect(selfCheckRows("A, stud bay", check, "si")).toEqual([
    { what: "A, stud bay: temperature, at inner face", difference: "0.05 K" },
    { what: "A, stud bay: relative humidity, at inner face", difference: "0.4 points" },
    { what: "A, stud bay: water content, at outer face", difference: "0.40 kg/m³" },
    { what: "A, stud bay: slices, run and rerun", difference: "80 and 160" },
  ]);
});

it("tells temperature differences in degrees Fahrenheit where the reader has inches", () => {
  expect(selfCheckRows("A", check, "ip")[0]!.difference).toBe("0.09 °F");
});

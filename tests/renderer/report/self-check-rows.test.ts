import { expect, it } from "vitest";
import { selfCheckRows } from "../../../renderer/report/self-check-rows.ts";
import type { SelfCheck } from "../../../solver/index.ts";

const probe = (id: string, label: string, T_K: number, RH: number, w_kgm3: number): SelfCheck["probes"][number] => {
  const difference = (largest: number) => ({ largest, rootMeanSquare: largest / 2 });
  return { id, label, T_K: difference(T_K), RH: difference(RH), w_kgm3: difference(w_kgm3) };
};
const check: SelfCheck = {
  cells: 80,
  refinedCells: 160,
  seconds: 0,
  probes: [
    probe("siding-outside", "Outer face of siding", 0.2, 0.03, 40),
    probe("board-inside", "Inner face of board", 0.05, 0.004, 0.4),
    probe("board-mean", "OSB board", 0.01, 0.001, 0.1),
  ],
};
const decisive = { face: "board-inside", wood: "board-mean" };

it("tells what changes where it decides, before the place that changes most", () => {
  expect(selfCheckRows("A, stud bay", check, decisive, "si")).toEqual([
    { what: "A, stud bay: inner face of board", difference: "0.05 K, 0.4 points" },
    { what: "A, stud bay: mean water of OSB board", difference: "0.10 kg/m³" },
    {
      what: "A, stud bay: temperature anywhere, at outer face of siding",
      difference: "0.20 K; root mean square 0.10 K",
    },
    {
      what: "A, stud bay: relative humidity anywhere, at outer face of siding",
      difference: "3.0 points; root mean square 1.5 points",
    },
    {
      what: "A, stud bay: water content anywhere, at outer face of siding",
      difference: "40.00 kg/m³; root mean square 20.00 kg/m³",
    },
    { what: "A, stud bay: slices, run and rerun", difference: "80 and 160" },
  ]);
});

it("leaves out the wood where there is none, and speaks of degrees Fahrenheit where the reader has inches", () => {
  const rows = selfCheckRows("A", check, { face: "board-inside", wood: null }, "ip");
  expect(rows).toHaveLength(5);
  expect(rows[0]!.difference).toBe("0.09 °F, 0.4 points");
});

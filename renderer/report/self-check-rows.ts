import type { ReportInput, SelfCheck, UnitSystem } from "../../solver/index.ts";

type Rows = NonNullable<ReportInput["selfCheck"]>;

/** Largest difference of any place, by quantity, with the place. */
export function selfCheckRows(where: string, check: SelfCheck, units: UnitSystem): Rows {
  const worst = (of: (probe: SelfCheck["probes"][number]) => number): { label: string; value: number } =>
    check.probes.reduce((most, probe) => (of(probe) > most.value ? { label: probe.label, value: of(probe) } : most), {
      label: "",
      value: -Infinity,
    });
  const row = (
    quantity: string,
    { label, value }: { label: string; value: number },
    factor: number,
    digits: number,
    unit: string,
  ): Rows[number] => ({
    what: `${where}: ${quantity}, at ${label}`,
    difference: `${(value * factor).toFixed(digits)} ${unit}`,
  });
  const ip = units === "ip";
  return [
    row(
      "temperature",
      worst((probe) => probe.T_K.largest),
      ip ? 1.8 : 1,
      2,
      ip ? "°F" : "K",
    ),
    row(
      "relative humidity",
      worst((probe) => probe.RH.largest),
      100,
      1,
      "points",
    ),
    row(
      "water content",
      worst((probe) => probe.w_kgm3.largest),
      1,
      2,
      "kg/m³",
    ),
    {
      what: `${where}: slices, run and rerun`,
      difference: `${check.cells} and ${check.refinedCells}`,
    },
  ];
}

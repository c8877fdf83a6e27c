import type { RunResult } from "../../solver/index.ts";

/** Hourly series as text: a header row, a units row, then one row an hour. */
export function hourlyCsv(result: RunResult): string {
  const { probes } = result;
  const rows = [
    ["time_h", ...probes.flatMap(({ id }) => [`${id}.T`, `${id}.RH`, `${id}.w`])].join(","),
    ["h", ...probes.flatMap(() => ["degC", "-", "kg/m3"])].join(","),
  ];
  for (let hour = 0; hour < result.hours; hour++) {
    const row = [String(hour + 1)];
    for (const probe of probes) {
      row.push(probe.T_C[hour]!.toFixed(3), probe.RH[hour]!.toFixed(5), probe.w_kgm3[hour]!.toFixed(4));
    }
    rows.push(row.join(","));
  }
  return `${rows.join("\n")}\n`;
}

import type { RunResult } from "../../../solver/index.ts";

const figure = (value: number): string => String(Number(value.toPrecision(7)));

/** A run as hourly CSV: names, units, then a row for each recorded hour. `time_h` counts from the start of the run. */
export function* csvRows(result: RunResult): Generator<string> {
  const { probes } = result;
  yield ["time_h", ...probes.flatMap((probe) => [`${probe.id}.T`, `${probe.id}.RH`, `${probe.id}.w`])].join(",") + "\n";
  yield ["h", ...probes.flatMap(() => ["degC", "1", "kg/m3"])].join(",") + "\n";
  for (let hour = 0; hour < result.hours; hour++) {
    let row = String(hour + 1);
    for (const probe of probes)
      row += `,${figure(probe.T_C[hour]!)},${figure(probe.RH[hour]!)},${figure(probe.w_kgm3[hour]!)}`;
    yield row + "\n";
  }
}

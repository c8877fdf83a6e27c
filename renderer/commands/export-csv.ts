import { host } from "../host.ts";
import { useProjectStore, useViewStore, view } from "../state/index.ts";
import { currentRun } from "../state/current-run.ts";
import { hourlyCsv } from "./hourly-csv.ts";

/** Saves the hourly results of the path in view. */
export async function exportCsv(): Promise<void> {
  const { option, path } = useViewStore.getState();
  const run = currentRun(option, path);
  if (run?.status !== "finished" || !run.result) {
    view({ notice: "There is no finished run of this path to save. Wait for the run to end, then save again." });
    return;
  }
  const { name } = useProjectStore.getState().project;
  await host.saveText(`${name} ${run.result.option}-${run.result.path}.csv`, hourlyCsv(run.result), "text/csv");
}

import type { ReportInput, RunResult, UnitSystem } from "../../solver/index.ts";
import { NeverBegun, solverPool, type RunningJob, type SelfCheckOutcome } from "../solver-pool/index.ts";
import { selfCheckRows } from "./self-check-rows.ts";
import { setReport, useReportStore, type SelfCheckState } from "./report-store.ts";

type Rows = SelfCheckState["rows"];

let underWay: RunningJob<SelfCheckOutcome> | null = null;

/**
 * Runs the drawn path of each option again, on a grid twice as fine and at a tenth of the tolerance, one after the other, and keeps
 * the largest differences.
 */
export async function checkSelf(
  signature: string,
  input: ReportInput,
  runs: readonly { readonly case: ReportInput["options"][number]["shown"]; readonly result: RunResult }[],
  units: UnitSystem,
): Promise<void> {
  stopSelfCheck();
  const mine = (): boolean => useReportStore.getState().selfCheck?.signature === signature;
  const note = (change: Partial<SelfCheckState>): void => {
    const before = useReportStore.getState().selfCheck;
    if (before && mine()) setReport({ selfCheck: { ...before, ...change } });
  };
  setReport({ selfCheck: { signature, status: "running", share: 0, rows: [], failure: null } });
  const rows: Rows[number][] = [];
  const drawn = runs.filter((run) =>
    input.options.some((option) => option.shown.option === run.case.option && option.shown.path === run.case.path),
  );
  for (const [index, { case: aCase, result }] of drawn.entries()) {
    let told = 0;
    const job = solverPool.selfCheck(
      {
        case: aCase,
        onProgress: (done, of) => {
          const share = (index + done / of) / drawn.length;
          if (share - told < 0.01) return;
          told = share;
          note({ share });
        },
      },
      result,
    );
    underWay = job;
    try {
      const outcome = await job.outcome;
      if (!mine() || underWay !== job) return;
      if (outcome.kind === "issues")
        return note({ status: "failed", failure: outcome.issues[0]?.message ?? "It could not begin." });
      if (outcome.check === null) return note({ status: "stopped" });
      const { plane } = input.options.find((option) => option.id === aCase.option)!.summary;
      const decisive = { face: `${plane.layer}-inside`, wood: plane.wood === null ? null : `${plane.wood}-mean` };
      const where = `${aCase.option}, ${aCase.pathName.toLowerCase()}`;
      rows.push(...selfCheckRows(where, outcome.check, decisive, units));
    } catch (error) {
      if (underWay !== job) return;
      if (error instanceof NeverBegun) return note({ status: "stopped" });
      return note({ status: "failed", failure: error instanceof Error ? error.message : String(error) });
    }
  }
  underWay = null;
  note({ status: "finished", share: 1, rows });
}

export function stopSelfCheck(): void {
  underWay?.stop();
}

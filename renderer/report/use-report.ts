import { useEffect, useMemo } from "react";
import { reportOf, type Option, type Report, type UnitSystem } from "../../solver/index.ts";
import { NeverBegun, solverPool } from "../solver-pool/index.ts";
import { useProject, useProjectStore, useUnits, useViewStore } from "../state/index.ts";
import { useRunsStore } from "../state/runs-store.ts";
import { useAskedAnswers } from "./asked-answers.ts";
import { setReport, useReportStore } from "./report-store.ts";
import { standingOf, type Standing } from "./standing.ts";
import { versions } from "./versions.ts";

export interface ReportInView {
  readonly options: readonly Option[];
  readonly standing: Standing;
  /** The last that was made; of an earlier wall unless `isCurrent`. */
  readonly report: Report | null;
  readonly isCurrent: boolean;
  /** Runs and manner of speaking that the report is made of; null while the board is not whole. */
  readonly signature: string | null;
  readonly failure: { readonly message: string; readonly remedy: string } | null;
}

const today = (): string => new Date().toLocaleDateString("en-GB", { day: "numeric", month: "short", year: "numeric" });

/** Makes the report anew whenever the board is whole and differs from the one it was made of. */
export function useReport(): ReportInView {
  const project = useProject();
  const edit = useProjectStore((state) => state.edit);
  const units: UnitSystem = useUnits() === "si" ? "si" : "ip";
  const edition = useViewStore((state) => state.edition);
  const slots = useRunsStore((state) => state.slots);
  const entries = useRunsStore((state) => state.entries);
  const { without, made, failure, question, selfCheck } = useReportStore();
  const answers = useAskedAnswers(project);
  const options = useMemo(() => project.options.filter((option) => !without.includes(option.id)), [project, without]);
  const standing = useMemo(() => standingOf(options, { slots, entries }), [options, slots, entries]);
  const signature = standing.kind === "ready" ? `${units} ${edition} ${project.name} ${standing.signature}` : null;
  const isCurrent = signature !== null && made?.signature === signature;
  const failed = failure?.signature === signature ? failure : null;

  useEffect(() => {
    if (standing.kind !== "ready" || signature === null) return;
    if (useReportStore.getState().made?.signature === signature) return;
    const order = { project, runs: standing.runs, edition, units, versions: versions() };
    const job = solverPool.report(order);
    job.outcome.then(
      (outcome) => {
        if (outcome.kind === "input") setReport({ made: { signature, input: outcome.input }, failure: null });
        else {
          const first = outcome.issues[0]!;
          setReport({ failure: { signature, message: first.message, remedy: first.remedy } });
        }
      },
      (error: unknown) => {
        if (error instanceof NeverBegun) return;
        const message = `The report could not be made: ${error instanceof Error ? error.message : String(error)}.`;
        setReport({ failure: { signature, message, remedy: "Run again; then open this sheet again." } });
      },
    );
    return () => job.stop();
    // What the signature stands for is what matters, not that the objects are new.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [signature]);

  // Before the first edit of a document there is no earlier wall: what was made is of another document.
  const last = isCurrent || (edit !== null && made?.input.project.name === project.name) ? made : null;
  const checked = selfCheck !== null && selfCheck.signature === last?.signature && selfCheck.status === "finished";
  const report = useMemo(
    () =>
      last === null
        ? null
        : reportOf({
            ...last.input,
            answers: isCurrent ? answers : {},
            ...(question.trim() === "" ? {} : { question: question.trim() }),
            selfCheck: checked ? selfCheck.rows : null,
            issued: `draft, ${today()}`,
          }),
    [last, isCurrent, answers, question, checked, selfCheck],
  );

  useEffect(() => setReport({ current: isCurrent ? report : null }), [isCurrent, report]);
  return { options, standing, report, isCurrent, signature, failure: failed };
}

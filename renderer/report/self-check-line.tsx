import type { ReportInput, UnitSystem } from "../../solver/index.ts";
import { useReportStore } from "./report-store.ts";
import { checkSelf, stopSelfCheck } from "./self-check.ts";
import type { Standing } from "./standing.ts";

/** Asks for the rerun on a finer grid, and says how far it is. */
export function SelfCheckLine({
  signature,
  input,
  standing,
  units,
}: {
  readonly signature: string;
  readonly input: ReportInput;
  readonly standing: Extract<Standing, { kind: "ready" }>;
  readonly units: UnitSystem;
}) {
  const check = useReportStore((state) => state.selfCheck);
  const own = check?.signature === signature ? check : null;
  const ask = (words: string) => (
    <button type="button" className="verb" onClick={() => void checkSelf(signature, input, standing.runs, units)}>
      {words}
    </button>
  );
  return (
    <section className="report-self-check" aria-label="Self-check">
      <h2 className="report-head">Self-check</h2>
      <p className="note">
        Each drawn path again, on a grid twice as fine and at a tenth of the tolerance. It takes some times as long as
        the run.
      </p>
      <p role="status">
        {own === null && ask("Run the self-check")}
        {own?.status === "running" && (
          <>
            {Math.round(own.share * 100)} % done.{" "}
            <button type="button" className="verb" onClick={stopSelfCheck}>
              Stop
            </button>
          </>
        )}
        {own?.status === "stopped" && <>Stopped; nothing of it is kept. {ask("Run it again")}</>}
        {own?.status === "failed" && (
          <>
            <span className="pencil">{own.failure}</span> {ask("Run it again")}
          </>
        )}
        {own?.status === "finished" && "Done; the differences stand in the table."}
      </p>
    </section>
  );
}

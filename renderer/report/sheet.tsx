import { useEffect, useMemo, useRef } from "react";
import { papers, reportSheets } from "../../solver/index.ts";
import { ProofSheet } from "../published-checks/proof-sheet.tsx";
import { runAgain, useProject, useUnits, view } from "../state/index.ts";
import { Contents, Settings } from "./contents.tsx";
import { PageList } from "./page-list.tsx";
import { PaperView, type PaperHandle } from "./paper-view.tsx";
import { useReportStore } from "./report-store.ts";
import { SelfCheckLine } from "./self-check-line.tsx";
import { useReport, type ReportInView } from "./use-report.ts";
import { Verbs } from "./verbs.tsx";
import "./report.css";

/** The report as it will be printed: pages at left, the sheets of paper, what stands on them at right. */
export default function ReportSheet() {
  const page = useReportStore((state) => state.page);
  return page === "proof" ? <ProofInReport /> : <Pages page={page} />;
}

function ProofInReport() {
  useEffect(() => view({ scale: "as noted" }), []);
  return (
    <div className="report report-proof">
      <div className="report-left" data-pane="Pages" tabIndex={-1}>
        <PageList />
      </div>
      <ProofSheet />
    </div>
  );
}

function Pages({ page }: { readonly page: Exclude<ReturnType<typeof useReportStore.getState>["page"], "proof"> }) {
  const project = useProject();
  const units = useUnits() === "si" ? "si" : "ip";
  const { paper, made } = useReportStore();
  const inView = useReport();
  const { report, isCurrent, standing, signature } = inView;
  const handle = useRef<PaperHandle>(null);
  const all = useMemo(() => (report === null ? [] : reportSheets(report, { paper, ownType: true })), [report, paper]);
  const sheets = useMemo(() => all.filter((sheet) => sheet.reader === page), [all, page]);
  const walls = report?.pages.client.blocks.find((block) => block.kind === "walls");
  const scale = walls?.kind === "walls" ? ` · walls 1:${walls.scale}` : "";
  useEffect(() => view({ scale: `${papers[paper].words}${scale}` }), [paper, scale]);
  const title = sheets[0]?.title ?? "Report";

  return (
    <div className="report">
      <div className="report-left" data-pane="Pages" tabIndex={-1}>
        <PageList />
        <Verbs page={page} able={isCurrent} sentence={sentenceOf(inView)} />
      </div>
      <div className="report-middle" data-pane="Paper" tabIndex={-1}>
        <StateOf inView={inView} />
        {sheets.length > 0 && (
          <PaperView
            sheets={sheets}
            paper={paper}
            stale={!isCurrent}
            label={`${title}: ${sheets.length === 1 ? "one sheet" : `${sheets.length} sheets`}`}
            handle={handle}
          />
        )}
      </div>
      <div className="report-right" data-pane="On this page" tabIndex={-1}>
        {sheets.length > 0 && (
          <Contents anchors={sheets.flatMap((sheet) => sheet.anchors)} onChoose={(id) => handle.current?.show(id)} />
        )}
        {page === "books" && isCurrent && standing.kind === "ready" && signature !== null && made !== null && (
          <SelfCheckLine signature={signature} input={made.input} standing={standing} units={units} />
        )}
        <Settings options={project.options} />
      </div>
    </div>
  );
}

/** Why the report can be saved, or why it cannot. */
function sentenceOf({ isCurrent, report, standing }: ReportInView): string {
  if (isCurrent) return "The report is built from the runs that you see. It cannot be saved while a result is stale.";
  if (report !== null)
    return "This report is of an earlier wall, so it cannot be saved. It is made anew when every path is current.";
  return standing.kind === "broken" || standing.kind === "nothing"
    ? "There is no report to save: not every path has a result."
    : "There is no report to save yet: its runs are under way.";
}

/** What the sheets wait for, or which edit made them old. */
function StateOf({ inView }: { readonly inView: ReportInView }) {
  const { standing, failure, report, isCurrent } = inView;
  if (isCurrent) return null;
  const edit = standing.kind === "waiting" || standing.kind === "broken" ? standing.edit : null;
  const className = report === null ? "report-empty" : "report-state";
  return (
    <div className={className} role="status">
      {report === null && <h1 className="lead">There is no report yet.</h1>}
      {report !== null && (
        <p className="strong">{edit === null ? "For an earlier choice." : `For an earlier wall, before “${edit}”.`}</p>
      )}
      {failure !== null ? (
        <p>
          <span className="pencil">{failure.message}</span> {failure.remedy}
        </p>
      ) : standing.kind === "waiting" ? (
        <p>
          {standing.done} of {standing.of} paths are current; the report is made when all are.
        </p>
      ) : standing.kind === "ready" ? (
        <p>The report is being made.</p>
      ) : (
        <p>
          <span className="pencil">{standing.sentence}</span>{" "}
          {standing.kind === "broken" && (
            <button type="button" className="verb" onClick={runAgain}>
              Run again
            </button>
          )}
        </p>
      )}
    </div>
  );
}

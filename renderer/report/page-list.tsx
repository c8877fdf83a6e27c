import { setReport, useReportStore, type PageId } from "./report-store.ts";

const pages: readonly (readonly [PageId, string, string])[] = [
  ["client", "Client", "the picture and the answer"],
  ["official", "Official", "table, row, class, method"],
  ["builder", "Builder", "order, limits, swaps"],
  ["appendix", "Appendix", "findings, inputs, sources"],
  ["books", "Books", "balance, rerun, versions"],
  ["proof", "Proof sheet", "known answers, run here"],
];

/** The pages of the report, and behind them the sheet that shows what the solver is held against. */
export function PageList() {
  const page = useReportStore((state) => state.page);
  return (
    <nav aria-label="Pages">
      <ol className="report-pages">
        {pages.map(([id, title, about], index) => (
          <li key={id} className={id === "proof" ? "report-apart" : undefined}>
            <button
              type="button"
              className="report-page"
              aria-current={page === id ? "page" : undefined}
              onClick={() => setReport({ page: id })}
            >
              <span className="report-page-title">{id === "proof" ? title : `${index + 1} ${title}`}</span>
              <span className="note">{about}</span>
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}

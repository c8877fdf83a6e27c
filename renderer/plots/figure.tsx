import { useCallback, useId, useRef, useState, type KeyboardEvent, type ReactNode } from "react";
import { host } from "../host.ts";
import { pngOf, svgDocument } from "./export-picture.ts";
import { csvOf, type TableTwin } from "./table-twin.ts";
import { useChartTokens } from "./tokens.ts";
import "./plots.css";

export type SvgMaker = () => Promise<string>;

export interface FigureProps {
  readonly title: string;
  /** One sentence that says what the chart shows, computed from the same figures. */
  readonly summary: string;
  readonly table: () => TableTwin;
  /** Words beside the title: unit, a choice of quantity. */
  readonly beside?: ReactNode;
  readonly className?: string;
  /** False: the title is read out but not drawn. */
  readonly titled?: boolean;
  readonly fileName: string;
  /** The drawing. It is handed the place to leave its picture maker for export. */
  readonly children: (keepPicture: (svg: SvgMaker) => void) => ReactNode;
}

/** A labelled figure: title, sentence, chart; T turns it to its table and back; copy and save beside it. */
export function Figure({
  title,
  summary,
  table,
  beside,
  className,
  titled = true,
  fileName,
  children,
}: FigureProps): React.JSX.Element {
  const id = useId();
  const tokens = useChartTokens();
  const picture = useRef<SvgMaker | null>(null);
  const keepPicture = useCallback((svg: SvgMaker) => {
    picture.current = svg;
  }, []);
  const [asTable, setAsTable] = useState(false);
  const [said, setSaid] = useState("");

  const onKeyDown = (event: KeyboardEvent): void => {
    const target = event.target as HTMLElement;
    if (event.key.toLowerCase() !== "t" || event.ctrlKey || event.metaKey || event.altKey) return;
    if (target.closest("select, input:not([type=range]), textarea")) return;
    event.preventDefault();
    setAsTable((before) => !before);
  };
  const attempt = (done: string, work: () => Promise<unknown>): void => {
    void work().then(
      () => setSaid(done),
      (reason: unknown) => setSaid(reason instanceof Error ? reason.message : "That could not be done."),
    );
  };
  const withSvg = async (save: (svg: string) => Promise<unknown>): Promise<void> => {
    if (!picture.current) throw new Error("The chart is not drawn yet. Close the table, then save it.");
    await save(svgDocument(await picture.current(), title, tokens));
  };

  return (
    <div
      className={`figure ${className ?? ""}`}
      role="group"
      aria-labelledby={`${id}-title`}
      aria-describedby={`${id}-says`}
      tabIndex={0}
      onKeyDown={onKeyDown}
    >
      <div className={titled ? "figure-head" : "figure-head figure-head-bare"}>
        <h2 id={`${id}-title`} className={titled ? "figure-title" : "visually-hidden"}>
          {title}
        </h2>
        {beside}
        <span className="figure-verbs">
          <button type="button" className="verb" aria-pressed={asTable} title="T" onClick={() => setAsTable(!asTable)}>
            table
          </button>
          <span className="figure-more">
            <button
              type="button"
              className="verb"
              onClick={() => attempt("Table copied.", () => navigator.clipboard.writeText(csvOf(table())))}
            >
              copy
            </button>
            <button
              type="button"
              className="verb"
              onClick={() =>
                attempt("Picture saved.", () =>
                  withSvg((svg) => host.saveText(`${fileName}.svg`, svg, "image/svg+xml")),
                )
              }
            >
              SVG
            </button>
            <button
              type="button"
              className="verb"
              onClick={() =>
                attempt("Picture saved.", () =>
                  withSvg(async (svg) => downloadPicture(`${fileName}.png`, await pngOf(svg))),
                )
              }
            >
              PNG
            </button>
          </span>
        </span>
      </div>
      <div className="figure-body">
        {children(keepPicture)}
        {asTable && <Table {...table()} summary={summary} label={title} />}
      </div>
      <p id={`${id}-says`} className="visually-hidden">
        {summary} Press T for the table.
      </p>
      <span className="visually-hidden" role="status">
        {said}
      </span>
    </div>
  );
}

function Table({ columns, rows, summary, label }: TableTwin & { summary: string; label: string }): React.JSX.Element {
  return (
    <div className="figure-table" tabIndex={0} role="region" aria-label={`${label}, as a table`}>
      <p className="figure-sentence">{summary}</p>
      <table>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={index}>
              {row.map((cell, column) =>
                column === 0 ? (
                  <th key={column} scope="row">
                    {cell}
                  </th>
                ) : (
                  <td key={column}>{cell}</td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** The host saves texts; a picture of pixels leaves by the page's own download. */
function downloadPicture(name: string, picture: Blob): Promise<void> {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(picture);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  return Promise.resolve();
}

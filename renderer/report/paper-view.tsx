import { useEffect, useImperativeHandle, useLayoutEffect, useMemo, useRef, type Ref } from "react";
import { papers, sheetStyle, type Paper, type ReportSheet } from "../../solver/index.ts";
import { useSize } from "../plots/use-size.ts";

export interface PaperHandle {
  /** Brings a place of the contents into view and marks it. */
  show(id: string): void;
}

/** Largest and least size of the sheets beside their true one. */
const sizes = { least: 0.6, most: 1.5 };
const shadowStyle = `:host { display: block; } .sheets { display: grid; gap: 24px; justify-content: start; } .sheet { box-shadow: none; outline: 1px solid #666C74; }`;

/**
 * Sheets of paper at the size that the window has room for, one under the other. They stand in a tree of their own, so that the
 * report's style and the window's do not meet; it holds drawings and text that the report's own dress has escaped, and no script.
 */
export function PaperView({
  sheets,
  paper,
  stale,
  label,
  handle,
}: {
  readonly sheets: readonly ReportSheet[];
  readonly paper: Paper;
  readonly stale: boolean;
  readonly label: string;
  readonly handle: Ref<PaperHandle>;
}) {
  const [frame, size] = useSize<HTMLDivElement>();
  const host = useRef<HTMLDivElement>(null);
  const { width, height } = papers[paper];
  const zoom = Math.max(sizes.least, Math.min(sizes.most, (size.width - 2) / width, (size.height - 2) / height));
  const html = useMemo(
    () =>
      `<style>${sheetStyle()}${shadowStyle}</style><div class="sheets">${sheets.map((sheet) => sheet.html).join("")}</div>`,
    [sheets],
  );

  useLayoutEffect(() => {
    const element = host.current!;
    const root = element.shadowRoot ?? element.attachShadow({ mode: "open" });
    root.innerHTML = html;
  }, [html]);

  useEffect(() => {
    // Newer engines answer a scroll with a promise, which is no clean-up.
    void frame.current?.scrollTo(0, 0);
  }, [label, frame]);

  useImperativeHandle(handle, () => ({
    show(id) {
      const place = host.current?.shadowRoot?.getElementById(id);
      place?.focus({ preventScroll: true });
      place?.scrollIntoView({ block: "nearest" });
    },
  }));

  return (
    <div ref={frame} className="report-frame" role="region" aria-label={label} tabIndex={0}>
      <div className={stale ? "report-stale" : undefined} style={{ width: width * zoom + 2, marginInline: "auto" }}>
        <div ref={host} style={{ zoom, padding: 1 / zoom }} />
      </div>
    </div>
  );
}

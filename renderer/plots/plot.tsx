import { useEffect, useRef } from "react";
import type { Data, Layout, PlotlyHTMLElement } from "plotly.js";

export type { Data as PlotData, Layout as PlotLayout } from "plotly.js";

type Library = typeof import("./plotly.ts");
let loading: Promise<Library> | null = null;
const library = (): Promise<Library> => (loading ??= import("./plotly.ts"));

/** Charts are pictures here: cursor, table and keys are the page's own. */
const config = { staticPlot: true, displayModeBar: false, responsive: false } as const;

export interface PlotProps {
  readonly data: Data[];
  /** With width and height; a new object each time something changed. */
  readonly layout: Partial<Layout>;
  /** Called with a maker of the chart's own SVG text, for export. */
  readonly onDrawn?: (svg: () => Promise<string>) => void;
}

/** Draws one chart; updates in place; leaves nothing behind when it goes (also when mounted twice). */
export function Plot({ data, layout, onDrawn }: PlotProps): React.JSX.Element {
  const place = useRef<HTMLDivElement>(null);

  useEffect(() => {
    const element = place.current;
    let gone = false;
    if (!element || !layout.width || !layout.height) return;
    void library().then(async ({ react, toImage }) => {
      if (gone) return;
      const drawn = await react(element, data, layout, config);
      if (gone) return;
      element.dataset["drawn"] = "";
      onDrawn?.(() => svgText(toImage, drawn));
    });
    return () => {
      gone = true;
    };
  }, [data, layout, onDrawn]);

  useEffect(() => {
    const element = place.current;
    return () => {
      if (element) void loading?.then(({ purge }) => purge(element));
    };
  }, []);

  return <div ref={place} className="plot" aria-hidden="true" />;
}

async function svgText(toImage: Library["toImage"], drawn: PlotlyHTMLElement): Promise<string> {
  const uri = await toImage(drawn, { format: "svg", width: drawn.clientWidth, height: drawn.clientHeight });
  return decodeURIComponent(uri.replace(/^data:image\/svg\+xml,/, ""));
}

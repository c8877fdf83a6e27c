import type { Frame } from "./chart-layout.ts";

export interface MapState {
  readonly kind: "finished" | "running" | "stale" | "stopped" | "empty";
  /** Share of the time axis that the march has done (running) or that is held (stopped), 0..1. */
  readonly share?: number;
  /** Words at the pencil line of a run that stopped. */
  readonly at?: string;
  /** Gaps without data, as shares of the time axis. */
  readonly gaps?: readonly { readonly from: number; readonly to: number }[];
}

/** What a result's state does to its picture: struck, wiped, cut, framed or dotted. Drawn in the plot's own pixels. */
export function MapStateOverlay({ state, frame }: { state: MapState; frame: Frame }): React.JSX.Element {
  const width = frame.width - frame.left - frame.right;
  const height = frame.height - frame.top - frame.bottom;
  const x = Math.round((state.share ?? 1) * width);
  return (
    <>
      <defs>
        <pattern id="struck" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0.5" x2="0.5" y1="0" y2="9" className="struck-line" />
        </pattern>
        <pattern id="dotted" width="10" height="10" patternUnits="userSpaceOnUse">
          <circle cx="5" cy="5" r="0.9" className="gap-dot" />
        </pattern>
      </defs>
      {state.kind === "stale" && <rect width={width} height={height} className="map-veil" />}
      {state.kind === "stale" && <rect width={width} height={height} fill="url(#struck)" />}
      {state.kind === "running" && <rect width={x} height={height} className="map-blank" />}
      {state.kind === "running" && <rect x={x} width={Math.max(0, width - x)} height={height} className="map-veil" />}
      {state.kind === "running" && <line x1={x} x2={x} y1={0} y2={height} className="wipe-edge" />}
      {state.gaps?.map(({ from, to }) => (
        <g key={from}>
          <rect x={from * width} width={(to - from) * width} height={height} className="map-blank" />
          <rect x={from * width} width={(to - from) * width} height={height} fill="url(#dotted)" />
        </g>
      ))}
      {state.kind === "stopped" && <line x1={x} x2={x} y1={-5} y2={height + 5} className="stop-line" />}
      {state.kind === "stopped" && state.at && (
        <text
          x={x > width - 110 ? x - 8 : x + 8}
          textAnchor={x > width - 110 ? "end" : "start"}
          y={18}
          className="stop-words"
        >
          {state.at}
        </text>
      )}
      <rect
        width={width}
        height={height}
        className={state.kind === "empty" ? "map-frame map-frame-empty" : "map-frame"}
      />
    </>
  );
}

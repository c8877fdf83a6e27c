import { useEffect, useMemo, useState } from "react";
import type { Finding, RunResult } from "../../solver/index.ts";
import { timeScaleOf, dailyMeans, hourly, type Quantity } from "../plots/series.ts";
import type { TimeScale } from "../plots/calendar.ts";
import type { MapQuantity } from "../plots/map-chart.ts";
import { ScaleBar } from "../plots/scale-bar.tsx";
import { SectionStrip, type DrawnWall } from "../plots/section-strip.tsx";
import { mapStateOf, StateLine } from "../plots/state-line.tsx";
import { DateSlider } from "../plots/time-chart.tsx";
import { ThroughWallMap } from "../plots/through-wall-map.tsx";
import { useSize } from "../plots/use-size.ts";
import { depthScale, layerSpans, wallThickness_m, watchedLayer } from "../plots/wall-depths.ts";
import type { RunView, Units } from "../state/index.ts";
import { Sentence } from "../units/index.ts";
import { DayPanel } from "./day-panel.tsx";
import { DaysAboveCurve, DaysAboveStrip } from "./days-above.tsx";
import { AllFindings, FindingsList } from "./findings-list.tsx";
import { InterfaceLines } from "./interface-lines.tsx";
import { placesOf } from "./places.ts";
import "./year.css";

export interface YearViewProps {
  readonly run: RunView;
  /** The wall as it is drawn now; shown while no result is there. */
  readonly planned: DrawnWall;
  readonly lead: string;
  readonly findings: readonly Finding[];
  /** What the model leaves out; stands under the findings. */
  readonly cautions: readonly string[];
  readonly units: Units;
  readonly day: number;
  readonly onDay: (day: number) => void;
  readonly onScale: (words: string) => void;
  readonly fileName: string;
}

/** Heights that do not depend on the wall [px]: title rows, months, slider, strip, lines, findings, the gaps between. */
const titleRow = 22;
const monthRow = 24;
const ticksLeft = 40;
const leastLines = 128;
/** Below this width, as at large type, everything stands in one column and the sheet scrolls; year.css has the same figure. */
const narrowSheet_px = 900;
const roomOfNarrow_px = 240;

const emptyTime: TimeScale = { days: 365, startDay: 273 };

export function YearView({
  run,
  planned,
  lead,
  findings,
  cautions,
  units,
  day,
  onDay,
  onScale,
  fileName,
}: YearViewProps): React.JSX.Element {
  const [sheet, sheetSize] = useSize<HTMLDivElement>();
  const [column, columnSize] = useSize<HTMLDivElement>();
  const [side, sideSize] = useSize<HTMLDivElement>();
  const [lines, linesSize] = useSize<HTMLDivElement>();
  const [leadLine, leadSize] = useSize<HTMLHeadingElement>();
  const [foot, footSize] = useSize<HTMLElement>();
  const [mapQuantity, setMapQuantity] = useState<MapQuantity>("humidity");
  const [quantity, setQuantity] = useState<Quantity>("moisture");
  const [chosenPlace, setPlace] = useState<string | null>(null);

  const result = run.result ?? null;
  const wall: DrawnWall = run.case ?? planned;
  const spans = useMemo(() => layerSpans(wall.layers), [wall]);
  const watched = useMemo(() => watchedLayer(wall), [wall]);
  const places = useMemo(() => placesOf(wall), [wall]);
  const place = places.some(({ id }) => id === chosenPlace) ? chosenPlace! : (watched?.id ?? places[0]?.id ?? "");
  const time = useMemo(
    () => (result && run.case ? timeScaleOf(result, run.case.exposure.kind === "lab") : emptyTime),
    [result, run.case],
  );
  const shownDay = Math.min(day, time.days - 1);
  const humidity = useMemo(
    () => ({ inner: faceHumidity(result, watched?.id, "inside"), outer: faceHumidity(result, watched?.id, "outside") }),
    [result, watched],
  );

  const wide = sheetSize.width >= 1500;
  const narrow = sheetSize.width < narrowSheet_px;
  // What the map may have is what the sentence, the findings and the least height of the lines leave of the sheet.
  const rows = 14 + titleRow + monthRow + 18 + 36 + 5 + leastLines + 24;
  const room = narrow
    ? roomOfNarrow_px
    : Math.max(150, Math.max(sheetSize.height, 560) - leadSize.height - (wide ? 0 : footSize.height) - rows);
  const scale = depthScale(wallThickness_m(wall.layers), room);
  const height = Math.round(scale.height_px);
  useEffect(() => onScale(`depth 1:${scale.oneTo}`), [onScale, scale.oneTo]);

  const state = mapStateOf(run, time);
  const faded = run.status === "stale" || run.status === "running";
  const watched_m = spans.find(({ layer }) => layer === watched)?.to_m ?? null;

  return (
    <div className="year-sheet">
      <div ref={sheet} className={wide ? "year year-wide" : "year"}>
        <h1 ref={leadLine} className="lead year-lead">
          <Sentence text={lead} />
        </h1>
        <div className="year-strip" style={{ paddingTop: titleRow }}>
          <span className="strip-side outside">outside</span>
          <SectionStrip wall={wall} height={height} width={wide ? 76 : 60} units={units} strong={watched?.id ?? null} />
          <span className="strip-side inside">inside</span>
        </div>
        <div className="year-map" ref={column} data-pane="Through-wall map" tabIndex={-1}>
          <ThroughWallMap
            result={result}
            spans={spans}
            time={time}
            quantity={mapQuantity}
            onQuantity={setMapQuantity}
            units={units}
            width={columnSize.width}
            height={height}
            foot={monthRow}
            tail={monthRow}
            day={shownDay}
            onDay={onDay}
            state={state}
            fileName={`${fileName}-${mapQuantity}`}
          />
          <DateSlider time={time} day={shownDay} onDay={onDay} />
        </div>
        <div className="year-day" ref={side} data-pane="Section of the day" tabIndex={-1}>
          <DayPanel
            result={result}
            spans={spans}
            time={time}
            day={shownDay}
            watched_m={watched_m}
            units={units}
            width={sideSize.width}
            height={height}
            faded={faded}
            fileName={`${fileName}-day`}
          />
          <ScaleBar quantity={mapQuantity} units={units} />
        </div>
        <span className="year-strip-name">{run.status === "finished" && humidity.inner ? "Days above 80 %" : ""}</span>
        <div className="year-days" data-pane="Days above 80 %" tabIndex={-1}>
          {run.status === "finished" && humidity.inner ? (
            <DaysAboveStrip
              humidity={humidity.inner}
              time={time}
              width={columnSize.width}
              fileName={`${fileName}-days`}
            />
          ) : (
            <StateLine run={run} time={time} />
          )}
        </div>
        <div className="year-lines" ref={lines} data-pane="Interfaces" tabIndex={-1}>
          <InterfaceLines
            result={result}
            wall={wall}
            places={places}
            place={place}
            onPlace={setPlace}
            quantity={quantity}
            onQuantity={setQuantity}
            time={time}
            day={shownDay}
            onDay={onDay}
            units={units}
            width={columnSize.width}
            height={Math.max(leastLines - titleRow, linesSize.height - titleRow)}
            left={ticksLeft}
            faded={faded}
            fileName={`${fileName}-${quantity}`}
          />
        </div>
        <div className="year-curve" data-pane="Days spent above each humidity" tabIndex={-1}>
          <DaysAboveCurve
            inner={humidity.inner}
            outer={humidity.outer}
            time={time}
            width={sideSize.width}
            height={Math.max(leastLines - titleRow, linesSize.height - titleRow)}
            faded={faded}
            fileName={`${fileName}-days-above`}
          />
        </div>
        <FindingsList
          place={foot}
          findings={findings}
          cautions={cautions}
          units={units}
          most={wide ? 4 : 3}
          wide={wide}
        />
      </div>
      <AllFindings findings={findings} cautions={cautions} units={units} />
    </div>
  );
}

function faceHumidity(
  result: RunResult | null,
  layer: string | undefined,
  side: "inside" | "outside",
): Float64Array | null {
  const probe = result?.probes.find(({ id }) => id === `${layer}-${side}`);
  if (!result || !probe) return null;
  const days = dailyMeans(hourly(result, probe, "humidity"));
  return days.length > 0 ? days : null;
}

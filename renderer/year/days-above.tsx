import { useMemo } from "react";
import { spanName, type TimeScale } from "../plots/calendar.ts";
import type { Frame } from "../plots/chart-layout.ts";
import { daysAboveChart, daysAboveStrip } from "../plots/days-above-chart.ts";
import { daysAbove, daysAboveCurve, spellsAbove } from "../plots/days-above.ts";
import { Figure } from "../plots/figure.tsx";
import { lineStyle } from "../plots/line-styles.ts";
import { Plot } from "../plots/plot.tsx";
import { useChartTokens } from "../plots/tokens.ts";

/** "84 days at the inner face, 16 of them above 90 %" */
export function daysAboveWords(humidity: ArrayLike<number>): string {
  const above80 = daysAbove(humidity, 80);
  const above90 = daysAbove(humidity, 90);
  if (above80 === 0) return "no day at the inner face";
  const days = above80 === 1 ? "1 day" : `${above80} days`;
  return `${days} at the inner face, ${above90 === 0 ? "none" : above90 === above80 ? "all" : above90} ${above90 === 0 || above90 === above80 ? "" : "of them "}above 90 %`;
}

export function DaysAboveStrip({
  humidity,
  time,
  width,
  fileName,
}: {
  humidity: Float64Array;
  time: TimeScale;
  width: number;
  fileName: string;
}): React.JSX.Element {
  const tokens = useChartTokens();
  const words = daysAboveWords(humidity);
  const room = Math.min(width, words.length * tokens.note_px * 0.52 + 16);
  const chart = useMemo(() => {
    const frame: Frame = { width, height: 17, left: 0, right: 0, top: 3, bottom: 1 };
    return daysAboveStrip(humidity, time, tokens, frame);
  }, [humidity, time, tokens, width]);
  return (
    <Figure
      title="Days above 80 %"
      titled={false}
      summary={`${words}.`.replace(/^./, (first) => first.toUpperCase())}
      table={() => ({
        columns: ["Spell above 80 %", "days", "of them above 90 %"],
        rows: spellsAbove(humidity, 80).map(({ from, to }) => [
          spanName(time, from, to),
          String(to - from + 1),
          String(daysAbove(humidity.subarray(from, to + 1), 90)),
        ]),
      })}
      className="strip-figure"
      fileName={fileName}
    >
      {(keepPicture) => (
        <>
          <Plot data={chart.data} layout={chart.layout} onDrawn={keepPicture} />
          <span className="strip-words note" style={wordsPlace(humidity, time.days, width, room)}>
            {words}
          </span>
        </>
      )}
    </Figure>
  );
}

/** Words stand at the right edge where that is free, else at the end of the widest free stretch. */
function wordsPlace(humidity: Float64Array, days: number, width: number, room: number): React.CSSProperties {
  const perDay = width / days;
  const spells = spellsAbove(humidity, 80);
  const edges = [{ from: -1, to: -1 }, ...spells, { from: days, to: days }];
  const gaps = edges.slice(1).map((spell, i) => ({ from: (edges[i]!.to + 1) * perDay, to: spell.from * perDay }));
  const last = gaps.at(-1)!;
  if (last.to - last.from >= room) return { right: 0 };
  const widest = gaps.reduce((best, gap) => (gap.to - gap.from > best.to - best.from ? gap : best));
  return widest.to - widest.from >= room ? { right: width - widest.to + 6 } : { right: 0 };
}

export function DaysAboveCurve({
  inner,
  outer,
  time,
  width,
  height,
  faded,
  fileName,
}: {
  readonly inner: Float64Array | null;
  readonly outer: Float64Array | null;
  readonly time: TimeScale;
  readonly width: number;
  readonly height: number;
  readonly faded: boolean;
  readonly fileName: string;
}): React.JSX.Element {
  const tokens = useChartTokens();
  const lines = useMemo(
    () => [
      ...(outer
        ? [{ words: "outer face", days: outer, style: lineStyle("outerFace", tokens), wordColor: tokens.outside }]
        : []),
      ...(inner
        ? [{ words: "inner face", days: inner, style: lineStyle("innerFace", tokens), wordColor: tokens.inside }]
        : []),
    ],
    [inner, outer, tokens],
  );
  const chart = useMemo(
    () => daysAboveChart(lines, time, tokens, { width, height, left: 0, right: 0, top: 4, bottom: 20 }),
    [lines, time, tokens, width, height],
  );
  return (
    <Figure
      title="Days spent above each humidity"
      summary={
        lines
          .map(
            ({ words, days }) =>
              `The ${words} spends ${daysAbove(days, 80)} days above 80 % and ${daysAbove(days, 90)} above 90 %`,
          )
          .join("; ") + "."
      }
      table={() => ({
        columns: ["Above, % RH", ...lines.map(({ words }) => `${words}, days`)],
        rows: Array.from({ length: 9 }, (_, i) => 60 + 5 * i).map((level) => [
          String(level),
          ...lines.map(({ days }) => String(daysAboveCurve(days, level, level + 5, 5)[0]!.days)),
        ]),
      })}
      className={faded ? "faded" : ""}
      fileName={fileName}
    >
      {(keepPicture) => <Plot data={chart.data} layout={chart.layout} onDrawn={keepPicture} />}
    </Figure>
  );
}

import { useMemo } from "react";
import { dayName, type TimeScale } from "../plots/calendar.ts";
import { acrossAt, chartLayout, plainAxis, timeFoot, word, type Frame } from "../plots/chart-layout.ts";
import { Figure } from "../plots/figure.tsx";
import { placeLabels, wordsWidth } from "../plots/label-places.ts";
import { linesChart } from "../plots/lines-chart.ts";
import { lineStyle, type LineRole } from "../plots/line-styles.ts";
import { niceTicks } from "../plots/nice-range.ts";
import type { PlotData, PlotLayout } from "../plots/plot.tsx";
import { difference, highest } from "../plots/series.ts";
import { colourAt } from "../plots/scales.ts";
import { TimeChart } from "../plots/time-chart.tsx";
import { useChartTokens } from "../plots/tokens.ts";
import type { Member } from "./member.ts";
import { differenceWords } from "./words.ts";

const roles: readonly LineRole[] = ["optionA", "optionB"];

/** What two options are compared by: moisture content where both are wood, else humidity at the inner face. */
export const comparedBy = (members: readonly Member[]): "moisture" | "humidity" =>
  members.every(({ moisture }) => moisture !== null) ? "moisture" : "humidity";
const courseOf = (member: Member, by: "moisture" | "humidity"): Float64Array =>
  by === "moisture" ? member.moisture! : member.humidity;

interface PairChartProps {
  readonly members: readonly [Member, Member];
  readonly time: TimeScale;
  readonly day: number;
  readonly onDay: (day: number) => void;
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly faded: boolean;
  readonly watched: string;
}

export function PairLines({
  members,
  time,
  day,
  onDay,
  width,
  height,
  left,
  faded,
  watched,
}: PairChartProps): React.JSX.Element {
  const tokens = useChartTokens();
  const by = comparedBy(members);
  const frame = useMemo<Frame>(
    () => ({ width: width + left, height, left, right: 0, top: 4, bottom: 1 }),
    [width, height, left],
  );
  const chart = useMemo(
    () =>
      linesChart({
        lines: members.map((member, index) => {
          const days = courseOf(member, by);
          const peak = highest(days)!;
          return {
            words: `${member.id} peaks ${peak.value.toFixed(1)}, ${dayName(time, peak.day)}`,
            days,
            style: lineStyle(roles[index]!, tokens),
            wordColor: tokens.ink,
          };
        }),
        limits:
          by === "moisture"
            ? [
                { at: 16, words: "16, at ease" },
                { at: 20, words: "20, look closely" },
              ]
            : [{ at: 80, words: "80 %" }],
        time,
        tokens,
        frame,
        foot: false,
        ...(by === "moisture" ? { step: 4 } : {}),
        atLeast: by === "moisture" ? { from: 7.5, to: 20.5 } : { from: 50, to: 100 },
      }),
    [members, by, time, tokens, frame],
  );
  const title =
    by === "moisture"
      ? `Moisture content of the ${watched}, % by weight`
      : `Relative humidity at the ${watched}'s inner face, %`;
  const marks = members.flatMap((member, index) => {
    const value = courseOf(member, by)[day];
    return value === undefined
      ? []
      : [{ y: chart.yOf(value), color: tokens.ink, filled: index === 1, text: value.toFixed(1) }];
  });
  return (
    <Figure
      title={title}
      summary={`${members
        .map((member) => {
          const peak = highest(courseOf(member, by))!;
          return `${member.id} peaks at ${peak.value.toFixed(1)} % on ${dayName(time, peak.day)}`;
        })
        .join("; ")}.`}
      table={() => ({
        columns: ["Date", ...members.map(({ id }) => `${id}, %`), `${members[1].id} − ${members[0].id}, points`],
        rows: weeks(members, by, time),
      })}
      className={faded ? "faded" : ""}
      fileName={`side-by-side-${by}`}
    >
      {(keepPicture) => (
        <div className="hung" style={{ marginLeft: -left }}>
          <TimeChart
            frame={frame}
            time={time}
            day={day}
            onDay={onDay}
            data={chart.data}
            layout={chart.layout}
            keepPicture={keepPicture}
            marks={marks}
            wordBoxes={chart.wordBoxes}
          />
        </div>
      )}
    </Figure>
  );
}

function weeks(members: readonly [Member, Member], by: "moisture" | "humidity", time: TimeScale): string[][] {
  const [a, b] = members.map((member) => courseOf(member, by)) as [Float64Array, Float64Array];
  const days = Math.min(a.length, b.length);
  return Array.from({ length: Math.ceil(days / 7) }, (_, week) => [
    dayName(time, 7 * week),
    a[7 * week]!.toFixed(1),
    b[7 * week]!.toFixed(1),
    (b[7 * week]! - a[7 * week]!).toFixed(1).replace("-", "−"),
  ]);
}

/** The difference is drawn on a scale of at least this many points. */
const leastSwing = 1;

/** B less A, day by day: hatched below where B is drier, above where it is wetter. */
export function DifferenceStrip({
  members,
  time,
  day,
  onDay,
  width,
  height,
  left,
  faded,
}: PairChartProps): React.JSX.Element {
  const tokens = useChartTokens();
  const by = comparedBy(members);
  const names = [members[0].id, members[1].id] as const;
  const change = useMemo(() => difference(courseOf(members[0], by), courseOf(members[1], by)), [members, by]);
  const words = differenceWords(
    courseOf(members[0], by),
    courseOf(members[1], by),
    names,
    time,
    by === "moisture" ? "points" : "% RH",
  );
  const frame = useMemo<Frame>(
    () => ({ width: width + left, height, left, right: 0, top: 4, bottom: 20 }),
    [width, height, left],
  );
  const chart = useMemo(() => {
    // A difference that no one could measure is not drawn as large as one that decides.
    let low = -leastSwing / 2;
    let high = leastSwing / 2;
    for (const value of change.length > 0 ? change : [1]) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    // The words stand beyond zero, on the side that the change leaves free; with change to both sides they find their own place.
    const pad = 0.06 * (high - low);
    const words_px = 19 / Math.max(30, height - 24);
    const range = {
      from: low - (low >= -1e-9 ? words_px * 1.4 * (high - low) : pad),
      to: high + (high <= 1e-9 ? words_px * 1.4 * (high - low) : pad),
    };
    const inner = { width: Math.max(1, width), height: Math.max(1, height - 24) };
    const yOf = (value: number): number => ((range.to - value) / (range.to - range.from)) * inner.height;
    const xOf = (place: number): number => ((place + 0.5) / time.days) * inner.width;
    const every = Array.from({ length: Math.ceil(change.length / 2) }, (_, i) => 2 * i);
    // Words keep clear of both the line and zero: they stand outside of the hatched area.
    const place = placeLabels(
      [
        { x: every.map(xOf), y: every.map((at) => yOf(change[at]!)), width: wordsWidth(words, tokens.label_px, false) },
        ...[0, 0.35, 0.7].map((share) => ({
          x: every.map(xOf),
          y: every.map((at) => yOf(share * change[at]!)),
          width: 0,
        })),
      ],
      { left: 0, right: inner.width, top: 0, bottom: inner.height },
      tokens.label_px,
    )[0]!;
    const x = Array.from(change, (_, at) => at + 0.5);
    const area = (sign: 1 | -1, colour: string): PlotData =>
      ({
        type: "scatter",
        mode: "lines",
        x,
        y: Array.from(change, (value) => (Math.sign(value) === sign ? value : 0)),
        line: { width: 0, color: colour },
        fill: "tozeroy",
        fillcolor: colour,
        fillpattern: {
          shape: "/",
          fgcolor: tokens.theme === "dark" ? tokens.ink2 : tokens.ink,
          bgcolor: colour,
          size: 5,
          solidity: 0.14,
        },
        hoverinfo: "skip",
      }) as unknown as PlotData;
    const foot = timeFoot(tokens, time);
    const ticks = niceTicks(range.from, range.to, 3);
    return {
      data: [
        area(-1, colourAt("shift", tokens.theme, 0.72)),
        area(1, colourAt("shift", tokens.theme, 0.28)),
        {
          type: "scatter",
          mode: "lines",
          x,
          y: Array.from(change),
          line: { color: tokens.ink, width: 1.4, simplify: true },
          hoverinfo: "skip",
        } as unknown as PlotData,
      ],
      layout: {
        ...chartLayout(tokens, frame),
        xaxis: foot.xaxis,
        yaxis: {
          ...plainAxis,
          range: [range.from, range.to],
          tickmode: "array",
          tickvals: ticks,
          ticktext: ticks.map((tick) => `${String(tick).replace("-", "−")}  `),
          tickfont: { size: tokens.label_px, color: tokens.ink2 },
        },
        shapes: [
          ...foot.shapes,
          ...ticks.filter((tick) => tick !== 0).map((tick) => acrossAt(tick, { color: tokens.hair2, width: 1 })),
          acrossAt(0, { color: tokens.ink, width: 1 }),
        ],
        // In a narrow strip the words would lie on the area; the figure's summary says them all the same.
        annotations: (wordsWidth(words, tokens.label_px, false) > 0.6 * inner.width ? [] : [words]).map((written) =>
          word(
            tokens,
            written,
            {
              xref: "paper",
              yref: "paper",
              x: place.x / inner.width,
              y: 1 - place.y / inner.height,
              xanchor: "center",
              yanchor: "middle",
              font: { family: tokens.font, size: tokens.label_px, color: tokens.ink },
            },
            false,
          ),
        ),
      } satisfies Partial<PlotLayout>,
    };
  }, [change, words, width, height, frame, time, tokens]);
  return (
    <Figure
      title={`Difference, ${names[1]} less ${names[0]}, ${by === "moisture" ? "points" : "% RH"}`}
      summary={`${words}${words.endsWith(".") ? "" : "."}`}
      table={() => ({
        columns: ["Date", `${names[0]}, %`, `${names[1]}, %`, "difference"],
        rows: weeks(members, by, time),
      })}
      className={faded ? "faded" : ""}
      fileName="side-by-side-difference"
    >
      {(keepPicture) => (
        <div className="hung" style={{ marginLeft: -left }}>
          <TimeChart frame={frame} time={time} day={day} onDay={onDay} {...chart} keepPicture={keepPicture} />
        </div>
      )}
    </Figure>
  );
}

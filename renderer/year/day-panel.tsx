import { useMemo } from "react";
import type { RunResult } from "../../solver/index.ts";
import { dayName, type TimeScale } from "../plots/calendar.ts";
import { daySection, yearSpread_C } from "../plots/day-section.ts";
import { dewPointOf_C } from "../plots/dew-point.ts";
import { Figure } from "../plots/figure.tsx";
import { Plot } from "../plots/plot.tsx";
import { degreeSign, temperature, temperatureStep, type ShownUnits } from "../plots/quantities.ts";
import { dayProfile } from "../plots/through-wall.ts";
import { useChartTokens } from "../plots/tokens.ts";
import type { LayerSpan } from "../plots/wall-depths.ts";
import { figure, lengthFigure, lengthUnit } from "../units/index.ts";

/** The wall's section on the day under the cursor, at the map's own depth scale. */
export function DayPanel({
  result,
  spans,
  time,
  day,
  watched_m,
  units,
  width,
  height,
  faded,
  fileName,
}: {
  readonly result: RunResult | null;
  readonly spans: readonly LayerSpan[];
  readonly time: TimeScale;
  readonly day: number;
  /** Depth of the watched layer's inner face [m]. */
  readonly watched_m: number | null;
  readonly units: ShownUnits;
  readonly width: number;
  readonly height: number;
  readonly faded: boolean;
  readonly fileName: string;
}): React.JSX.Element {
  const tokens = useChartTokens();
  const spread = useMemo(() => (result ? yearSpread_C(result) : { from: -20, to: 30 }), [result]);
  const chart = useMemo(
    () =>
      result
        ? daySection({
            result,
            day,
            spans,
            watched_m,
            watchedWords: "at the inner face",
            spread,
            units,
            tokens,
            frame: { width, height: height + 24, left: 0, right: 0, top: 0, bottom: 24 },
          })
        : null,
    [result, day, spans, watched_m, spread, units, tokens, width, height],
  );
  const sign = degreeSign(units);
  const held = result !== null && day < result.map.days;
  return (
    <Figure
      title={`Section on ${dayName(time, day)}, daily mean`}
      summary={
        chart && chart.apart_K !== null && held
          ? `On ${dayName(time, day)} temperature and dew point are ${figure(Math.max(0, temperatureStep(chart.apart_K, units)), 1)} ${sign} apart at the inner face.`
          : "Nothing is computed for this day."
      }
      table={() => ({
        columns: [`Depth from outside, ${lengthUnit(units)}`, `Temperature, ${sign}`, `Dew point, ${sign}`, "% RH"],
        rows: held
          ? dayProfile(result.map, result.map.T_C, day).map(({ depth_m, value }, i) => {
              const rh = result.map.RH[day * result.map.depth_m.length + i]!;
              return [
                units === "si" ? figure(depth_m * 1000, 1) : lengthFigure(depth_m, units),
                figure(temperature(value, units), 1),
                figure(temperature(dewPointOf_C(value, rh), units), 1),
                figure(100 * rh, 0),
              ];
            })
          : [],
      })}
      className={faded ? "faded" : ""}
      fileName={fileName}
    >
      {(keepPicture) =>
        chart ? (
          <Plot data={chart.data} layout={chart.layout} onDrawn={keepPicture} />
        ) : (
          <div className="nothing-yet" style={{ height, marginBottom: 24 }} />
        )
      }
    </Figure>
  );
}

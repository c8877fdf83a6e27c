import { useMemo } from "react";
import type { HumidityAnswer } from "../../../solver/index.ts";
import { Figure } from "../../plots/figure.tsx";
import { Plot } from "../../plots/plot.tsx";
import { useChartTokens } from "../../plots/tokens.ts";
import { useSize } from "../../plots/use-size.ts";
import type { Units } from "../../state/index.ts";
import { share } from "../../units/index.ts";
import { kindText, kindWords } from "../parts/finding-words.ts";
import { plainName } from "../parts/plain-name.ts";
import { humidityChart, humidityCurve } from "./curve-chart.ts";

interface HumidityFigureProps {
  readonly answer: HumidityAnswer;
  readonly kind: string;
  readonly onKind: (kind: string) => void;
  readonly drawn: number | null;
  readonly units: Units;
}

/** How the wall answers to the room's humidity, one finding at a time. */
export function HumidityFigure({ answer, kind, onKind, drawn, units }: HumidityFigureProps) {
  const tokens = useChartTokens();
  const [place, { width, height }] = useSize<HTMLDivElement>();
  const points = useMemo(() => humidityCurve(answer, kind), [answer, kind]);
  const limit = answer.limits.find(({ finding }) => finding === kind);
  const upTo = limit === undefined || limit.beyondRange ? null : limit.upTo;
  const chart = useMemo(
    () =>
      humidityChart(points, kind, upTo, drawn, units, tokens, {
        width,
        height,
        left: 34,
        right: 0,
        top: 4,
        bottom: 24,
      }),
    [points, kind, upTo, drawn, units, tokens, width, height],
  );
  const face = plainName(answer.points[0]?.summary.plane.layerName ?? "plane");
  const [first, last] = [points[0], points.at(-1)];
  return (
    <Figure
      title={kindWords(kind).title(`the ${face}'s inner face`, "sheathing")}
      summary={
        first && last
          ? `From ${kindText(kind, first.measured, units)} in a room at ${share(first.humidity)} to ${kindText(kind, last.measured, units)} at ${share(last.humidity)}; the limit of ${kindText(kind, first.limit, units)} is ${upTo === null ? (limit?.beyondRange === true ? "kept throughout" : "not kept at any humidity tried") : `kept up to ${share(upTo)}`}.`
          : "No humidity has been run yet."
      }
      className="curve"
      fileName={`how-humid-${kind}`}
      beside={
        <select
          className="place-select other-limits"
          aria-label={`Draw another limit; drawn now: ${kindWords(kind).short}`}
          value=""
          onChange={(event) => onKind(event.target.value)}
        >
          <option value="" hidden>
            other limits
          </option>
          {answer.limits.map(({ finding }) => (
            <option key={finding} value={finding}>
              {kindWords(finding).short}
            </option>
          ))}
        </select>
      }
      table={() => ({
        columns: ["Room in winter", ...answer.limits.map(({ finding }) => kindWords(finding).short)],
        rows: answer.points.map(({ winterHumidity }) => [
          share(winterHumidity),
          ...answer.limits.map(({ finding }) => {
            const point = humidityCurve(answer, finding).find((each) => each.humidity === winterHumidity);
            return point ? `${kindText(finding, point.measured, units)}${point.holds ? "" : ", limit broken"}` : "—";
          }),
        ]),
      })}
    >
      {(keepPicture) => (
        <div ref={place} className="curve-place">
          {points.length > 0 && <Plot data={chart.data} layout={chart.layout} onDrawn={keepPicture} />}
        </div>
      )}
    </Figure>
  );
}

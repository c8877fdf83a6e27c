import { useMemo } from "react";
import type { HowThickAnswer } from "../../../solver/index.ts";
import type { Frame } from "../../plots/chart-layout.ts";
import { Figure } from "../../plots/figure.tsx";
import { Plot } from "../../plots/plot.tsx";
import { useChartTokens } from "../../plots/tokens.ts";
import { useSize } from "../../plots/use-size.ts";
import type { Units } from "../../state/index.ts";
import { lengthFigure, lengthUnit } from "../../units/index.ts";
import { everyKind, kindText, kindWords, worstOf } from "../parts/finding-words.ts";
import { plainName } from "../parts/plain-name.ts";
import { curveChart, thicknessText, type BesideLine } from "./curve-chart.ts";
import { curveKinds, curveOf, limitOf } from "./view-model.ts";

interface CurveFigureProps {
  readonly answer: HowThickAnswer;
  readonly kind: string;
  readonly onKind: (kind: string) => void;
  readonly beside: readonly BesideLine[];
  readonly board_m: number;
  readonly code: { readonly thickness_m: number; readonly words: string } | null;
  readonly conductivity_WmK: number | null;
  /** Words on the line: "35 % inside". */
  readonly words: string;
  readonly axis_m: number;
  readonly left: number;
  readonly units: Units;
}

/** How the wall answers to thickness, one finding at a time. */
export function CurveFigure(props: CurveFigureProps) {
  const { answer, kind, onKind, beside, board_m, code, conductivity_WmK, words, axis_m, left, units } = props;
  const tokens = useChartTokens();
  const [place, { width, height }] = useSize<HTMLDivElement>();
  const points = useMemo(() => curveOf(answer.points, kind), [answer, kind]);
  const limit = limitOf(answer.points, kind);
  const needed_m = answer.needs.find(({ finding }) => finding === kind)?.needed_m ?? null;
  const chart = useMemo(() => {
    const frame: Frame = { width, height, left, right: 0, top: 22, bottom: 24 };
    return curveChart({
      kind,
      points,
      beside,
      limit,
      needed_m,
      board_m,
      code,
      conductivity_WmK,
      words,
      axis_m,
      units,
      tokens,
      frame,
    });
  }, [
    kind,
    points,
    beside,
    limit,
    needed_m,
    board_m,
    code,
    conductivity_WmK,
    words,
    axis_m,
    units,
    tokens,
    width,
    height,
    left,
  ]);
  const summary = answer.points.find(({ summary: each }) => worstOf(each, kind) !== null)?.summary;
  const title = kindWords(kind).title(
    `the ${plainName(summary?.plane.layerName ?? "plane")}'s inner face`,
    "sheathing",
  );
  const kinds = curveKinds(answer.points).filter((each) => everyKind.includes(each) || each === kind);
  return (
    <Figure
      title={title}
      summary={curveSentence(points, limit, needed_m, kind, units)}
      className="curve"
      fileName={`how-thick-${kind}`}
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
          {kinds.map((each) => (
            <option key={each} value={each}>
              {kindWords(each).short}
            </option>
          ))}
        </select>
      }
      table={() => ({
        columns: [`Thickness, ${lengthUnit(units)}`, ...kinds.map((each) => kindWords(each).short)],
        rows: answer.points.map(({ thickness_m, summary: each }) => [
          lengthFigure(thickness_m, units),
          ...kinds.map((one) => {
            const worst = worstOf(each, one);
            return worst === null
              ? "—"
              : `${kindText(one, worst.measured, units)}${worst.holds ? "" : ", limit broken"}`;
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

function curveSentence(
  points: ReturnType<typeof curveOf>,
  limit: number | null,
  needed_m: number | null,
  kind: string,
  units: Units,
): string {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || first === last) return "Fewer than two thicknesses have been run.";
  const course = `From ${kindText(kind, first.measured, units)} with ${thicknessText(first.thickness_m, units)} to ${kindText(kind, last.measured, units)} with ${thicknessText(last.thickness_m, units)}.`;
  if (limit === null) return course;
  const limited = `The limit is ${kindText(kind, limit, units)}`;
  if (needed_m === null) return `${course} ${limited}; no thickness run keeps it.`;
  return needed_m === 0
    ? `${course} ${limited}; every thickness keeps it.`
    : `${course} ${limited}; ${thicknessText(needed_m, units)} keeps it.`;
}

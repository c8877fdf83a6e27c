import { useId, useMemo } from "react";
import { monthNames } from "../plots/calendar.ts";
import { chartLayout, plainAxis } from "../plots/chart-layout.ts";
import { Figure } from "../plots/figure.tsx";
import { leavingShares } from "../plots/leaving-shares.ts";
import { Plot, type PlotData, type PlotLayout } from "../plots/plot.tsx";
import { waterOnArea, waterOnAreaUnit } from "../plots/quantities.ts";
import type { SvgMaker } from "../plots/figure.tsx";
import { useChartTokens } from "../plots/tokens.ts";
import { hatchOf, hatchPaths } from "../section/index.ts";
import type { Units } from "../state/index.ts";
import { figure } from "../units/index.ts";
import type { Member } from "./member.ts";

/** March to June: the months in which a wall that was wetted in winter dries. Calendar months, 0 is January. */
const dryingMonths = [2, 3, 4, 5];
const board_px = 9;

interface Scale {
  readonly up: number;
  readonly down: number;
}

/** Largest monthly amount to each side over all members: every option is drawn to one scale [kg/m2]. */
function commonScale(members: readonly Member[]): Scale {
  let up = 0;
  let down = 0;
  for (const { budget } of members) {
    for (const flow of budget?.outward ?? []) up = Math.max(up, Math.abs(flow));
    for (const flow of budget?.inward ?? []) down = Math.max(down, Math.abs(flow));
  }
  const least = 0.12 * Math.max(up, down, 1e-9);
  return { up: Math.max(up, least), down: Math.max(down, least) };
}

/** Water that leaves the deciding layer month by month, drawn about that layer; then the split of the drying months. */
export function WaterGoes({
  members,
  units,
  width,
  barsHeight,
  watched,
  faded,
}: {
  readonly members: readonly Member[];
  readonly units: Units;
  readonly width: number;
  /** Of both bar charts together [px]. */
  readonly barsHeight: number;
  readonly watched: string;
  readonly faded: boolean;
}): React.JSX.Element | null {
  const scale = useMemo(() => commonScale(members), [members]);
  const withBooks = members.filter(({ budget }) => budget !== null);
  if (withBooks.length === 0) return null;
  const unit = waterOnAreaUnit(units);
  const months = withBooks[0]!.budget!.months;
  return (
    <Figure
      title={`Where the ${watched}'s water goes`}
      summary={withBooks.map((member) => `${splitWords(member)}`).join(" ")}
      table={() => ({
        columns: [
          "Month",
          ...withBooks.flatMap(({ id }) => [
            `${id} to outside, ${unit}`,
            `${id} to the room`,
            `${id} brought by leaks`,
          ]),
        ],
        rows: months.map((month, place) => [
          monthNames[month]!,
          ...withBooks.flatMap(({ budget }) =>
            [budget!.outward[place]!, budget!.inward[place]!, budget!.sources[place]!].map((flow) =>
              figure(waterOnArea(flow, units), units === "si" ? 1 : 2),
            ),
          ),
        ]),
      })}
      className={faded ? "faded" : ""}
      fileName="side-by-side-water"
    >
      {(keepPicture) => (
        <>
          {withBooks.map((member, index) => (
            <Bars
              unit={unit}
              key={member.id}
              member={member}
              scale={scale}
              width={width}
              height={barsHeight / withBooks.length}
              first={index === 0}
              last={index === withBooks.length - 1}
              keepPicture={keepPicture}
            />
          ))}
          <h3 className="figure-title split-title">March to June, water that leaves</h3>
          {withBooks.map((member) => (
            <Split key={member.id} member={member} />
          ))}
        </>
      )}
    </Figure>
  );
}

function Bars({
  unit,
  member,
  scale,
  width,
  height,
  first,
  last,
  keepPicture,
}: {
  unit: string;
  member: Member;
  scale: Scale;
  width: number;
  height: number;
  first: boolean;
  last: boolean;
  keepPicture: (svg: SvgMaker) => void;
}): React.JSX.Element {
  const tokens = useChartTokens();
  const clip = useId();
  const left = 24;
  const top = first ? 14 : 4;
  const bottom = last ? 17 : first ? 15 : 4;
  const room = Math.max(20, height - top - bottom - board_px);
  const upRoom = (room * scale.up) / (scale.up + scale.down);
  const boardTop = top + upRoom;
  const plotWidth = Math.max(1, width - left);
  const budget = member.budget!;
  const chart = useMemo(() => {
    // One unit of the axis is one pixel, so that the board between the bars keeps its height.
    const perPixel = (scale.up + scale.down) / room;
    const bars = (flows: readonly number[], up: boolean, colour: string, leaving: boolean): PlotData => {
      const chosen = flows
        .map((flow, month) => ({ flow, month }))
        .filter(({ flow }) => (leaving ? flow > 0 : flow < 0) && Math.abs(flow) / perPixel >= 0.4);
      return {
        type: "bar",
        x: chosen.map(({ month }) => month),
        y: chosen.map(({ flow }) => ((up ? 1 : -1) * Math.abs(flow)) / perPixel),
        base: chosen.map(() => (up ? board_px : 0)),
        width: 0.66,
        marker: leaving
          ? { color: colour, line: { width: 0 } }
          : { color: tokens.paper, line: { color: colour, width: 1.4 } },
        hoverinfo: "skip",
      } as unknown as PlotData;
    };
    const layout: Partial<PlotLayout> = {
      ...chartLayout(tokens, { width: plotWidth, height, left: 0, right: 0, top, bottom }),
      barmode: "overlay",
      xaxis: {
        ...plainAxis,
        range: [-0.5, budget.months.length - 0.5],
        tickmode: "array",
        tickvals: budget.months.map((_, place) => place),
        ticktext: budget.months.map((month) => monthNames[month]!.charAt(0)),
        showticklabels: last,
        tickfont: { size: tokens.note_px, color: tokens.ink3 },
      },
      yaxis: { ...plainAxis, range: [-(room - upRoom), upRoom + board_px], showticklabels: false },
    };
    return {
      data: [
        bars(budget.outward, true, tokens.outside, true),
        bars(budget.outward, true, tokens.outside, false),
        bars(budget.inward, false, tokens.inside, true),
        bars(budget.inward, false, tokens.inside, false),
      ],
      layout,
    };
  }, [budget, scale, room, upRoom, plotWidth, height, top, bottom, last, tokens]);
  const hatch = useMemo(
    () =>
      hatchPaths(hatchOf(member.layer.material, member.case.pathKind), {
        x: 0,
        y: 0,
        width: plotWidth,
        height: board_px,
        unit: 1,
      }),
    [member, plotWidth],
  );
  return (
    <div className="water-bars" style={{ height }}>
      <b className="option-letter option-letter-small" style={{ top: boardTop + board_px / 2 - 8 }}>
        {member.id}
      </b>
      <div className="water-plot" style={{ left }}>
        <Plot data={chart.data} layout={chart.layout} {...(first ? { onDrawn: keepPicture } : {})} />
        <svg
          className="water-board"
          width={plotWidth}
          height={board_px + 2}
          style={{ top: boardTop - 1 }}
          aria-hidden="true"
        >
          <clipPath id={clip}>
            <rect width={plotWidth} height={board_px} />
          </clipPath>
          <g transform="translate(0 1)">
            <rect width={plotWidth} height={board_px} className="water-board-ground" />
            <g clipPath={`url(#${clip})`}>
              {hatch.stroke && <path className="hatch-stroke" d={hatch.stroke} />}
              {hatch.solid && <path className="hatch-solid" d={hatch.solid} />}
            </g>
            <line x1={0} x2={plotWidth} y1={0} y2={0} className="water-face" />
            <line x1={0} x2={plotWidth} y1={board_px} y2={board_px} className="water-face" />
          </g>
        </svg>
        {first && (
          <span className="water-word outside" style={{ top: -2, left: 0 }}>
            to outside <span className="note water-unit">{unit} a month</span>
          </span>
        )}
        {first && (
          <span className="water-word note" style={{ bottom: -1, left: 0 }}>
            hollow: arriving
          </span>
        )}
        {first && (
          <span className="water-word inside" style={{ bottom: -1, right: 0 }}>
            to the room
          </span>
        )}
      </div>
    </div>
  );
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;

function splitWords(member: Member): string {
  const shares = leavingShares(member.budget!, dryingMonths);
  return shares
    ? `In ${member.id}, ${percent(shares.outward)} of the water that leaves from March to June goes out and ${percent(shares.inward)} to the room.`
    : `In ${member.id}, nothing leaves from March to June.`;
}

function Split({ member }: { member: Member }): React.JSX.Element {
  const shares = leavingShares(member.budget!, dryingMonths);
  return (
    <div className="split">
      <b className="option-letter option-letter-small">{member.id}</b>
      {shares ? (
        <div className="split-bar">
          {shares.outward > 0 && (
            <span className="split-out" style={{ flexGrow: shares.outward }}>
              {shares.outward > 0.14 && `${percent(shares.outward)}${shares.outward > 0.24 ? " out" : ""}`}
            </span>
          )}
          {shares.inward > 0 && (
            <span className="split-in" style={{ flexGrow: shares.inward }}>
              {shares.inward > 0.14 && `${percent(shares.inward)}${shares.inward > 0.24 ? " in" : ""}`}
            </span>
          )}
        </div>
      ) : (
        <span className="note">nothing leaves in these months</span>
      )}
    </div>
  );
}

import { useEffect, useMemo, useState, type ReactNode } from "react";
import { comparisonSentence, leadSentence } from "../../solver/index.ts";
import type { TimeScale } from "../plots/calendar.ts";
import type { MapQuantity } from "../plots/map-chart.ts";
import { ScaleBar } from "../plots/scale-bar.tsx";
import { SectionStrip, type DrawnWall } from "../plots/section-strip.tsx";
import { timeScaleOf } from "../plots/series.ts";
import { StateLine } from "../plots/state-line.tsx";
import { DateSlider } from "../plots/time-chart.tsx";
import { useSize } from "../plots/use-size.ts";
import { drawingScales, wallThickness_m, watchedWord } from "../plots/wall-depths.ts";
import type { Units } from "../state/index.ts";
import { Sentence } from "../units/index.ts";
import { ComparisonTable } from "./comparison-table.tsx";
import type { OptionInView } from "./option-in-view.ts";
import { OptionMap } from "./option-map.tsx";
import { OptionWords } from "./option-words.tsx";
import { memberOf, type Member } from "./member.ts";
import { DifferenceStrip, PairLines } from "./pair-lines.tsx";
import { WaterGoes } from "./water-goes.tsx";
import { differsWords } from "./words.ts";
import "./side-by-side.css";

export interface PairViewProps {
  readonly options: readonly OptionInView[];
  readonly pair: readonly [string, string];
  readonly onPair: (pair: readonly [string, string]) => void;
  readonly units: Units;
  readonly day: number;
  readonly onDay: (day: number) => void;
  readonly onScale: (words: string) => void;
  /** What the sheet adds under the figures: the verbs that make another option. */
  readonly foot?: ReactNode;
}

const titleRow = 22;
const gap = 14;
const monthRow = 24;
const pixelsPerMetre = 96 / 0.0254;
const emptyTime: TimeScale = { days: 365, startDay: 273 };

/** Below this width, as at large type, everything stands in one column and the sheet scrolls; side-by-side.css has the same figure. */
const narrowSheet_px = 900;
const roomOfNarrow_px = 320;

export function PairView({
  options,
  pair,
  onPair,
  units,
  day,
  onDay,
  onScale,
  foot,
}: PairViewProps): React.JSX.Element {
  const [sheet, sheetSize] = useSize<HTMLDivElement>();
  const [column, columnSize] = useSize<HTMLDivElement>();
  const [side, sideSize] = useSize<HTMLDivElement>();
  const [lines, linesSize] = useSize<HTMLDivElement>();
  const [quantity, setQuantity] = useState<MapQuantity>("humidity");
  const wide = sheetSize.width >= 1500;

  const shown = pair.map((id) => options.find((option) => option.id === id)!) as [OptionInView, OptionInView];
  const members = useMembers(options, units);
  const [a, b] = shown.map(({ id }) => members.get(id) ?? null) as [Member | null, Member | null];
  const both = useMemo<readonly [Member, Member] | null>(() => (a && b ? [a, b] : null), [a, b]);
  const walls = shown.map(({ run, planned }) => run.case ?? planned) as [DrawnWall, DrawnWall];

  const taken = wide ? 440 : 424;
  const narrow = sheetSize.width < narrowSheet_px;
  const room = narrow ? roomOfNarrow_px : Math.max(160, Math.max(sheetSize.height, 600) - taken);
  const thickness_m = walls.reduce((sum, wall) => sum + wallThickness_m(wall.layers), 0);
  const oneTo = drawingScales.find((scale) => (thickness_m * pixelsPerMetre) / scale <= room) ?? 20;
  const heights = walls.map((wall) => Math.round((wallThickness_m(wall.layers) * pixelsPerMetre) / oneTo)) as [
    number,
    number,
  ];
  useEffect(() => onScale(`depth 1:${oneTo}, one scale for both`), [onScale, oneTo]);

  const time = useMemo(() => {
    const first = shown.find(({ run }) => run.result && run.case);
    return first?.run.result && first.run.case
      ? timeScaleOf(first.run.result, first.run.case.exposure.kind === "lab")
      : emptyTime;
    // The results decide; the option objects are new on each draw.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [shown[0].run.result, shown[1].run.result]);
  const shownDay = Math.min(day, time.days - 1);
  const faded = shown.some(({ run }) => run.status === "running" || run.status === "stale");
  const watched = watchedWord(walls[1]);
  const lead = both
    ? comparisonSentence(told(both[0]), told(both[1]), { units: units === "si" ? "si" : "ip" })
    : "Two options, one year: the comparison stands here when both have run.";
  const linesHeight = Math.max(110, linesSize.height - titleRow);

  return (
    <div className="pair-sheet">
      <div ref={sheet} className={wide ? "pair pair-wide" : "pair"}>
        <h1 className="lead pair-lead">
          <Sentence text={lead} />
        </h1>
        <div className="pair-strips">
          <span className="strip-side outside">outside</span>
          {shown.map((option, index) => (
            <div
              key={option.id}
              className="pair-strip"
              style={{ top: titleRow + (index === 0 ? 0 : heights[0] + gap), height: heights[index]! }}
            >
              <OptionWords
                option={option}
                options={options}
                wall={walls[index]!}
                units={units}
                onChoose={(id) => onPair(chosen(pair, index, id))}
              />
              <SectionStrip
                wall={walls[index]!}
                height={heights[index]!}
                width={wide ? 66 : 60}
                units={units}
                strong={null}
                named={false}
              />
            </div>
          ))}
          <span className="strip-side inside" style={{ top: titleRow + heights[0] + gap + heights[1] }}>
            inside
          </span>
        </div>
        <div className="pair-maps" ref={column} data-pane="Through-wall maps" tabIndex={-1}>
          {shown.map((option, index) => (
            <div key={option.id} style={{ marginBottom: index === 0 ? gap : 0 }}>
              <OptionMap
                option={option}
                wall={walls[index]!}
                first={index === 0}
                quantity={quantity}
                onQuantity={setQuantity}
                units={units}
                width={columnSize.width}
                height={heights[index]!}
                foot={index === 0 ? 0 : monthRow}
                tail={index === 0 ? gap : monthRow}
                time={time}
                day={shownDay}
                onDay={onDay}
              />
            </div>
          ))}
          <DateSlider time={time} day={shownDay} onDay={onDay} />
          {shown.map(({ id, run }) => (
            <StateLine key={id} run={run} time={time} name={id} />
          ))}
        </div>
        <div className="pair-lines" ref={lines} data-pane="Lines of both" tabIndex={-1}>
          {both && (
            <PairLines
              members={both}
              time={time}
              day={shownDay}
              onDay={onDay}
              width={columnSize.width}
              height={linesHeight}
              left={40}
              faded={faded}
              watched={watched}
            />
          )}
        </div>
        <div className="pair-difference" data-pane="Difference" tabIndex={-1}>
          {both && (
            <DifferenceStrip
              members={both}
              time={time}
              day={shownDay}
              onDay={onDay}
              width={columnSize.width}
              height={wide ? 112 : 82}
              left={40}
              faded={faded}
              watched={watched}
            />
          )}
        </div>
        <div className="pair-side" ref={side} data-pane="Figures of both" tabIndex={-1}>
          <h2 className="figure-title pair-scale-title">One scale</h2>
          <ScaleBar quantity={quantity} units={units} />
          {both && (
            <WaterGoes
              members={both}
              units={units}
              width={sideSize.width}
              barsHeight={wide ? 280 : 178}
              watched={watched}
              faded={faded}
            />
          )}
          <ComparisonTable options={shown} members={members} columns={[0, 1]} units={units} />
          {both && (
            <p className="note pair-differs">
              <Sentence text={differsWords(both[0].case, both[1].case, pair, units)} />
            </p>
          )}
          {foot}
          {wide && both && (
            <section className="plain-words" aria-label="In plain words">
              <h2 className="figure-title">In plain words</h2>
              {both.map((member) => (
                <p key={member.id}>
                  <b className="option-letter option-letter-small">{member.id}</b>{" "}
                  <Sentence
                    text={leadSentence(member.case, member.result, member.findings, {
                      units: units === "si" ? "si" : "ip",
                    })}
                  />
                </p>
              ))}
            </section>
          )}
        </div>
      </div>
      {options.length > 2 && (
        <section className="pair-all" aria-label="All options" data-pane="All options" tabIndex={-1}>
          <h2 className="figure-title">All options</h2>
          <ComparisonTable
            options={options}
            members={members}
            columns={[options.indexOf(shown[0]), options.indexOf(shown[1])]}
            units={units}
          />
        </section>
      )}
    </div>
  );
}

const told = ({ case: aCase, result, findings }: Member) => ({ aCase, result, findings });

/** The pair with one place changed; choosing the other one's letter swaps the two. */
function chosen(pair: readonly [string, string], index: number, id: string): readonly [string, string] {
  const other = pair[1 - index]!;
  const kept = id === other ? pair[index]! : other;
  return index === 0 ? [id, kept] : [kept, id];
}

const readCache = new WeakMap<object, Map<string, Member | null>>();

/** Members of all options that have a result; each is worked out once for a result and its units. */
function useMembers(options: readonly OptionInView[], units: Units): ReadonlyMap<string, Member> {
  const spoken = units === "si" ? "si" : "ip";
  return new Map(
    options.flatMap(({ id, name, run }) => {
      if (!run.result || !run.case) return [];
      const known = readCache.get(run.result) ?? new Map<string, Member | null>();
      readCache.set(run.result, known);
      const key = `${id}|${name}|${spoken}`;
      if (!known.has(key)) known.set(key, memberOf(id, name, run.case, run.result, spoken));
      const member = known.get(key);
      return member ? [[id, member] as const] : [];
    }),
  );
}

import { useMemo } from "react";
import { whichSwaps, type SwapRow, type SwapsAnswer } from "../../solver/index.ts";
import { useStudy } from "../questions/asking/use-study.ts";
import { plainName } from "../questions/parts/plain-name.ts";
import { StudyLine } from "../questions/parts/study-line.tsx";
import { useWallInView } from "../questions/parts/use-wall.ts";
import type { Units } from "../state/index.ts";
import { Sentence, lengthText } from "../units/index.ts";
import "./swaps-list.css";

/** What a builder may put in place of what is drawn, as far as it has been run; asked for by a press, for it takes a run each. */
export function SwapsList({ units }: { readonly units: Units }): React.JSX.Element | null {
  const wall = useWallInView();
  const study = useMemo(() => (wall.drawn.ok ? whichSwaps(wall.drawn.case) : null), [wall.drawn]);
  const asked = useStudy<SwapsAnswer>(`swaps:${wall.option}/${wall.path}`, study, wall.mark, false);
  if (study === null || asked === null || study.members.length < 2) return null;
  const rows = asked.status === "stale" ? [] : (asked.answer?.rows ?? []);
  return (
    <>
      <div className="head">
        <h2>Swaps the builder may make</h2>
        <span className="note">against what holds as drawn</span>
      </div>
      {rows.length === 0 && asked.status !== "running" ? (
        <p>
          <button type="button" className="verb-marked" onClick={asked.ask}>
            Try {study.members.length - 1} swaps
          </button>{" "}
          <span className="note">A run each; the builder&rsquo;s page of the report takes them up.</span>
        </p>
      ) : (
        <>
          <table className="swaps">
            {grouped(rows).map(([layer, own]) => (
              <tbody key={layer}>
                <tr>
                  <th scope="colgroup" colSpan={3} className="note">
                    for {plainName(own[0]!.swap.from)}
                  </th>
                </tr>
                {own.map((row) => (
                  <tr key={row.swap.id}>
                    <th scope="row">
                      <Sentence text={swapWords(row, units)} />
                    </th>
                    <td>{peakWords(row)}</td>
                    <td className={row.keeps === false ? "swap-lost" : ""}>{verdict(row)}</td>
                  </tr>
                ))}
              </tbody>
            ))}
          </table>
          {asked.status !== "finished" && <StudyLine asked={asked} says="a run a swap" />}
        </>
      )}
    </>
  );
}

/** Rows by the layer they stand in for, in their order. */
function grouped(rows: readonly SwapRow[]): [string, SwapRow[]][] {
  const groups = new Map<string, SwapRow[]>();
  for (const row of rows) groups.set(row.swap.layer, [...(groups.get(row.swap.layer) ?? []), row]);
  return [...groups];
}

/** The whole name but for what stands in brackets: two boards of a kind differ by their facers. */
const swapWords = ({ swap }: SwapRow, units: Units): string =>
  `${swap.to.replace(/ \(.*/, "")}${swap.thickness_m > 0 ? `, ${lengthText(swap.thickness_m, units)}` : ""}`;

const peakWords = ({ summary }: SwapRow): string =>
  summary === null || summary.peakMoisture_percent === null
    ? ""
    : `wood to ${summary.peakMoisture_percent.toFixed(0)} %`;

function verdict({ keeps }: SwapRow): string {
  if (keeps === null) return "not run yet";
  return keeps ? "keeps the findings" : "breaks a finding";
}

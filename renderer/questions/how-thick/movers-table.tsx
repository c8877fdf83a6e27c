import type { Units } from "../../state/index.ts";
import { lengthText, Sentence } from "../../units/index.ts";
import type { AskedStudy } from "../asking/use-study.ts";
import { StudyLine } from "../parts/study-line.tsx";
import { unknownText } from "../parts/unknown-words.ts";
import type { Mover, Variant } from "./movers.ts";

interface MoversTableProps {
  readonly asked: AskedStudy<readonly Mover[]>;
  readonly boards_m: readonly number[];
  /** Index of the answer as asked. */
  readonly start: number;
  readonly units: Units;
}

const short: Readonly<Record<string, string>> = {
  winterHumidity: "Room at",
  airLeak: "Air leak",
  weatherYear: "",
  finishPermeance: "Finish",
  orientation: "Facing",
};

export function variantWords({ unknown, value }: Variant, units: Units): string {
  const isLeakTimes = unknown.id === "airLeak" && unknown.now !== null && unknown.now > 0;
  const text = isLeakTimes
    ? `×${Number((value / unknown.now).toPrecision(2))}`
    : unknownText(unknown, value, units).replace("sd ", "sd\u00a0");
  const words = `${short[unknown.id] ?? unknown.label} ${text}`.trim();
  return words.charAt(0).toUpperCase() + words.slice(1);
}

const boardText = (index: number, boards_m: readonly number[], units: Units): string => {
  const shown = units === "both" ? "ip" : units;
  if (index >= boards_m.length) return `over ${lengthText(boards_m.at(-1)!, shown)}`;
  return boards_m[index] === 0 ? "none" : lengthText(boards_m[index]!, shown);
};

/** The board that would be the answer if one thing were otherwise; run when asked for. */
export function MoversTable({ asked, boards_m, start, units }: MoversTableProps) {
  const known = asked.answer?.filter(({ first }) => first !== null) ?? [];
  const most = [...known].sort((a, b) => Math.abs(b.first! - start) - Math.abs(a.first! - start))[0];
  return (
    <section className="left-part" aria-label="What moves the answer">
      <h2 className="left-head">What moves the answer</h2>
      {asked.answer !== null && (
        <table className="side-table movers-table">
          <tbody>
            {asked.answer.map(({ variant, first }) => (
              <tr key={variant.id} className={first !== null && first !== start ? "strong-row" : ""}>
                <th scope="row">{variantWords(variant, units)}</th>
                <td className="figure-cell">
                  {first === null ? "—" : <Sentence text={boardText(first, boards_m, units)} />}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {asked.status === "finished" && most !== undefined && (
        <p>{most.first === start ? "None of these moves it." : `${most.variant.unknown.label} moves it most.`}</p>
      )}
      {asked.status === "empty" || (asked.status === "paused" && known.length === 0) ? (
        <p>
          <button type="button" className="verb-marked" onClick={asked.ask}>
            Find out, some {Math.round(2.2 * asked.of)} runs
          </button>
        </p>
      ) : (
        asked.status !== "finished" && <StudyLine asked={asked} />
      )}
    </section>
  );
}

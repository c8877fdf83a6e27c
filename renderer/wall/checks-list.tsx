import type { Issue } from "../../climate/index.ts";
import { editions, type CheckLine, type Edition } from "../../solver/index.ts";
import { sentence } from "../state/issue-words.ts";
import { view, type Units } from "../state/index.ts";
import { rewordTemperatures, Sentence } from "../units/index.ts";
import "./checks-list.css";

interface ChecksListProps {
  /** What keeps the wall from being run, and doubts about it. */
  readonly issues: readonly Issue[];
  readonly lines: readonly CheckLine[];
  readonly units: Units;
  readonly edition: Edition;
}

const verdictWords: Record<CheckLine["verdict"], string> = {
  meets: "met",
  doesNotMeet: "not met",
  approvedDesign: "needs an approved design",
  offTable: "off the table",
  notRequired: "not required",
  caution: "look",
  holds: "holds",
  outOfScope: "out of scope",
  unknown: "not known",
};

/** What does not hold stands first, then what wants a look, then what holds. */
const rank = (line: CheckLine): number => {
  if (line.holds === false) return 0;
  if (line.verdict === "caution") return 1;
  return line.holds === null ? 2 : 3;
};

const where = (line: CheckLine): string =>
  [line.edition, line.section, line.row].filter(Boolean).join(", ") || line.source;

/** All that can be said of the wall without a run: errors and doubts, code rows, the ratio rule, traps for water. */
export function ChecksList({ issues, lines, units, edition }: ChecksListProps) {
  // Breaks of the boundary stand in the register below the drawing.
  const shown = lines.filter((line) => line.subject !== "boundary").sort((one, other) => rank(one) - rank(other));
  return (
    <>
      <div className="head">
        <h2>As drawn, before any run</h2>
        <select
          className="field checks-edition"
          aria-label="Book and edition; the one your jurisdiction adopted decides"
          value={edition}
          onChange={(event) => {
            const chosen = editions.find((candidate) => candidate === event.target.value);
            if (chosen) view({ edition: chosen });
          }}
        >
          {editions.map((candidate) => (
            <option key={candidate}>{candidate}</option>
          ))}
        </select>
      </div>
      <ul className="checks">
        {issues.map((issue, index) => (
          <li key={`${issue.path}-${index}`} className="check">
            <span className={issue.severity === "error" ? "remedy strong" : "strong"}>
              {issue.severity === "error" ? "put right" : "doubt"}
            </span>
            <span>{sentence(issue)}</span>
          </li>
        ))}
        {shown.map((line, index) => (
          <li key={`${line.id}-${line.path}-${index}`} className="check">
            <span className={line.holds === false ? "pencil" : "secondary"}>{verdictWords[line.verdict]}</span>
            <span>
              <Sentence text={rewordTemperatures(line.statement, units)} />
              {line.remedy !== null && line.holds !== true && (
                <>
                  {" "}
                  <Sentence text={rewordTemperatures(line.remedy, units)} />
                </>
              )}{" "}
              <span className="note">{where(line)}</span>
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

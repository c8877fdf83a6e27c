import { WrittenField } from "../../fields/index.ts";
import type { Unknown, UnknownOfCase } from "../../../solver/index.ts";
import type { Units } from "../../state/index.ts";
import { askWith, type QuestionInputs } from "../asking/question-inputs.ts";
import { parseRange, rangeFigure, rangeUnit, unknownText } from "../parts/unknown-words.ts";

interface RangesTableProps {
  readonly applicable: readonly UnknownOfCase[];
  readonly inputs: QuestionInputs;
  readonly units: Units;
}

/** The ranges that are tried, where each comes from, and which inputs nobody knows. */
export function RangesTable({ applicable, inputs, units }: RangesTableProps) {
  const { notKnown, ranges, most } = inputs;
  const ordered = [
    ...applicable.filter(({ id }) => notKnown.includes(id)),
    ...applicable.filter(({ id }) => !notKnown.includes(id)),
  ];
  const tried = new Set(ordered.slice(0, Math.max(most, notKnown.length)).map(({ id }) => id));
  const write = (unknown: Unknown, end: 0 | 1, text: string): string | null => {
    const read = parseRange(unknown, text, units);
    if (!read.ok) return read.message;
    const pair: [number, number] = [unknown.low, unknown.high];
    pair[end] = read.value;
    if (!(pair[0] < pair[1])) return "The low end must lie under the high end.";
    askWith({ ranges: { ...ranges, [unknown.id]: pair } });
    return null;
  };
  const toggle = (id: string): void =>
    askWith({ notKnown: notKnown.includes(id) ? notKnown.filter((each) => each !== id) : [...notKnown, id] });
  return (
    <section className="side-part">
      <div className="head">
        <h2>The ranges tried</h2>
        <span className="note">tick what nobody knows: it is always tried</span>
      </div>
      <table className="side-table ranges-table">
        <thead>
          <tr>
            <th scope="col">Not known</th>
            <th scope="col" className="figure-cell">
              drawn
            </th>
            <th scope="col" className="figure-cell">
              low
            </th>
            <th scope="col" className="figure-cell">
              high
            </th>
            <th scope="col">
              <span className="visually-hidden">Unit</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {ordered.map((unknown) => (
            <tr
              key={unknown.id}
              className={tried.has(unknown.id) ? "" : "quiet"}
              title={`${unknown.source}; known: ${unknown.known}`}
            >
              <th scope="row">
                <label>
                  <input type="checkbox" checked={notKnown.includes(unknown.id)} onChange={() => toggle(unknown.id)} />{" "}
                  {unknown.label}
                  <span className="visually-hidden">
                    {tried.has(unknown.id) ? "" : ", not tried"}. Range from {unknown.source}.
                  </span>
                </label>
              </th>
              {unknown.endLabels === undefined ? (
                <>
                  <td className="figure-cell secondary">
                    {unknown.now === null ? "—" : rangeFigure(unknown, unknown.now, units)}
                  </td>
                  {([0, 1] as const).map((end) => (
                    <td key={end} className="figure-cell">
                      <WrittenField
                        label={`${unknown.label}, ${end === 0 ? "low" : "high"} end, ${rangeUnit(unknown, units)}`}
                        text={rangeFigure(unknown, end === 0 ? unknown.low : unknown.high, units)}
                        width={38}
                        align="right"
                        onWrite={(text) => write(unknown, end, text)}
                      />
                    </td>
                  ))}
                  <td className="range-unit">{rangeUnit(unknown, units)}</td>
                </>
              ) : (
                <td className="figure-cell secondary" colSpan={4}>
                  {unknownText(unknown, unknown.low, units)} or {unknownText(unknown, unknown.high, units)}
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

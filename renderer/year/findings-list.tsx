import type { Ref } from "react";
import type { Finding } from "../../solver/index.ts";
import type { Units } from "../state/index.ts";
import { Sentence } from "../units/index.ts";
import { findingFigures } from "./finding-figures.ts";

/** What the run supports, as sentences with their figures; the ones that do not hold, and the closest, first. */
export function FindingsList({
  place,
  findings,
  cautions,
  units,
  most,
  wide,
}: {
  readonly place: Ref<HTMLElement>;
  readonly findings: readonly Finding[];
  readonly cautions: readonly string[];
  readonly units: Units;
  readonly most: number;
  readonly wide: boolean;
}): React.JSX.Element {
  return (
    <section
      ref={place}
      className="year-findings"
      aria-label="Findings that decide"
      data-pane="Findings"
      // Beside the map the list scrolls by itself; keys reach only what Tab reaches.
      tabIndex={wide ? 0 : -1}
    >
      {wide && <h2 className="figure-title findings-title">Findings</h2>}
      {findings.slice(0, most).map((finding) => (
        <article key={`${finding.id}-${finding.probe}`} className="finding-entry">
          <h3 className="finding">
            <Sentence text={finding.statement} />
          </h3>
          <dl className="finding-figures">
            {findingFigures(finding, units).map(({ name, value }) => (
              <div key={name}>
                <dt>{name}</dt>
                <dd>{value}</dd>
              </div>
            ))}
          </dl>
          <p className="note finding-source">Source: {shortSource(finding.source)}</p>
        </article>
      ))}
      {wide && cautions.length > 0 && <p className="finding-entry findings-cautions">{cautions.join(" ")}</p>}
    </section>
  );
}

/** A source up to its first aside; the table below has the whole of it. */
const shortSource = (source: string): string => source.split(/[;:]/)[0]!.trim();

/** Every finding with every figure, under the sheet. */
export function AllFindings({
  findings,
  cautions,
  units,
}: {
  readonly findings: readonly Finding[];
  readonly cautions: readonly string[];
  readonly units: Units;
}): React.JSX.Element | null {
  if (findings.length === 0) return null;
  return (
    <section className="all-findings" aria-label="All findings" data-pane="All findings" tabIndex={-1}>
      <h2 className="figure-title">All findings of this run</h2>
      <table>
        <thead>
          <tr>
            {["Finding", "measured", "limit", "margin", "when", "source", "swayed by guesses of"].map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {findings.map((finding) => (
            <tr key={`${finding.id}-${finding.probe}`}>
              <th scope="row">
                <Sentence text={finding.statement} />
              </th>
              {findingFigures(finding, units).map(({ name, value }) => (
                <td key={name}>{value}</td>
              ))}
              <td>{finding.source}</td>
              <td>{finding.swayedBy.join("; ") || "none"}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="findings-cautions">{cautions.join(" ")}</p>
    </section>
  );
}

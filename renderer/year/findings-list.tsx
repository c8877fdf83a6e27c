import type { Finding } from "../../solver/index.ts";
import type { Units } from "../state/index.ts";
import { Sentence } from "../units/index.ts";
import { findingFigures } from "./finding-figures.ts";

/** What the run supports, as sentences with their figures; the ones that do not hold, and the closest, first. */
export function FindingsList({
  findings,
  cautions,
  units,
  most,
  wide,
}: {
  readonly findings: readonly Finding[];
  readonly cautions: readonly string[];
  readonly units: Units;
  readonly most: number;
  readonly wide: boolean;
}): React.JSX.Element {
  return (
    <section className="year-findings" aria-label="Findings" data-pane="Findings" tabIndex={-1}>
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
          <p className="note finding-source" title={finding.source}>
            Source: {finding.source}
          </p>
        </article>
      ))}
      {wide && cautions.length > 0 && <p className="finding-entry findings-cautions">{cautions.join(" ")}</p>}
    </section>
  );
}

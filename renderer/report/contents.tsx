import type { Anchor, Option, Paper } from "../../solver/index.ts";
import { papers } from "../../solver/index.ts";
import { setReport, useReportStore } from "./report-store.ts";

/** What stands on the page; a press brings it into view and marks it. */
export function Contents({
  anchors,
  onChoose,
}: {
  readonly anchors: readonly Anchor[];
  readonly onChoose: (id: string) => void;
}) {
  return (
    <nav aria-label="On this page" className="report-contents">
      <h2 className="report-head">On this page</h2>
      <ul>
        {anchors.map(({ id, label }) => (
          <li key={id}>
            <button type="button" className="report-anchor" onClick={() => onChoose(id)}>
              {label}
            </button>
          </li>
        ))}
      </ul>
      <p className="note">Cautions and title block stand on every sheet.</p>
    </nav>
  );
}

/** Paper, options and the client's question. */
export function Settings({ options }: { readonly options: readonly Option[] }) {
  const { paper, without, question } = useReportStore();
  const kept = options.filter((option) => !without.includes(option.id));
  return (
    <div className="report-settings">
      <fieldset>
        <legend className="report-head">Paper</legend>
        {(Object.keys(papers) as Paper[]).map((name) => (
          <label key={name} className="report-choice">
            <input type="radio" name="paper" checked={paper === name} onChange={() => setReport({ paper: name })} />
            {papers[name].words.split(",")[0]}
          </label>
        ))}
      </fieldset>
      {options.length > 1 && (
        <fieldset>
          <legend className="report-head">Options</legend>
          {options.map((option) => (
            <label key={option.id} className="report-choice">
              <input
                type="checkbox"
                checked={!without.includes(option.id)}
                disabled={kept.length === 1 && kept[0] === option}
                onChange={(event) =>
                  setReport({
                    without: event.target.checked ? without.filter((id) => id !== option.id) : [...without, option.id],
                  })
                }
              />
              <span>
                {option.id}
                <span className="visually-hidden">, {option.name}</span>
                {kept.indexOf(option) === 0 || kept.indexOf(option) === 1
                  ? ""
                  : kept.includes(option)
                    ? ", in tables"
                    : ""}
              </span>
            </label>
          ))}
          {kept.length > 2 && <p className="note">The first two are drawn for the client.</p>}
        </fieldset>
      )}
      <label className="report-question">
        <span className="report-head">The client asks</span>
        <textarea
          className="field"
          rows={3}
          maxLength={160}
          value={question}
          placeholder="Which wall?"
          onChange={(event) => setReport({ question: event.target.value.replace(/\s*\n\s*/g, " ") })}
        />
      </label>
    </div>
  );
}

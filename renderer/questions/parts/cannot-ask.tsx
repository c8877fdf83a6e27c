import type { Issue } from "../../../climate/index.ts";
import { view } from "../../state/index.ts";

/** What keeps a question from being asked, each with what would be valid. */
export function CannotAsk({ issues }: { readonly issues: readonly Issue[] }) {
  const faults = issues.filter(({ severity }) => severity === "error");
  return (
    <div className="cannot-ask" role="alert">
      <p>{faults.length === 0 ? "This wall cannot be run." : "Before a run, put this right:"}</p>
      <ul>
        {faults.slice(0, 6).map((issue) => (
          <li key={`${issue.path} ${issue.message}`}>
            {issue.message} {issue.remedy}
          </li>
        ))}
      </ul>
      <p>
        <button type="button" className="verb-marked" onClick={() => view({ sheet: "wall" })}>
          Go to Wall
        </button>{" "}
        <button type="button" className="verb-marked" onClick={() => view({ sheet: "exposure" })}>
          Go to Exposure
        </button>
      </p>
    </div>
  );
}

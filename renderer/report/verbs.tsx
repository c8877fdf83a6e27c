import type { Reader } from "../../solver/index.ts";
import { copyText, printReport, saveData, saveHtml, savePdf, saveTables } from "./save-report.ts";
import { host } from "../host.ts";

function Verb({ words, why, act }: { readonly words: string; readonly why: boolean; readonly act: () => void }) {
  return (
    <li>
      <button
        type="button"
        className="verb"
        aria-disabled={why}
        aria-describedby="report-why"
        onClick={why ? undefined : act}
      >
        {words}
      </button>
    </li>
  );
}

/** What can be done with the report; nothing while it is of an earlier wall, and the sentence below says so. */
export function Verbs({
  page,
  able,
  sentence,
}: {
  readonly page: Reader;
  readonly able: boolean;
  readonly sentence: string;
}) {
  return (
    <section className="report-verbs" aria-label="Save and print">
      <ul>
        <Verb
          words={host.kind === "desktop" ? "Save as PDF" : "Save as PDF, by the print dialog"}
          why={!able}
          act={() => void savePdf()}
        />
        <Verb words="Print" why={!able} act={() => void printReport()} />
        <Verb words="Copy page as text" why={!able} act={() => void copyText([page])} />
        <Verb words="Save as HTML" why={!able} act={() => void saveHtml()} />
        <Verb words="Save tables as CSV" why={!able} act={() => void saveTables()} />
        <Verb words="Save all as JSON" why={!able} act={() => void saveData()} />
      </ul>
      <p className="note" id="report-why" role="status">
        {sentence}
      </p>
    </section>
  );
}

import { useEffect, useState } from "react";
import type { Project } from "../../solver/index.ts";
import { surveyor } from "../solver-pool/index.ts";
import { useFilesStore } from "../state/index.ts";
import type { SurveyOutcome } from "./survey.ts";

/** The survey of the project's exposure; the last one stays until the next is there. Null before the first. */
export function useSurvey(project: Project): SurveyOutcome | null {
  const files = useFilesStore((state) => state.texts);
  const [outcome, setOutcome] = useState<SurveyOutcome | null>(null);
  const { site, indoor, lab, air, run } = project;

  useEffect(() => {
    let wanted = true;
    surveyor.survey(project, files).then(
      (read) => {
        if (wanted) setOutcome(read);
      },
      (error: unknown) => {
        if (!wanted) return;
        const message = `The year could not be read: ${error instanceof Error ? error.message : String(error)}.`;
        setOutcome({
          kind: "issues",
          issues: [{ path: "site", message, remedy: "Choose another year.", severity: "error" }],
        });
      },
    );
    return () => {
      wanted = false;
    };
    // The year depends on these parts of the project alone, not on its walls.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [site, indoor, lab, air, run, files]);

  return outcome;
}

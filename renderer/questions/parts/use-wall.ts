import { useMemo } from "react";
import type { Case, Project } from "../../../solver/index.ts";
import { useFilesStore, useProject, useActiveOption, useActivePath } from "../../state/index.ts";
import { filesMark } from "../../state/files-store.ts";
import { askedCase, type AskedCase } from "../asking/asked-case.ts";
import type { QuestionInputs } from "../asking/question-inputs.ts";

const nothingAsked = { insulation: null, place: null, humidity: null, paint_perm: null } as const;

export interface WallInView {
  readonly project: Project;
  readonly option: string;
  readonly path: string;
  /** As drawn, or what keeps it from being run. */
  readonly drawn: AskedCase;
  /** Changes with the text of the files that the project names. */
  readonly mark: string;
}

/** The option and path in view as a case, before a question changes anything in it. */
export function useWallInView(): WallInView {
  const project = useProject();
  const option = useActiveOption().id;
  const path = useActivePath().id;
  useFilesStore((state) => state.hashes);
  const mark = filesMark(project);
  const drawn = useMemo(() => askedCase(project, option, path, nothingAsked), [project, option, path]);
  return { project, option, path, drawn, mark };
}

/** The same as the question asks it; null where it cannot be run. */
export function useAskedCase(
  { project, option, path }: WallInView,
  { insulation, place, humidity, paint_perm }: Pick<QuestionInputs, "insulation" | "place" | "humidity" | "paint_perm">,
): Case | null {
  return useMemo(() => {
    const asked = askedCase(project, option, path, { insulation, place, humidity, paint_perm });
    return asked.ok ? asked.case : null;
  }, [project, option, path, insulation, place, humidity, paint_perm]);
}

import type { Option, Path } from "../../solver/index.ts";
import { pathInView, useRun, type RunView } from "../state/index.ts";

export interface OptionRun {
  readonly option: Option;
  readonly path: Path;
  readonly run: RunView;
}

/** The runs of all options for the path in view. A project has at most eight options, and each is asked for every time. */
export function useOptionRuns(options: readonly Option[], pathId: string): OptionRun[] {
  const idAt = (index: number): [string, string] => {
    const option = options[index];
    return option ? [option.id, pathInView(option, pathId).id] : ["", ""];
  };
  const runs = [
    useRun(...idAt(0)),
    useRun(...idAt(1)),
    useRun(...idAt(2)),
    useRun(...idAt(3)),
    useRun(...idAt(4)),
    useRun(...idAt(5)),
    useRun(...idAt(6)),
    useRun(...idAt(7)),
  ];
  return options
    .slice(0, runs.length)
    .map((option, index) => ({ option, path: pathInView(option, pathId), run: runs[index]! }));
}

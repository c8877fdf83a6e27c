import { nameOfPath, type Project } from "../../../solver/index.ts";
import { view } from "../../state/index.ts";
import { AskedChoice } from "./asked-choice.tsx";

/** Which option and path the question is about; the same letters as in the strip. */
export function WallChoice({
  project,
  option,
  path,
}: {
  readonly project: Project;
  readonly option: string;
  readonly path: string;
}) {
  const choices = project.options.flatMap((each) =>
    each.paths.map((one) => ({
      value: `${each.id}/${one.id}`,
      words: `${nameOfPath(one).toLowerCase()} of ${each.id}, ${each.name}`,
    })),
  );
  return (
    <AskedChoice
      label="Option and path"
      value={`${option}/${path}`}
      choices={choices}
      onChange={(chosen) => {
        const [letter, ...rest] = chosen.split("/");
        view({ option: letter!, path: rest.join("/") });
      }}
    />
  );
}

import {
  nameOfPath,
  pathKindWords,
  type BoundaryReport,
  type ControlRole,
  type Option,
  type Path,
  type PathKind,
} from "../../solver/index.ts";
import { ChoiceField, WrittenField } from "../fields/index.ts";
import { onPath } from "../state/edits.ts";
import { applyEdit, view } from "../state/index.ts";
import { copyPath, dropPath, freePathId, mostPaths } from "../state/path-edits.ts";
import { controlRoles, roleTitles } from "./control-roles.ts";

type Joint = "deduced" | "joined" | "open";

const kinds = Object.entries(pathKindWords).map(([value, words]) => ({
  value: value as PathKind,
  words: value === "other" ? "Something else" : words,
}));

/** What a path is and how it is tied to its neighbours; paths are added and taken out here. */
export function PathEditor({
  option,
  path,
  report,
}: {
  readonly option: Option;
  readonly path: Path;
  readonly report: BoundaryReport;
}): React.JSX.Element {
  const name = nameOfPath(path);
  const edit = (words: string, change: (path: Path) => Path): void =>
    applyEdit(`${words}, ${name.toLowerCase()} of ${option.id}`, onPath(option.id, path.id, change));
  const joints = controlRoles.flatMap((role) => {
    const found = report.tieIns.find((one) => one.from === path.id && one.role === role);
    return found ? [{ role, found }] : [];
  });
  return (
    <details className="path-editor">
      <summary>{name}: what it is, and its joints</summary>
      <div className="form-row">
        <span>Name</span>
        <WrittenField
          label={`Name of the path ${name}`}
          text={name}
          width={180}
          onWrite={(text) => {
            if (text.trim() === "") return "The name is empty. Enter a name such as Rim at the porch.";
            edit("Rename", (found) => ({ ...found, name: text.trim().slice(0, 200) }));
            return null;
          }}
        />
      </div>
      <ChoiceField
        label="Kind"
        value={path.kind}
        choices={kinds}
        onChange={(kind) => edit("Change the kind", (found) => ({ ...found, kind }))}
      />
      {joints.map(({ role, found }) => (
        <ChoiceField
          key={role}
          label={`${roleTitles[role]} joint`}
          value={jointOf(path, role)}
          choices={[
            {
              value: "deduced",
              words: `as the layers say: ${found.by === "user" ? "not set" : found.joined ? "joined" : "open"}`,
            },
            { value: "joined", words: "joined: taped, lapped or sealed" },
            { value: "open", words: "left open" },
          ]}
          onChange={(joint) =>
            edit(`Set the ${roleTitles[role].toLowerCase()} joint`, (whole) => withJoint(whole, role, joint))
          }
        />
      ))}
      <p className="path-verbs">
        <button
          type="button"
          className="verb-marked"
          onClick={() => {
            if (option.paths.length >= mostPaths)
              return view({ notice: `An option holds ${mostPaths} paths at most. Remove one first.` });
            const id = freePathId(option);
            applyEdit(`Add a path like ${name.toLowerCase()} to ${option.id}`, copyPath(option.id, path.id, id));
            view({ path: id });
          }}
        >
          Add a path like this one
        </button>
        {option.paths.length > 1 && (
          <button
            type="button"
            className="verb-marked"
            onClick={() => {
              applyEdit(`Remove ${name.toLowerCase()} from ${option.id}`, dropPath(option.id, path.id));
              view({ path: option.paths.find(({ id }) => id !== path.id)!.id });
            }}
          >
            Remove this path
          </button>
        )}
      </p>
    </details>
  );
}

const jointOf = (path: Path, role: ControlRole): Joint => {
  const set = path.tieIns?.[role];
  return set === undefined ? "deduced" : set ? "joined" : "open";
};

function withJoint(path: Path, role: ControlRole, joint: Joint): Path {
  const { [role]: before, ...others } = path.tieIns ?? {};
  void before;
  return { ...path, tieIns: joint === "deduced" ? others : { ...others, [role]: joint === "joined" } };
}

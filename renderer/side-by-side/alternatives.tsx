import {
  hasContinuousInsulation,
  lookupFor,
  withContinuousInsulation,
  withoutContinuousInsulation,
  type Option,
  type Project,
} from "../../solver/index.ts";
import { applyEdit } from "../state/index.ts";

export interface Alternative {
  readonly words: string;
  readonly make: () => void;
}

/** What is laid outside when nobody has said what: 2 in. of extruded polystyrene, to be changed on the Wall sheet. */
const usualBoard = { material: "xps", thickness_m: 0.0508 };
const mostOptions = 8;

/** The same option with continuous insulation outside, or without what it has; null when there is no letter or layer for it. */
export function alternativeOf(project: Project, option: Option): Alternative | null {
  const letters = new Set(project.options.map(({ id }) => id));
  const id = ["A", "B", "C", "D", "E", "F", "G", "H"].find((letter) => !letters.has(letter));
  if (id === undefined || project.options.length >= mostOptions) return null;
  const lookup = lookupFor(project);
  const has = hasContinuousInsulation(option, lookup);
  const words = has
    ? `Add ${id}: ${option.id} without insulation outside`
    : `Add ${id}: ${option.id} with 2 in. of insulation outside`;
  const made = (): Option =>
    has
      ? withoutContinuousInsulation(option, { id, name: `${option.name}, nothing outside`, lookup })
      : withContinuousInsulation(option, { ...usualBoard, id, name: `${option.name}, 2 in. outside`, lookup });
  return {
    words,
    make: () => applyEdit(words, (before) => ({ ...before, options: [...before.options, made()] })),
  };
}

export function Alternatives({
  alternatives,
}: {
  readonly alternatives: readonly Alternative[];
}): React.JSX.Element | null {
  if (alternatives.length === 0) return null;
  return (
    <p className="alternatives">
      {alternatives.map(({ words, make }) => (
        <button key={words} type="button" className="verb-marked" onClick={make}>
          {words}
        </button>
      ))}
    </p>
  );
}

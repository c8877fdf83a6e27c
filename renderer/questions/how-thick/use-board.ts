import { lookupFor, withContinuousInsulation, type Option, type Project } from "../../../solver/index.ts";
import { dropLayer, freeOptionLetter, onLayer, onOption } from "../../state/edits.ts";

export interface BoardToUse {
  readonly option: string;
  readonly path: string;
  /** The layer that is made this thick; null: a new board is laid outside. */
  readonly layer: string | null;
  readonly material: string;
  readonly thickness_m: number;
  /** "2 1/2 in." */
  readonly words: string;
}

/** Thicknesses closer than this are one [m]. */
const sameLength_m = 1e-6;

/** The project with the board in its option, in every path through which the layer runs. */
export function withBoardInOption(project: Project, board: BoardToUse): Project {
  const { option, path, layer, material, thickness_m } = board;
  if (layer !== null) {
    return thickness_m > 0
      ? onLayer(option, path, layer, true, (each) =>
          each.thickness_m !== undefined && Math.abs(each.thickness_m - thickness_m) < sameLength_m
            ? each
            : { ...each, thickness_m },
        )(project)
      : dropLayer(option, path, layer, true)(project);
  }
  if (thickness_m <= 0) return project;
  const lookup = lookupFor(project);
  return onOption(option, (each) => withContinuousInsulation(each, { material, thickness_m, name: each.name, lookup }))(
    project,
  );
}

/** The project with one more option: this one with the board. Null: eight options stand, or there is no such option. */
export function withBoardAsOption(project: Project, board: BoardToUse): { project: Project; letter: string } | null {
  const letter = freeOptionLetter(project);
  const changed = withBoardInOption(project, board).options.find(({ id }) => id === board.option);
  if (letter === null || !changed) return null;
  const made: Option = { ...changed, id: letter, name: `${changed.name}, ${board.words.replace(/\.$/, "")}` };
  return { project: { ...project, options: [...project.options, made] }, letter };
}

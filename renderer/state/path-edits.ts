import { areaShares, nameOfPath, type Option, type Path, type Project } from "../../solver/index.ts";
import { onOption } from "./edits.ts";

/** Pure edits of the paths of an option. */

/** Most paths an option is drawn and listed with. */
export const mostPaths = 10;
/** What a new path takes from the widest one, to be set right in its field. */
const shareOfNew = 0.05;

const round = (value: number): number => Math.round(value * 1e6) / 1e6;

/** A path id that the option does not use. */
export function freePathId(option: Option): string {
  const taken = new Set(option.paths.map(({ id }) => id));
  let number = option.paths.length + 1;
  while (taken.has(`path-${number}`)) number++;
  return `path-${number}`;
}

/** Puts a copy of a path beside it, with 5 % of the area from the widest. */
export const copyPath = (optionId: string, pathId: string, newId: string): ((project: Project) => Project) =>
  onOption(optionId, (option) => {
    const at = option.paths.findIndex(({ id }) => id === pathId);
    const path = option.paths[at];
    if (path === undefined || option.paths.length >= mostPaths) return option;
    const shares = new Map(areaShares(option).map((one) => [one.path, one.share]));
    const widest = [...shares].sort((one, other) => other[1] - one[1])[0]![0];
    const taken = Math.min(shareOfNew, shares.get(widest)! / 2);
    const paths: Path[] = option.paths.map((one) => ({
      ...one,
      areaShare: round(shares.get(one.id)! - (one.id === widest ? taken : 0)),
    }));
    const copy: Path = { ...path, id: newId, name: `${nameOfPath(path)}, copy`, areaShare: round(taken) };
    return { ...option, paths: paths.toSpliced(at + 1, 0, copy) };
  });

/** Takes a path out; the widest of the others takes over its area. The last one stays. */
export const dropPath = (optionId: string, pathId: string): ((project: Project) => Project) =>
  onOption(optionId, (option) => {
    if (option.paths.length < 2 || !option.paths.some(({ id }) => id === pathId)) return option;
    const shares = new Map(areaShares(option).map((one) => [one.path, one.share]));
    const rest = option.paths.filter(({ id }) => id !== pathId);
    const widest = rest.reduce<Path>(
      (most, one) => (shares.get(one.id)! > shares.get(most.id)! ? one : most),
      rest[0]!,
    );
    return {
      ...option,
      paths: rest.map((one) => ({
        ...one,
        areaShare: round(shares.get(one.id)! + (one === widest ? shares.get(pathId)! : 0)),
      })),
    };
  });

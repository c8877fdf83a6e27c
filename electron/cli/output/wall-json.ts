import { wholeWall } from "../../../solver/index.ts";
import type { ProjectInput } from "../project-input.ts";

/** U, R and the share of heat by path of each option. */
export function wallJson({ project }: ProjectInput, options: readonly string[]): object {
  return Object.fromEntries(
    project.options
      .filter((option) => options.includes(option.id))
      .map((option) => {
        const wall = wholeWall(option, project);
        const { U_Wm2K, R_m2KW, method, notes } = wall;
        const paths = wall.paths.map(({ id, areaShare, R_m2KW: R, heatShare }) => ({
          id,
          areaShare,
          R_m2KW: R,
          heatShare,
        }));
        return [option.id, { U_Wm2K, R_m2KW, method, paths, notes }];
      }),
  );
}

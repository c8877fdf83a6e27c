import { boundary, wholeWall } from "../../../solver/index.ts";
import type { ProjectInput } from "../project-input.ts";

/** What needs no run, by option: U, R, the share of heat by path, breaks in the control layers. */
export function wallJson({ project }: ProjectInput, options: readonly string[]): object {
  return Object.fromEntries(
    project.options
      .filter((option) => options.includes(option.id))
      .map((option) => {
        const { U_Wm2K, R_m2KW, method, notes, paths } = wholeWall(option, project);
        const shares = paths.map(({ id, areaShare, R_m2KW: R, heatShare }) => ({
          id,
          areaShare,
          R_m2KW: R,
          heatShare,
        }));
        return [option.id, { U_Wm2K, R_m2KW, method, paths: shares, breaks: boundary(option, project).breaks, notes }];
      }),
  );
}

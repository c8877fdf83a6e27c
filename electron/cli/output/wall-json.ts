import type { ProjectInput } from "../project-input.ts";

export function wallJson(_input: ProjectInput, options: readonly string[]): readonly object[] {
  return options.map((option) => ({ option }));
}

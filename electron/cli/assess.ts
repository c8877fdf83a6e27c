import type { Finding } from "../../solver/index.ts";
import type { ProjectInput } from "./project-input.ts";
import type { Ran } from "./run-cases.ts";

export function assess(_ran: Ran, _input: ProjectInput): readonly Finding[] {
  return [];
}

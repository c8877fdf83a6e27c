import { weatherOf } from "../../../solver/index.ts";
import type { ProjectInput } from "../project-input.ts";

export interface WeatherFacts {
  readonly name: string;
  readonly kind: string;
  readonly sha256: string;
}

/** Which weather a project was run in; null for a laboratory case. */
export function weatherJson({ project, files }: ProjectInput): WeatherFacts | null {
  if (project.site === undefined) return null;
  const read = weatherOf(project.site.weather, files);
  return read.ok ? { name: read.value.label, kind: read.value.kind, sha256: read.value.sha256 } : null;
}

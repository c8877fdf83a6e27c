import { catalogue } from "../materials/index.ts";
import type { Project } from "./project.ts";

/** Letter pairs of a name. */
function pairs(name: string): Set<string> {
  const plain = name.toLowerCase().slice(0, 80);
  const result = new Set<string>();
  for (let i = 0; i + 1 < plain.length; i++) result.add(plain.slice(i, i + 2));
  return result;
}

/** Up to two material ids that look like what was written (share of letter pairs above one half). */
export function nearestNames(written: string, project: Pick<Project, "materials">): string[] {
  const own = pairs(written);
  const ids = [...(project.materials ?? []), ...catalogue].map((material) => material.id);
  return [...new Set(ids)]
    .map((id) => {
      const other = pairs(id);
      let shared = 0;
      for (const pair of own) if (other.has(pair)) shared++;
      return { id, likeness: (2 * shared) / (own.size + other.size || 1) };
    })
    .filter(({ likeness }) => likeness > 0.5)
    .sort((a, b) => b.likeness - a.likeness)
    .slice(0, 2)
    .map(({ id }) => id);
}

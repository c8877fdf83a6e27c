/** A slice of a path between two depths, and its resistance. */
export interface Slab {
  readonly id: string;
  readonly depth_m: number;
  readonly resistance_m2KW: number;
}
/** One path as heat sees it: a share of the area and slabs, outside first, films left out. */
export interface Section {
  readonly share: number;
  readonly slabs: readonly Slab[];
}
export interface Films {
  readonly inside_m2KW: number;
  readonly outside_m2KW: number;
}

/** Planes nearer than this count as one [m]. */
const samePlane_m = 1e-6;

export const seriesResistance_m2KW = (section: Pick<Section, "slabs">, films: Films): number =>
  section.slabs.reduce((sum, slab) => sum + slab.resistance_m2KW, films.inside_m2KW + films.outside_m2KW);

/**
 * Upper limit of the total resistance: heat keeps to its own path (parallel paths, films included) [m2 K/W].
 * Source: ISO 6946, combined method, upper limit (form MEMORY); ASHRAE Fundamentals, parallel-path method.
 */
export function upperLimit_m2KW(sections: readonly Section[], films: Films): number {
  return 1 / sections.reduce((sum, section) => sum + section.share / seriesResistance_m2KW(section, films), 0);
}

/** Depth of every plane at which some path changes material, room face at 0, rising outward. */
function planes(sections: readonly Section[]): number[] {
  const depths = sections.flatMap(({ slabs }) => {
    let depth = 0;
    return [...slabs].reverse().map((slab) => (depth += slab.depth_m));
  });
  return [0, ...depths].sort((a, b) => a - b).filter((depth, i, all) => i === 0 || depth - all[i - 1]! > samePlane_m);
}

/** Resistance of a path between two depths from the room face; a membrane's own counts where it lies. */
function between(section: Section, from: number, to: number): number {
  let depth = 0;
  let sum = 0;
  for (const slab of [...section.slabs].reverse()) {
    const next = depth + slab.depth_m;
    if (slab.depth_m <= samePlane_m) {
      if (depth > from + samePlane_m / 2 && depth <= to + samePlane_m / 2) sum += slab.resistance_m2KW;
      else if (depth <= samePlane_m && from === 0) sum += slab.resistance_m2KW;
    } else {
      const overlap = Math.min(to, next) - Math.max(from, depth);
      if (overlap > 0) sum += (slab.resistance_m2KW * overlap) / slab.depth_m;
    }
    depth = next;
  }
  return sum;
}

/**
 * Lower limit of the total resistance: every plane between layers is at one temperature, so each slice averages in parallel
 * [m2 K/W]. Null where the paths do not end in the same plane: the method has no meaning there.
 * Source: ISO 6946, combined method, lower limit (form MEMORY); Canadian code practice, isothermal planes.
 */
export function lowerLimit_m2KW(sections: readonly Section[], films: Films): number | null {
  const depths = sections.map(({ slabs }) => slabs.reduce((sum, slab) => sum + slab.depth_m, 0));
  if (Math.max(...depths) - Math.min(...depths) > 1e-3) return null;
  const cuts = planes(sections);
  let total = films.inside_m2KW + films.outside_m2KW;
  for (let i = 1; i < cuts.length; i++) {
    const from = cuts[i - 1]!;
    const to = cuts[i]!;
    const conductance = sections.reduce(
      (sum, section) => sum + section.share / Math.max(between(section, from, to), 1e-9),
      0,
    );
    total += 1 / conductance;
  }
  return total;
}

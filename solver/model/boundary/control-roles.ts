import { isFoam, isFraming, isInsulation, isMasonry, isSheathing, type FoundLayer } from "../layer-parts.ts";
import type { ControlRole } from "../project.ts";
import { dryCup, permeance_perm } from "./vapour-figures.ts";

export const controlRoles: readonly ControlRole[] = ["water", "air", "vapour", "thermal"];

/** The layer that plays a role on one path, and how that is known. */
export interface PlayedRole {
  readonly role: ControlRole;
  /** Layer id, or null where no layer plays the role. */
  readonly layer: string | null;
  readonly name: string;
  readonly by: "user" | "deduced";
  /** Why it was taken, or what is missing. */
  readonly because: string;
}

const waterMembranes = /housewrap|water-resistive|building paper|felt|self-adhered|fluid-applied/i;
const airMembranes = /self-adhered|fluid-applied|membrane/i;
/** Boards laid side by side leave gaps: no air control. */
const gappedBoards = /board sheathing/i;
/** A vapour retarder class limit [US perm]. */
const classIII = 10;

type Guess = { readonly found: FoundLayer; readonly because: string } | null;
const first = (found: readonly FoundLayer[], test: (one: FoundLayer) => boolean, because: string): Guess => {
  const one = found.find(test);
  return one ? { found: one, because } : null;
};

const guesses: Readonly<Record<ControlRole, (found: readonly FoundLayer[]) => Guess>> = {
  water: (found) =>
    first(
      found,
      (one) => one.material.kind === "membrane" && waterMembranes.test(one.material.name),
      "a water-resistive membrane",
    ) ??
    first(found, (one) => /water-resistive overlay/i.test(one.material.name), "a panel with a water-resistive face"),
  air: (found) =>
    first(
      found,
      (one) =>
        one.material.kind === "membrane" &&
        airMembranes.test(one.material.name) &&
        !/retarder/i.test(one.material.name),
      "an airtight membrane",
    ) ??
    first(
      found,
      (one) => isSheathing(one.material) && !gappedBoards.test(one.material.name),
      "a sheathing panel with taped joints",
    ) ??
    first(found, (one) => /closed-cell/i.test(one.material.name), "closed-cell spray foam") ??
    first(found, (one) => /concrete, normal|cross-laminated/i.test(one.material.name), "a solid layer") ??
    first(
      found,
      (one) =>
        one.material.kind === "bulk" &&
        /plaster$|plaster \(/i.test(one.material.name) &&
        found.some((other) => isMasonry(other.material)),
      "plaster on masonry",
    ),
  vapour: (found) => {
    const rated = found
      .filter((one) => one.material.kind !== "air" && !isFraming(one))
      .map((one) => ({ one, perm: permeance_perm(one.material, one.thickness_m, dryCup) }))
      .filter(({ perm }) => perm <= classIII)
      .sort((a, b) => a.perm - b.perm);
    // The retarder that was put there for it goes before a board that happens to be tight.
    const meant = rated.find(({ one }) => one.material.kind === "membrane") ?? rated[0];
    return meant
      ? {
          found: meant.one,
          because: `${meant.perm < 0.1 ? meant.perm.toFixed(2) : meant.perm.toFixed(1)} perm by dry cup`,
        }
      : null;
  },
  thermal: (found) => {
    const sheathing = found.findIndex((one) => isSheathing(one.material));
    return (
      first(
        found.slice(0, Math.max(0, sheathing)),
        (one) => isInsulation(one.material),
        "continuous insulation outside the sheathing",
      ) ??
      first(found, (one) => isFoam(one.material) && isInsulation(one.material), "insulation") ??
      first(found, (one) => isInsulation(one.material), "insulation between the framing")
    );
  },
};

const missing: Readonly<Record<ControlRole, string>> = {
  water: "no water-resistive membrane or face is known here",
  air: "no airtight board or membrane is known here",
  vapour: "nothing here is of 10 perm or less",
  thermal: "nothing here insulates",
};

/** The layer for each control role on one path: set by the user where given, else deduced from what the layers are. */
export function playedRoles(found: readonly FoundLayer[]): readonly PlayedRole[] {
  return controlRoles.map((role) => {
    const own = found.find((one) => one.layer.roles?.includes(role));
    if (own) return { role, layer: own.layer.id, name: own.material.name, by: "user" as const, because: "set by you" };
    const guess = guesses[role](found);
    if (guess)
      return {
        role,
        layer: guess.found.layer.id,
        name: guess.found.material.name,
        by: "deduced" as const,
        because: guess.because,
      };
    return { role, layer: null, name: "", by: "deduced" as const, because: missing[role] };
  });
}

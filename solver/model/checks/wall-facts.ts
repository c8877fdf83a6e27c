import { rsiPerR } from "../../units.ts";
import { dryCup, inSeries_perm, permeance_perm, wetCup } from "../boundary/vapour-figures.ts";
import type { Backing, RetarderClass } from "../codes/retarder-tables.ts";
import { retarderClass, sprayFoamLimit_perm } from "../codes/retarder-tables.ts";
import {
  foundLayers,
  isFoam,
  isFraming,
  isInsulation,
  isSheathing,
  isSprayFoam,
  type FoundLayer,
} from "../layer-parts.ts";
import { lookupFor } from "../layer-material.ts";
import type { Option, Path, Project } from "../project.ts";
import { ratedResistance_m2KW } from "../thermal/rated-resistance.ts";

/** A layer that retards vapour, with both cups [US perm]. */
export interface Retarder {
  readonly id: string;
  readonly name: string;
  readonly dryCup_perm: number;
  readonly wetCup_perm: number;
  readonly class: RetarderClass;
}

/** What the codes ask of the field of a wall; R inch-pound, nominal. */
export interface WallFacts {
  readonly path: Path;
  readonly found: readonly FoundLayer[];
  readonly framed: boolean;
  readonly stud: "2x4" | "2x6" | "other";
  readonly cavity_R: number;
  readonly ci_R: number;
  readonly ciKind: "foam" | "other" | "none";
  readonly ciName: string;
  readonly ciClass: RetarderClass;
  readonly sprayFoam_R: number;
  /** Everything inboard of the continuous insulation. */
  readonly inboard_R: number;
  readonly backing: Backing;
  readonly ventedCladding: boolean;
  /** The tightest layer inside of the cavity, or null above 10 perm. */
  readonly retarder: Retarder | null;
  /** A layer of 1 perm or less outside of the cavity. */
  readonly vapourControlOutside: boolean;
}

const R = (one: FoundLayer): number => ratedResistance_m2KW(one.material, one.thickness_m) / rsiPerR;
const near = (thickness_m: number, nominal_m: number): boolean => Math.abs(thickness_m - nominal_m) <= 0.004;

function backingOf(found: readonly FoundLayer[]): Backing {
  const sheathing = found.find((one) => isSheathing(one.material));
  if (!sheathing) return "none";
  const name = sheathing.material.name;
  if (/OSB|plywood|strand/i.test(name)) return "woodPanel";
  if (/fibreboard|fiberboard/i.test(name)) return "fibreboard";
  return /gypsum/i.test(name) ? "gypsum" : "other";
}

/** The field of the wall: its largest stud bay, else its largest path. */
export function fieldPath(option: Pick<Option, "paths">): Path {
  const bays = option.paths.filter((path) => path.kind === "studBay");
  return (bays.length > 0 ? bays : option.paths).reduce((best, path) =>
    (path.areaShare ?? 0) > (best.areaShare ?? 0) ? path : best,
  );
}

/** Reads off an option what the code tables ask about: cavity and continuous insulation, stud, cladding, retarder inside. */
export function wallFacts(option: Option, project: Pick<Project, "materials">): WallFacts {
  const lookup = lookupFor(project);
  const path = fieldPath(option);
  const found = foundLayers(path, lookup);
  const studPath =
    option.paths.find((one) => one.kind === "stud") ??
    option.paths.find((one) => one.kind === "plate" || one.kind === "header");
  const studLayers = studPath ? foundLayers(studPath, lookup) : [];
  const key = (one: FoundLayer): string => `${one.layer.id}|${one.material.id}`;
  const shared = new Set(studLayers.map(key));
  const sheathing = found.findIndex((one) => isSheathing(one.material));

  // Between the framing lies what the stud path does not have; without one, what lies inside of the sheathing and is no laminated board.
  const betweenFraming = (one: FoundLayer, i: number): boolean => {
    const laminated = one.material.group === "Sheathing";
    return studPath ? !shared.has(key(one)) : i > sheathing && !laminated;
  };
  const cavity = found.filter((one, i) => isInsulation(one.material) && betweenFraming(one, i));
  const firstCavity =
    cavity.length > 0
      ? found.indexOf(cavity[0]!)
      : found.findIndex((one, i) => one.material.kind === "air" && !one.ventilated && betweenFraming(one, i));
  const lastCavity = cavity.length > 0 ? found.indexOf(cavity.at(-1)!) : firstCavity;
  const outside = found.filter((_, i) => (firstCavity >= 0 ? i < firstCavity : i <= sheathing));
  const ci = outside.filter((one) => isInsulation(one.material));
  const framingDepth =
    studLayers.filter(isFraming).reduce((sum, one) => sum + one.thickness_m, 0) ||
    cavity.reduce((sum, one) => sum + one.thickness_m, 0);
  const framed = path.kind === "studBay" || studPath !== undefined;

  const spray = cavity.find(
    (one) => isSprayFoam(one.material) && permeance_perm(one.material, one.thickness_m, dryCup) <= sprayFoamLimit_perm,
  );
  const sprayAtSheathing = spray && found.indexOf(spray) === firstCavity ? R(spray) : 0;
  const lastCi = ci.length > 0 ? found.indexOf(ci.at(-1)!) : -1;

  const inner = lastCavity >= 0 ? found.slice(lastCavity + 1) : [];
  const rated = inner
    .filter((one) => one.material.kind !== "air")
    .map((one) => ({
      id: one.layer.id,
      name: one.material.name,
      dryCup_perm: permeance_perm(one.material, one.thickness_m, dryCup),
      wetCup_perm: permeance_perm(one.material, one.thickness_m, wetCup),
    }))
    .sort((a, b) => a.dryCup_perm - b.dryCup_perm);
  const tightest = rated[0];
  const tightestClass = tightest ? retarderClass(tightest.dryCup_perm) : "none";

  return {
    path,
    found,
    framed,
    stud: near(framingDepth, 0.089) ? "2x4" : near(framingDepth, 0.14) ? "2x6" : "other",
    cavity_R: cavity.reduce((sum, one) => sum + R(one), 0),
    ci_R: ci.reduce((sum, one) => sum + R(one), 0),
    ciKind: ci.length === 0 ? "none" : ci.some((one) => isFoam(one.material)) ? "foam" : "other",
    ciName: ci[0]?.material.name ?? "",
    ciClass:
      ci.length === 0
        ? "none"
        : retarderClass(inSeries_perm(ci.map((one) => permeance_perm(one.material, one.thickness_m, dryCup)))),
    sprayFoam_R: sprayAtSheathing,
    inboard_R: found.slice(lastCi + 1).reduce((sum, one) => sum + R(one), 0),
    backing: backingOf(found),
    ventedCladding:
      found.some((one, i) => one.ventilated && (sheathing < 0 || i < sheathing)) ||
      found.some((one) => /^vinyl siding/i.test(one.material.name)),
    retarder: tightest && tightestClass !== "none" ? { ...tightest, class: tightestClass } : null,
    vapourControlOutside: outside.some((one) => permeance_perm(one.material, one.thickness_m, dryCup) <= 1),
  };
}

import { foundLayers, isInsulation, isSheathing, type FoundLayer } from "../layer-parts.ts";
import { lookupFor } from "../layer-material.ts";
import type { Option, Project } from "../project.ts";
import { nameOfPath } from "../words.ts";
import { fastenerCorrection_Wm2K, type Fasteners } from "./fasteners.ts";
import { areaShares, type FramingShareId } from "./framing-shares.ts";
import { lowerLimit_m2KW, seriesResistance_m2KW, upperLimit_m2KW, type Films, type Section } from "./limits.ts";
import { ratedResistance_m2KW, ratingTemperature_C } from "./rated-resistance.ts";

/** Surface films by practice [m2 K/W]. */
export const filmSets = {
  /** ASHRAE Fundamentals, walls in winter (SEEN in a worked table). */
  northAmerican: { inside_m2KW: 0.1198, outside_m2KW: 0.0299 },
  /** ISO 6946, heat flowing horizontally (SEEN in a government worked example). */
  iso6946: { inside_m2KW: 0.13, outside_m2KW: 0.04 },
} as const satisfies Record<string, Films>;

export interface WholeWallSettings {
  readonly films?: Films;
  /** Mean temperature of the layers [degC], 24 by default. */
  readonly meanTemperature_C?: number;
  /** "dropped": nothing counts from a ventilated space outward, and the still-air film takes its place (ISO 6946, well ventilated). */
  readonly ventilatedCladding?: "dropped" | "counted";
  readonly framing?: FramingShareId;
  readonly fasteners?: Fasteners;
}

export interface WallPath {
  readonly id: string;
  readonly name: string;
  readonly areaShare: number;
  readonly shareGiven: boolean;
  readonly layers: readonly {
    readonly id: string;
    readonly name: string;
    readonly resistance_m2KW: number;
    readonly counted: boolean;
  }[];
  /** Films included. */
  readonly R_m2KW: number;
  readonly U_Wm2K: number;
  /** Of all heat that the option loses, 0..1. */
  readonly heatShare: number;
}

export interface WholeWall {
  readonly paths: readonly WallPath[];
  readonly parallelPath: { readonly R_m2KW: number; readonly U_Wm2K: number };
  /** Null where the paths end in different planes. */
  readonly isothermalPlanes: { readonly R_m2KW: number; readonly U_Wm2K: number } | null;
  /** Mean of both limits and the greatest possible error of it, 0..1; null as above. */
  readonly iso6946: {
    readonly upper_m2KW: number;
    readonly lower_m2KW: number;
    readonly R_m2KW: number;
    readonly U_Wm2K: number;
    readonly greatestError: number;
  } | null;
  /** Added to U by fasteners through the outer insulation [W/(m2 K)]; 0 without. */
  readonly fastenerCorrection_Wm2K: number;
  /** What to quote: the mean of both limits where there is one, else parallel paths; fasteners added. */
  readonly R_m2KW: number;
  readonly U_Wm2K: number;
  readonly method: string;
  readonly framingShare: number;
  readonly notes: readonly string[];
}

/** Index of the first layer that counts for heat: inside of the innermost ventilated space. */
function firstCounted(found: readonly FoundLayer[]): number {
  let first = 0;
  found.forEach((one, i) => {
    if (one.ventilated) first = i + 1;
  });
  return first;
}

/** The insulation outside the sheathing, or null. */
function outerInsulation(found: readonly FoundLayer[]): FoundLayer | null {
  const sheathing = found.findIndex((one) => isSheathing(one.material));
  return found.slice(0, sheathing < 0 ? 0 : sheathing).find((one) => isInsulation(one.material)) ?? null;
}

/**
 * U and R of the whole wall by parallel paths, by isothermal planes, and by the mean of both with its bound; the share of heat
 * that each path loses. Paths whose materials are unknown throw nothing: their unknown layers count as zero and a note says so.
 */
export function wholeWall(
  option: Option,
  project: Pick<Project, "materials">,
  settings: WholeWallSettings = {},
): WholeWall {
  const films = settings.films ?? filmSets.northAmerican;
  const lookup = lookupFor(project);
  const notes: string[] = [];
  const shares = areaShares(option, settings.framing);
  const dropping = (settings.ventilatedCladding ?? "dropped") === "dropped";
  const rows = option.paths.map((path, i) => {
    const found = foundLayers(path, lookup);
    if (found.length < path.layers.length)
      notes.push(`${nameOfPath(path)}: a material is not known, and its layer counts as nothing.`);
    const first = dropping ? firstCounted(found) : 0;
    const own: Films = first > 0 ? { ...films, outside_m2KW: films.inside_m2KW } : films;
    const layers = found.map((one, at) => ({
      id: one.layer.id,
      name: one.material.name,
      depth_m: one.thickness_m,
      resistance_m2KW: ratedResistance_m2KW(
        one.material,
        one.thickness_m,
        settings.meanTemperature_C ?? ratingTemperature_C,
      ),
      counted: at >= first,
    }));
    const section: Section = { share: shares[i]!.share, slabs: layers.filter((layer) => layer.counted) };
    return { path, found, films: own, layers, section };
  });
  const sum = rows.reduce((total, row) => total + row.section.share, 0) || 1;
  const sections = rows.map((row) => ({ ...row.section, share: row.section.share / sum }));
  if (rows.some((row) => row.films !== films))
    notes.push(
      "The ventilated cladding and its space are not counted; the still-air film stands in their place (ISO 6946, well-ventilated air layer).",
    );

  // Films may differ between paths (one ventilated, one not), so the parallel sum is taken path by path.
  const resistances = rows.map((row) => seriesResistance_m2KW(row.section, row.films));
  const U = sections.reduce((total, section, i) => total + section.share / resistances[i]!, 0);
  const sameFilms = rows.every((row) => row.films.outside_m2KW === rows[0]!.films.outside_m2KW);
  const lower = sameFilms ? lowerLimit_m2KW(sections, rows[0]!.films) : null;
  const upper = sameFilms ? upperLimit_m2KW(sections, rows[0]!.films) : 1 / U;
  if (lower === null)
    notes.push("The paths do not end in the same plane: only parallel paths apply, and the true loss is higher.");
  const mean = lower === null ? null : (upper + lower) / 2;

  const base = mean ?? 1 / U;
  const field = rows.reduce((best, row) => (row.section.share > best.section.share ? row : best), rows[0]!);
  const fasteners = settings.fasteners ?? option.fasteners;
  const ci = outerInsulation(field.found);
  const correction =
    fasteners && ci
      ? fastenerCorrection_Wm2K(fasteners, ci.thickness_m, ratedResistance_m2KW(ci.material, ci.thickness_m), base)
      : 0;
  if (fasteners && !ci) notes.push("There is no insulation outside the sheathing for the fasteners to pass through.");
  const finalU = 1 / base + correction;
  return {
    paths: rows.map((row, i) => ({
      id: row.path.id,
      name: nameOfPath(row.path),
      areaShare: sections[i]!.share,
      shareGiven: shares[i]!.given,
      layers: row.layers.map(({ id, name, resistance_m2KW, counted }) => ({ id, name, resistance_m2KW, counted })),
      R_m2KW: resistances[i]!,
      U_Wm2K: 1 / resistances[i]!,
      heatShare: sections[i]!.share / resistances[i]! / U,
    })),
    parallelPath: { R_m2KW: 1 / U, U_Wm2K: U },
    isothermalPlanes: lower === null ? null : { R_m2KW: lower, U_Wm2K: 1 / lower },
    iso6946:
      lower === null || mean === null
        ? null
        : {
            upper_m2KW: upper,
            lower_m2KW: lower,
            R_m2KW: mean,
            U_Wm2K: 1 / mean,
            greatestError: (upper - lower) / (2 * mean),
          },
    fastenerCorrection_Wm2K: correction,
    R_m2KW: 1 / finalU,
    U_Wm2K: finalU,
    method: mean === null ? "parallel paths" : "mean of parallel paths and isothermal planes (ISO 6946)",
    framingShare: rows.reduce(
      (total, row, i) => total + (["stud", "plate", "header"].includes(row.path.kind) ? sections[i]!.share : 0),
      0,
    ),
    notes,
  };
}

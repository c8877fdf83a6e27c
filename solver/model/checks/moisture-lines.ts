import { inSeries_perm, permeance_perm, wetCup } from "../boundary/vapour-figures.ts";
import { classLimits_perm } from "../codes/retarder-tables.ts";
import { foundLayers, isFraming, isMasonry, type FoundLayer } from "../layer-parts.ts";
import { lookupFor } from "../layer-material.ts";
import type { Option, Project } from "../project.ts";
import { inSentence, nameOfPath } from "../words.ts";
import { checkLine, type CheckLine } from "./check-line.ts";

/** Both ways out together below this: what gets in stays for a season or more [US perm]. Common practice, no source. */
const slowDrying_perm = 1;
const practice = { source: "Common practice, no source", flag: "ASSUMED" } as const;

const holdsWater = (one: FoundLayer): boolean =>
  one.material.kind === "bulk" &&
  one.material.wood === true &&
  one.thickness_m < 0.03 &&
  !/siding/i.test(one.material.name);
const reservoir = (one: FoundLayer): boolean => one.material.kind === "bulk" && isMasonry(one.material);

/** Layers that stop vapour like a Class I sheet: 0.1 perm or less by wet cup as well. */
const barriers = (found: readonly FoundLayer[]): readonly number[] =>
  found.flatMap((one, i) =>
    one.material.kind !== "air" &&
    !isFraming(one) &&
    permeance_perm(one.material, one.thickness_m, wetCup) <= classLimits_perm.I
      ? [i]
      : [],
  );

function twoBarriers(found: readonly FoundLayer[], path: string, name: string): CheckLine[] {
  // Cladding in front of a ventilated space dries behind itself and is no second barrier.
  const firstInside = found.reduce((last, one, i) => (one.ventilated ? i + 1 : last), 0);
  const at = barriers(found).filter((i) => i >= firstInside);
  const outer = at[0];
  const inner = at.at(-1);
  if (outer === undefined || inner === undefined || outer === inner) return [];
  const between = found
    .slice(outer + 1, inner)
    .find((one) => one.material.kind === "bulk" && (one.material.wood || one.thickness_m > 0.02));
  if (!between) return [];
  const [a, b] = [found[outer]!, found[inner]!];
  return [
    checkLine({
      id: "twoVapourBarriers",
      subject: "moisture",
      path,
      verdict: "caution",
      holds: false,
      statement: `${name}: ${inSentence(a.material.name)} outside and ${inSentence(b.material.name)} inside are both Class I; what gets wet between them, ${inSentence(between.material.name)} first, cannot dry by diffusion either way.`,
      remedy: "Open one side: a responsive retarder or paint inside, or unfaced or vapour-open insulation outside.",
      measured: permeance_perm(b.material, b.thickness_m, wetCup),
      limit: classLimits_perm.I,
      unit: "perm",
      ...practice,
    }),
  ];
}

function drying(found: readonly FoundLayer[], path: string, name: string): CheckLine[] {
  const lines: CheckLine[] = [];
  found.forEach((one, i) => {
    if (!holdsWater(one)) return;
    const outside = found.slice(0, i);
    const lastVent = outside.reduce((last, other, at) => (other.ventilated ? at : last), -1);
    const permOf = (layers: readonly FoundLayer[]): number =>
      layers.length === 0
        ? Infinity
        : inSeries_perm(layers.map((other) => permeance_perm(other.material, other.thickness_m, wetCup)));
    const outward = permOf(outside.slice(lastVent + 1));
    const inward = permOf(found.slice(i + 1));
    const both = outward + inward;
    if (both > slowDrying_perm) return;
    const none = outward <= classLimits_perm.I && inward <= classLimits_perm.I;
    lines.push(
      checkLine({
        id: none ? "noDryingPath" : "slowDrying",
        subject: "moisture",
        path,
        verdict: "caution",
        holds: !none,
        statement: none
          ? `${name}: ${inSentence(one.material.name)} has no drying path: ${outward.toFixed(2)} perm outward and ${inward.toFixed(2)} perm inward, wet cup. A leak or wet lumber stays for years.`
          : `${name}: ${inSentence(one.material.name)} dries slowly: ${outward.toFixed(2)} perm outward and ${inward.toFixed(2)} perm inward, wet cup. There is little tolerance for a leak or a wet start.`,
        remedy: "Leave one side open to vapour, and close the wall only when the wood is at 18 % or less.",
        measured: both,
        limit: none ? classLimits_perm.I : slowDrying_perm,
        unit: "perm",
        ...practice,
      }),
    );
  });
  return lines.slice(0, 1);
}

function drainage(found: readonly FoundLayer[], path: string, name: string): CheckLine[] {
  // A coat of paint on the outside is no cladding.
  const first = found.findIndex((one) => one.material.kind !== "membrane");
  const cladding = found[first];
  if (!cladding || !reservoir(cladding)) return [];
  const inward = found.slice(first + 1);
  const behind = inward.find((one) => one.material.kind !== "membrane");
  if (!behind || behind.material.kind === "air") return [];
  if (!inward.some((one) => one.material.wood)) return [];
  return [
    checkLine({
      id: "noDrainageGap",
      subject: "moisture",
      path,
      verdict: "caution",
      holds: false,
      statement: `${name}: ${inSentence(cladding.material.name)} stores rain and lies against ${inSentence(behind.material.name)} without a drained gap.`,
      remedy: "Put a drained gap of at least 3/16 in. behind it, ventilated where the sun drives the water inward.",
      source:
        "A gap of 3/16 in. or 90 % drainage behind stucco on wood in moist and marine zones, IBC 2021 section 2510.6 as restated",
      flag: "SEEN second-hand",
    }),
  ];
}

/** Checks of the layers alone: two vapour barriers, no way to dry, reservoir cladding without a gap. One set for each path; equal ones are told once. */
export function moistureLines(option: Option, project: Pick<Project, "materials">): readonly CheckLine[] {
  const lookup = lookupFor(project);
  const told = new Set<string>();
  return option.paths.flatMap((path) => {
    const found = foundLayers(path, lookup);
    const name = nameOfPath(path);
    return [
      ...twoBarriers(found, path.id, name),
      ...drying(found, path.id, name),
      ...drainage(found, path.id, name),
    ].filter((line) => {
      const key = `${line.id}: ${line.statement.slice(name.length)}`;
      if (told.has(key)) return false;
      told.add(key);
      return true;
    });
  });
}

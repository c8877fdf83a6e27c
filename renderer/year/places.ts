import type { Case, ProbeSeries, RunResult } from "../../solver/index.ts";
import { dailyMeans, hourly, type Quantity } from "../plots/series.ts";
import { layerSpans, lowerFirst, watchedLayer, watchedWord } from "../plots/wall-depths.ts";

/** Every interface of the wall in one chart. */
export const everyInterface = "*";

export interface Place {
  /** Layer id, or `everyInterface`. */
  readonly id: string;
  readonly words: string;
  readonly isWood: boolean;
}

/** What the interface lines can be drawn of: each layer that has a thickness, outside first, and all interfaces. */
export function placesOf(aCase: Pick<Case, "layers">): Place[] {
  const layers = layerSpans(aCase.layers).filter(({ from_m, to_m }) => to_m > from_m);
  const watched = watchedLayer(aCase);
  return [
    ...layers.map(({ layer }) => ({
      id: layer.id,
      words: layer === watched ? watchedWord(aCase) : lowerFirst(layer.name.split(/[,(]/)[0]!.trim()),
      isWood: layer.material.wood === true,
    })),
    { id: everyInterface, words: "every interface", isWood: false },
  ];
}

export interface PlaceLine {
  readonly probe: ProbeSeries;
  readonly role: "innerFace" | "whole" | "outerFace" | "interface";
  readonly words: string;
  readonly days: Float64Array;
}

/** Daily means at a place: inner face, whole layer, outer face; or each plane where two layers meet, once. */
export function placeLines(
  aCase: Pick<Case, "layers">,
  result: RunResult,
  place: string,
  quantity: Quantity,
): PlaceLine[] {
  const line = (probe: ProbeSeries, role: PlaceLine["role"], words: string): PlaceLine => ({
    probe,
    role,
    words,
    days: dailyMeans(hourly(result, probe, quantity)),
  });
  if (place === everyInterface) {
    const planes = result.probes.filter(({ kind }) => kind === "interface");
    const together = (one: ProbeSeries, other: ProbeSeries): boolean => Math.abs(one.depth_m - other.depth_m) < 5e-5;
    const first = planes.filter((probe, index) => planes.findIndex((other) => together(probe, other)) === index);
    // Where two materials meet, the wood's water is the one that is asked for.
    const seen = first.map(
      (probe) => planes.find((other) => together(probe, other) && other.woodDensity_kgm3 !== null) ?? probe,
    );
    return seen.map((probe) => line(probe, "interface", planeWords(aCase, probe)));
  }
  const of = (suffix: string): ProbeSeries | undefined => result.probes.find(({ id }) => id === `${place}-${suffix}`);
  const parts = [
    ["inside", "innerFace", "inner face"],
    ["mean", "whole", "whole layer"],
    ["outside", "outerFace", "outer face"],
  ] as const;
  return parts.flatMap(([suffix, role, words]) => {
    const probe = of(suffix);
    return probe ? [line(probe, role, words)] : [];
  });
}

/** A plane by the two layers it lies between, in their last words: "sheathing | batt". */
function planeWords(aCase: Pick<Case, "layers">, probe: ProbeSeries): string {
  const solid = layerSpans(aCase.layers).filter(({ from_m, to_m }) => to_m > from_m);
  const near = 5e-5;
  const short = (name: string): string => name.split(/[,(]/)[0]!.trim().split(" ").at(-1)!.toLowerCase();
  const outer = solid.find(({ to_m }) => Math.abs(to_m - probe.depth_m) < near);
  const inner = solid.find(({ from_m }) => Math.abs(from_m - probe.depth_m) < near);
  if (outer && inner) return `${short(outer.layer.name)} | ${short(inner.layer.name)}`;
  return outer ? "room face" : inner ? "weather face" : probe.label;
}

import type { Case } from "../model/index.ts";
import type { Grid } from "./grid.ts";

/** Air that reaches a plane of the wall from the room, or from outdoors when the pressure turns. */
export interface AirLeak {
  readonly node: number;
  readonly layer: number;
  /** Side of the layer that books it. */
  readonly slotSide: "outside" | "inside";
  /** Mass flow: fixed [kg/(m2 s)], or coefficient [kg/(m2 s Pa^n)] of the pressure difference. */
  readonly fixed_kgm2s: number;
  readonly coefficient: number;
}

/** A share of the driving rain that gets behind the water control layer. */
export interface RainLeak {
  readonly node: number;
  readonly layer: number;
  readonly share: number;
}

/** An air space that exchanges air with outdoors. */
export interface VentilatedCavity {
  readonly node: number;
  readonly layer: number;
  readonly depth_m: number;
  /** [1/h]; null: driven by wind and stack. */
  readonly airChangesPerHour: number | null;
}

export interface WallSources {
  readonly airLeaks: readonly AirLeak[];
  readonly rainLeaks: readonly RainLeak[];
  /** What is left for the outer face: rain that leaks in does not also wet it. */
  readonly rainShareOfFace: number;
  readonly cavities: readonly VentilatedCavity[];
}

/** Density of room air [kg/m3] and exponent of the leakage law: criteria of blower-door practice, q = C dp^0.65 (ISO 9972, MEMORY). */
export const leakAirDensity_kgm3 = 1.2;
export const leakExponent = 0.65;

/** Sizes of a two-storey house where a project gives none: 10 x 10 m, 5.4 m high. Its walls, floor and roof (COMPUTED). */
const houseVolume_m3 = 540;
const houseEnvelope_m2 = 416;

export function wallSources(aCase: Case, grid: Grid): WallSources {
  const layerIndex = (id: string) => {
    const index = aCase.layers.findIndex((layer) => layer.id === id);
    if (index < 0) throw new RangeError(`a leak names layer "${id}", which the path "${aCase.path}" does not have`);
    return index;
  };
  const { air } = aCase.exposure;
  const airLeaks = aCase.leaks.map((leak): AirLeak => {
    const layer = layerIndex(leak.to);
    const node = leak.at === "inside" ? grid.lastNode[layer]! : grid.firstNode[layer]!;
    const slotSide = leak.at;
    if (leak.flow_m3hm2 !== "driven") {
      return { node, layer, slotSide, fixed_kgm2s: (leakAirDensity_kgm3 * leak.flow_m3hm2) / 3600, coefficient: 0 };
    }
    const volume = air?.volume_m3 ?? houseVolume_m3;
    const envelope = air?.envelopeArea_m2 ?? houseEnvelope_m2;
    const flowAt50_ms = ((air?.ach50 ?? 0) * volume) / envelope / 3600;
    const coefficient = (leakAirDensity_kgm3 * (leak.shareOfEnvelope ?? 1) * flowAt50_ms) / Math.pow(50, leakExponent);
    return { node, layer, slotSide, fixed_kgm2s: 0, coefficient };
  });
  const rain = aCase.exposure.kind === "site" ? aCase.exposure.site.rain : undefined;
  const rainLeaks: RainLeak[] = [];
  const leakTo = rain?.leakTo;
  if (leakTo !== undefined && (rain?.leakShare ?? 0) > 0 && aCase.layers.some((layer) => layer.id === leakTo)) {
    const layer = layerIndex(leakTo);
    rainLeaks.push({ node: grid.firstNode[layer]!, layer, share: rain!.leakShare! });
  }
  const cavities = aCase.layers.flatMap((layer, index): VentilatedCavity[] => {
    if (layer.airChangesPerHour === null) return [];
    return [
      {
        node: grid.firstNode[index]! + 1,
        layer: index,
        depth_m: layer.thickness_m,
        airChangesPerHour: layer.airChangesPerHour === "driven" ? null : layer.airChangesPerHour,
      },
    ];
  });
  const rainShareOfFace = 1 - rainLeaks.reduce((sum, leak) => sum + leak.share, 0);
  return { airLeaks, rainLeaks, rainShareOfFace, cavities };
}

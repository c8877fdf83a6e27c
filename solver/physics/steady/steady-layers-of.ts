import type { CaseLayer } from "../../model/index.ts";
import type { Material } from "../../materials/index.ts";
import { airPermeability_kgmsPa, wallFilms } from "./steady-layer.ts";
import type { Films, SteadyLayer } from "./steady-layer.ts";

export interface SteadyWall {
  /** Outside first; cladding outside of a ventilated space is left out. */
  readonly layers: readonly SteadyLayer[];
  readonly films: Films;
}

/** Mean humidity of a cup test between dry and wet, at which humidity-dependent figures are read. */
const cupHumidity = 0.5;
const airLayerSd_m = 0.01;

/**
 * A path's layers as the steady methods need them: dry conductivity, vapour resistance read at 50 % humidity.
 * Behind a ventilated space the outer film is that of still air (ISO 6946, well-ventilated air layers: SEEN, secondary).
 *
 * @param layers of a case, outside first
 */
export function steadyLayersOf(layers: readonly CaseLayer[]): SteadyWall {
  const ventilated = layers.reduce(
    (found, layer, index) => (layer.airChangesPerHour !== null && layer.airChangesPerHour !== 0 ? index : found),
    -1,
  );
  const behind = layers.slice(ventilated + 1);
  return {
    layers: behind.map((layer) => ({
      id: layer.id,
      resistance_m2KW: resistance_m2KW(layer),
      sd_m: sd_m(layer),
    })),
    films: {
      outside_m2KW: ventilated >= 0 ? wallFilms.inside_m2KW : wallFilms.outside_m2KW,
      inside_m2KW: wallFilms.inside_m2KW,
    },
  };
}

function resistance_m2KW(layer: CaseLayer): number {
  const given = layer.material.thermalResistance_m2KW;
  if (given !== undefined) return given;
  const conductivity = layer.material.conductivity_WmK;
  if (conductivity === undefined) return 0;
  const dry_WmK = typeof conductivity === "number" ? conductivity : conductivity.dry_WmK;
  return layer.thickness_m / dry_WmK;
}

function sd_m(layer: CaseLayer): number {
  const permeance = layer.material.permeance_kgm2sPa;
  if (permeance !== undefined) return airPermeability_kgmsPa / Math.max(at(permeance, cupHumidity), 1e-16);
  const vapour: Material["vapour"] = layer.material.vapour;
  if (vapour === undefined) return layer.material.kind === "air" ? airLayerSd_m : 0;
  const sd =
    "resistanceFactor" in vapour
      ? at(vapour.resistanceFactor, cupHumidity) * layer.thickness_m
      : (airPermeability_kgmsPa * layer.thickness_m) / Math.max(at(vapour.permeability_kgmsPa, cupHumidity), 1e-20);
  return layer.material.kind === "air" ? Math.max(sd, airLayerSd_m) : sd;
}

/** One number, or a curve read ln-linear between its points and flat beyond them. */
function at(curve: number | readonly (readonly [number, number])[], x: number): number {
  if (typeof curve === "number") return curve;
  const upper = curve.findIndex((point) => point[0] >= x);
  if (upper < 0) return curve[curve.length - 1]![1];
  if (upper === 0) return curve[0]![1];
  const [x0, y0] = curve[upper - 1]!;
  const [x1, y1] = curve[upper]!;
  const share = (x - x0) / (x1 - x0);
  return y0 > 0 && y1 > 0 ? Math.exp(Math.log(y0) * (1 - share) + Math.log(y1) * share) : y0 * (1 - share) + y1 * share;
}

import { materialById, type Material } from "../materials/index.ts";
import type { Case, CaseLayer, Indoor, Leak, Site } from "../model/index.ts";
import { withPermeanceTimes } from "./material-figures.ts";
import { condensingPlane } from "./plane.ts";

/** The layer with this id; throws when the path has none, for a study is asked about a layer that exists. */
export function layerOf(aCase: Case, layerId: string): CaseLayer {
  const layer = aCase.layers.find((candidate) => candidate.id === layerId);
  if (layer === undefined)
    throw new RangeError(
      `layerId must name a layer of path ${aCase.path}, got "${layerId}"; layers are ${aCase.layers.map((each) => each.id).join(", ")}`,
    );
  return layer;
}

/** The case with one layer changed. */
export function withLayer(aCase: Case, layerId: string, change: (layer: CaseLayer) => CaseLayer): Case {
  layerOf(aCase, layerId);
  return { ...aCase, layers: aCase.layers.map((layer) => (layer.id === layerId ? change(layer) : layer)) };
}

/** Thinner than this [m] a board is left out rather than thinned. */
const leastBoard_m = 0.0005;

/** The case with a layer of another thickness; at (almost) nothing the layer is left out. */
export function withThickness(aCase: Case, layerId: string, thickness_m: number): Case {
  if (!(thickness_m >= 0)) throw new RangeError(`thickness_m must be >= 0, got ${thickness_m}`);
  if (thickness_m < leastBoard_m) return withoutLayer(aCase, layerId);
  return withLayer(aCase, layerId, (layer) => ({ ...layer, thickness_m, material: facersKept(layer, thickness_m) }));
}

/** A board whose facers govern lets the same vapour through at any thickness, so its resistance factor falls as it thickens. */
function facersKept(layer: CaseLayer, thickness_m: number): Material {
  const { material } = layer;
  const facersGovern = material.kind === "bulk" && materialById(material.id)?.permeance_kgm2sPa !== undefined;
  return facersGovern ? withPermeanceTimes(material, thickness_m / layer.thickness_m) : material;
}

/** The case without a layer. Leaks of air and rain that arrived at it arrive at the same plane, now the face of its inward neighbour. */
export function withoutLayer(aCase: Case, layerId: string): Case {
  const index = aCase.layers.indexOf(layerOf(aCase, layerId));
  const heir = aCase.layers[index + 1] ?? aCase.layers[index - 1];
  if (heir === undefined) throw new RangeError(`layerId must leave a wall behind, got the only layer "${layerId}"`);
  const side = aCase.layers[index + 1] === undefined ? "inside" : "outside";
  const leaks = aCase.leaks.map((leak): Leak => (leak.to === layerId ? { ...leak, to: heir.id, at: side } : leak));
  const exposure =
    aCase.exposure.kind === "site" && aCase.exposure.site.rain?.leakTo === layerId
      ? { ...aCase.exposure, site: { ...aCase.exposure.site, rain: { ...aCase.exposure.site.rain, leakTo: heir.id } } }
      : aCase.exposure;
  return { ...aCase, layers: aCase.layers.filter((layer) => layer.id !== layerId), leaks, exposure };
}

/** The case with the material of a layer changed. */
export const withMaterial = (aCase: Case, layerId: string, change: (material: Material) => Material): Case =>
  withLayer(aCase, layerId, (layer) => ({ ...layer, material: change(layer.material) }));

/** The case with its site changed; a laboratory case stays as it is. */
export function withSite(aCase: Case, change: (site: Site) => Site): Case {
  if (aCase.exposure.kind !== "site") return aCase;
  const site = change(aCase.exposure.site);
  return { ...aCase, exposure: { ...aCase.exposure, site, face: site.face } };
}

/** The case with another indoor climate; a laboratory case stays as it is. */
export function withIndoor(aCase: Case, change: (indoor: Indoor) => Indoor): Case {
  return aCase.exposure.kind === "site"
    ? { ...aCase, exposure: { ...aCase.exposure, indoor: change(aCase.exposure.indoor) } }
    : aCase;
}

/** Room temperatures of the seasonal room that stands in for a standard's method when its humidity is varied [degC]. */
const standInRoom = { winterTemperature_C: 21, summerTemperature_C: 24, summerRelativeHumidity: 0.5 } as const;

/** Winter humidity of a room that names one (0..1); null for methods that compute or log it. */
export function winterHumidityOf(indoor: Indoor): number | null {
  if (indoor.method === "seasonal") return indoor.winterRelativeHumidity;
  if (indoor.method !== "fixed") return null;
  return typeof indoor.relativeHumidity === "number" ? indoor.relativeHumidity : Math.min(...indoor.relativeHumidity);
}

/**
 * The same room with another winter humidity (0..1). Seasonal: summer never drier than winter. Twelve monthly values:
 * all move by the same number of points. One fixed value: replaced. Other methods become a seasonal room of 21 to 24 degC.
 */
export function withWinterHumidity(indoor: Indoor, winter: number): Indoor {
  if (!(winter >= 0 && winter <= 1)) throw new RangeError(`winter must be 0..1, got ${winter}`);
  if (indoor.method === "seasonal")
    return {
      ...indoor,
      winterRelativeHumidity: winter,
      summerRelativeHumidity: Math.max(indoor.summerRelativeHumidity, winter),
    };
  if (indoor.method !== "fixed")
    return {
      method: "seasonal",
      ...standInRoom,
      winterRelativeHumidity: winter,
      summerRelativeHumidity: Math.max(standInRoom.summerRelativeHumidity, winter),
    };
  if (typeof indoor.relativeHumidity === "number") return { ...indoor, relativeHumidity: winter };
  const shift = winter - Math.min(...indoor.relativeHumidity);
  return {
    ...indoor,
    relativeHumidity: indoor.relativeHumidity.map((value) => Math.min(1, Math.max(0, value + shift))),
  };
}

/** The same room warmer or colder by `kelvin`, its relative humidity kept. */
export function withRoomShifted(indoor: Indoor, kelvin: number): Indoor | null {
  switch (indoor.method) {
    case "seasonal":
      return {
        ...indoor,
        winterTemperature_C: indoor.winterTemperature_C + kelvin,
        summerTemperature_C: indoor.summerTemperature_C + kelvin,
      };
    case "fixed":
      return {
        ...indoor,
        temperature_C:
          typeof indoor.temperature_C === "number"
            ? indoor.temperature_C + kelvin
            : indoor.temperature_C.map((value) => value + kelvin),
      };
    case "iso13788":
      return { ...indoor, temperature_C: indoor.temperature_C + kelvin };
    case "ashrae160":
    case "en15026":
    case "logger":
      return null;
  }
}

/** The case with room air leaking to the condensing plane at a fixed flow [m3/(h m2)], in place of the leaks drawn there. */
export function withLeakAtPlane(aCase: Case, flow_m3hm2: number): Case {
  const plane = condensingPlane(aCase);
  const elsewhere = aCase.leaks.filter((leak) => leak.to !== plane.layer);
  return {
    ...aCase,
    leaks: flow_m3hm2 > 0 ? [...elsewhere, { id: "leak", to: plane.layer, at: "inside", flow_m3hm2 }] : elsewhere,
  };
}

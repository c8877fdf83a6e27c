import type { Conductivity, Material } from "../materials/index.ts";

/** Conductivity of the dry material at its rating temperature, 24 degC where a curve gives one [W/(m K)]; null where the material has none. */
export function ratedConductivity_WmK(material: Material): number | null {
  const conductivity = material.conductivity_WmK;
  if (conductivity === undefined) return null;
  if (typeof conductivity === "number") return conductivity;
  if (conductivity.temperature_C !== undefined) return atTemperature(conductivity.temperature_C, 24);
  return conductivity.dry_WmK;
}

/** Vapour permeance of a layer at a mean relative humidity (0..1), still air at 20 degC 1.95e-10 kg/(m s Pa) [kg/(m2 s Pa)]; null where unknown. */
export function permeance_kgm2sPa(material: Material, thickness_m: number, relativeHumidity: number): number | null {
  if (material.permeance_kgm2sPa !== undefined) return logPoint(material.permeance_kgm2sPa, relativeHumidity);
  const vapour = material.vapour;
  if (vapour === undefined || !(thickness_m > 0)) return null;
  if ("resistanceFactor" in vapour)
    return stillAirPermeability_kgmsPa / (logPoint(vapour.resistanceFactor, relativeHumidity) * thickness_m);
  return linePoint(vapour.permeability_kgmsPa, relativeHumidity) / thickness_m;
}

/** Still air at 20 degC and one atmosphere. Source: Schirmer 1938 as given in ISO 12572; MEMORY. */
const stillAirPermeability_kgmsPa = 1.95e-10;

type Curve = number | readonly (readonly [number, number])[];

function between(
  points: readonly (readonly [number, number])[],
  x: number,
  mix: (a: number, b: number, share: number) => number,
): number {
  const first = points[0]!;
  const last = points[points.length - 1]!;
  if (x <= first[0]) return first[1];
  if (x >= last[0]) return last[1];
  const upper = points.findIndex((point) => point[0] >= x);
  const b = points[upper]!;
  const a = points[upper - 1]!;
  return mix(a[1], b[1], (x - a[0]) / (b[0] - a[0]));
}

const linePoint = (curve: Curve, x: number): number =>
  typeof curve === "number" ? curve : between(curve, x, (a, b, share) => a + (b - a) * share);
const logPoint = (curve: Curve, x: number): number =>
  typeof curve === "number"
    ? curve
    : between(curve, x, (a, b, share) => (a > 0 && b > 0 ? a ** (1 - share) * b ** share : a + (b - a) * share));
const atTemperature = (points: readonly (readonly [number, number])[], temperature_C: number): number =>
  linePoint(points, temperature_C);

/** The same material with its conductivity multiplied at every temperature and moisture content. */
export function withConductivityTimes(material: Material, factor: number): Material {
  const conductivity = material.conductivity_WmK;
  if (conductivity === undefined) return material;
  return { ...material, conductivity_WmK: timesConductivity(conductivity, factor) };
}

function timesConductivity(conductivity: Conductivity, factor: number): Conductivity {
  if (typeof conductivity === "number") return conductivity * factor;
  return {
    ...conductivity,
    dry_WmK: conductivity.dry_WmK * factor,
    ...(conductivity.perWater === undefined ? {} : { perWater: conductivity.perWater * factor }),
    ...(conductivity.temperature_C === undefined
      ? {}
      : { temperature_C: conductivity.temperature_C.map(([t, k]): [number, number] => [t, k * factor]) }),
  };
}

/** The same material letting `factor` times as much vapour through, at every humidity. */
export function withPermeanceTimes(material: Material, factor: number): Material {
  const times = (curve: number | [number, number][], by: number): number | [number, number][] =>
    typeof curve === "number" ? curve * by : curve.map(([x, y]): [number, number] => [x, y * by]);
  if (material.permeance_kgm2sPa !== undefined)
    return { ...material, permeance_kgm2sPa: times(material.permeance_kgm2sPa, factor) };
  const vapour = material.vapour;
  if (vapour === undefined) return material;
  if ("resistanceFactor" in vapour)
    return { ...material, vapour: { ...vapour, resistanceFactor: times(vapour.resistanceFactor, 1 / factor) } };
  return { ...material, vapour: { permeability_kgmsPa: times(vapour.permeability_kgmsPa, factor) } };
}

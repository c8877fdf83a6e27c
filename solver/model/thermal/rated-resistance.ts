import type { Conductivity, Material } from "../../materials/index.ts";

/** Mean temperature at which insulation is rated in North America [degC] (75 degF). */
export const ratingTemperature_C = 24;
/** Materials in use are in balance with about this humidity; it decides the conductivity of wood and masonry. */
const humidityInUse = 0.5;

function interpolated(points: readonly (readonly [number, number])[], x: number): number {
  const first = points[0]!;
  const last = points.at(-1)!;
  if (x <= first[0]) return first[1];
  for (let i = 1; i < points.length; i++) {
    const [x0, y0] = points[i - 1]!;
    const [x1, y1] = points[i]!;
    if (x <= x1) return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  }
  return last[1];
}

/** Moisture content at 50 % RH [kg/m3]; 0 where the storage is not known by humidity. */
function waterInUse_kgm3(material: Material): number {
  const { sorption } = material;
  if (!sorption) return 0;
  if ("relativeHumidity" in sorption) return interpolated([[0, 0], ...sorption.relativeHumidity], humidityInUse);
  if ("slope_kgm3" in sorption) return sorption.slope_kgm3 * humidityInUse;
  return 0;
}

function conductivityAt(conductivity: Conductivity, water_kgm3: number, temperature_C: number): number {
  if (typeof conductivity === "number") return conductivity;
  const reference = conductivity.reference_C ?? ratingTemperature_C;
  let value = conductivity.temperature_C
    ? interpolated(conductivity.temperature_C, temperature_C)
    : conductivity.dry_WmK * (1 + (conductivity.perKelvin ?? 0) * (temperature_C - reference));
  if (conductivity.moistureFactor) value *= interpolated(conductivity.moistureFactor, water_kgm3);
  if (conductivity.expPsi) value *= Math.exp((conductivity.expPsi * water_kgm3) / 1000);
  if (conductivity.perWater)
    value += conductivity.perWater * Math.min(water_kgm3, conductivity.perWaterUpTo_kgm3 ?? Infinity);
  return value;
}

/**
 * Resistance of a layer as it is rated for heat loss [m2 K/W]: at the mean temperature given, in balance with 50 % RH.
 * 0 for a membrane without a resistance of its own.
 *
 * @param temperature_C mean temperature of the layer; 24 is the rating point, 4 to 10 a winter mean
 */
export function ratedResistance_m2KW(
  material: Material,
  thickness_m: number,
  temperature_C: number = ratingTemperature_C,
): number {
  if (material.kind !== "bulk" && material.thermalResistance_m2KW !== undefined) return material.thermalResistance_m2KW;
  if (material.conductivity_WmK === undefined || !(thickness_m > 0)) return material.thermalResistance_m2KW ?? 0;
  return thickness_m / conductivityAt(material.conductivity_WmK, waterInUse_kgm3(material), temperature_C);
}

import type { Conductivity, Material } from "../materials/index.ts";
import { polyline } from "../numerics/monotone-curve.ts";

/** Conductivity as a product: lambda(w, T) = wet(w) [W/(m K)] times warm(T) [-]. */
export interface ConductivityCurve {
  readonly wet: (water_kgm3: number) => number;
  readonly warm: (temperature_K: number) => number;
}

export function conductivityCurve(material: Material): ConductivityCurve {
  const given: Conductivity = material.conductivity_WmK ?? 1e3;
  if (typeof given === "number") return { wet: () => given, warm: () => 1 };
  const { dry_WmK, perWater = 0, perWaterUpTo_kgm3 = Infinity, expPsi = 0, moistureFactor } = given;
  const factor = moistureFactor
    ? polyline(
        moistureFactor.map(([w]) => w),
        moistureFactor.map(([, f]) => f),
      )
    : null;
  return {
    wet: (w) => {
      const supplemented = dry_WmK + perWater * Math.min(w, perWaterUpTo_kgm3);
      return supplemented * (expPsi === 0 ? 1 : Math.exp((expPsi * Math.min(w, 1000)) / 1000)) * (factor?.at(w) ?? 1);
    },
    warm: warmFactor(given),
  };
}

function warmFactor(given: Exclude<Conductivity, number>): (T: number) => number {
  if (given.temperature_C !== undefined) {
    const curve = polyline(
      given.temperature_C.map(([t]) => t),
      given.temperature_C.map(([, k]) => k / given.dry_WmK),
    );
    return (T) => curve.at(T - 273.15);
  }
  const { perKelvin, reference_C = 24 } = given;
  if (perKelvin === undefined) return () => 1;
  // A straight line is only meant for building temperatures: it stops at a tenth.
  return (T) => Math.max(1 + perKelvin * (T - 273.15 - reference_C), 0.1);
}
